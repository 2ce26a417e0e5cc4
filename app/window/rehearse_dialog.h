#pragma once

#include <QDialog>
#include <QLabel>
#include <QLocale>
#include <QProgressBar>
#include <QPushButton>
#include <QTabWidget>
#include <QTreeWidget>

#include "document/lesson_document.h"
#include "window/rehearse_job.h"

namespace rangeline {

/// How likely plating is on time when steps take shorter or longer than planned, which of them
/// decide it, what suffers, and which one change would help most. Stays beside the timeline; of a
/// lesson that has changed it says so.
class RehearseDialog : public QDialog {
    Q_OBJECT

  public:
    /// Rehearses at once. Requires a lesson whose steps are placed; the document outlives it.
    RehearseDialog(LessonDocument& document, const QLocale& locale, QWidget* parent = nullptr);

    bool isBusy() const { return busy_; }

  Q_SIGNALS:
    /// What came of it; null once that is no longer true of the lesson, or the dialog closes.
    void rehearsed(std::shared_ptr<const rangeline::Rehearsed> done);

  public Q_SLOTS:
    void done(int result) override;

  private:
    QWidget* makeTop();
    QWidget* makeBottom();
    QTreeWidget* addTable(const QString& title, const QString& name, const QStringList& heads,
                          const QString& nothing);
    void makeTables();
    void begin();
    void tryChanges();
    void setBusy(bool busy);
    void showOutcome(const std::shared_ptr<const Rehearsed>& done);
    void showChanges(const std::shared_ptr<const Rehearsed>& done);
    bool mayBegin() const;
    void lessonChanged(const LessonChange& change);

    LessonDocument& document_;
    QLocale locale_;
    RehearseJob* job_;
    QLabel* chance_ = nullptr;
    QLabel* spread_ = nullptr;
    QLabel* earlier_ = nullptr;
    QLabel* helps_ = nullptr;
    QTabWidget* pages_ = nullptr;
    QTreeWidget* deciding_ = nullptr;
    QTreeWidget* food_ = nullptr;
    QTreeWidget* hands_ = nullptr;
    QTreeWidget* changes_ = nullptr;
    QProgressBar* progress_ = nullptr;
    QPushButton* stop_ = nullptr;
    QPushButton* again_ = nullptr;
    QPushButton* try_ = nullptr;
    bool busy_ = false;
};

}  // namespace rangeline
