#pragma once
// The "Arrange" actions: plans the open lesson while a dialog says how far it is, has the plan
// checked, and makes it one step of undo.

#include <QDialog>
#include <QLocale>
#include <optional>

#include "arrange/arrange.h"
#include "document/lesson_document.h"
#include "window/arrange_job.h"
#include "window/progress_graph.h"

class QLabel;
class QPushButton;
class QTimer;

namespace rangeline {

enum class ArrangeScope : std::uint8_t {
    All,    ///< everything that is not pinned
    Shelf,  ///< only what is not placed; all else stays where it is
    Close,  ///< everything that is not pinned, each as little from where it is as can be
};

class Arranger : public QDialog {
    Q_OBJECT

  public:
    Arranger(LessonDocument& document, const QLocale& locale, QWidget* parent = nullptr);

    /// Returns at once; `done` tells the end.
    void start(ArrangeScope scope, const ArrangeOptions& options = {});
    bool running() const { return running_; }
    /// What was last arranged, or was to be.
    ArrangeScope scope() const { return scope_; }

    /// Stops; the best plan so far is taken.
    void reject() override;

  Q_SIGNALS:
    /// What has come of it, as a sentence. `planned`: the lesson has a new plan.
    void done(const QString& text, bool planned);
    /// Proved that there is no plan; after `done`, whose text comes along. With the lesson as it
    /// was to be arranged.
    void notPossible(const rangeline::Lesson& lesson, const QString& text);

  private:
    void showProgress(const ArrangeProgress& progress);
    void take(const ArrangeResult& result);
    /// The open lesson with the pins that the scope asks for.
    Lesson asArranged() const;

    LessonDocument& document_;
    QLocale locale_;
    ArrangeJob job_;
    Lesson begun_;  ///< as it was when arranging began
    ArrangeScope scope_ = ArrangeScope::All;
    bool running_ = false;
    QLabel* text_;
    ProgressGraph* graph_;
    QPushButton* stop_;
    QTimer* showSoon_;  ///< an answer that is there at once needs no dialog
};

/// The lesson with all placed steps pinned. Washes and turning ovens on stay free, since what is
/// added may need them elsewhere.
Lesson withPlacedPinned(Lesson lesson);

}  // namespace rangeline
