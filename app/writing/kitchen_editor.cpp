#include "writing/kitchen_editor.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QRegularExpression>
#include <QShortcut>
#include <QVBoxLayout>
#include <utility>

#include "writing/editors.h"
#include "writing/field_keys.h"
#include "writing/kitchen_fields.h"
#include "writing/leaving.h"
#include "writing/undo_keys.h"

namespace rangeline {

KitchenEditor::KitchenEditor(Kitchen kitchen, Units units, QWidget* parent)
    : QDialog(parent),
      kitchen_(std::move(kitchen)),
      original_(kitchen_),
      name_(new QLineEdit(QString::fromStdString(kitchen_.name), this)),
      fields_(std::make_unique<FormOf<Kitchen>>(kitchenFields(units), 3, this,
                                                [this](const Kitchen& next) { change(next); })),
      tabs_(new QTabWidget(this)),
      problems_(new ProblemList(this)) {
    setWindowTitle(tr("Write down a kitchen"));
    name_->setAccessibleName(tr("Name of the kitchen"));
    tabs_->setAccessibleName(tr("What stands in it"));
    auto* form = new QFormLayout;
    form->addRow(tr("&Name"), name_);
    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(fields_->widget());
    column->addWidget(tabs_, 1);
    column->addWidget(problems_);
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
    new UndoKeys(*this);
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
    redo_ = buttons->addButton(tr("&Bring again"), QDialogButtonBox::ActionRole);
    connect(redo_, &QPushButton::clicked, this, &KitchenEditor::redo);
    connect(new QShortcut(QKeySequence::Redo, this), &QShortcut::activated, this,
            &KitchenEditor::redo);
    connect(problems_, &ProblemList::wanted, this, &KitchenEditor::goTo);
    keep_ = buttons->addButton(tr("&Keep in the book"), QDialogButtonBox::AcceptRole);
    buttons->addButton(QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::accepted, this, &KitchenEditor::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &KitchenEditor::reject);
    connect(undo_, &QPushButton::clicked, this, &KitchenEditor::undo);
    connect(new QShortcut(QKeySequence::Undo, this), &QShortcut::activated, this,
            &KitchenEditor::undo);
    return buttons;
}

void KitchenEditor::change(Kitchen changed) {
    if (!(changed == kitchen_)) {
        history_.changed(std::exchange(kitchen_, std::move(changed)));
        Q_EMIT kitchenChanged();
    }
    showAll();
}

void KitchenEditor::goOnWith(Kitchen written) {
    history_.changed(std::exchange(kitchen_, std::move(written)));
    showTurned();
}

void KitchenEditor::undo() {
    history_.undo(kitchen_);
    Q_EMIT kitchenChanged();
    showTurned();
}

void KitchenEditor::redo() {
    history_.redo(kitchen_);
    Q_EMIT kitchenChanged();
    showTurned();
}

void KitchenEditor::showTurned() {
    name_->setText(QString::fromStdString(kitchen_.name));
    fields_->forgetMarks();
    showAll();
}

void KitchenEditor::showAll() {
    for (KitchenTable* table : tables_) {
        table->showKitchen(kitchen_);
    }
    fields_->show(kitchen_);
    std::vector<Problem> problems = problemsOf(kitchen_);
    keep_->setEnabled(mayBeKept(problems));
    if (!refused_.isEmpty()) {
        problems.insert(problems.begin(), {refused_});
    }
    problems_->show(std::move(problems));
    undo_->setEnabled(history_.canUndo());
    redo_->setEnabled(history_.canRedo());
}

void KitchenEditor::goTo(const Problem& problem) {
    static const QStringList tables{QStringLiteral("burners"), QStringLiteral("ovens"),
                                    QStringLiteral("wares"), QStringLiteral("pools"),
                                    QStringLiteral("cooks")};
    static const QRegularExpression place(QStringLiteral("^(\\w+)(\\[(\\d+)\\])?"));
    const auto match = place.match(QString::fromStdString(problem.field));
    const auto table = tables.indexOf(match.captured(1));
    if (table < 0) {
        QWidget* field = fieldOf(*this, problem.field);
        (field == nullptr ? name_ : field)->setFocus();
        return;
    }
    tabs_->setCurrentIndex(static_cast<int>(table));
    tables_[static_cast<std::size_t>(table)]->goTo(match.captured(3).toInt());
}

void KitchenEditor::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter) {
        QDialog::keyPressEvent(event);
    }
}

/// What still stands in a field is taken, as if the cook had left it.
void KitchenEditor::finishTyping() {
    if (QWidget* field = focusWidget(); field != nullptr && field != this) {
        field->clearFocus();
    }
}

void KitchenEditor::accept() {
    finishTyping();
    if (keep_->isEnabled()) {
        QDialog::accept();
    }
}

void KitchenEditor::reject() {
    QWidget* field = focusWidget();
    finishTyping();
    if (kitchen_ == original_ && refused_.isEmpty()) {
        QDialog::reject();
        return;
    }
    const Leaving leaving = askHowToLeave(this, tr("Leave the kitchen?"));
    leftForLater_ = leaving == Leaving::ForLater;
    if (leaving != Leaving::GoOn) {
        QDialog::reject();
    } else if (field != nullptr) {
        field->setFocus();
    }
}

}  // namespace rangeline
