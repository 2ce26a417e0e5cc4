// The window's side of the book: its menu, its page and what the status bar says of it.

#include <QFileInfo>
#include <QLabel>
#include <QStackedWidget>
#include <QStatusBar>
#include <QVBoxLayout>

#include "book/library.h"
#include "library/book_bar.h"
#include "library/book_desk.h"
#include "library/change_offer.h"
#include "library/library_page.h"
#include "library/new_lesson_dialog.h"
#include "library/versions_dialog.h"
#include "log/times_dialog.h"
#include "text/fault_text.h"
#include "window/book_writing.h"
#include "window/cooking.h"
#include "window/main_window.h"

namespace rangeline {
namespace {

constexpr int libraryPage = 2;

}  // namespace

void MainWindow::buildBook() {
    desk_ = new BookDesk(document_, *this);
    library_ = new LibraryPage(*desk_, pages_);
    pages_->addWidget(library_);
    auto* centre = new QWidget(this);
    auto* column = new QVBoxLayout(centre);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    offer_ = new ChangeOffer(*desk_, locale_, centre);
    column->addWidget(new BookBar(*desk_, centre));
    column->addWidget(offer_);
    column->addWidget(pages_, 1);
    setCentralWidget(centre);
    kept_ = new QLabel(this);
    constexpr int apart = 14;
    kept_->setContentsMargins(0, 0, apart, 0);
    statusBar()->addPermanentWidget(kept_);
    connectBook();
    cooking_ = new Cooking(document_, *desk_, locale_, clock_, *this);
    connect(cooking_, &Cooking::said, this, &MainWindow::say);
    connect(actions_.cookAlong, &QAction::triggered, cooking_, &Cooking::start);
    connect(
        desk_, &BookDesk::bookOpened, cooking_,
        [this] { cooking_->offer(Cooking::pathBeside(desk_->book()->path())); },
        Qt::QueuedConnection);
}

void MainWindow::connectBook() {
    connect(actions_.showBook, &QAction::triggered, this, &MainWindow::turnBook);
    connect(actions_.samples, &QAction::triggered, this, [this] {
        if (mayLeave()) {
            desk_->openSamples();
        }
    });
    connect(actions_.bookCopy, &QAction::triggered, desk_, &BookDesk::askForCopy);
    connect(actions_.copyIn, &QAction::triggered, desk_, &BookDesk::copyIntoBook);
    connect(desk_, &BookDesk::bookOpened, this, [this] {
        files_.recent().add(desk_->book()->path());
        showLibrary();
    });
    connect(desk_, &BookDesk::lessonOpened, this, &MainWindow::showBookLesson);
    connect(actions_.newLesson, &QAction::triggered, this, &MainWindow::makeLesson);
    auto* writing = new BookWriting(*desk_, locale_, units_, *this);
    connect(actions_.recipe, &QAction::triggered, writing, &BookWriting::fetchRecipe);
    connect(actions_.writeDish, &QAction::triggered, writing, &BookWriting::writeDish);
    connect(actions_.writeKitchen, &QAction::triggered, writing, &BookWriting::writeKitchen);
    connect(library_, &LibraryPage::dishWanted, writing, &BookWriting::changeDish);
    connect(library_, &LibraryPage::kitchenWanted, writing, &BookWriting::changeKitchen);
    connect(library_, &LibraryPage::newWanted, this, [this](ItemKind kind) {
        QAction* action = kind == ItemKind::Lesson ? actions_.newLesson
                          : kind == ItemKind::Dish ? actions_.writeDish
                                                   : actions_.writeKitchen;
        action->trigger();
    });
    connect(actions_.versions, &QAction::triggered, this, &MainWindow::showVersions);
    connect(actions_.classTimes, &QAction::triggered, this, &MainWindow::typeClassTimes);
    connect(actions_.newBook, &QAction::triggered, this, [this] {
        if (mayLeave()) {
            desk_->newBook();
        }
    });
    connect(desk_, &BookDesk::stateChanged, this, &MainWindow::showKept);
    connect(desk_, &BookDesk::said, this,
            [this](const QString& text) { statusBar()->showMessage(text); });
    connect(library_, &LibraryPage::lessonWanted, this, &MainWindow::openLesson);
    connect(library_, &LibraryPage::renameOpenWanted, this, [this](const QString& name) {
        Head head = document_.lesson().head;
        head.name = name.toStdString();
        if (const auto fault = document_.apply(SetHead{head}, tr("rename the lesson"))) {
            say(sentence(*fault));
        }
        desk_->book()->refresh();
    });
}

void MainWindow::turnBook() {
    if (pages_->currentIndex() == libraryPage && desk_->journal().lesson()) {
        showBookLesson();
    } else {
        showLibrary();
    }
}

void MainWindow::openUsual() {
    for (const QString& path : files_.recent().list()) {
        if (path.endsWith(QStringLiteral(".rangeline")) && QFileInfo::exists(path)) {
            desk_->openBook(path);
            return;
        }
    }
    desk_->openSamples();
}

void MainWindow::showLibrary() {
    if (desk_->book() != nullptr) {
        lessonOpened(false);
        pages_->setCurrentIndex(libraryPage);
        showKept();
    }
}

void MainWindow::showBookLesson() {
    lessonOpened(true);
    offer_->look();  // its dishes may have been written on since it was last in view
}

void MainWindow::makeLesson() {
    if (mayLeave()) {
        NewLessonDialog(*desk_, locale_, units_.units(), QDateTime::currentDateTime(), this).exec();
    }
}

void MainWindow::showVersions() {
    VersionsDialog(*desk_, locale_, this).exec();
}

void MainWindow::typeClassTimes() {
    TimesDialog(*desk_, locale_, QDate::currentDate(), this).exec();
}

void MainWindow::openLessonNamed(const QString& name) {
    if (desk_->book() == nullptr) {
        return;
    }
    desk_->book()->ask(
        [name = name.toStdString()](Book& book) { return findItem(book, ItemKind::Lesson, name); },
        [this](const Result<Item, BookFault>& found) {
            if (found.ok()) {
                openLesson(found.value().id);
            } else {
                desk_->sayFault(found.error());
            }
        });
}

void MainWindow::openLesson(ItemId lesson) {
    if (desk_->journal().lesson() == lesson) {
        showBookLesson();
    } else if (mayLeave()) {
        desk_->openLesson(lesson);
    }
}

bool MainWindow::mayLeave() {
    return desk_->journal().lesson() ? desk_->mayLeave() : files_.mayLeave();
}

void MainWindow::showKept() {
    const LessonJournal& journal = desk_->journal();
    const bool inBook = journal.lesson().has_value();
    const bool library = pages_->currentIndex() == libraryPage;
    actions_.showBook->setEnabled(desk_->book() != nullptr);
    actions_.showBook->setText(library && inBook ? tr("&Back to the lesson")
                                                 : tr("Show the &book"));
    actions_.bookCopy->setEnabled(desk_->book() != nullptr);
    actions_.newLesson->setEnabled(desk_->isWritable());
    actions_.recipe->setEnabled(desk_->isWritable());
    actions_.writeDish->setEnabled(desk_->isWritable());
    actions_.writeKitchen->setEnabled(desk_->isWritable());
    actions_.versions->setEnabled(inBook && !library);
    actions_.classTimes->setEnabled(inBook && !library && desk_->isWritable());
    if (library) {
        offer_->hide();
    }
    actions_.copyIn->setEnabled(desk_->book() != nullptr && !inBook && pages_->currentIndex() == 1);
    kept_->setText(!inBook            ? QString()
                   : journal.fault()  ? tr("Not kept yet")
                   : journal.isKept() ? tr("Kept in the book")
                                      : tr("Being kept ..."));
}

}  // namespace rangeline
