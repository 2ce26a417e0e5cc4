#pragma once
// The window: the timeline in the middle, the shelf and the range at its left, the chosen step and
// the findings at its right. It only connects; what is shown lives in the panels.

#include <QLocale>
#include <QMainWindow>

#include "book/items.h"
#include "document/lesson_document.h"
#include "live/clock.h"
#include "window/actions.h"
#include "window/chosen_units.h"
#include "window/help_dialog.h"
#include "window/lesson_files.h"

class QDockWidget;
class QLabel;
class QStackedWidget;

namespace rangeline {

class Arranger;
class BookDesk;
class ChangeOffer;
class Cooking;
class EmptyPage;
class FindingsPanel;
class LibraryPage;
class Notice;
class Reasons;
class RangeView;
class ShelfPanel;
class StepInspector;
class TimelineView;

class MainWindow : public QMainWindow {
    Q_OBJECT

  public:
    explicit MainWindow(const QLocale& locale, QWidget* parent = nullptr);
    ~MainWindow() override;

    LessonDocument& document() { return document_; }
    Actions& actions() { return actions_; }
    TimelineView& timeline() { return *timeline_; }
    LessonFiles& files() { return files_; }
    BookDesk& desk() { return *desk_; }
    Cooking& cooking() { return *cooking_; }
    /// On a fault says why and stays as it is.
    bool openFile(const QString& path);
    /// The lesson of the open book that has that name, or the number that "#12" names; where there
    /// is not just one, says so.
    void openLessonNamed(const QString& name);
    /// The book opened last, or that of the samples.
    void openUsual();
    /// Shows a lesson that has changes its file does not have yet; an empty path: it has no file.
    void goOnWith(Lesson lesson, const QString& path);
    /// A sentence below the timeline that stays until it is put away.
    void say(const QString& text);

  Q_SIGNALS:
    /// The window closes; what was not saved is given up.
    void left();

  protected:
    void closeEvent(QCloseEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void buildCentre();
    void buildDocks();
    QDockWidget* addDock(Qt::DockWidgetArea area, const QString& name, const QString& title,
                         QWidget* panel);
    void layOutDocks();
    void titleDocks();
    void restoreLayout();
    void connectActions();
    void connectEditing();
    void connectArranging();
    void connectReasons();
    void connectPanels();
    QString fittedToStatus(const QString& text) const;
    void fillRecent();

    void buildBook();
    void connectBook();
    void showLibrary();
    void showBookLesson();
    /// From the lesson to the book and back.
    void turnBook();
    void makeLesson();
    void showVersions();
    void typeClassTimes();
    void openLesson(ItemId lesson);
    bool mayLeave();
    void showKept();

    void lessonOpened(bool opened);
    void lessonChanged(const LessonChange& change);
    void showTitle();
    void showCounts();
    void selectionChanged();
    void showPlace(const Finding& finding);
    void showTime(Instant at);
    void editHead();
    void print();
    void exportToOther();
    void rehearse();
    void showHelp(HelpDialog::Page page);
    void showAbout();

    QLocale locale_;
    ChosenUnits units_;
    LessonDocument document_;
    Actions actions_;
    LessonFiles files_;
    QStackedWidget* pages_ = nullptr;
    EmptyPage* empty_ = nullptr;
    Notice* notice_ = nullptr;
    Reasons* reasons_ = nullptr;
    TimelineView* timeline_ = nullptr;
    ShelfPanel* shelf_ = nullptr;
    RangeView* range_ = nullptr;
    StepInspector* inspector_ = nullptr;
    FindingsPanel* findings_ = nullptr;
    Arranger* arranger_ = nullptr;
    QDockWidget* shelfDock_ = nullptr;
    QDockWidget* rangeDock_ = nullptr;
    QDockWidget* inspectorDock_ = nullptr;
    QDockWidget* findingsDock_ = nullptr;
    bool layOutDocksFirst_ = false;  ///< once they can be seen
    QLabel* counts_ = nullptr;
    QLabel* kept_ = nullptr;
    BookDesk* desk_ = nullptr;
    LibraryPage* library_ = nullptr;
    ChangeOffer* offer_ = nullptr;
    Cooking* cooking_ = nullptr;
    live::SystemClock clock_;
    int group_ = 0;               ///< whose range is shown
    bool jumping_ = false;        ///< the selection follows the findings
    HelpDialog* help_ = nullptr;  ///< made when it is first asked for
};

}  // namespace rangeline
