#include "inspect/lesson_head_dialog.h"

#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QGroupBox>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "analysis/at.h"
#include "model/dish_copy.h"
#include "model/validate.h"
#include "text/class_times_text.h"
#include "text/fault_text.h"
#include "text/quantities.h"
#include "text/words.h"

namespace rangeline {
namespace {

template <class Value>
void addOption(QComboBox& list, const QString& name, Value value) {
    list.addItem(name, static_cast<int>(value));
}

template <class Value>
void choose(QComboBox& list, Value value) {
    list.setCurrentIndex(list.findData(static_cast<int>(value)));
}

template <class Value>
Value chosen(const QComboBox& list) {
    return static_cast<Value>(list.currentData().toInt());
}

}  // namespace

LessonHeadDialog::LessonHeadDialog(LessonDocument& document, const QLocale& locale, QWidget* parent)
    : QDialog(parent), document_(document), locale_(locale) {
    setWindowTitle(tr("About this lesson"));
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    for (QWidget* part : {makeWhat(), makeWhen(), makeCrew(), makeRules()}) {
        column->addWidget(part);
    }
    auto* area = new QScrollArea(this);
    area->setWidget(page);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    why_ = new QLabel(this);
    why_->setWordWrap(true);
    why_->hide();
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    connect(buttons, &QDialogButtonBox::accepted, this, &LessonHeadDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* outer = new QVBoxLayout(this);
    outer->addWidget(area, 1);
    outer->addWidget(why_);
    outer->addWidget(buttons);
    fillClocks();
    area->setMinimumWidth(page->sizeHint().width() + 2 * column->contentsMargins().left());
    constexpr int high = 620;
    constexpr int frame = 60;  // of the desktop's title bar
    resize(sizeHint().width(), std::min(high, screen()->availableGeometry().height() - frame));
}

// ---- the parts ----

QWidget* LessonHeadDialog::makeWhat() {
    auto* box = new QGroupBox(tr("What is served"));
    auto* form = new QFormLayout(box);
    name_ = new QLineEdit(QString::fromStdString(document_.lesson().head.name), box);
    name_->setAccessibleName(tr("Lesson"));
    form->addRow(tr("&Lesson"), name_);
    servings_ = new ServingsForm(document_.lesson().servings, box);
    form->addRow(servings_);
    changes_ = new CoversPreview(locale_, box);
    form->addRow(changes_);
    connect(servings_, &ServingsForm::edited, this,
            [this] { changes_->compare(document_.lesson(), withServings(), document_.units()); });
    connect(servings_, &ServingsForm::moreWanted, this, &LessonHeadDialog::addFromLesson);
    return box;
}

QWidget* LessonHeadDialog::makeWhen() {
    auto* box = new QGroupBox(tr("When"));
    auto* form = new QFormLayout(box);
    serving_ = new ClockField(tr("Served at"), locale_, ClockField::Shows::DateAndTime, box);
    form->addRow(tr("&Served at"), serving_);
    addZone(*form);
    opens_ = new InstantField(tr("The kitchen opens"), locale_, box);
    cooking_ = new InstantField(tr("Cooking may start"), locale_, box);
    tasting_ = new InstantField(tr("Tasting"), locale_, box);
    out_ = new InstantField(tr("Everyone is out"), locale_, box);
    for (InstantField* field : {opens_, cooking_, tasting_, out_}) {
        form->addRow(field);
        connect(field, &InstantField::edited, this, &LessonHeadDialog::judgeOrder);
    }
    connect(serving_, &ClockField::edited, this, &LessonHeadDialog::servingMoved);
    order_ = new QLabel(box);
    order_->setWordWrap(true);
    form->addRow(order_);
    addGrain(*form);
    return box;
}

void LessonHeadDialog::addZone(QFormLayout& form) {
    zone_ = new QComboBox(form.parentWidget());
    zone_->setAccessibleName(tr("Time zone"));
    constexpr int fewestLetters = 18;
    zone_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    zone_->setMinimumContentsLength(fewestLetters);
    const QString now = QString::fromStdString(document_.lesson().head.zone);
    for (const QByteArray& id : QTimeZone::availableTimeZoneIds()) {
        zone_->addItem(QString::fromLatin1(id));
    }
    if (zone_->findText(now) < 0) {
        zone_->insertItem(0, now);
    }
    zone_->setCurrentText(now);
    form.addRow(tr("Time &zone"), zone_);
}

void LessonHeadDialog::addGrain(QFormLayout& form) {
    grain_ = new QComboBox(form.parentWidget());
    grain_->setAccessibleName(tr("Times are planned to"));
    const std::int64_t now = document_.lesson().head.grain.inSeconds();
    std::vector<std::int64_t> sizes{30, 60, 120, 300, 600, 900};
    if (std::ranges::find(sizes, now) == sizes.end()) {
        sizes.push_back(now);
    }
    for (const std::int64_t size : sizes) {
        addOption(*grain_, durationText(Duration::seconds(size), locale_), size);
    }
    choose(*grain_, now);
    form.addRow(tr("Times are planned &to"), grain_);
}

QWidget* LessonHeadDialog::makeCrew() {
    auto* box = new QGroupBox(tr("Who is there"));
    auto* column = new QVBoxLayout(box);
    const auto& crew = document_.lesson().head.crew;
    for (const Cook& cook : document_.lesson().kitchen.cooks) {
        auto* tick = new QCheckBox(QString::fromStdString(cook.name), box);
        tick->setChecked(std::ranges::find(crew, cook.id) != crew.end());
        column->addWidget(tick);
        crew_.push_back(tick);
    }
    return box;
}

QWidget* LessonHeadDialog::makeRules() {
    const Head& head = document_.lesson().head;
    auto* box = new QGroupBox(tr("How it is planned"));
    auto* form = new QFormLayout(box);
    const auto addList = [&](const QString& label, const QString& name) {
        auto* list = new QComboBox(box);
        list->setAccessibleName(name);
        form->addRow(label, list);
        return list;
    };
    aim_ = addList(tr("&Arranging aims to"), tr("Arranging aims to"));
    addOption(*aim_, tr("start as late as possible"), Aim::StartLate);
    addOption(*aim_, tr("keep food waiting least"), Aim::Fresh);
    addOption(*aim_, tr("spread the work evenly"), Aim::Calm);
    addOption(*aim_, tr("use the fewest pans"), Aim::FewPans);
    choose(*aim_, head.aim);
    late_ = new QCheckBox(tr("Plates may be late if nothing else helps"), box);
    late_->setChecked(head.lateAllowed);
    form->addRow(late_);
    profile_ = addList(tr("&Food-safety limits"), tr("Food-safety limits"));
    for (const SafetyProfile profile : {SafetyProfile::Household, SafetyProfile::FoodCode}) {
        addOption(*profile_, profileText(profile), profile);
    }
    choose(*profile_, head.profile);
    return box;
}

// ---- values ----

void LessonHeadDialog::fillClocks() {
    const Head& head = document_.lesson().head;
    const Clock clock(document_.text(locale_));
    const QDateTime serving = clock.moment(Instant::serving());
    serving_->setTwelveHours(clock.twelveHours());
    for (InstantField* field : {opens_, cooking_, tasting_, out_}) {
        field->setTwelveHours(clock.twelveHours());
    }
    serving_->setMoment(serving);
    opens_->setInstant(head.kitchenOpens, serving);
    cooking_->setInstant(head.cookingMayStart, serving);
    tasting_->setInstant(head.tasting, serving);
    out_->setInstant(head.everyoneOut, serving);
    shownServing_ = serving_->wallClock();
    judgeOrder();
}

/// Tasting and leaving keep their distance from serving; the kitchen opens when it does, whatever
/// is served when, but on another day if the lesson is.
void LessonHeadDialog::servingMoved() {
    constexpr qint64 secondsInDay = 24 * 3600;
    const QDateTime now = serving_->wallClock();
    for (InstantField* field : {tasting_, out_}) {
        field->moveBy(shownServing_.secsTo(now));
    }
    for (InstantField* field : {opens_, cooking_}) {
        field->moveBy(shownServing_.date().daysTo(now.date()) * secondsInDay);
    }
    shownServing_ = now;
    judgeOrder();
}

/// What stands in an order that cannot be meant is said at once, but is the cook's own business.
void LessonHeadDialog::judgeOrder() {
    const QStringList wrong = timesOutOfOrder(filledHead());
    order_->setText(wrong.isEmpty() ? QString() : QStringLiteral("⚠ ") + wrong.join(u' '));
    order_->setVisible(!wrong.isEmpty());
}

QDateTime LessonHeadDialog::servingMoment() const {
    const QTimeZone zone(zone_->currentText().toLatin1());
    return serving_->moment(zone.isValid() ? zone : QTimeZone::utc());
}

Head LessonHeadDialog::filledHead() const {
    Head head = document_.lesson().head;
    const QDateTime serving = servingMoment();
    head.name = name_->text().trimmed().toStdString();
    const bool moved = serving != Clock(head, locale_).moment(Instant::serving());
    if (moved) {
        head.servingTime = serving.toString(QStringLiteral("yyyy-MM-ddTHH:mm")).toStdString();
    }
    head.zone = zone_->currentText().toStdString();
    head.kitchenOpens = opens_->instant(serving);
    head.cookingMayStart = cooking_->instant(serving);
    head.tasting = tasting_->instant(serving);
    head.everyoneOut = out_->instant(serving);
    head.crew = tickedCrew();
    head.grain = Duration::seconds(grain_->currentData().toInt());
    head.aim = chosen<Aim>(*aim_);
    head.lateAllowed = late_->isChecked();
    head.profile = chosen<SafetyProfile>(*profile_);
    return head;
}

/// Who was there already keeps the place in the order.
std::vector<CookId> LessonHeadDialog::tickedCrew() const {
    std::vector<CookId> crew = document_.lesson().head.crew;
    for (std::size_t number = 0; number < crew_.size(); ++number) {
        const CookId& cook = document_.lesson().kitchen.cooks[number].id;
        const auto known = std::ranges::find(crew, cook);
        if (!crew_[number]->isChecked()) {
            std::erase(crew, cook);
        } else if (known == crew.end()) {
            crew.push_back(cook);
        }
    }
    return crew;
}

Lesson LessonHeadDialog::withServings() const {
    Lesson lesson = document_.lesson();
    lesson.servings = servings_->servings();
    lesson.choices = choicesFor(lesson.choices, lesson.servings);
    return lesson;
}

void LessonHeadDialog::addFromLesson() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Dishes of another lesson"),
                                                      QFileInfo(document_.path()).absolutePath(),
                                                      tr("Lessons (*.json)"));
    if (!path.isEmpty()) {
        addDishesOf(path);
    }
}

void LessonHeadDialog::addDishesOf(const QString& path) {
    LessonDocument other;
    if (const auto fault = other.load(path)) {
        refuse(sentence(*fault));
        return;
    }
    for (const Serving& serving : other.lesson().servings) {
        servings_->add(serving);
    }
    why_->clear();
    why_->hide();
}

void LessonHeadDialog::refuse(const QString& why) {
    why_->setText(why);
    why_->show();
}

void LessonHeadDialog::accept() {
    if (const QString why = readTimes(*serving_, {opens_, cooking_, tasting_, out_});
        !why.isEmpty()) {
        refuse(why);
        return;
    }
    Lesson filled = withServings();
    filled.head = filledHead();
    // All are judged together before either is applied, so that none is applied alone.
    if (const auto faults = validate(filled, 1); !faults.empty()) {
        refuse(sentence(faults.front()));
        return;
    }
    const GestureId gesture = document_.newGesture();
    const QString words = tr("change the lesson’s head");
    for (Edit edit : {Edit(SetChoices{filled.choices}), Edit(SetHead{filled.head}),
                      Edit(SetServings{filled.servings})}) {
        if (const auto fault = document_.apply(std::move(edit), words, gesture)) {
            refuse(sentence(*fault));
            return;
        }
    }
    QDialog::accept();
}

}  // namespace rangeline
