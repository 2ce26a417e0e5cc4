#include "window/main_window.h"

#include <QCloseEvent>
#include <QDockWidget>
#include <QFileInfo>
#include <QFontMetrics>
#include <QGuiApplication>
#include <QLabel>
#include <QScopedValueRollback>
#include <QScreen>
#include <QSettings>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTabBar>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "inspect/findings_panel.h"
#include "inspect/range_view.h"
#include "inspect/shelf_panel.h"
#include "inspect/step_inspector.h"
#include "library/book_desk.h"
#include "text/gathered_findings.h"
#include "text/quantities.h"
#include "timeline_view/shelf_drag.h"
#include "timeline_view/timeline_view.h"
#include "window/arranger.h"
#include "window/cooking.h"
#include "window/empty_page.h"
#include "window/notice.h"
#include "window/reasons.h"

namespace rangeline {
namespace {

constexpr double usualLimit = 60;  // seconds of arranging
const QString geometryKey = QStringLiteral("window/geometry");
const QString stateKey = QStringLiteral("window/state");

int groupOf(const PlacementKey& key) {
    if (const auto* step = std::get_if<StepKey>(&key)) {
        return step->group;
    }
    if (const auto* wash = std::get_if<WashKey>(&key)) {
        return wash->after.group;
    }
    return std::get<TurnOnKey>(key).group;
}

}  // namespace

MainWindow::MainWindow(const QLocale& locale, QWidget* parent)
    : QMainWindow(parent),
      locale_(locale),
      units_(locale),
      document_(),
      actions_(*this),
      files_(document_, *this) {
    document_.setUnits(units_.units());
    setLocale(locale);
    setObjectName(QStringLiteral("lesson"));
    actions_.fillMenus(*this);
    actions_.fillToolBar(*this);
    actions_.drawIcons(palette());
    buildCentre();
    buildBook();
    buildDocks();
    counts_ = new QLabel(this);
    statusBar()->addPermanentWidget(counts_);
    arranger_ = new Arranger(document_, locale_, this);
    connectActions();
    connectEditing();
    connectArranging();
    connectReasons();
    connectPanels();
    restoreLayout();
    lessonOpened(false);
}

MainWindow::~MainWindow() {
    delete cooking_;  // while there still is a clock
    // They go after the window's own part and say so on their way.
    for (QDockWidget* dock : {shelfDock_, rangeDock_, findingsDock_, inspectorDock_}) {
        dock->disconnect(this);
    }
}

// ---- building ----

void MainWindow::buildCentre() {
    pages_ = new QStackedWidget(this);
    empty_ = new EmptyPage(pages_);
    auto* lesson = new QWidget(pages_);
    auto* column = new QVBoxLayout(lesson);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    notice_ = new Notice(lesson);
    timeline_ = new TimelineView(document_, lesson);
    reasons_ = new Reasons(document_, locale_, lesson);
    // What is said comes below, so that the timeline stays where it is looked at.
    column->addWidget(timeline_, 1);
    column->addWidget(reasons_);
    column->addWidget(notice_);
    pages_->addWidget(empty_);
    pages_->addWidget(lesson);
}

QDockWidget* MainWindow::addDock(Qt::DockWidgetArea area, const QString& name, const QString& title,
                                 QWidget* panel) {
    auto* dock = new QDockWidget(title, this);
    dock->setObjectName(name);
    dock->setWidget(panel);
    dock->setFeatures(QDockWidget::DockWidgetMovable | QDockWidget::DockWidgetClosable);
    addDockWidget(area, dock);
    actions_.view->addAction(dock->toggleViewAction());
    return dock;
}

void MainWindow::buildDocks() {
    shelf_ = new ShelfPanel(document_, locale_, makeShelfDrag, this);
    range_ = new RangeView(document_, locale_, this);
    inspector_ = new StepInspector(document_, locale_, this);
    findings_ = new FindingsPanel(document_, locale_, this);
    shelfDock_ = addDock(Qt::LeftDockWidgetArea, QStringLiteral("shelf"), tr("Shelf"), shelf_);
    rangeDock_ =
        addDock(Qt::LeftDockWidgetArea, QStringLiteral("range"), tr("On the range"), range_);
    findingsDock_ =
        addDock(Qt::RightDockWidgetArea, QStringLiteral("findings"), tr("Findings"), findings_);
    inspectorDock_ =
        addDock(Qt::RightDockWidgetArea, QStringLiteral("step"), tr("Chosen step"), inspector_);
    timeline_->setShelf(shelf_);
    setTabPosition(Qt::AllDockWidgetAreas, QTabWidget::North);
    for (QDockWidget* dock : {shelfDock_, rangeDock_, findingsDock_, inspectorDock_}) {
        connect(dock, &QDockWidget::visibilityChanged, this, &MainWindow::titleDocks);
        connect(dock, &QDockWidget::dockLocationChanged, this, &MainWindow::titleDocks);
    }
    setCorner(Qt::BottomLeftCorner, Qt::LeftDockWidgetArea);
    setCorner(Qt::BottomRightCorner, Qt::RightDockWidgetArea);
}

/// A tab is title enough.
void MainWindow::titleDocks() {
    for (QDockWidget* dock : {shelfDock_, rangeDock_, findingsDock_, inspectorDock_}) {
        const bool tabbed = !tabifiedDockWidgets(dock).isEmpty();
        QWidget* bar = dock->titleBarWidget();
        if (tabbed && bar == nullptr) {
            dock->setTitleBarWidget(new QWidget(dock));
        } else if (!tabbed && bar != nullptr) {
            dock->setTitleBarWidget(nullptr);
            delete bar;
        }
    }
}

/// On a low screen the two panels at the right share their place.
void MainWindow::layOutDocks() {
    constexpr int highEnough = 820;
    if (height() < highEnough) {
        tabifyDockWidget(findingsDock_, inspectorDock_);
        findingsDock_->raise();
    }
    const int side = std::clamp(width() / 5, 210, 380);
    resizeDocks({shelfDock_, findingsDock_}, {side, side + 40}, Qt::Horizontal);
    // The picture of the range is of use all the time, the shelf only while something lies on it.
    const int shelf = shelf_->count() > 0 ? 2 : 1;  // fifths
    resizeDocks({shelfDock_, rangeDock_}, {shelf * height() / 5, (5 - shelf) * height() / 5},
                Qt::Vertical);
    if (height() >= highEnough) {
        resizeDocks({findingsDock_, inspectorDock_}, {height() / 2, height() / 2}, Qt::Vertical);
    }
}

void MainWindow::restoreLayout() {
    const QSettings settings;
    constexpr QSize most(1680, 1050);
    if (!restoreGeometry(settings.value(geometryKey).toByteArray())) {
        const QSize room = screen()->availableGeometry().size();
        resize(QSize(room.width() - 40, room.height() - 60).boundedTo(most));
    }
    layOutDocksFirst_ = !restoreState(settings.value(stateKey).toByteArray());
}

// ---- connections ----

void MainWindow::connectActions() {
    connect(actions_.open, &QAction::triggered, this, [this] {
        if (!mayLeave()) {
            return;
        }
        if (const QString path = files_.ask(); !path.isEmpty()) {
            openFile(path);
        }
    });
    const auto openPath = [this](const QString& path) {
        if (mayLeave()) {
            openFile(path);
        }
    };
    connect(empty_, &EmptyPage::openWanted, actions_.open, &QAction::trigger);
    connect(empty_, &EmptyPage::fileWanted, this, openPath);
    connect(actions_.recent, &QMenu::aboutToShow, this, &MainWindow::fillRecent);
    connect(actions_.recent, &QMenu::triggered, this, [this, openPath](const QAction* action) {
        action->data().isValid() ? openPath(action->data().toString()) : files_.recent().clear();
    });
    connect(actions_.copyOut, &QAction::triggered, &files_, &LessonFiles::copyOut);
    connect(&files_, &LessonFiles::said, this,
            [this](const QString& text) { statusBar()->showMessage(text, 5000); });
    connect(actions_.print, &QAction::triggered, this, &MainWindow::print);
    connect(actions_.exportLesson, &QAction::triggered, this, &MainWindow::exportToOther);
    connect(actions_.rehearse, &QAction::triggered, this, &MainWindow::rehearse);
    connect(actions_.leave, &QAction::triggered, this, &QWidget::close);
    connect(actions_.firstSteps, &QAction::triggered, this,
            [this] { showHelp(HelpDialog::Page::FirstSteps); });
    connect(actions_.keys, &QAction::triggered, this,
            [this] { showHelp(HelpDialog::Page::KeysAndMouse); });
    connect(actions_.looks, &QAction::triggered, this,
            [this] { showHelp(HelpDialog::Page::Looks); });
    connect(actions_.about, &QAction::triggered, this, &MainWindow::showAbout);
    units_.connectTo(*actions_.usUnits, *actions_.metricUnits);
    connect(&units_, &ChosenUnits::changed, &document_, &LessonDocument::setUnits);
    connect(&document_, &LessonDocument::changed, this, &MainWindow::lessonChanged);
    connect(&document_, &LessonDocument::modifiedChanged, this, &MainWindow::showTitle);
    connect(&document_, &LessonDocument::pathChanged, this, &MainWindow::showTitle);
}

void MainWindow::connectEditing() {
    QUndoStack& undo = document_.undoStack();
    connect(actions_.undo, &QAction::triggered, &undo, &QUndoStack::undo);
    connect(actions_.redo, &QAction::triggered, &undo, &QUndoStack::redo);
    connect(&undo, &QUndoStack::canUndoChanged, actions_.undo, &QAction::setEnabled);
    connect(&undo, &QUndoStack::canRedoChanged, actions_.redo, &QAction::setEnabled);
    connect(&undo, &QUndoStack::undoTextChanged, this, [this](const QString& what) {
        actions_.undo->setText(what.isEmpty() ? tr("&Undo") : tr("&Undo: %1").arg(what));
    });
    connect(&undo, &QUndoStack::redoTextChanged, this, [this](const QString& what) {
        actions_.redo->setText(what.isEmpty() ? tr("&Redo") : tr("&Redo: %1").arg(what));
    });
    actions_.undo->setEnabled(false);
    actions_.redo->setEnabled(false);
    connect(actions_.head, &QAction::triggered, this, &MainWindow::editHead);
    connect(actions_.pickUp, &QAction::triggered, timeline_, &TimelineView::pickUpSelected);
    connect(actions_.pin, &QAction::triggered, timeline_, &TimelineView::togglePinOfSelected);
    connect(actions_.earlier, &QAction::triggered, timeline_, &TimelineView::nudgeEarlier);
    connect(actions_.later, &QAction::triggered, timeline_, &TimelineView::nudgeLater);
    connect(actions_.toShelf, &QAction::triggered, timeline_, &TimelineView::removeSelected);
    connect(actions_.closer, &QAction::triggered, timeline_, &TimelineView::zoomIn);
    connect(actions_.wider, &QAction::triggered, timeline_, &TimelineView::zoomOut);
    connect(actions_.fit, &QAction::triggered, timeline_, &TimelineView::zoomToFit);
    connect(actions_.onlyUsed, &QAction::toggled, timeline_, &TimelineView::setOnlyUsedLanes);
}

void MainWindow::connectArranging() {
    const auto start = [this](ArrangeScope scope) {
        ArrangeOptions options;
        options.secondsLimit = usualLimit;
        notice_->say({});
        reasons_->putAway();
        arranger_->start(scope, options);
    };
    connect(actions_.arrange, &QAction::triggered, this, [start] { start(ArrangeScope::All); });
    connect(reasons_, &Reasons::made, this, [this, start] { start(arranger_->scope()); });
    connect(actions_.arrangeShelf, &QAction::triggered, this,
            [start] { start(ArrangeScope::Shelf); });
    connect(actions_.arrangeClose, &QAction::triggered, this,
            [start] { start(ArrangeScope::Close); });
    // What was said of a plan is no longer so after another edit.
    connect(&document_.undoStack(), &QUndoStack::indexChanged, this, [this] { notice_->say({}); });
    connect(arranger_, &Arranger::done, this, [this](const QString& text, bool planned) {
        notice_->say(text);
        if (planned) {
            timeline_->zoomToFit();
        }
    });
}

void MainWindow::connectReasons() {
    connect(arranger_, &Arranger::notPossible, this,
            [this](const Lesson& lesson, const QString& text) {
                notice_->say({});  // it is said where the reasons are given
                reasons_->explain(lesson, text);
            });
    connect(reasons_, &Reasons::refused, notice_, &Notice::say);
}

QString MainWindow::fittedToStatus(const QString& text) const {
    int room = statusBar()->width();
    for (const QLabel* label : {counts_, kept_}) {
        room = label->isVisible() ? std::min(room, label->x()) : room;
    }
    // A long name gives way: what is said of it stands at the end.
    const QFontMetrics metrics = statusBar()->fontMetrics();
    return metrics.elidedText(text, Qt::ElideMiddle, room - 2 * metrics.averageCharWidth());
}

void MainWindow::connectPanels() {
    const auto refused = [this](const QString& why) { notice_->say(why); };
    connect(timeline_, &TimelineView::selectionChanged, this, &MainWindow::selectionChanged);
    connect(timeline_, &TimelineView::timeHovered, this, &MainWindow::showTime);
    connect(timeline_, &TimelineView::statusChanged, this,
            [this](const QString& text) { statusBar()->showMessage(fittedToStatus(text)); });
    connect(range_, &RangeView::stepChosen, timeline_,
            [this](const PlacementKey& key) { timeline_->reveal(key); });
    const auto pickUp = [this](const std::vector<StepKey>& steps) {
        timeline_->pickUp(steps);
        timeline_->setFocus();
    };
    connect(shelf_, &ShelfPanel::pickedUp, this, pickUp);
    connect(shelf_, &ShelfPanel::stepChosen, inspector_,
            [this](const PlacementKey& key) { inspector_->setKey(key); });
    connect(inspector_, &StepInspector::refused, this, refused);
    connect(inspector_, &StepInspector::placeWanted, this, [pickUp](const PlacementKey& key) {
        if (const auto* step = std::get_if<StepKey>(&key)) {
            pickUp({*step});
        }
    });
    connect(findings_, &FindingsPanel::refused, this, refused);
    connect(findings_, &FindingsPanel::previewed, timeline_,
            [this](const SetPlacements& edit) { timeline_->showPreview(edit); });
    connect(findings_, &FindingsPanel::placeWanted, this, &MainWindow::showPlace);
    connect(findings_, &FindingsPanel::arrangeWanted, actions_.arrangeShelf, &QAction::trigger);
}

void MainWindow::fillRecent() {
    actions_.recent->clear();
    const QStringList paths = files_.recent().list();
    for (const QString& path : paths) {
        const QString name = QFileInfo(path).fileName();
        QAction* action = actions_.recent->addAction(name);
        action->setData(path);
        action->setStatusTip(path);
        action->setEnabled(QFileInfo::exists(path));
    }
    if (!paths.isEmpty()) {
        actions_.recent->addSeparator();
    }
    actions_.recent->addAction(tr("&Forget them"))->setEnabled(!paths.isEmpty());
}

// ---- what happens ----

bool MainWindow::openFile(const QString& path) {
    // A look into a file of which this process has locks would drop them.
    if (desk_->isOpen(path) || Book::isBook(nameOnDisk(path))) {
        return desk_->openBook(path);
    }
    const bool opened = files_.openFile(path);
    if (opened) {
        lessonOpened(true);
        if (desk_->book() != nullptr) {
            desk_->copyIntoBook();
        }
    }
    return opened;
}

void MainWindow::goOnWith(Lesson lesson, const QString& path) {
    document_.goOnWith(std::move(lesson), path);
    lessonOpened(true);
}

void MainWindow::say(const QString& text) {
    notice_->say(text);
}

void MainWindow::lessonOpened(bool opened) {
    pages_->setCurrentIndex(opened ? 1 : 0);
    actions_.setLessonOpen(opened);
    actions_.undo->setEnabled(opened && document_.undoStack().canUndo());
    actions_.redo->setEnabled(opened && document_.undoStack().canRedo());
    showKept();
    empty_->setRecent(files_.recent().list());
    notice_->say({});
    for (QDockWidget* dock : {shelfDock_, rangeDock_, findingsDock_, inspectorDock_}) {
        dock->setVisible(opened);
        dock->toggleViewAction()->setEnabled(opened);
    }
    for (QTabBar* tabs : findChildren<QTabBar*>()) {
        tabs->setAccessibleName(tr("Panels"));
    }
    if (opened && std::exchange(layOutDocksFirst_, false)) {
        layOutDocks();
    }
    if (opened) {
        findingsDock_->raise();
        timeline_->zoomToFit();
        timeline_->setFocus();
    }
    showTitle();
    showCounts();
}

void MainWindow::lessonChanged(const LessonChange& change) {
    if (change.all) {
        group_ = 0;
    }
    showTitle();
    showCounts();
}

void MainWindow::showTitle() {
    const QString name = QString::fromStdString(document_.lesson().head.name);
    setWindowTitle(name.isEmpty() ? tr("Rangeline") : tr("%1[*] – Rangeline").arg(name));
    setWindowModified(document_.isModified());
    setWindowFilePath(document_.path());
}

void MainWindow::showCounts() {
    const bool any = pages_->currentIndex() == 1;
    const std::vector<GatheredFinding> rows = gathered(document_.findings());
    const auto count = [&rows](Severity severity) {
        return static_cast<int>(std::ranges::count_if(rows, [severity](const GatheredFinding& row) {
            return row.shown.severity == severity;
        }));
    };
    const Clock clock(document_.text(locale_));
    QStringList parts{tr("Served at %1").arg(clock.at(Instant::serving()))};
    if (const auto open =
            std::ranges::count(document_.findings(), Severity::Open, &Finding::severity)) {
        parts << tr("%1 to place").arg(open);
    }
    parts << (count(Severity::Collision) == 1 ? tr("1 collision")
                                              : tr("%1 collisions").arg(count(Severity::Collision)))
          << tr("%1 late").arg(count(Severity::Late))
          << tr("%1 to mind").arg(count(Severity::Caution));
    counts_->setText(any ? parts.join(QStringLiteral("   |   ")) : QString());
}

void MainWindow::selectionChanged() {
    const auto& selection = timeline_->selection();
    if (selection.empty()) {
        inspector_->setKey(std::nullopt);
        return;
    }
    inspector_->setKey(selection.front());
    group_ = groupOf(selection.front());
    const auto& placements = document_.lesson().placements;
    if (const auto placed = placements.find(selection.front()); placed != placements.end()) {
        showTime(placed->second.start);
    }
    if (!jumping_) {
        inspectorDock_->raise();
    }
}

void MainWindow::showPlace(const Finding& finding) {
    const QScopedValueRollback jumping(jumping_, true);
    const auto placed = [this](const PlacementKey& key) {
        return document_.lesson().placements.contains(key);
    };
    const auto first = std::ranges::find_if(finding.keys, placed);
    if (first != finding.keys.end()) {
        timeline_->reveal(*first);
    } else if (!finding.keys.empty()) {
        inspector_->setKey(finding.keys.front());
    }
    if (!finding.interval.empty()) {
        timeline_->reveal(finding.interval, finding.equipment);
        showTime(finding.interval.begin);
    }
}

void MainWindow::showTime(Instant at) {
    range_->show(at, group_);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!mayLeave()) {
        event->ignore();
        return;
    }
    QSettings settings;
    settings.setValue(geometryKey, saveGeometry());
    settings.setValue(stateKey, saveState());
    event->accept();
    Q_EMIT left();
}

void MainWindow::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange) {
        actions_.drawIcons(palette());
    }
    QMainWindow::changeEvent(event);
}

}  // namespace rangeline
