#pragma once
// The chosen step: when it is, what it uses, how much it can spare and why, and the means to change
// each of these without dragging. Every change is one step of undo.

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QToolButton>
#include <optional>

#include "document/lesson_document.h"
#include "inspect/choice_form.h"
#include "inspect/clock_field.h"

namespace rangeline {

class StepInspector : public QScrollArea {
    Q_OBJECT

  public:
    StepInspector(LessonDocument& document, const QLocale& locale, QWidget* parent = nullptr);

    /// Nothing: no step is chosen.
    void setKey(const std::optional<PlacementKey>& key);
    const std::optional<PlacementKey>& key() const { return key_; }

  Q_SIGNALS:
    /// The change was refused; why, as a sentence.
    void refused(const QString& why);
    /// The step that is not placed yet is to be picked up.
    void placeWanted(const rangeline::PlacementKey& key);

  private:
    void build();
    QWidget* makeStartRow(QWidget* parent);
    QLabel* addLabel(QWidget* parent);
    void renew();
    void showPlaced(int node);
    void showUnplaced(int node);
    void showNothing();
    void showSpare();

    const Placement* placement() const;
    void change(const SetPlacements& edit, const QString& text);
    void moveTo(Instant start);
    void nudge(int grains);
    void readStart();

    LessonDocument& document_;
    QLocale locale_;
    std::optional<PlacementKey> key_;

    QLabel* name_ = nullptr;
    QLabel* about_ = nullptr;
    QLabel* times_ = nullptr;
    QWidget* placedPart_ = nullptr;
    QWidget* startRow_ = nullptr;
    ClockField* start_ = nullptr;
    ChoiceForm* choices_ = nullptr;
    QCheckBox* pinned_ = nullptr;
    QLabel* spare_ = nullptr;
    QLabel* cue_ = nullptr;
    QPushButton* toShelf_ = nullptr;
    QPushButton* place_ = nullptr;
};

}  // namespace rangeline
