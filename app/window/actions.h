#pragma once
// Everything the window's menus and toolbar offer. What the actions do is connected by the window.

#include <QAction>
#include <QMainWindow>
#include <QMenu>
#include <vector>

namespace rangeline {

struct Actions {
    /// Made in the window, without menus.
    explicit Actions(QMainWindow& window);

    QAction* showBook;
    QAction* newLesson;
    QAction* writeDish;
    QAction* writeKitchen;
    QAction* recipe;
    QAction* open;
    QAction* samples;
    QAction* newBook;
    QAction* bookCopy;
    QAction* versions;
    QAction* copyIn;
    QAction* copyOut;
    QAction* print;
    QAction* exportLesson;
    QAction* classTimes;
    QAction* leave;
    QAction* undo;
    QAction* redo;
    QAction* head;
    QAction* pickUp;
    QAction* pin;
    QAction* earlier;
    QAction* later;
    QAction* toShelf;
    QAction* arrange;
    QAction* arrangeShelf;
    QAction* arrangeClose;
    QAction* rehearse;
    QAction* cookAlong;
    QAction* closer;
    QAction* wider;
    QAction* fit;
    QAction* onlyUsed;
    QAction* usUnits;
    QAction* metricUnits;
    QAction* firstSteps;
    QAction* keys;
    QAction* looks;
    QAction* about;

    /// Filled each time it opens.
    QMenu* recent = nullptr;
    QMenu* view = nullptr;

    void fillMenus(QMainWindow& window);
    void fillToolBar(QMainWindow& window);
    /// Draws the icons anew, for another palette.
    void drawIcons(const QPalette& palette);
    /// Those that need an open lesson.
    void setLessonOpen(bool open);

    /// Those whose keys work on the timeline only.
    std::vector<QAction*> ofTimeline() const;

  private:
    void fillBookMenu(QMenu& menu);
    void fillEditMenu(QMenu& menu);
};

}  // namespace rangeline
