#include "window/book_writing.h"

#include <QInputDialog>
#include <QMessageBox>
#include <QPointer>
#include <QPushButton>
#include <type_traits>
#include <utility>

#include "book/library.h"
#include "log/dish_log.h"
#include "model/starting_kitchens.h"
#include "text/book_fault_text.h"
#include "writing/dish_changes.h"
#include "writing/dish_editor.h"
#include "writing/kitchen_editor.h"

namespace rangeline {
namespace {

constexpr const char* termsSetting = "own terms";

/// What is in the book needs no draft any more; what could not be put there does.
std::optional<BookFault> ended(Book& book, const DraftKey& key, std::optional<BookFault> fault) {
    if (!fault) {
        fault = forgetDraft(book, key);
    }
    return fault ? fault : endDraft(book);
}

}  // namespace

BookWriting::BookWriting(BookDesk& desk, const QLocale& locale, const ChosenUnits& units,
                         QWidget& window)
    : QObject(&window), desk_(desk), locale_(locale), units_(units), window_(window) {
    connect(&desk_, &BookDesk::stateChanged, this, &BookWriting::lookForInterrupted);
    connect(&desk_, &BookDesk::bookOpened, this, [this] { looked_ = false; });
}

template <class Editor, class Part>
void BookWriting::edit(Part part, const DraftKey& key, std::optional<Part> draft,
                       const OwnTerms& terms) {
    const bool wanted = std::exchange(goingOn_, false);
    const bool differs = draft && !(*draft == part);
    const auto goesOn = differs && !wanted ? asksToGoOn(draft->name) : std::optional(differs);
    if (!goesOn) {
        return;
    }
    Editor editor(part, units_.units(), &window_);
    if (*goesOn) {
        editor.goOnWith(std::move(*draft));
    }
    const auto current = [&editor] {
        if constexpr (std::is_same_v<Part, Dish>) {
            return editor.dish();
        } else {
            return editor.kitchen();
        }
    };
    const auto keepIt = [this, key, current] {
        desk_.book()->ask(
            [key, written = current()](Book& book) { return keepDraft(book, key, written); },
            [this](const std::optional<BookFault>& fault) {
                if (fault) {
                    desk_.sayFault(*fault);
                }
            });
    };
    if constexpr (std::is_same_v<Part, Dish>) {
        editor.setTerms(terms);
        offerLearned(editor, key);
        connect(&editor, &Editor::termsChanged, this, &BookWriting::keepTerms);
        connect(&editor, &Editor::dishChanged, this, keepIt);
    } else {
        connect(&editor, &Editor::kitchenChanged, this, keepIt);
    }
    const bool accepted = editor.exec() == QDialog::Accepted;
    if (accepted) {
        keep(current(), key, [this, part, key, written = current(), terms] {
            goingOn_ = true;
            edit<Editor, Part>(part, key, written, terms);
        });
        return;
    }
    desk_.book()->ask(
        [key, later = editor.isLeftForLater()](Book& book) {
            if (!later) {
                forgetDraft(book, key);
            }
            return endDraft(book);
        },
        [](const std::optional<BookFault>&) {});
}

/// As soon as the log is read.
void BookWriting::offerLearned(DishEditor& editor, const DraftKey& key) {
    if (!key.item) {
        return;
    }
    desk_.book()->ask([item = *key.item](Book& book) { return dishLog(book, item); },
                      [open = QPointer(&editor)](const Result<DishLog, BookFault>& log) {
                          if (open != nullptr && log.ok()) {
                              open->setLoggings(log.value());
                          }
                      });
}

/// The part and what was written at it and not kept; `what` makes or reads the part.
template <class Editor, class Part, class Make>
void BookWriting::open(const DraftKey& key, Make make) {
    struct Opened {
        Part part;
        std::optional<Part> draft;
        OwnTerms terms;
    };
    desk_.book()->ask(
        [key, make](Book& book) -> Result<Opened, BookFault> {
            Result<Part, BookFault> part = make(book);
            if (!part.ok()) {
                return part.error();
            }
            const auto terms = setting(book, termsSetting);
            return Opened{std::move(part.value()), readDraft<Part>(book, key),
                          terms.ok() ? readTerms(terms.value()) : OwnTerms()};
        },
        [this, key](Result<Opened, BookFault> read) {
            if (read.ok()) {
                edit<Editor, Part>(std::move(read.value().part), key, std::move(read.value().draft),
                                   read.value().terms);
            } else {
                goingOn_ = false;
                desk_.sayFault(read.error());
            }
        });
}

void BookWriting::keepTerms(const OwnTerms& terms) {
    desk_.book()->ask(
        [text = writeTerms(terms)](Book& book) { return setSetting(book, termsSetting, text); },
        [this](const std::optional<BookFault>& fault) {
            if (fault) {
                desk_.sayFault(*fault);
            }
        });
}

void BookWriting::writeDish() {
    const auto write = [this](const DraftKey& key) { writeDishOf(key); };
    beginOrGoOn<Dish>(DraftSort::Dish, tr("A new dish"), write, write);
}

void BookWriting::changeDish(ItemId item) {
    writeDishOf({DraftSort::Dish, item});
}

void BookWriting::writeDishOf(const DraftKey& key) {
    const Dish fresh = newDish(tr("New dish").toStdString());
    open<DishEditor, Dish>(key, [item = key.item, fresh](Book& book) -> Result<Dish, BookFault> {
        return item ? book.dish(*item) : Result<Dish, BookFault>(fresh);
    });
}

void BookWriting::keepBy(const std::function<std::optional<BookFault>(Book&)>& write,
                         const QString& done, const std::function<void()>& goOn) {
    desk_.book()->ask(write, [this, done, goOn](const std::optional<BookFault>& fault) {
        if (fault && !goOn) {
            desk_.sayFault(*fault);
            return;
        }
        if (fault) {
            QMessageBox box(QMessageBox::Warning, tr("Not in the book"),
                            tr("What you wrote is not in the book: %1.").arg(sentence(*fault)),
                            QMessageBox::NoButton, &window_);
            auto* again = box.addButton(tr("Go &on writing"), QMessageBox::AcceptRole);
            box.addButton(tr("&Give it up"), QMessageBox::DestructiveRole);
            box.setEscapeButton(again);
            box.exec();
            if (box.clickedButton() == again) {
                goOn();
            }
            return;
        }
        desk_.book()->refresh();
        Q_EMIT desk_.said(done);
    });
}

void BookWriting::keep(const Dish& dish, const DraftKey& key, const std::function<void()>& goOn) {
    keepBy(
        [dish, key](Book& book) -> std::optional<BookFault> {
            if (key.item) {
                return ended(book, key, replaceDish(book, *key.item, dish));
            }
            const auto added = addDish(book, dish);
            return ended(book, key, added.ok() ? std::nullopt : std::optional(added.error()));
        },
        isThereNow(dish), goOn);
}

QString BookWriting::isThereNow(const Dish& dish) const {
    return tr("“%1” is a dish of the book now; New lesson serves it.")
        .arg(QString::fromStdString(dish.name));
}

void BookWriting::keep(const Kitchen& kitchen, const DraftKey& key,
                       const std::function<void()>& goOn) {
    keepBy(
        [kitchen, key](Book& book) -> std::optional<BookFault> {
            if (key.item) {
                return ended(book, key, replaceKitchen(book, *key.item, kitchen));
            }
            const auto added = addKitchen(book, kitchen);
            return ended(book, key, added.ok() ? std::nullopt : std::optional(added.error()));
        },
        tr("“%1” is a kitchen of the book now; New lesson offers it.")
            .arg(QString::fromStdString(kitchen.name)),
        goOn);
}

void BookWriting::writeKitchen() {
    beginOrGoOn<Kitchen>(
        DraftSort::Kitchen, tr("A new kitchen"),
        [this](const DraftKey& key) { writeKitchenOf(key); },
        [this](const DraftKey& key) { beginKitchen(key); });
}

void BookWriting::beginKitchen(const DraftKey& key) {
    QStringList names;
    for (const StartingKitchen& each : startingKitchens()) {
        names << QString::fromStdString(each.make().name);
    }
    bool chosen = false;
    const QString name = QInputDialog::getItem(
        &window_, tr("Write down a kitchen"),
        tr("Which is nearest to yours? All of it can be changed."), names, 0, false, &chosen);
    if (chosen) {
        const auto number = static_cast<std::size_t>(names.indexOf(name));
        openKitchen(key, startingKitchens()[number].make());
    }
}

void BookWriting::changeKitchen(ItemId item) {
    writeKitchenOf({DraftSort::Kitchen, item});
}

void BookWriting::writeKitchenOf(const DraftKey& key) {
    openKitchen(key, startingKitchens().front().make());
}

void BookWriting::openKitchen(const DraftKey& key, const Kitchen& fresh) {
    open<KitchenEditor, Kitchen>(
        key, [item = key.item, fresh](Book& book) -> Result<Kitchen, BookFault> {
            return item ? book.kitchen(*item) : Result<Kitchen, BookFault>(fresh);
        });
}

}  // namespace rangeline
