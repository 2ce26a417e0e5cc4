#include "library/new_lesson_dialog.h"

#include <QDialogButtonBox>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPointer>
#include <QScrollArea>
#include <QTimeZone>
#include <QVBoxLayout>
#include <algorithm>

#include "document/lesson_state.h"
#include "model/validate.h"
#include "safety/allergens.h"
#include "text/book_fault_text.h"
#include "text/class_times_text.h"
#include "text/fault_text.h"
#include "text/finding_text.h"
#include "text/names.h"
#include "text/words.h"

namespace rangeline {
namespace {

constexpr int mostCovers = 999;
constexpr int mostGroups = 20;
constexpr int usualCovers = 4;
const QTime usualServing(18, 30);

ItemId idOf(const QTreeWidgetItem& row) {
    return {row.data(0, Qt::UserRole).toLongLong()};
}

bool isTicked(const QTreeWidgetItem& row) {
    return row.checkState(0) == Qt::Checked;
}

/// What guests must not eat and yet would get, a sentence each.
QStringList guestSentences(const Lesson& lesson, const QLocale& locale) {
    const LessonState state(lesson);
    const TextContext context{state.lesson(), state.expanded(), locale};
    QStringList sentences;
    for (const Finding& finding : state.findings()) {
        if (finding.code == FindingCode::GuestAllergen) {
            sentences << sentence(finding, context);
        }
    }
    sentences.removeDuplicates();
    return sentences;
}

/// What steps ask for and the kitchen has nothing of.
QStringList lackSentences(const Lesson& lesson) {
    QStringList kinds;
    for (const Serving& serving : lesson.servings) {
        for (const Component& component : serving.dish.components) {
            for (const Step& step : component.steps) {
                for (const WareNeed& need : step.wares) {
                    const bool there =
                        std::ranges::any_of(lesson.kitchen.wares, [&](const Ware& it) {
                            return it.kind == need.kind && it.width >= need.leastWidth;
                        });
                    if (!there) {
                        kinds << QString::fromStdString(need.kind).replace(u'-', u' ');
                    }
                }
            }
        }
    }
    kinds.removeDuplicates();
    return kinds.isEmpty() ? QStringList()
                           : QStringList{NewLessonDialog::tr(
                                             "This kitchen has none, or none wide enough, of: %1. "
                                             "Another kitchen may, or write it down in this one.")
                                             .arg(listText(kinds))};
}

}  // namespace

NewLessonDialog::NewLessonDialog(BookDesk& desk, const QLocale& locale, Units units,
                                 const QDateTime& now, QWidget* parent)
    : QDialog(parent), desk_(desk), locale_(locale), units_(units), zone_(now.timeZone().id()) {
    setWindowTitle(tr("New lesson"));
    auto* page = new QWidget(this);
    auto* left = new QVBoxLayout;
    left->addWidget(makeDishes(), 1);
    auto* right = new QVBoxLayout;
    for (QWidget* part : {makeWho(), makeWhen(now), makeGuests()}) {
        right->addWidget(part);
    }
    right->addStretch(1);
    auto* row = new QHBoxLayout(page);
    row->setContentsMargins(0, 0, 0, 0);
    row->addLayout(left, 1);
    row->addLayout(right, 1);
    auto* area = new QScrollArea(this);
    area->setWidget(page);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    says_ = new QLabel(this);
    says_->setWordWrap(true);
    says_->setTextFormat(Qt::PlainText);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    make_ = buttons->addButton(tr("&Make the lesson"), QDialogButtonBox::AcceptRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &NewLessonDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(area, 1);
    column->addWidget(says_);
    column->addWidget(buttons);
    constexpr QSize usual(940, 620);
    resize(usual);
    askProfile();
    fillDishes();
    kitchenChosen();
    judge();
}

// ---- the parts ----

QWidget* NewLessonDialog::makeDishes() {
    auto* box = new QGroupBox(tr("What is served"), this);
    auto* column = new QVBoxLayout(box);
    auto* form = new QFormLayout;
    name_ = new QLineEdit(tr("New lesson"), box);
    name_->setAccessibleName(tr("Name of the lesson"));
    name_->selectAll();
    form->addRow(tr("&Name"), name_);
    search_ = new QLineEdit(box);
    search_->setAccessibleName(tr("Find a dish"));
    search_->setPlaceholderText(tr("Find a dish"));
    search_->setClearButtonEnabled(true);
    dishes_ = new QTreeWidget(box);
    dishes_->setAccessibleName(tr("Dishes"));
    dishes_->setHeaderLabels({tr("Dish"), tr("Covers")});
    dishes_->setRootIsDecorated(false);
    dishes_->header()->setStretchLastSection(false);
    dishes_->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    column->addLayout(form);
    column->addWidget(search_);
    column->addWidget(dishes_, 1);
    connect(name_, &QLineEdit::textChanged, this, &NewLessonDialog::judge);
    connect(search_, &QLineEdit::textChanged, this, &NewLessonDialog::filterDishes);
    connect(dishes_, &QTreeWidget::itemChanged, this, [this](QTreeWidgetItem* row, int cell) {
        if (cell == 0) {
            dishTicked(row);
        }
    });
    return box;
}

QWidget* NewLessonDialog::makeWho() {
    auto* box = new QGroupBox(tr("Where, and who is there"), this);
    auto* form = new QFormLayout(box);
    kitchens_ = new QComboBox(box);
    kitchens_->setAccessibleName(tr("Kitchen"));
    for (const Item& item : desk_.book()->items()) {
        if (item.kind == ItemKind::Kitchen && item.state == ItemState::InUse) {
            kitchens_->addItem(QString::fromStdString(item.name),
                               static_cast<qlonglong>(item.id.number));
        }
    }
    form->addRow(tr("&Kitchen"), kitchens_);
    crewBox_ = new QWidget(box);
    auto* crew = new QVBoxLayout(crewBox_);
    crew->setContentsMargins(0, 0, 0, 0);
    form->addRow(tr("Cooks"), crewBox_);
    groups_ = new QSpinBox(box);
    groups_->setRange(1, mostGroups);
    groups_->setAccessibleName(tr("Groups"));
    groups_->setToolTip(tr("How many groups cook the same at once, each at a station of its own"));
    form->addRow(tr("&Groups"), groups_);
    profile_ = new QComboBox(box);
    profile_->setAccessibleName(tr("Food-safety limits"));
    profile_->setToolTip(tr("The book keeps what you choose for the lessons after this one"));
    for (const SafetyProfile profile : {SafetyProfile::Household, SafetyProfile::FoodCode}) {
        profile_->addItem(profileText(profile), static_cast<int>(profile));
    }
    form->addRow(tr("&Food-safety limits"), profile_);
    connect(profile_, &QComboBox::activated, this, [this] { profileChosen_ = true; });
    connect(kitchens_, &QComboBox::currentIndexChanged, this, &NewLessonDialog::kitchenChosen);
    connect(groups_, &QSpinBox::valueChanged, this, &NewLessonDialog::judge);
    return box;
}

QWidget* NewLessonDialog::makeWhen(const QDateTime& now) {
    auto* box = new QGroupBox(tr("When"), this);
    auto* form = new QFormLayout(box);
    serving_ = new ClockField(tr("Served at"), locale_, ClockField::Shows::DateAndTime, box);
    form->addRow(tr("&Served at"), serving_);
    opens_ = new InstantField(tr("The kitchen opens"), locale_, box);
    cooking_ = new InstantField(tr("Cooking may start"), locale_, box);
    tasting_ = new InstantField(tr("Tasting"), locale_, box);
    out_ = new InstantField(tr("Everyone is out"), locale_, box);
    const bool twelve = units_ == Units::UsCustomary;  // as the lesson's clock will be
    const QDateTime evening(now.date().addDays(1), usualServing, now.timeZone());
    serving_->setTwelveHours(twelve);
    serving_->setMoment(evening);
    for (InstantField* field : {opens_, cooking_, tasting_, out_}) {
        field->setTwelveHours(twelve);
        field->setInstant({}, evening);
        form->addRow(field);
        connect(field, &InstantField::edited, this, &NewLessonDialog::judge);
    }
    // What has no time of its own yet follows serving, to start from there.
    connect(serving_, &ClockField::edited, this, [this, before = serving_->wallClock()]() mutable {
        const qint64 by = before.secsTo(serving_->wallClock());
        for (InstantField* field : {opens_, cooking_, tasting_, out_}) {
            field->moveBy(by);
        }
        before = serving_->wallClock();
        judge();
    });
    return box;
}

QWidget* NewLessonDialog::makeGuests() {
    auto* box = new QGroupBox(tr("What guests must not eat"), this);
    auto* column = new QVBoxLayout(box);
    guests_ = new QListWidget(box);
    guests_->setAccessibleName(tr("What guests must not eat"));
    guests_->setFlow(QListView::LeftToRight);
    guests_->setWrapping(true);
    guests_->setResizeMode(QListView::Adjust);
    guests_->setSpacing(2);
    const int high = 6 * fontMetrics().lineSpacing();
    guests_->setMinimumHeight(high);
    for (const Allergen& allergen : allergens()) {
        auto* tick = new QListWidgetItem(allergenText(allergen.key), guests_);
        tick->setCheckState(Qt::Unchecked);
        tick->setData(Qt::UserRole, QString::fromUtf8(allergen.key.data(),
                                                      static_cast<qsizetype>(allergen.key.size())));
    }
    column->addWidget(guests_);
    connect(guests_, &QListWidget::itemChanged, this, &NewLessonDialog::judge);
    // A click on the name ticks it as one on the box does.
    connect(guests_, &QListWidget::itemPressed, this,
            [this](const QListWidgetItem* tick) { pressed_ = tick->checkState(); });
    connect(guests_, &QListWidget::itemClicked, this, [this](QListWidgetItem* tick) {
        if (tick->checkState() == pressed_) {
            tick->setCheckState(pressed_ == Qt::Checked ? Qt::Unchecked : Qt::Checked);
        }
    });
    return box;
}

// ---- what the book says; dishes and kitchen are read when they are chosen ----

void NewLessonDialog::askProfile() {
    desk_.book()->ask(
        [](Book& book) { return profileOf(book); },
        [this, self = QPointer(this)](SafetyProfile profile) {
            if (self && !profileChosen_) {
                profile_->setCurrentIndex(profile_->findData(static_cast<int>(profile)));
            }
        });
}

void NewLessonDialog::fillDishes() {
    const QSignalBlocker quiet(dishes_);
    for (const Item& item : desk_.book()->items()) {
        if (item.kind == ItemKind::Dish && item.state == ItemState::InUse) {
            auto* row = new QTreeWidgetItem(dishes_, {QString::fromStdString(item.name)});
            row->setCheckState(0, Qt::Unchecked);
            row->setData(0, Qt::UserRole, static_cast<qlonglong>(item.id.number));
        }
    }
    if (dishes_->topLevelItemCount() > 0) {
        dishes_->setCurrentItem(dishes_->topLevelItem(0));
    }
}

void NewLessonDialog::filterDishes(const QString& words) {
    for (int number = 0; number < dishes_->topLevelItemCount(); ++number) {
        QTreeWidgetItem* row = dishes_->topLevelItem(number);
        row->setHidden(!isTicked(*row) &&
                       !row->text(0).contains(words.trimmed(), Qt::CaseInsensitive));
    }
}

void NewLessonDialog::dishTicked(QTreeWidgetItem* row) {
    const ItemId id = idOf(*row);
    if (!isTicked(*row)) {
        dishes_->removeItemWidget(row, 1);
        judge();
        return;
    }
    auto* covers = new QSpinBox(dishes_);
    covers->setRange(1, mostCovers);
    covers->setValue(usualCovers);
    covers->setAccessibleName(tr("%1, covers").arg(row->text(0)));
    dishes_->setItemWidget(row, 1, covers);
    connect(covers, &QSpinBox::valueChanged, this, &NewLessonDialog::judge);
    judge();
    desk_.book()->ask([id](Book& book) { return book.dish(id); },
                      [this, self = QPointer(this), id](Result<Dish, BookFault> dish) {
                          if (!self) {
                              return;
                          }
                          dish.ok() ? takeDish(id, std::move(dish.value())) : say(dish.error());
                      });
}

void NewLessonDialog::takeDish(ItemId id, Dish dish) {
    read_.insert_or_assign(id, std::move(dish));
    judge();
}

ItemId NewLessonDialog::chosenKitchen() const {
    return {kitchens_->currentData().toLongLong()};
}

void NewLessonDialog::kitchenChosen() {
    if (kitchens_->count() == 0) {
        return;
    }
    const ItemId id = chosenKitchen();
    judge();
    desk_.book()->ask([id](Book& book) { return book.kitchen(id); },
                      [this, self = QPointer(this), id](Result<Kitchen, BookFault> kitchen) {
                          if (!self) {
                              return;
                          }
                          kitchen.ok() ? takeKitchen(id, std::move(kitchen.value()))
                                       : say(kitchen.error());
                      });
}

void NewLessonDialog::takeKitchen(ItemId id, Kitchen kitchen) {
    if (id != chosenKitchen()) {
        return;  // another one was chosen meanwhile and is being read
    }
    kitchenItem_ = id;
    kitchen_ = std::move(kitchen);
    qDeleteAll(crew_);
    crew_.clear();
    for (const Cook& cook : kitchen_.cooks) {
        auto* tick = new QCheckBox(QString::fromStdString(cook.name), crewBox_);
        tick->setChecked(true);
        crewBox_->layout()->addWidget(tick);
        connect(tick, &QCheckBox::toggled, this, &NewLessonDialog::judge);
        crew_.push_back(tick);
    }
    judge();
}

// ---- values ----

Head NewLessonDialog::filledHead() const {
    Head head;
    const QDateTime serving = serving_->moment(QTimeZone(zone_));
    head.name = name_->text().trimmed().toStdString();
    head.servingTime = serving.toString(QStringLiteral("yyyy-MM-ddTHH:mm")).toStdString();
    head.zone = zone_.toStdString();
    head.kitchenOpens = opens_->instant(serving);
    head.cookingMayStart = cooking_->instant(serving);
    head.tasting = tasting_->instant(serving);
    head.everyoneOut = out_->instant(serving);
    head.groups.count = groups_->value();
    head.profile = static_cast<SafetyProfile>(profile_->currentData().toInt());
    head.units = units_;
    for (std::size_t number = 0; number < crew_.size(); ++number) {
        if (crew_[number]->isChecked()) {
            head.crew.push_back(kitchen_.cooks[number].id);
        }
    }
    for (int number = 0; number < guests_->count(); ++number) {
        const QListWidgetItem* tick = guests_->item(number);
        if (tick->checkState() == Qt::Checked) {
            head.guestAllergens.push_back(tick->data(Qt::UserRole).toString().toStdString());
        }
    }
    return head;
}

NewLesson NewLessonDialog::filled() const {
    NewLesson made{filledHead(), kitchenItem_, kitchen_, {}};
    for (int number = 0; number < dishes_->topLevelItemCount(); ++number) {
        QTreeWidgetItem* row = dishes_->topLevelItem(number);
        const auto dish = read_.find(idOf(*row));
        if (isTicked(*row) && dish != read_.end()) {
            const auto* covers = qobject_cast<QSpinBox*>(dishes_->itemWidget(row, 1));
            made.dishes.push_back({dish->first, dish->second, covers->value()});
        }
    }
    return made;
}

/// Else a lesson would be made without the dish that was ticked last.
bool NewLessonDialog::allRead() const {
    for (int number = 0; number < dishes_->topLevelItemCount(); ++number) {
        const QTreeWidgetItem* row = dishes_->topLevelItem(number);
        if (isTicked(*row) && !read_.contains(idOf(*row))) {
            return false;
        }
    }
    return true;
}

void NewLessonDialog::judge() {
    QString text;
    ready_ = false;
    const NewLesson made = filled();
    if (kitchens_->count() == 0) {
        text =
            tr("There is no kitchen in this book yet. Write one down, or copy a lesson into the "
               "book: its kitchen and its dishes come along.");
    } else if (dishes_->topLevelItemCount() == 0) {
        text =
            tr("There is no dish in this book yet. Write one, or copy a lesson into the book: its "
               "dishes come along.");
    } else if (kitchenItem_ != chosenKitchen() || !allRead()) {
        text = tr("Kitchen and dishes are being read ...");
    } else if (made.dishes.empty()) {
        text =
            tr("Tick one or more dishes. Their steps wait on the shelf until they are placed or "
               "arranged.");
    } else if (made.head.name.empty()) {
        text = tr("Give the lesson a name.");
    } else if (made.head.crew.empty()) {
        text = tr("Tick at least one cook.");
    } else if (const auto faults = validate(made.lesson(), 1); !faults.empty()) {
        text = sentence(faults.front());
    } else {
        ready_ = true;
        text = (lackSentences(made.lesson()) + timesOutOfOrder(made.head) +
                guestSentences(made.lesson(), locale_))
                   .join(u'\n');
    }
    says_->setText(text);
    says_->setAccessibleName(text);
    make_->setEnabled(ready_ && desk_.isWritable());
}

void NewLessonDialog::say(const BookFault& fault) {
    says_->setText(sentenceCase(sentence(fault)) + u'.');
}

void NewLessonDialog::accept() {
    if (!ready_ || !desk_.isWritable()) {
        return;
    }
    if (const QString why = readTimes(*serving_, {opens_, cooking_, tasting_, out_});
        !why.isEmpty()) {
        says_->setText(why);
        return;
    }
    make_->setEnabled(false);
    desk_.book()->ask(
        [made = filled()](Book& book) -> Result<ItemId, BookFault> {
            if (auto fault = chooseProfile(book, made.head.profile)) {
                return *std::move(fault);
            }
            return addLesson(book, made.lesson(), made.origins());
        },
        [this, self = QPointer(this)](const Result<ItemId, BookFault>& added) {
            if (!self) {
                return;
            }
            if (!added.ok()) {
                make_->setEnabled(true);
                say(added.error());
                return;
            }
            desk_.book()->refresh();
            desk_.openLesson(added.value());
            QDialog::accept();
        });
}

}  // namespace rangeline
