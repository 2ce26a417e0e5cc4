#include "library/versions_dialog.h"

#include <QDateTime>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPointer>
#include <QVBoxLayout>

#include "text/book_fault_text.h"
#include "text/fault_text.h"
#include "text/names.h"

namespace rangeline {

VersionsDialog::VersionsDialog(BookDesk& desk, const QLocale& locale, QWidget* parent)
    : QDialog(parent), desk_(desk), locale_(locale), lesson_(*desk.journal().lesson()) {
    setWindowTitle(tr("Versions of this lesson"));
    list_ = new QListWidget(this);
    list_->setAccessibleName(tr("Versions"));
    list_->setWordWrap(true);
    with_ = new QComboBox(this);
    with_->setAccessibleName(tr("Compared with"));
    view_ = new ComparisonView(this);
    auto* head = new QHBoxLayout;
    auto* label = new QLabel(tr("Compared &with"), this);
    label->setBuddy(with_);
    head->addWidget(label);
    head->addWidget(with_, 1);
    auto* right = new QVBoxLayout;
    right->addLayout(head);
    right->addWidget(view_, 1);
    auto* middle = new QHBoxLayout;
    middle->addWidget(list_, 1);
    middle->addLayout(right, 3);
    auto* column = new QVBoxLayout(this);
    column->addWidget(makeKeeping());
    column->addLayout(middle, 1);
    column->addWidget(makeButtons());
    connect(list_, &QListWidget::currentRowChanged, this, &VersionsDialog::showChosen);
    connect(with_, &QComboBox::currentIndexChanged, this, &VersionsDialog::showChosen);
    constexpr QSize usual(920, 560);
    resize(usual);
    name_->setFocus();
    read();
}

QWidget* VersionsDialog::makeKeeping() {
    auto* box = new QWidget(this);
    auto* row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    name_ = new QLineEdit(box);
    name_->setAccessibleName(tr("Name of the new version"));
    name_->setPlaceholderText(tr("such as: as taught in spring"));
    keep_ = new QPushButton(tr("&Keep"), box);
    keep_->setEnabled(false);
    keep_->setDefault(true);
    auto* label = new QLabel(tr("Keep the lesson as it is &now, as"), box);
    label->setBuddy(name_);
    row->addWidget(label);
    row->addWidget(name_, 1);
    row->addWidget(keep_);
    connect(name_, &QLineEdit::textChanged, this, [this](const QString& text) {
        keep_->setEnabled(!text.trimmed().isEmpty() && desk_.isWritable());
    });
    connect(keep_, &QPushButton::clicked, this, &VersionsDialog::keep);
    return box;
}

QWidget* VersionsDialog::makeButtons() {
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    restore_ = buttons->addButton(tr("&Go back to this version"), QDialogButtonBox::ActionRole);
    remove_ = buttons->addButton(tr("&Remove this version"), QDialogButtonBox::ActionRole);
    for (QAbstractButton* button : buttons->buttons()) {
        qobject_cast<QPushButton*>(button)->setAutoDefault(false);
    }
    connect(restore_, &QPushButton::clicked, this, &VersionsDialog::restore);
    connect(remove_, &QPushButton::clicked, this, &VersionsDialog::remove);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    return buttons;
}

void VersionsDialog::say(const BookFault& fault) {
    view_->say(sentenceCase(sentence(fault)) + u'.');
}

QString VersionsDialog::nameOf(const Version& version) const {
    const QDateTime made = QDateTime::fromString(QString::fromStdString(version.made), Qt::ISODate);
    return tr("%1\n%2").arg(QString::fromStdString(version.name),
                            locale_.toString(made.toLocalTime(), QLocale::ShortFormat));
}

void VersionsDialog::read() {
    desk_.book()->ask(
        [lesson = lesson_](Book& book) { return versions(book, lesson); },
        [this, self = QPointer(this)](const Result<std::vector<Version>, BookFault>& read) {
            if (!self) {
                return;
            }
            if (read.ok()) {
                list(read.value());
            } else {
                say(read.error());
            }
        });
}

void VersionsDialog::list(const std::vector<Version>& versions) {
    versions_ = versions;
    const QSignalBlocker quietList(list_);
    const QSignalBlocker quietWith(with_);
    list_->clear();
    with_->clear();
    with_->addItem(tr("the lesson as it is now"));
    for (const Version& version : versions_) {
        list_->addItem(nameOf(version));
        with_->addItem(QString::fromStdString(version.name));
    }
    list_->setCurrentRow(list_->count() - 1);
    showChosen();
}

const Version* VersionsDialog::chosen() const {
    const auto row = static_cast<std::size_t>(list_->currentRow());
    return list_->currentRow() < 0 || row >= versions_.size() ? nullptr : &versions_[row];
}

void VersionsDialog::showChosen() {
    const Version* version = chosen();
    restore_->setEnabled(version != nullptr && desk_.isWritable());
    remove_->setEnabled(version != nullptr && desk_.isWritable());
    const int number = ++asked_;
    if (version == nullptr) {
        view_->say(
            tr("No version is kept yet. Keep one before you try something else: it can be "
               "laid beside the lesson as it is later, and the lesson can go back to it."));
        return;
    }
    const int with = with_->currentIndex();
    const auto other = with > 0 ? std::optional(versions_.at(static_cast<std::size_t>(with - 1)).id)
                                : std::nullopt;
    using Pair = std::pair<Lesson, Lesson>;
    const auto read = [id = version->id, other,
                       now = desk_.document().lesson()](Book& book) -> Result<Pair, BookFault> {
        auto left = versionLesson(book, id);
        if (!left.ok()) {
            return left.error();
        }
        auto right = other ? versionLesson(book, *other) : Result<Lesson, BookFault>(now);
        if (!right.ok()) {
            return right.error();
        }
        return Pair{std::move(left.value()), std::move(right.value())};
    };
    desk_.book()->ask(
        read, [this, self = QPointer(this), number](const Result<Pair, BookFault>& lessons) {
            if (!self || number != asked_) {
                return;
            }
            if (lessons.ok()) {
                compareWith(lessons.value().first, lessons.value().second);
            } else {
                say(lessons.error());
            }
        });
}

void VersionsDialog::compareWith(const Lesson& chosenLesson, const Lesson& other) {
    view_->show(compare(chosenLesson, other, locale_, desk_.document().units()),
                QString::fromStdString(chosen()->name), with_->currentText(), locale_);
}

void VersionsDialog::keep() {
    desk_.journal().finish();
    if (const auto& fault = desk_.journal().fault()) {
        say(*fault);
        return;
    }
    const std::string name = name_->text().trimmed().toStdString();
    const std::string now = QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString();
    desk_.book()->ask(
        [lesson = lesson_, name, now](Book& book) { return keepVersion(book, lesson, name, now); },
        [this, self = QPointer(this)](const Result<std::int64_t, BookFault>& kept) {
            if (!self) {
                return;
            }
            if (kept.ok()) {
                name_->clear();
                read();
            } else {
                say(kept.error());
            }
        });
}

void VersionsDialog::restore() {
    const Version version = *chosen();
    desk_.book()->ask(
        [id = version.id](Book& book) { return versionLesson(book, id); },
        [this, self = QPointer(this), version](const Result<Lesson, BookFault>& kept) {
            if (!self) {
                return;
            }
            if (!kept.ok()) {
                say(kept.error());
                return;
            }
            LessonDocument& document = desk_.document();
            const auto fault =
                document.apply(editsFrom(document.lesson(), kept.value()),
                               tr("go back to “%1”").arg(QString::fromStdString(version.name)));
            if (fault) {
                view_->say(sentence(*fault));
                return;
            }
            accept();
        });
}

void VersionsDialog::remove() {
    const auto answer =
        QMessageBox::question(this, tr("Remove this version"),
                              tr("A version that is removed cannot be brought back. Remove “%1”?")
                                  .arg(QString::fromStdString(chosen()->name)));
    if (answer != QMessageBox::Yes) {
        return;
    }
    desk_.book()->ask([lesson = lesson_,
                       id = chosen()->id](Book& book) { return removeVersion(book, lesson, id); },
                      [this, self = QPointer(this)](const std::optional<BookFault>& fault) {
                          if (self) {
                              fault ? say(*fault) : read();
                          }
                      });
}

}  // namespace rangeline
