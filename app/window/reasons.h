#pragma once
// Why nothing can be arranged, and what would help, below the timeline. What would help can be done
// with one button and taken back like any other change.

#include <QFrame>
#include <QLocale>
#include <memory>

#include "document/lesson_document.h"
#include "window/explain_job.h"

class QBoxLayout;
class QLabel;
class QScrollArea;
class QVBoxLayout;

namespace rangeline {

class Reasons : public QFrame {
    Q_OBJECT

  public:
    Reasons(LessonDocument& document, const QLocale& locale, QWidget* parent = nullptr);
    ~Reasons() override;

    /// Looks for them without holding up the window. `asArranged` is the lesson as it was to be
    /// arranged: the document's own, but for pins; `what` says what has come of that.
    void explain(const Lesson& asArranged, const QString& what);
    /// As it stands there.
    QString title() const;
    /// Stops looking and hides. So does every change of the lesson.
    void putAway();

  Q_SIGNALS:
    /// One of the changes was made, so that there is a plan now.
    void made();
    /// It could not be made; a sentence.
    void refused(const QString& text);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    struct Subject;

    void showExplanation(const Explanation& explanation);
    void showRemedies(const std::vector<Remedy>& remedies);
    void addRemedy(const Remedy& remedy);
    static void addLine(QVBoxLayout& column, const QString& text);
    void fitHeight();
    void make(const Remedy& remedy);
    /// The change as it is for the document's lesson, whose pins it leaves alone.
    Edit withOwnPins(Edit edit) const;

    LessonDocument& document_;
    QLocale locale_;
    ExplainJob job_;
    std::unique_ptr<Subject> subject_;  ///< the lesson explained
    QLabel* title_;
    QScrollArea* scroll_;
    QBoxLayout* columns_ = nullptr;  ///< the reasons, and what would help
    QVBoxLayout* lines_ = nullptr;
    QVBoxLayout* help_ = nullptr;
};

}  // namespace rangeline
