// The window as a program of its own that changes its lesson, or answers a question, without a
// hand: for tests that end it. Usage: window_driver LESSON edit|edits|ask|answer:BUTTON

#include <QAbstractButton>
#include <QApplication>
#include <QMessageBox>
#include <QTimer>
#include <algorithm>
#include <cstdio>

#include "document/placing.h"
#include "library/book_desk.h"
#include "window/main_window.h"
#include "window/run_window.h"

namespace rangeline::test {
namespace {

MainWindow* openWindow() {
    for (QWidget* widget : QApplication::topLevelWidgets()) {
        if (auto* window = qobject_cast<MainWindow*>(widget)) {
            return window;
        }
    }
    return nullptr;
}

void say(const char* what) {
    std::puts(what);
    std::fflush(stdout);
}

/// Whether it is done.
bool takeOneOff() {
    MainWindow* window = openWindow();
    if (window == nullptr || window->document().lesson().placements.empty()) {
        return false;
    }
    const PlacementKey key = window->document().lesson().placements.begin()->first;
    window->document().apply(takeAway(window->document().index(), {&key, 1}), "take off");
    say("edited");
    return true;
}

bool leaveAndBeAsked() {
    if (!takeOneOff()) {
        return false;
    }
    QTimer::singleShot(0, openWindow(), [] { openWindow()->close(); });
    QTimer::singleShot(100, openWindow(), [] {
        say(QApplication::activeModalWidget() == nullptr ? "not asked" : "asked");
    });
    return true;
}

/// Opens the first lesson of the book, then edits it and says the number of each edit that is kept,
/// until it is killed. Always false: it goes on.
bool editOn() {
    MainWindow* window = openWindow();
    if (window == nullptr || window->desk().book() == nullptr || !window->desk().isWritable()) {
        return false;
    }
    static int number = 0;
    if (!window->desk().journal().lesson()) {
        const auto& items = window->desk().book()->items();
        const auto lesson = std::ranges::find(items, ItemKind::Lesson, &Item::kind);
        if (number++ == 0) {
            window->desk().openLesson(lesson->id);
        }
        return false;
    }
    Head head = window->document().lesson().head;
    head.name = std::to_string(++number);
    window->document().apply(SetHead{head}, "rename");
    window->desk().journal().finish();
    if (window->desk().journal().isKept()) {
        say(head.name.c_str());
    }
    return false;
}

/// Presses the button, then says what is open and ends.
bool answer(const QString& button) {
    auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
    if (box == nullptr) {
        return false;
    }
    for (QAbstractButton* each : box->buttons()) {
        if (each->text().remove(u'&') == button) {
            each->click();
        }
    }
    QTimer::singleShot(100, openWindow(), [] {
        const LessonDocument& document = openWindow()->document();
        std::printf("%zu placed, %s\n", document.lesson().placements.size(),
                    document.isModified() ? "not saved" : "saved");
        std::fflush(stdout);
        std::_Exit(0);  // as if killed, so that nothing is asked again
    });
    return true;
}

}  // namespace
}  // namespace rangeline::test

int main(int argc, char** argv) {
    using namespace rangeline::test;
    QApplication application(argc, argv);
    const QString lesson = QString::fromLocal8Bit(argv[1]);
    const QString task = QString::fromLocal8Bit(argv[2]);
    QTimer often;
    often.setInterval(task == u"edits" ? 1 : 20);
    QObject::connect(&often, &QTimer::timeout, &often, [&] {
        const bool done = task == u"edit"    ? takeOneOff()
                          : task == u"ask"   ? leaveAndBeAsked()
                          : task == u"edits" ? editOn()
                                             : answer(task.section(u':', 1));
        if (done) {
            often.stop();
        }
    });
    often.start();
    return rangeline::runWindow(application, lesson);
}
