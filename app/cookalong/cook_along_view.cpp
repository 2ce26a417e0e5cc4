#include "cookalong/cook_along_view.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimeEdit>
#include <QVBoxLayout>
#include <algorithm>
#include <tuple>

#include "cookalong/live_colours.h"
#include "cookalong/live_range.h"
#include "cookalong/live_style.h"
#include "cookalong/offer_bar.h"

namespace rangeline {
namespace {

constexpr std::size_t mostNext = 4;
constexpr double heightOfACard = 200;  // in full, at scale 1
constexpr int secondsBetweenStrokes = 2;
constexpr std::int64_t secondsOfAPicture = 15;
constexpr live::milliseconds oneTouch(450);
const Duration fiveMinutes = Duration::minutes(5);
const Duration looksAgainAfter = Duration::minutes(2);

live::Event eventOf(CardPress press, const PlacementKey& key) {
    switch (press) {
        case CardPress::Started:
            return live::Started{key};
        case CardPress::Done:
            return live::Done{key};
        case CardPress::MoreTime:
            return live::MoreTime{key, fiveMinutes};
        case CardPress::NotReady:
            return live::NotReady{key, looksAgainAfter};
        case CardPress::Skip:
            break;
    }
    return live::Skipped{key};
}

bool isDark(const QWidget& widget) {
    constexpr int middle = 128;
    return widget.palette().color(QPalette::Window).lightness() < middle;
}

}  // namespace

CookAlongView::CookAlongView(CookAlong& service, const QLocale& locale, std::function<void()> sound,
                             QWidget* parent)
    : QWidget(parent),
      service_(service),
      locale_(locale),
      sound_(std::move(sound)),
      context_{service.file().head().lesson, service.service().index().expanded(), locale},
      text_(service.service(), context_) {
    setObjectName(QStringLiteral("cookAlong"));
    setAttribute(Qt::WA_StyledBackground);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Cook along"));
    setWindowTitle(tr("Cook along: %1").arg(QString::fromStdString(context_.lesson.head.name)));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 8, 14, 8);
    column->setSpacing(6);
    buildHead(*column);
    buildQuestion(*column);
    buildBody(*column);
    buildFoot(*column);
    connect(&service_, &CookAlong::changed, this, &CookAlongView::renew);
    connect(&service_, &CookAlong::ticked, this, [this] {
        tick();
        strike();
    });
    connect(&service_, &CookAlong::rang, this, [this] { secondsToStroke_ = 0; });
    applyLook();
    renew();
    setFocus();  // no button has it: a key that slips presses none
}

CookAlongView::~CookAlongView() = default;

// ---- what the page does ---------------------------------------------------------------------

bool CookAlongView::isSecondTouch() {
    const live::milliseconds now = service_.sinceBoot();
    const bool second = now - lastTouch_ < oneTouch;
    lastTouch_ = now;
    return second;
}

bool CookAlongView::hasJustMoved() const {
    return service_.sinceBoot() - movedAt_ < oneTouch;
}

void CookAlongView::press(const PlacementKey& key, CardPress press) {
    if (isSecondTouch()) {
        return;
    }
    choose(key);
    service_.record(eventOf(press, key));
}

void CookAlongView::stop(const live::Timer& timer) {
    service_.record(live::AlarmStopped{timer.key, timer.generation});
}

void CookAlongView::stopNumber(int number) {
    for (const live::Timer& timer : live::ringingTimers(service_.service())) {
        if (service_.service().work(timer.key).bellNumber == number) {
            stop(timer);
            return;
        }
    }
}

void CookAlongView::leaveOut() {
    if (!service_.gains().empty() && !isSecondTouch()) {
        service_.take(live::Gain(service_.gains().front()));
    }
}

void CookAlongView::plateLater() {
    if (service_.isBehind() && !isSecondTouch()) {
        constexpr std::int64_t minute = 60;
        const std::int64_t minutes = (service_.outlook().behind.inSeconds() + minute - 1) / minute;
        service_.record(live::ServedLater{Duration::minutes(minutes)});
    }
}

void CookAlongView::choose(const PlacementKey& key) {
    if (chosen_ != key) {
        chosen_ = key;
        showCards();
    }
}

void CookAlongView::chooseBeside(int by) {
    const auto keys = keysNow();
    if (keys.empty()) {
        return;
    }
    const auto at = chosen_ ? std::ranges::find(keys, *chosen_) : keys.end();
    const auto last = static_cast<std::ptrdiff_t>(keys.size()) - 1;
    const auto number =
        at == keys.end() ? 0 : std::clamp(at - keys.begin() + by, std::ptrdiff_t{0}, last);
    choose(keys[static_cast<std::size_t>(number)]);
}

void CookAlongView::keyPressEvent(QKeyEvent* event) {
    if (event->isAutoRepeat()) {
        return;  // a key that is held down, or that sticks, is one press
    }
    constexpr auto commanding = Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier;
    if ((event->modifiers() & commanding) != 0) {
        QWidget::keyPressEvent(event);
        return;
    }
    const int key = event->key();
    if (key >= Qt::Key_1 && key <= Qt::Key_9) {
        stopNumber(key - Qt::Key_0);
        return;
    }
    for (const CardPress press : cardPresses) {
        if (key == keyOf(press) && event->modifiers() == Qt::NoModifier) {
            if (chosen_) {
                this->press(*chosen_, press);
            }
            return;
        }
    }
    switch (key) {
        case Qt::Key_Up:
            chooseBeside(-1);
            break;
        case Qt::Key_Down:
            chooseBeside(1);
            break;
        case Qt::Key_L:
            leaveOut();
            break;
        case Qt::Key_P:
            plateLater();
            break;
        case Qt::Key_F11:
            setWindowState(windowState() ^ Qt::WindowFullScreen);
            break;
        default:
            QWidget::keyPressEvent(event);
    }
}

void CookAlongView::closeEvent(QCloseEvent* event) {
    QWidget::closeEvent(event);
    Q_EMIT closed();
}

bool CookAlongView::eventFilter(QObject* watched, QEvent* event) {
    // The arrows choose a card wherever the focus is.
    if (event->type() == QEvent::KeyPress && watched == scroll_) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Up || key->key() == Qt::Key_Down) {
            chooseBeside(key->key() == Qt::Key_Up ? -1 : 1);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

// ---- what it shows --------------------------------------------------------------------------

void CookAlongView::renew() {
    drawnAt_ = service_.session().instant().inSeconds();
    range_->show(service_.session().instant());
    showAlarms();
    tick();
}

void CookAlongView::tick() {
    const Instant now = service_.session().instant();
    if (now.inSeconds() - drawnAt_ >= secondsOfAPicture || now.inSeconds() < drawnAt_) {
        drawnAt_ = now.inSeconds();
        range_->show(now);
    }
    showHead();
    showOffers();
    showQuestion();
    showCards();
    showNext();
}

/// The bell is heard while an alarm is on the page: at once, then every other second.
void CookAlongView::strike() {
    if (alarms().empty()) {
        secondsToStroke_ = 0;
    } else if (secondsToStroke_-- == 0) {
        secondsToStroke_ = secondsBetweenStrokes - 1;
        sound_();
    }
}

void CookAlongView::showHead() {
    headline_->setText(text_.headline(service_.outlook()));
    const bool behind = service_.isBehind();
    if (headline_->property("behind").toBool() != behind) {
        headline_->setProperty("behind", behind);
        headline_->setStyleSheet(headline_->styleSheet());
    }
    clock_->setText(text_.now(service_.session().instant()));
    const QString kept = service_.session().unwritten().empty()
                             ? QString()
                             : tr("What happens cannot be kept on the disk just now. Timers and "
                                  "alarms go on.");
    const auto& moves = service_.moved();
    const bool isNews =
        !moves.moved.empty() && moves.moved.front().to > service_.session().instant();
    const QString moved = isNews ? text_.moved(moves) : QString();
    said_->setText(kept.isEmpty() || moved.isEmpty() ? kept + moved : kept + u' ' + moved);
    said_->setVisible(!said_->text().isEmpty());
}

void CookAlongView::showOffers() {
    const auto& gains = service_.gains();
    const bool offers = !gains.empty() && !gains.front().keys.empty();
    if (offers) {
        leaveOut_->setAct(tr("L  %1").arg(text_.gainAct(gains.front())));
    }
    leaveOut_->show(offers ? text_.gain(gains.front()) : QString());
    later_->show(service_.isBehind() ? text_.serveLater(service_.outlook()) : QString());
}

void CookAlongView::showAlarms() {
    const auto ringing = live::ringingTimers(service_.service());
    if (ringing.size() != alarms().size()) {
        movedAt_ = service_.sinceBoot();
    }
    while (bars_.size() < ringing.size()) {
        auto* bar = new AlarmBar(this);
        alarmColumn_->addWidget(bar);
        connect(bar, &AlarmBar::stopWanted, this, [this, bar] {
            if (!isSecondTouch() && !hasJustMoved()) {
                stop(live::Timer(bar->timer()));
            }
        });
        bars_.push_back(bar);
    }
    for (std::size_t i = 0; i < bars_.size(); ++i) {
        if (i < ringing.size()) {
            bars_[i]->show(ringing[i], service_.service().work(ringing[i].key).bellNumber,
                           text_.alarm(ringing[i]), text_.rangLate(ringing[i]));
        }
        bars_[i]->setVisible(i < ringing.size());
    }
}

/// What wants the cook first, longest due first; then what runs, soonest first. Where nothing is to
/// be begun, what comes next may be begun early.
std::vector<PlacementKey> CookAlongView::keysNow() const {
    const Instant now = service_.session().instant();
    std::vector<std::tuple<bool, Instant, PlacementKey>> found;
    for (const auto& [key, work] : service_.service().works()) {
        if (work.stage == live::Stage::Running) {
            found.emplace_back(work.cueAt > now, work.cueAt, key);
        } else if (work.stage == live::Stage::Waiting && service_.dueAt(key) <= now) {
            found.emplace_back(false, service_.dueAt(key), key);
        }
    }
    std::ranges::sort(found);
    std::vector<PlacementKey> keys;
    bool anyWaits = false;
    for (auto& [calm, at, key] : found) {
        anyWaits |= service_.service().work(key).stage == live::Stage::Waiting;
        keys.push_back(std::move(key));
    }
    if (const auto next = keysNext(); !anyWaits && !next.empty()) {
        keys.push_back(next.front());
    }
    return keys;
}

std::vector<PlacementKey> CookAlongView::keysNext() const {
    const Instant now = service_.session().instant();
    std::vector<std::pair<Instant, PlacementKey>> found;
    for (const auto& [key, work] : service_.service().works()) {
        if (work.stage == live::Stage::Waiting && service_.dueAt(key) > now) {
            found.emplace_back(service_.dueAt(key), key);
        }
    }
    std::ranges::sort(found);
    std::vector<PlacementKey> keys;
    for (std::size_t i = 0; i < std::min(found.size(), mostNext); ++i) {
        keys.push_back(found[i].second);
    }
    return keys;
}

StepCardView* CookAlongView::newCard() {
    auto* view = new StepCardView(this);
    view->setLook(LiveColours::of(isDark(*this)), liveScale(size()));
    cardColumn_->insertWidget(static_cast<int>(views_.size()), view);
    connect(view, &StepCardView::pressed, this, [this, view](CardPress it) {
        if (!hasJustMoved()) {
            press(PlacementKey(view->card().key), it);
        }
    });
    connect(view, &StepCardView::chosen, this, [this, view] {
        setFocus();
        choose(PlacementKey(view->card().key));
    });
    views_.push_back(view);
    return view;
}

void CookAlongView::showCards() {
    const auto keys = keysNow();
    if (!chosen_ || std::ranges::find(keys, *chosen_) == keys.end()) {
        chosen_ = keys.empty() ? std::nullopt : std::optional(keys.front());
    }
    while (views_.size() < keys.size()) {
        newCard();
    }
    if (keys != shown_) {
        shown_ = keys;
        movedAt_ = service_.sinceBoot();
    }
    // Where they have no room in full, only the chosen one is shown in full.
    const bool tight = static_cast<double>(keys.size()) * heightOfACard * liveScale(size()) >
                       scroll_->viewport()->height();
    const Instant now = service_.session().instant();
    for (std::size_t i = 0; i < views_.size(); ++i) {
        if (i < keys.size()) {
            const bool chosen = chosen_ == keys[i];
            views_[i]->show(text_.card(keys[i], service_.dueAt(keys[i]), now), chosen,
                            tight && !chosen);
            if (chosen) {
                scroll_->ensureWidgetVisible(views_[i], 0, 0);
            }
        }
        views_[i]->setVisible(i < keys.size());
    }
    nothing_->setVisible(keys.empty());
}

void CookAlongView::showNext() {
    auto keys = keysNext();
    std::erase_if(keys, [this](const PlacementKey& key) {
        return std::ranges::find(shown_, key) != shown_.end();
    });
    const Instant now = service_.session().instant();
    for (std::size_t i = 0; i < next_.size(); ++i) {
        if (i < keys.size()) {
            const StepCard card = text_.card(keys[i], service_.dueAt(keys[i]), now);
            next_[i]->setText(tr("%1: %2").arg(card.figure, card.name));
        }
        next_[i]->setVisible(i < keys.size());
    }
}

void CookAlongView::showQuestion() {
    const auto doubt = service_.session().doubt();
    if (doubt && !question_->isVisibleTo(this)) {
        const Clock clock(context_.lesson.head, locale_);
        questionTime_->setTime(clock.moment(service_.session().instant()).time());
        questionText_->setText(
            *doubt == live::ClockDoubt::Backwards
                ? tr("The computer’s clock went back while it was off, so timers stand still. What "
                     "time is it?")
                : tr("More than a day has passed by the computer’s clock, so timers stand still. "
                     "What time is it?"));
    }
    question_->setVisible(doubt.has_value());
}

void CookAlongView::applyLook() {
    const double scale = liveScale(size());
    const LiveColours& colours = LiveColours::of(isDark(*this));
    const QString sheet = liveStyleSheet(colours, scale);
    if (sheet != styleSheet()) {
        setStyleSheet(sheet);
        for (StepCardView* view : views_) {
            view->setLook(colours, scale);
        }
        range_->setEnlarged(std::max(1.0, scale * 1.5));
    }
}

void CookAlongView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    applyLook();
}

void CookAlongView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && range_ != nullptr) {
        applyLook();
    }
}

std::vector<StepCardView*> CookAlongView::cards() const {
    std::vector<StepCardView*> found;
    std::ranges::copy_if(views_, std::back_inserter(found),
                         [this](const StepCardView* view) { return view->isVisibleTo(this); });
    return found;
}

std::vector<AlarmBar*> CookAlongView::alarms() const {
    std::vector<AlarmBar*> found;
    std::ranges::copy_if(bars_, std::back_inserter(found),
                         [this](const AlarmBar* bar) { return bar->isVisibleTo(this); });
    return found;
}

}  // namespace rangeline
