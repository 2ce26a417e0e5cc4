#include "inspect/step_inspector.h"

#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QTimeZone>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <cmath>

#include "document/placing.h"
#include "text/fault_text.h"
#include "text/plating_text.h"

namespace rangeline {
namespace {

QToolButton* makeNudge(QWidget* parent, const QString& sign, const QString& name) {
    auto* button = new QToolButton(parent);
    button->setText(sign);
    button->setAccessibleName(name);
    button->setToolTip(name);
    button->setAutoRepeat(true);
    button->setMinimumSize(28, 28);
    return button;
}

}  // namespace

StepInspector::StepInspector(LessonDocument& document, const QLocale& locale, QWidget* parent)
    : QScrollArea(parent), document_(document), locale_(locale) {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(tr("Chosen step"));
    build();
    connect(&document, &LessonDocument::changed, this, [this](const LessonChange& change) {
        if (change.all) {
            key_.reset();
        }
        renew();
    });
    renew();
}

QLabel* StepInspector::addLabel(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    parent->layout()->addWidget(label);
    return label;
}

void StepInspector::build() {
    auto* page = new QWidget(this);
    new QVBoxLayout(page);
    name_ = addLabel(page);
    QFont strong = name_->font();
    strong.setBold(true);
    name_->setFont(strong);
    about_ = addLabel(page);
    times_ = addLabel(page);
    place_ = new QPushButton(tr("Place it"), page);
    page->layout()->addWidget(place_);

    placedPart_ = new QWidget(page);
    auto* column = new QVBoxLayout(placedPart_);
    column->setContentsMargins(0, 0, 0, 0);
    startRow_ = makeStartRow(placedPart_);
    column->addWidget(startRow_);
    choices_ = new ChoiceForm(placedPart_);
    column->addWidget(choices_);
    pinned_ = new QCheckBox(tr("Pinned: arranging leaves it here"), placedPart_);
    column->addWidget(pinned_);
    spare_ = addLabel(placedPart_);
    toShelf_ = new QPushButton(tr("Back to the shelf"), placedPart_);
    column->addWidget(toShelf_);
    page->layout()->addWidget(placedPart_);
    cue_ = addLabel(page);
    static_cast<QVBoxLayout*>(page->layout())->addStretch(1);
    setWidget(page);

    connect(place_, &QPushButton::clicked, this, [this] { Q_EMIT placeWanted(*key_); });
    connect(toShelf_, &QPushButton::clicked, this, [this] {
        change(takeAway(document_.index(), std::array{*key_}), tr("put back on the shelf"));
    });
    connect(choices_, &ChoiceForm::chosen, this, [this](const EquipmentChoice& choice, int option) {
        const EquipmentOption chosen = choice.options[static_cast<std::size_t>(option)];
        change(SetPlacements{{{*key_, chosen.placement}}}, tr("use %1").arg(chosen.name));
    });
    connect(pinned_, &QCheckBox::clicked, this, [this](bool checked) {
        change(setPinned(document_.index(), std::array{*key_}, checked),
               checked ? tr("pin") : tr("take the pin off"));
    });
}

QWidget* StepInspector::makeStartRow(QWidget* parent) {
    auto* row = new QWidget(parent);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    start_ = new ClockField(tr("Start"), locale_, ClockField::Shows::Time, row);
    auto* label = new QLabel(tr("&Start"), row);
    label->setBuddy(start_);
    QToolButton* earlier = makeNudge(row, QStringLiteral("−"), tr("Start earlier"));
    QToolButton* later = makeNudge(row, QStringLiteral("+"), tr("Start later"));
    layout->addWidget(label);
    layout->addWidget(earlier);
    layout->addWidget(start_, 1);
    layout->addWidget(later);
    connect(earlier, &QToolButton::clicked, this, [this] { nudge(-1); });
    connect(later, &QToolButton::clicked, this, [this] { nudge(1); });
    connect(start_, &ClockField::edited, this, &StepInspector::readStart);
    return row;
}

void StepInspector::setKey(const std::optional<PlacementKey>& key) {
    if (key != key_) {
        key_ = key;
        renew();
    }
}

const Placement* StepInspector::placement() const {
    const auto& placements = document_.lesson().placements;
    const auto found = key_ ? placements.find(*key_) : placements.end();
    return found == placements.end() ? nullptr : &found->second;
}

// ---- showing ----

void StepInspector::renew() {
    const int node = key_ ? document_.index().nodeOf(*key_) : -1;
    const bool placed = node >= 0 && document_.index().placed(node);
    placedPart_->setVisible(placed);
    place_->setVisible(node >= 0 && !placed);
    about_->setVisible(node >= 0);
    times_->setVisible(node >= 0);
    cue_->setVisible(false);
    if (node < 0) {
        showNothing();
        return;
    }
    const TextContext text = document_.text(locale_);
    const Names names(text);
    name_->setText(sentenceCase(names.plainStep(*key_)));
    const auto* step = std::get_if<StepKey>(&*key_);
    about_->setText(step == nullptr ? QString() : names.component(*step));
    about_->setVisible(!about_->text().isEmpty());
    if (document_.index().isTask(node)) {
        const QString cue = QString::fromStdString(document_.index().step(node).cue);
        cue_->setText(tr("Done when: %1").arg(cue));
        cue_->setVisible(!cue.isEmpty());
    }
    placed ? showPlaced(node) : showUnplaced(node);
}

void StepInspector::showNothing() {
    name_->setText(tr("No step is chosen."));
    about_->setText(
        tr("Click a block on the timeline, or go there with the keyboard, to see its times and "
           "to choose its burner, pan and cook."));
    about_->setVisible(true);
}

void StepInspector::showUnplaced(int node) {
    const Duration likely =
        document_.index().isTask(node)
            ? document_.expanded().tasks[static_cast<std::size_t>(node)].time.likely
            : Duration();
    times_->setText(likely == Duration()
                        ? tr("Not placed yet.")
                        : tr("Not placed yet; takes %1.").arg(durationText(likely, locale_)));
}

void StepInspector::showPlaced(int node) {
    const Placed& placed = document_.index().placed(node);
    const TextContext text = document_.text(locale_);
    const Clock clock(text);
    times_->setText(sentenceCase(tr("%1, %2").arg(
        clock.span(placed.interval), durationText(placed.interval.length(), locale_))));
    start_->setTwelveHours(clock.twelveHours());
    start_->setMoment(clock.moment(placed.interval.begin));
    choices_->setChoices(equipmentChoices(document_.index(), text, *key_));
    pinned_->setChecked(placed.placement->pinned);
    // What has begun at the stove stays where it is.
    const bool begun = hasStarted(document_.index(), *key_);
    startRow_->setEnabled(!begun);
    for (QWidget* part : std::initializer_list<QWidget*>{choices_, pinned_, toShelf_}) {
        part->setEnabled(!begun);
    }
    showSpare();
}

void StepInspector::showSpare() {
    const TextContext text = document_.text(locale_);
    const PlatingAnalysis& analysis = document_.analysis();
    const auto spare = std::ranges::find(analysis.spares, *key_, &Spare::key);
    spare_->setVisible(spare != analysis.spares.end());
    if (spare == analysis.spares.end()) {
        return;
    }
    const bool collides = std::ranges::any_of(document_.findings(), [this](const Finding& finding) {
        return finding.severity == Severity::Collision &&
               std::ranges::count(finding.keys, *key_) > 0;
    });
    if (collides) {
        spare_->setText(
            tr("It collides: until what Findings says is mended, there are no minutes "
               "to spare to speak of."));
        return;
    }
    const QString why = holdText(*spare, analysis, text);
    const QString much = sentenceCase(spareText(spare->spare, locale_));
    spare_->setText(why.isEmpty() ? much + u'.' : tr("%1, %2.").arg(much, why));
}

// ---- changing ----

void StepInspector::change(const SetPlacements& edit, const QString& text) {
    const auto fault = document_.apply(edit, text);
    if (fault) {
        Q_EMIT refused(sentence(*fault));
        renew();
    }
}

void StepInspector::moveTo(Instant start) {
    const Placement* now = placement();
    if (now != nullptr && now->start != start) {
        change(rangeline::moveTo(document_.index(), std::array{*key_}, start, {}), tr("move"));
    }
}

void StepInspector::nudge(int grains) {
    if (const Placement* now = placement()) {
        moveTo(now->start + document_.lesson().head.grain * grains);
    }
}

/// The field shows the lesson's own clock; what is typed goes to the nearest grain.
void StepInspector::readStart() {
    const Clock clock(document_.text(locale_));
    const QDateTime serving = clock.moment(Instant::serving());
    const auto seconds = static_cast<double>(serving.secsTo(start_->moment(serving.timeZone())));
    const std::int64_t grain = document_.lesson().head.grain.inSeconds();
    moveTo(Instant::atSeconds(std::llround(seconds / static_cast<double>(grain)) * grain));
}

}  // namespace rangeline
