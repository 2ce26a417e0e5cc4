#include "document/lesson_document.h"

#include <QScopedValueRollback>
#include <algorithm>
#include <utility>

#include "document/edit_command.h"
#include "exchange/lesson_file.h"
#include "model/validate.h"

namespace rangeline {
namespace {

Lesson emptyLesson() {
    Lesson lesson;
    lesson.head.servingTime = "2000-01-01T18:00";
    lesson.head.zone = "UTC";
    lesson.head.crew = {CookId{"cook"}};
    lesson.kitchen.cooks = {{CookId{"cook"}, LessonDocument::tr("Cook").toStdString(), 100, {}}};
    return lesson;
}

/// Takes out what would stay as it is; whether anything is left.
struct DropsNothing {
    const Lesson& lesson;

    bool operator()(SetPlacements& edit) const {
        std::erase_if(edit.changes, [&](const PlacementChange& change) {
            const auto found = lesson.placements.find(change.key);
            return found == lesson.placements.end() ? !change.placement
                                                    : change.placement == found->second;
        });
        return !edit.changes.empty();
    }
    bool operator()(const SetHead& edit) const { return edit.head != lesson.head; }
    bool operator()(const SetKitchen& edit) const { return edit.kitchen != lesson.kitchen; }
    bool operator()(const SetServings& edit) const { return edit.servings != lesson.servings; }
    bool operator()(const SetChoices& edit) const { return edit.choices != lesson.choices; }
};

std::optional<Fault> faultAfter(Lesson lesson, const std::vector<Edit>& edits) {
    for (const Edit& edit : edits) {
        rangeline::apply(lesson, edit);
    }
    const std::vector<Fault> faults = validate(lesson, 1);
    return faults.empty() ? std::nullopt : std::optional(faults.front());
}

}  // namespace

LessonDocument::LessonDocument(QObject* parent)
    : QObject(parent), state_(std::make_unique<LessonState>(emptyLesson())) {
    connect(&undoStack_, &QUndoStack::cleanChanged, this,
            [this] { Q_EMIT modifiedChanged(isModified()); });
}

LessonDocument::~LessonDocument() = default;

std::optional<Fault> LessonDocument::apply(Edit edit, const QString& text, GestureId gesture) {
    std::vector<Edit> edits;
    edits.push_back(std::move(edit));
    return apply(std::move(edits), text, gesture);
}

std::optional<Fault> LessonDocument::apply(std::vector<Edit> edits, const QString& text,
                                           GestureId gesture) {
    std::erase_if(edits, [this](Edit& edit) { return !std::visit(DropsNothing{lesson()}, edit); });
    if (edits.empty()) {
        return std::nullopt;
    }
    if (!std::ranges::all_of(edits, keepsExpansion)) {
        if (auto fault = faultAfter(lesson(), edits)) {
            return fault;
        }
    }
    const std::vector<Edit> done = edits;
    const int before = undoStack_.index();
    {
        const QScopedValueRollback pushing(pushing_, true);
        undoStack_.push(new EditCommand(*this, std::move(edits), text, gesture));
    }
    Q_EMIT applied(done, text, gesture);
    if (undoStack_.index() < before) {
        Q_EMIT replayed(text, true);
    }
    return std::nullopt;
}

void LessonDocument::play(std::vector<Edit>& edits, const QString& text, bool undone) {
    if (quiet_) {
        return;
    }
    const LessonChange change = state_->exchange(edits);
    std::ranges::reverse(edits);
    Q_EMIT changed(change);
    if (!pushing_) {
        Q_EMIT replayed(text, undone);
    }
}

void LessonDocument::goOnWithSteps(std::vector<EarlierStep> undo, std::vector<EarlierStep> redo) {
    const QScopedValueRollback quiet(quiet_, true);
    undoStack_.clear();
    for (auto* steps : {&undo, &redo}) {
        for (EarlierStep& step : *steps) {
            undoStack_.push(new EditCommand(*this, std::move(step.edits), step.text, 0));
        }
    }
    undoStack_.setIndex(static_cast<int>(undo.size()));
    undoStack_.setClean();
}

void LessonDocument::setLesson(Lesson lesson, const QString& path) {
    kept_.reset();
    undoStack_.clear();
    state_ = std::make_unique<LessonState>(std::move(lesson));
    path_ = path;
    Q_EMIT pathChanged(path_);
    Q_EMIT changed({true, true, {}, false});
}

void LessonDocument::setUnits(std::optional<Units> units) {
    if (units_ != units) {
        units_ = units;
        Q_EMIT changed({false, false, {}, true});
    }
}

Head LessonDocument::shownHead() const {
    Head head = lesson().head;
    head.units = units();
    return head;
}

QString LessonDocument::nameForFile() const {
    return QString::fromStdString(lesson().head.name).replace(u'/', u'-');
}

void LessonDocument::close() {
    setLesson(emptyLesson());
}

void LessonDocument::setKept(std::optional<bool> kept) {
    const bool before = isModified();
    kept_ = kept;
    if (isModified() != before) {
        Q_EMIT modifiedChanged(!before);
    }
}

void LessonDocument::goOnWith(Lesson lesson, const QString& path) {
    setLesson(std::move(lesson), path);
    undoStack_.resetClean();
}

std::optional<Fault> LessonDocument::load(const QString& path) {
    auto loaded = loadLesson(path.toStdString());
    if (!loaded.ok()) {
        return loaded.error();
    }
    setLesson(std::move(loaded.value()), path);
    return std::nullopt;
}

std::optional<Fault> LessonDocument::save(const QString& path) {
    if (auto fault = saveLesson(path.toStdString(), lesson())) {
        return fault;
    }
    undoStack_.setClean();
    if (path != path_) {
        path_ = path;
        Q_EMIT pathChanged(path_);
    }
    return std::nullopt;
}

}  // namespace rangeline
