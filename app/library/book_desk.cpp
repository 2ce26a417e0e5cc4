#include "library/book_desk.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>

#include "book/salvage.h"
#include "book/versions.h"
#include "library/samples_book.h"
#include "text/book_fault_text.h"
#include "text/names.h"

namespace rangeline {
namespace {

Result<Contents, BookFault> contentsOf(Book& book, ItemId id) {
    auto lesson = book.lesson(id);
    if (!lesson.ok()) {
        return lesson.error();
    }
    auto steps = undoEdits(book, id);
    if (!steps.ok()) {
        return steps.error();
    }
    return Contents{std::move(lesson.value()), std::move(steps.value())};
}

std::vector<EarlierStep> earlier(std::vector<Replayed> steps) {
    std::vector<EarlierStep> all;
    for (Replayed& step : steps) {
        all.push_back({QString::fromStdString(step.name), std::move(step.edits)});
    }
    return all;
}

QString salvagedText(const Salvaged& salvaged, const QString& target) {
    QStringList lines;
    lines << BookDesk::tr("%1 kitchens, dishes and lessons were saved to “%2”.")
                 .arg(static_cast<qsizetype>(salvaged.kept.size()))
                 .arg(QFileInfo(target).fileName());
    if (!salvaged.doubtful.empty()) {
        lines << QString()
              << BookDesk::tr(
                     "These are not as they were written; look them over before "
                     "you rely on them:");
    }
    for (const Item& item : salvaged.doubtful) {
        lines << QString::fromStdString(item.name);
    }
    if (!salvaged.lost.empty()) {
        lines << QString() << BookDesk::tr("These could not be read:");
    }
    for (const Lost& one : salvaged.lost) {
        const std::string& name = one.name.empty() ? one.what : one.name;
        lines << QString::fromStdString(name) + QStringLiteral(": ") + sentence(one.why);
    }
    return lines.join(u'\n');
}

}  // namespace

BookDesk::BookDesk(LessonDocument& document, QWidget& window)
    : QObject(&window),
      document_(document),
      window_(window),
      journal_(new LessonJournal(document, this)) {
    connect(journal_, &LessonJournal::changed, this, &BookDesk::stateChanged);
    connect(&document, &LessonDocument::changed, this,
            [this](const LessonChange& change) { shown_ += change.all ? 1 : 0; });
}

BookDesk::~BookDesk() = default;

void BookDesk::sayFault(const BookFault& fault) {
    Q_EMIT said(QFileInfo(book_->path()).fileName() + QStringLiteral(": ") + sentence(fault));
}

// ---- opening ----

void BookDesk::take(std::unique_ptr<OpenBook> book) {
    const std::unique_ptr<OpenBook> before = std::move(book_);
    book_ = std::move(book);
    noBook_.clear();
    connect(book_.get(), &OpenBook::settled, this, &BookDesk::stateChanged);
    Q_EMIT bookOpened();
    Q_EMIT stateChanged();
}

bool BookDesk::isOpen(const QString& path) const {
    return book_ && QFileInfo(path) == QFileInfo(book_->path());
}

bool BookDesk::openBook(const QString& path) {
    if (isOpen(path)) {
        // Two of one process would be in each other's way: it is given up first.
        document_.close();
        book_.reset();
    }
    auto opened = OpenBook::open(path);
    if (!opened.ok()) {
        if (book_ == nullptr) {
            noBook_ = tr("No book is open: %1").arg(sentence(opened.error()));
            Q_EMIT stateChanged();
        }
        refuse(path, opened.error());
        return false;
    }
    document_.close();
    take(std::move(opened.value()));
    return true;
}

void BookDesk::newBook() {
    const QString path = askForName(tr("A new, empty book"));
    if (path.isEmpty()) {
        return;
    }
    auto made = Book::create(nameOnDisk(path));
    if (!made.ok()) {
        refuse(path, made.error());
        return;
    }
    made.value().reset();
    openBook(path);
}

bool BookDesk::openSamples() {
    const QString path = samplesPath();
    if (!QFileInfo::exists(path)) {
        if (const auto fault = makeSamplesBook(path)) {
            noBook_ = tr("There is no book to keep changes in: %1").arg(sentence(*fault));
            Q_EMIT stateChanged();
            return false;
        }
    }
    return openBook(path);
}

void BookDesk::refuse(const QString& path, const BookFault& fault) {
    QMessageBox box(&window_);
    box.setIcon(QMessageBox::Warning);
    box.setWindowTitle(tr("This book cannot be opened"));
    box.setText(
        QStringLiteral("%1\n\n%2.").arg(QFileInfo(path).fileName(), sentenceCase(sentence(fault))));
    QPushButton* salvage = isDamage(fault.code) ? box.addButton(tr("Save what can be &read ..."),
                                                                QMessageBox::AcceptRole)
                                                : nullptr;
    box.addButton(QMessageBox::Close);
    box.exec();
    if (salvage != nullptr && box.clickedButton() == salvage) {
        if (const QString target = askForName(tr("Save what can be read as")); !target.isEmpty()) {
            salvageTo(path, target);
        }
    }
}

void BookDesk::openLesson(ItemId id) {
    const auto read = [id](Book& book) { return contentsOf(book, id); };
    book_->ask(read, [this, id](Result<Contents, BookFault> contents) {
        if (contents.ok()) {
            show(id, std::move(contents.value()));
        } else {
            sayFault(contents.error());
        }
    });
}

void BookDesk::show(ItemId id, Contents contents) {
    document_.setLesson(contents.lesson);
    document_.goOnWithSteps(earlier(std::move(contents.steps.undo)),
                            earlier(std::move(contents.steps.redo)));
    journal_->follow(*book_, id, contents.lesson);
    Q_EMIT lessonOpened();
}

void BookDesk::copyIntoBook() {
    using Copied = std::pair<CopiedLesson, Contents>;
    const auto add = [lesson = document_.lesson()](Book& book) -> Result<Copied, BookFault> {
        const auto found = findOrAddLesson(book, lesson);
        if (!found.ok()) {
            return found.error();
        }
        auto contents = contentsOf(book, found.value().id);
        if (!contents.ok()) {
            return contents.error();
        }
        return Copied{found.value(), std::move(contents.value())};
    };
    book_->ask(add, [this, shown = shown_](Result<Copied, BookFault> copied) {
        if (!copied.ok()) {
            sayFault(copied.error());
            return;
        }
        book_->refresh();
        if (shown != shown_) {
            return;  // another lesson is open by now
        }
        auto& [found, contents] = copied.value();
        const QString name = QString::fromStdString(contents.lesson.head.name);
        const bool untouched = document_.undoStack().count() == 0;
        if (untouched && found.before && !(document_.lesson() == contents.lesson)) {
            show(found.id, std::move(contents));
            Q_EMIT said(
                tr("“%1” is here as you left it in the book; its file stays as it is.").arg(name));
            return;
        }
        if (untouched && document_.lesson() == contents.lesson) {
            document_.goOnWithSteps(earlier(std::move(contents.steps.undo)),
                                    earlier(std::move(contents.steps.redo)));
        }
        journal_->follow(*book_, found.id, contents.lesson);
        Q_EMIT said(tr("“%1” is in the book now; its file stays as it is.").arg(name));
    });
}

// ---- leaving ----

bool BookDesk::mayLeave() {
    journal_->finish();
    if (journal_->isKept()) {
        return true;
    }
    QMessageBox question(&window_);
    question.setIcon(QMessageBox::Question);
    question.setWindowTitle(tr("Changes that are not kept"));
    const auto& why = journal_->fault();
    question.setText(tr("The last changes are not in the book: %1.")
                         .arg(why ? sentence(*why) : tr("the disk does not answer")));
    QPushButton* copy = question.addButton(tr("Save a &copy ..."), QMessageBox::AcceptRole);
    QPushButton* drop = question.addButton(tr("&Give them up"), QMessageBox::DestructiveRole);
    question.addButton(tr("Go &back"), QMessageBox::RejectRole);
    question.setDefaultButton(copy);
    question.exec();
    if (question.clickedButton() == drop) {
        journal_->leave();
        return true;
    }
    if (question.clickedButton() == copy) {
        askForCopy();
    }
    return false;
}

// ---- copies ----

QString BookDesk::askForName(const QString& title) {
    // The book of the samples lies where nobody looks for documents.
    const bool own = book_ && book_->path() != samplesPath();
    const QString folder =
        own ? QFileInfo(book_->path()).absolutePath()
            : QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    QFileDialog dialog(&window_, title, folder, tr("Books (*.rangeline)"));
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("rangeline"));
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().constFirst() : QString();
}

void BookDesk::askForCopy() {
    if (const QString target = askForName(tr("Save a copy of the book as")); !target.isEmpty()) {
        saveCopy(target);
    }
}

void BookDesk::saveCopy(const QString& target) {
    if (isOpen(target) && QFileInfo::exists(target)) {
        Q_EMIT said(tr("That is the book itself; choose another name for the copy."));
        return;
    }
    const auto copy = [name = nameOnDisk(target)](Book& book) {
        return rangeline::saveCopy(book, name);
    };
    book_->ask(copy, [this, target](const std::optional<BookFault>& fault) {
        if (fault) {
            sayFault(*fault);
            return;
        }
        Q_EMIT said(tr("Copied to %1").arg(QFileInfo(target).fileName()));
        if (journal_->isKept()) {
            return;
        }
        auto opened = OpenBook::open(target);
        if (!opened.ok()) {
            refuse(target, opened.error());
            return;
        }
        OpenBook& there = *opened.value();
        journal_->goOnIn(there);
        take(std::move(opened.value()));
        Q_EMIT lessonOpened();
    });
}

void BookDesk::askForSalvage() {
    if (const QString target = askForName(tr("Save what can be read as")); !target.isEmpty()) {
        salvageTo(book_->path(), target);
    }
}

void BookDesk::salvageTo(const QString& damaged, const QString& target) {
    const auto salvaged = salvage(nameOnDisk(damaged), nameOnDisk(target));
    if (!salvaged.ok()) {
        refuse(target, salvaged.error());
        return;
    }
    QMessageBox::information(&window_, tr("What could be read"),
                             salvagedText(salvaged.value(), target));
    openBook(target);
}

}  // namespace rangeline
