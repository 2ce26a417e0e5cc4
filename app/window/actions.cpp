#include "window/actions.h"

#include <QCoreApplication>
#include <QMenuBar>
#include <QToolBar>
#include <QToolButton>

#include "window/icons.h"

namespace rangeline {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Actions", text);
}

QAction* make(QMainWindow& window, const QString& text, const QString& tip,
              const QKeySequence& keys = {}) {
    auto* action = new QAction(text, &window);
    action->setStatusTip(tip);
    const QString shown = keys.toString(QKeySequence::NativeText);
    action->setToolTip(shown.isEmpty() ? tip : tr("%1 (%2)").arg(tip, shown));
    action->setShortcut(keys);
    return action;
}

}  // namespace

Actions::Actions(QMainWindow& window)
    : library(make(window, tr("Show the &book"), tr("Lessons, dishes and kitchens of the book"),
                   QKeySequence(Qt::CTRL | Qt::Key_B))),
      newLesson(make(window, tr("&New lesson ..."),
                     tr("Make a lesson of dishes and a kitchen of the book"), QKeySequence::New)),
      open(make(window, tr("&Open ..."), tr("Open a book, or a lesson from a file"),
                QKeySequence::Open)),
      samples(make(window, tr("Open the book of &samples"), tr("Lessons to look at and to try"))),
      newBook(make(window, tr("New &empty book ..."), tr("Begin another book"))),
      bookCopy(make(window, tr("Save a cop&y of the book ..."),
                    tr("Copy the whole book to another file"))),
      versions(make(window, tr("&Versions of the lesson ..."),
                    tr("Keep the lesson as it is under a name, compare, go back"),
                    QKeySequence::Save)),
      copyIn(make(window, tr("Copy the lesson &into the book"),
                  tr("Keep the lesson in the book, with its kitchen and its dishes"))),
      copyOut(make(window, tr("Copy the lesson out &to a file ..."),
                   tr("Write the lesson to a file of its own, to pass on"),
                   QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S))),
      print(make(window, tr("&Print to PDF ..."), tr("Print the station timeline to a PDF"),
                 QKeySequence::Print)),
      leave(make(window, tr("&Close the window"), tr("Leave Rangeline"), QKeySequence::Quit)),
      undo(make(window, tr("&Undo"), tr("Take the last change back"), QKeySequence::Undo)),
      redo(make(window, tr("&Redo"), tr("Make the change again"), QKeySequence::Redo)),
      head(make(window, tr("About this &lesson ..."), tr("Covers, serving time, crew, units"),
                QKeySequence(Qt::CTRL | Qt::Key_L))),
      pickUp(make(window, tr("Take in &hand"),
                  tr("Take the chosen step in hand, to put it elsewhere"), Qt::Key_Return)),
      pin(make(window, tr("&Pin or unpin"), tr("Pin the chosen steps, or take the pin off"),
               Qt::Key_P)),
      earlier(make(window, tr("&Earlier"), tr("Move the chosen steps earlier"),
                   QKeySequence(Qt::CTRL | Qt::Key_Left))),
      later(make(window, tr("La&ter"), tr("Move the chosen steps later"),
                 QKeySequence(Qt::CTRL | Qt::Key_Right))),
      toShelf(make(window, tr("Back to the &shelf"), tr("Take the chosen steps off the timeline"),
                   Qt::Key_Delete)),
      arrange(make(window, tr("&Arrange all"), tr("Arrange everything that is not pinned"),
                   QKeySequence(Qt::Key_F5))),
      arrangeShelf(make(window, tr("Arrange the shel&f only"),
                        tr("Find places for what is on the shelf; all else stays"),
                        QKeySequence(Qt::SHIFT | Qt::Key_F5))),
      arrangeClose(make(window, tr("Arrange &moving little"),
                        tr("Mend the plan and leave everything as near to where it is as can be"),
                        QKeySequence(Qt::CTRL | Qt::Key_F5))),
      closer(make(window, tr("&Closer"), tr("See less time, larger"), QKeySequence::ZoomIn)),
      wider(make(window, tr("&Wider"), tr("See more time, smaller"), QKeySequence::ZoomOut)),
      fit(make(window, tr("Whole &lesson"), tr("See the whole lesson"),
               QKeySequence(Qt::CTRL | Qt::Key_0))),
      onlyUsed(make(window, tr("Only lanes in &use"), tr("Hide equipment that nothing uses"))),
      firstSteps(
          make(window, tr("&First steps"), tr("What to do first"), QKeySequence::HelpContents)),
      keys(make(window, tr("&Keys and mouse"), tr("What keys and mouse do"))),
      about(make(window, tr("&About Rangeline"), tr("What this program is"))) {
    onlyUsed->setCheckable(true);
    // Keys of the timeline, where they belong to what is chosen there, not of the fields beside it.
    for (QAction* action : ofTimeline()) {
        action->setShortcutContext(Qt::WidgetShortcut);
    }
}

std::vector<QAction*> Actions::ofTimeline() const {
    return {pickUp, pin, earlier, later, toShelf};
}

void Actions::fillBookMenu(QMenu& menu) {
    menu.addActions({library, newLesson});
    menu.addSeparator();
    menu.addAction(open);
    recent = menu.addMenu(tr("Opened &lately"));
    menu.addActions({samples, newBook, bookCopy});
    menu.addSeparator();
    menu.addActions({versions, copyIn, copyOut, print});
    menu.addSeparator();
    menu.addAction(leave);
}

void Actions::fillEditMenu(QMenu& menu) {
    menu.addActions({undo, redo});
    menu.addSeparator();
    menu.addActions({pickUp, earlier, later, pin, toShelf});
    menu.addSeparator();
    menu.addAction(head);
}

void Actions::fillMenus(QMainWindow& window) {
    fillBookMenu(*window.menuBar()->addMenu(tr("&Book")));
    fillEditMenu(*window.menuBar()->addMenu(tr("&Change")));
    window.menuBar()->addMenu(tr("&Arrange"))->addActions({arrange, arrangeShelf, arrangeClose});
    view = window.menuBar()->addMenu(tr("&Show"));
    view->addActions({closer, wider, fit, onlyUsed});
    view->addSeparator();
    window.menuBar()->addMenu(tr("&Help"))->addActions({firstSteps, keys, about});
}

void Actions::fillToolBar(QMainWindow& window) {
    QToolBar* bar = window.addToolBar(tr("Tools"));
    bar->setObjectName(QStringLiteral("tools"));
    bar->setMovable(false);
    bar->setContextMenuPolicy(Qt::PreventContextMenu);
    bar->addActions({library, newLesson, open, print});
    bar->addSeparator();
    bar->addActions({undo, redo});
    bar->addSeparator();
    bar->addActions({head, arrange});
    bar->addSeparator();
    bar->addActions({pin, closer, wider, fit});
    for (QAction* action : bar->actions()) {
        if (QWidget* button = bar->widgetForAction(action); !action->isSeparator()) {
            button->setFocusPolicy(Qt::TabFocus);
            button->setAccessibleName(action->text().remove(u'&').remove(QStringLiteral(" ...")));
        }
    }
    // The one word in the bar: what the program is there for.
    if (auto* button = qobject_cast<QToolButton*>(bar->widgetForAction(arrange))) {
        button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    }
}

void Actions::drawIcons(const QPalette& palette) {
    const std::pair<QAction*, const char*> icons[] = {
        {library, "book"}, {newLesson, "new"}, {open, "open"},   {print, "print"},
        {undo, "undo"},    {redo, "redo"},     {head, "lesson"}, {arrange, "arrange"},
        {pin, "pin"},      {closer, "closer"}, {wider, "wider"}, {fit, "fit"}};
    for (const auto& [action, name] : icons) {
        action->setIcon(makeIcon(QString::fromLatin1(name), palette));
    }
}

void Actions::setLessonOpen(bool lessonOpen) {
    for (QAction* action : {copyOut, print, head, arrange, arrangeShelf, arrangeClose, closer,
                            wider, fit, onlyUsed, pickUp, pin, earlier, later, toShelf}) {
        action->setEnabled(lessonOpen);
    }
}

}  // namespace rangeline
