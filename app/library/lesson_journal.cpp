#include "library/lesson_journal.h"

#include <QEventLoop>
#include <QTimer>
#include <algorithm>

#include "book/journal.h"
#include "book/versions.h"

namespace rangeline {
namespace {

bool changesNothing(const Edit& edit) {
    const auto* placements = std::get_if<SetPlacements>(&edit);
    return placements != nullptr && placements->changes.empty();
}

}  // namespace

LessonJournal::LessonJournal(LessonDocument& document, QObject* parent)
    : QObject(parent), document_(document) {
    connect(&document, &LessonDocument::applied, this,
            [this](const std::vector<Edit>& edits, const QString& text, GestureId gesture) {
                add({Kind::Applied, edits, text.toStdString(), gesture, {}});
            });
    connect(&document, &LessonDocument::replayed, this, [this](const QString& text, bool undone) {
        add({undone ? Kind::Undone : Kind::Redone, {}, text.toStdString(), 0, document_.lesson()});
    });
    connect(&document, &LessonDocument::changed, this, [this](const LessonChange& change) {
        if (change.all) {
            leave();
        }
    });
}

void LessonJournal::follow(OpenBook& book, ItemId lesson, const Lesson& there) {
    leave();
    book_ = &book;
    lesson_ = lesson;
    document_.setKept(true);
    if (document_.lesson() != there) {
        add({Kind::CaughtUp,
             {},
             tr("what was changed before").toStdString(),
             0,
             document_.lesson()});
    }
    Q_EMIT changed();
}

void LessonJournal::goOnIn(OpenBook& copy) {
    book_ = &copy;
    retry();
}

void LessonJournal::leave() {
    if (!lesson_) {
        return;
    }
    ++round_;
    book_ = nullptr;
    lesson_.reset();
    waiting_.clear();
    fault_.reset();
    Q_EMIT changed();
}

void LessonJournal::add(Step step) {
    if (!lesson_) {
        return;
    }
    waiting_.push_back(std::make_shared<const Step>(std::move(step)));
    document_.setKept(false);
    if (waiting_.size() == 1) {
        send();
    }
    Q_EMIT changed();
}

void LessonJournal::retry() {
    fault_.reset();
    ++round_;
    if (!waiting_.empty()) {
        send();
    }
    Q_EMIT changed();
}

void LessonJournal::finish() {
    QEventLoop loop;
    connect(this, &LessonJournal::changed, &loop, [&] {
        if (waiting_.empty() || fault_) {
            loop.quit();
        }
    });
    if (!waiting_.empty() && !fault_) {
        constexpr int patience =
            20'000;  // milliseconds; a disk that hangs must not hang the window
        QTimer::singleShot(patience, &loop, &QEventLoop::quit);
        loop.exec(QEventLoop::ExcludeUserInputEvents);
    }
}

/// Undo and redo are the book's own, so that its steps stay as they are. Where it has forgotten the
/// step, or joined others of a gesture than the window, the lesson is made what it should be.
std::optional<BookFault> LessonJournal::write(Book& book, ItemId lesson, const Step& step) {
    if (step.kind == Kind::Applied) {
        return applyEdits(book, lesson, step.edits, step.name, step.gesture);
    }
    if (step.kind != Kind::CaughtUp) {
        const auto replayed = step.kind == Kind::Undone ? undo(book, lesson) : redo(book, lesson);
        if (!replayed.ok() && replayed.error().code != BookFaultCode::NothingToDo) {
            return replayed.error();
        }
    }
    const auto held = book.heldLesson(lesson);
    if (!held.ok()) {
        return held.error();
    }
    if (*held.value() == *step.wanted) {
        return std::nullopt;
    }
    std::vector<Edit> edits = editsFrom(*held.value(), *step.wanted);
    std::erase_if(edits, changesNothing);
    return applyEdits(book, lesson, edits, step.name);
}

void LessonJournal::send() {
    const auto keep = [step = waiting_.front(), lesson = *lesson_](Book& book) {
        return write(book, lesson, *step);
    };
    book_->ask(keep, [this, round = round_](std::optional<BookFault> fault) {
        answered(round, std::move(fault));
    });
}

void LessonJournal::answered(int round, std::optional<BookFault> fault) {
    if (round != round_) {
        return;
    }
    fault_ = std::move(fault);
    if (!fault_) {
        waiting_.pop_front();
        if (waiting_.empty()) {
            document_.setKept(true);
        } else {
            send();
        }
    }
    Q_EMIT changed();
}

}  // namespace rangeline
