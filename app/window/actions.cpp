#include "window/actions.h"

#include <QCoreApplication>
#include <QMenuBar>
#include <QToolBar>
#include <QToolButton>

#include "window/icons.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Actions)
};

QAction* make(QMainWindow& window, const QString& text, const QString& tip,
              const QKeySequence& keys = {}) {
    auto* action = new QAction(text, &window);
    action->setStatusTip(tip);
    const QString shown = keys.toString(QKeySequence::NativeText);
    action->setToolTip(shown.isEmpty() ? tip : Text::tr("%1 (%2)").arg(tip, shown));
    action->setShortcut(keys);
    return action;
}

}  // namespace

Actions::Actions(QMainWindow& window)
    : showBook(make(window, Text::tr("Show the &book"),
                    Text::tr("Lessons, dishes and kitchens of the book"),
                    QKeySequence(Qt::CTRL | Qt::Key_B))),
      newLesson(make(window, Text::tr("&New lesson ..."),
                     Text::tr("Make a lesson of dishes and a kitchen of the book"),
                     QKeySequence::New)),
      writeDish(make(window, Text::tr("Write a &dish ..."),
                     Text::tr("Write a new dish: components, steps, ingredients"))),
      writeKitchen(make(window, Text::tr("Write down a &kitchen ..."),
                        Text::tr("Burners, ovens, pans, places and cooks of a kitchen"))),
      recipe(make(window, Text::tr("&Fetch a recipe ..."),
                  Text::tr("Make a dish of a recipe in a saved web page or a JSON-LD file"))),
      open(make(window, Text::tr("&Open ..."), Text::tr("Open a book, or a lesson from a file"),
                QKeySequence::Open)),
      samples(make(window, Text::tr("Open the book of &samples"),
                   Text::tr("Lessons to look at and to try"))),
      newBook(make(window, Text::tr("New &empty book ..."), Text::tr("Begin another book"))),
      bookCopy(make(window, Text::tr("Save a cop&y of the book ..."),
                    Text::tr("Copy the whole book to another file"))),
      versions(make(window, Text::tr("&Versions of the lesson ..."),
                    Text::tr("Keep the lesson as it is under a name, compare, go back"),
                    QKeySequence::Save)),
      copyIn(make(window, Text::tr("Copy the lesson &into the book"),
                  Text::tr("Keep the lesson in the book, with its kitchen and its dishes"))),
      copyOut(make(window, Text::tr("Copy the lesson out &to a file ..."),
                   Text::tr("Write the lesson to a file of its own, to pass on"),
                   QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S))),
      print(make(window, Text::tr("&Print ..."),
                 Text::tr("Print sheets of the lesson, or save them as PDF"), QKeySequence::Print)),
      exportLesson(make(window, Text::tr("Save fo&r another program ..."),
                        Text::tr("Write a calendar, a table, a picture or a recipe"))),
      classTimes(make(window, Text::tr("Times of a cl&ass ..."),
                      Text::tr("Type in when each step began and ended, for the cooking log"))),
      leave(make(window, Text::tr("&Close the window"), Text::tr("Leave Rangeline"),
                 QKeySequence::Quit)),
      undo(make(window, Text::tr("&Undo"), Text::tr("Take the last change back"),
                QKeySequence::Undo)),
      redo(make(window, Text::tr("&Redo"), Text::tr("Make the change again"), QKeySequence::Redo)),
      head(make(window, Text::tr("About this &lesson ..."),
                Text::tr("Covers, serving time, crew, units"), QKeySequence(Qt::CTRL | Qt::Key_L))),
      pickUp(make(window, Text::tr("Take in &hand"),
                  Text::tr("Take the chosen step in hand, to put it elsewhere"), Qt::Key_Return)),
      pin(make(window, Text::tr("&Pin or unpin"),
               Text::tr("Pin the chosen steps, or take the pin off"), Qt::Key_P)),
      earlier(make(window, Text::tr("&Earlier"), Text::tr("Move the chosen steps earlier"),
                   QKeySequence(Qt::CTRL | Qt::Key_Left))),
      later(make(window, Text::tr("La&ter"), Text::tr("Move the chosen steps later"),
                 QKeySequence(Qt::CTRL | Qt::Key_Right))),
      toShelf(make(window, Text::tr("Back to the &shelf"),
                   Text::tr("Take the chosen steps off the timeline"), Qt::Key_Delete)),
      arrange(make(window, Text::tr("&Arrange all"),
                   Text::tr("Arrange everything that is not pinned"), QKeySequence(Qt::Key_F5))),
      arrangeShelf(make(window, Text::tr("Arrange the shel&f only"),
                        Text::tr("Find places for what is on the shelf; all else stays"),
                        QKeySequence(Qt::SHIFT | Qt::Key_F5))),
      arrangeClose(
          make(window, Text::tr("Arrange &moving little"),
               Text::tr("Mend the plan and leave everything as near to where it is as can be"),
               QKeySequence(Qt::CTRL | Qt::Key_F5))),
      rehearse(make(window, Text::tr("&Rehearse ..."),
                    Text::tr("How likely plating is on time when steps take longer"))),
      cookAlong(make(window, Text::tr("&Cook along ..."),
                     Text::tr("Follow the lesson at the stove: what to do now, timers, alarms"),
                     QKeySequence(Qt::CTRL | Qt::Key_K))),
      closer(make(window, Text::tr("&Closer"), Text::tr("See less time, larger"),
                  QKeySequence::ZoomIn)),
      wider(make(window, Text::tr("&Wider"), Text::tr("See more time, smaller"),
                 QKeySequence::ZoomOut)),
      fit(make(window, Text::tr("Whole &lesson"), Text::tr("See the whole lesson"),
               QKeySequence(Qt::CTRL | Qt::Key_0))),
      onlyUsed(make(window, Text::tr("Only lanes in &use"),
                    Text::tr("Hide equipment that nothing uses"))),
      usUnits(make(window, Text::tr("°&F, inches, cups"),
                   Text::tr("Read and write in US units, whatever a lesson was written in"))),
      metricUnits(
          make(window, Text::tr("°&C, centimetres, grams"),
               Text::tr("Read and write in metric units, whatever a lesson was written in"))),
      firstSteps(make(window, Text::tr("&First steps"), Text::tr("What to do first"),
                      QKeySequence::HelpContents)),
      keys(make(window, Text::tr("&Keys and mouse"), Text::tr("What keys and mouse do"))),
      looks(make(window, Text::tr("&Looks of blocks"),
                 Text::tr("What patterns, frames and marks on the timeline mean"))),
      about(make(window, Text::tr("&About Rangeline"), Text::tr("What this program is"))) {
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
    menu.addActions({showBook, newLesson, writeDish, writeKitchen, recipe});
    menu.addSeparator();
    menu.addAction(open);
    recent = menu.addMenu(Text::tr("Opened &lately"));
    menu.addActions({samples, newBook, bookCopy});
    menu.addSeparator();
    menu.addActions({versions, copyIn, copyOut, print, exportLesson, classTimes});
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
    fillBookMenu(*window.menuBar()->addMenu(Text::tr("&Book")));
    fillEditMenu(*window.menuBar()->addMenu(Text::tr("&Change")));
    window.menuBar()
        ->addMenu(Text::tr("&Arrange"))
        ->addActions({arrange, arrangeShelf, arrangeClose, rehearse, cookAlong});
    view = window.menuBar()->addMenu(Text::tr("&Show"));
    view->addActions({closer, wider, fit, onlyUsed});
    view->addMenu(Text::tr("U&nits"))->addActions({usUnits, metricUnits});
    view->addSeparator();
    window.menuBar()->addMenu(Text::tr("&Help"))->addActions({firstSteps, keys, looks, about});
}

void Actions::fillToolBar(QMainWindow& window) {
    QToolBar* bar = window.addToolBar(Text::tr("Tools"));
    bar->setObjectName(QStringLiteral("tools"));
    bar->setMovable(false);
    bar->setContextMenuPolicy(Qt::PreventContextMenu);
    bar->addActions({showBook, newLesson, open, print});
    bar->addSeparator();
    bar->addActions({undo, redo});
    bar->addSeparator();
    bar->addActions({head, arrange, cookAlong});
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
        {showBook, "book"},  {newLesson, "new"}, {open, "open"},     {print, "print"},
        {undo, "undo"},      {redo, "redo"},     {head, "lesson"},   {arrange, "arrange"},
        {cookAlong, "cook"}, {pin, "pin"},       {closer, "closer"}, {wider, "wider"},
        {fit, "fit"}};
    for (const auto& [action, name] : icons) {
        action->setIcon(makeIcon(QString::fromLatin1(name), palette));
    }
}

void Actions::setLessonOpen(bool lessonOpen) {
    for (QAction* action :
         {copyOut, print, exportLesson, head, arrange, arrangeShelf, arrangeClose, rehearse,
          cookAlong, closer, wider, fit, onlyUsed, pickUp, pin, earlier, later, toShelf}) {
        action->setEnabled(lessonOpen);
    }
}

}  // namespace rangeline
