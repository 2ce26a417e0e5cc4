#include "writing/kitchen_editor.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QMessageBox>
#include <QShortcut>
#include <QVBoxLayout>

#include "book/judge.h"
#include "text/fault_text.h"
#include "text/names.h"

namespace rangeline {

KitchenEditor::KitchenEditor(Kitchen kitchen, Units units, QWidget* parent)
    : QDialog(parent),
      kitchen_(std::move(kitchen)),
      original_(kitchen_),
      name_(new QLineEdit(QString::fromStdString(kitchen_.name), this)),
      tabs_(new QTabWidget(this)),
      says_(new QLabel(this)) {
    setWindowTitle(tr("Write down a kitchen"));
    name_->setAccessibleName(tr("Name of the kitchen"));
    tabs_->setAccessibleName(tr("What stands in it"));
    says_->setWordWrap(true);
    auto* form = new QFormLayout;
    form->addRow(tr("&Name"), name_);
    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(tabs_, 1);
    column->addWidget(says_);
    column->addWidget(makeButtons());
    for (KitchenTableKind& kind : kitchenTables(units)) {
        const QString title = kind.title;
        auto* table = new KitchenTable(std::move(kind), tabs_);
        tabs_->addTab(table, title);
        tables_.push_back(table);
        connect(table, &KitchenTable::edited, this, &KitchenEditor::change);
        connect(table, &KitchenTable::refused, this, [this](const QString& why) {
            refused_ = why;
            showAll();
        });
    }
    connect(name_, &QLineEdit::editingFinished, this, [this] {
        Kitchen changed = kitchen_;
        changed.name = name_->text().trimmed().toStdString();
        change(std::move(changed));
    });
    constexpr QSize usual(820, 520);
    resize(usual);
    showAll();
}

/// A field that loses the focus by being destroyed has nothing to say any more.
KitchenEditor::~KitchenEditor() {
    for (QWidget* field : findChildren<QWidget*>()) {
        field->blockSignals(true);
    }
}

QWidget* KitchenEditor::makeButtons() {
    auto* buttons = new QDialogButtonBox(this);
    undo_ = buttons->addButton(tr("&Take back"), QDialogButtonBox::ActionRole);
    keep_ = buttons->addButton(tr("&Keep in the book"), QDialogButtonBox::AcceptRole);
    buttons->addButton(QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &KitchenEditor::reject);
    connect(undo_, &QPushButton::clicked, this, &KitchenEditor::undo);
    connect(new QShortcut(QKeySequence::Undo, this), &QShortcut::activated, this,
            &KitchenEditor::undo);
    return buttons;
}

void KitchenEditor::change(Kitchen changed) {
    if (!(changed == kitchen_)) {
        before_.push_back(std::move(kitchen_));
        kitchen_ = std::move(changed);
    }
    showAll();
}

void KitchenEditor::undo() {
    if (!before_.empty()) {
        kitchen_ = std::move(before_.back());
        before_.pop_back();
        name_->setText(QString::fromStdString(kitchen_.name));
        showAll();
    }
}

void KitchenEditor::showAll() {
    for (KitchenTable* table : tables_) {
        table->showKitchen(kitchen_);
    }
    QString text = refused_;
    bool fine = true;
    if (kitchen_.name.empty()) {
        text = tr("Give the kitchen a name.");
        fine = false;
    } else if (kitchen_.cooks.empty()) {
        text = tr("Somebody must cook: one more under Cooks.");
        fine = false;
    } else if (const auto fault = judgeKitchen(kitchen_)) {
        text = sentenceCase(sentence(*fault)) + u'.';
        fine = false;
    }
    says_->setText(text);
    says_->setAccessibleName(text);
    undo_->setEnabled(!before_.empty());
    keep_->setEnabled(fine);
}

void KitchenEditor::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter) {
        QDialog::keyPressEvent(event);
    }
}

void KitchenEditor::reject() {
    const bool lost = !(kitchen_ == original_);
    if (!lost || QMessageBox::question(this, tr("Leave the kitchen?"),
                                       tr("What you changed is not in the book. Give it up?")) ==
                     QMessageBox::Yes) {
        QDialog::reject();
    }
}

}  // namespace rangeline
