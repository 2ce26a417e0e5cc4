// How the page of cook-along is put together.

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTimeEdit>

#include "cookalong/cook_along_view.h"
#include "cookalong/live_range.h"
#include "cookalong/offer_bar.h"
#include "text/quantities.h"

namespace rangeline {

QLabel* CookAlongView::label(const char* role, bool wraps) {
    auto* made = new QLabel(this);
    made->setProperty("role", QLatin1String(role));
    made->setTextFormat(Qt::PlainText);
    made->setWordWrap(wraps);
    return made;
}

QPushButton* CookAlongView::smallButton(const QString& text) {
    auto* made = new QPushButton(text, this);
    made->setProperty("role", QStringLiteral("small"));
    made->setFocusPolicy(Qt::TabFocus);
    return made;
}

void CookAlongView::buildHead(QVBoxLayout& column) {
    auto* row = new QHBoxLayout;
    headline_ = label("headline");
    clock_ = label("clock", false);
    clock_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    row->addWidget(headline_, 1);
    row->addWidget(clock_);
    column.addLayout(row);
    said_ = label("said");
    column.addWidget(said_);
    leaveOut_ = new OfferBar(tr("L  Leave it out"), this);
    later_ = new OfferBar(tr("P  Plate later"), this);
    connect(leaveOut_, &OfferBar::taken, this, &CookAlongView::leaveOut);
    connect(later_, &OfferBar::taken, this, &CookAlongView::plateLater);
    auto* offers = new QHBoxLayout;
    offers->setSpacing(24);
    offers->addWidget(leaveOut_, 1);
    offers->addWidget(later_, 1);
    column.addLayout(offers);
    alarmColumn_ = new QVBoxLayout;
    alarmColumn_->setSpacing(4);
    column.addLayout(alarmColumn_);
}

void CookAlongView::buildQuestion(QVBoxLayout& column) {
    auto* frame = new QFrame(this);
    frame->setProperty("role", QStringLiteral("question"));
    auto* row = new QHBoxLayout(frame);
    questionText_ = label("said");
    questionTime_ = new QTimeEdit(frame);
    questionTime_->setAccessibleName(tr("What time it is"));
    QPushButton* answer = smallButton(tr("This time it is"));
    row->addWidget(questionText_, 1);
    row->addWidget(questionTime_);
    row->addWidget(answer);
    connect(answer, &QPushButton::clicked, this, [this] {
        const Clock clock(context_.lesson.head, locale_);
        const Instant last = service_.session().instant();
        QDateTime moment = clock.moment(last);
        moment.setTime(questionTime_->time());
        // The service goes on, it does not go back: past midnight it is the next day.
        const qint64 later = clock.moment(last).secsTo(moment);
        constexpr qint64 day = 24 * 3600;
        service_.setClock(
            last + Duration::seconds(later < -60 ? later + day : std::max<qint64>(later, 0)));
        setFocus();
    });
    question_ = frame;
    frame->hide();
    column.addWidget(frame);
}

void CookAlongView::buildBody(QVBoxLayout& column) {
    auto* body = new QHBoxLayout;
    body->setSpacing(14);
    auto* left = new QVBoxLayout;
    QLabel* nowTitle = label("title");
    nowTitle->setText(tr("Now"));
    left->addWidget(nowTitle);
    scroll_ = new QScrollArea(this);
    scroll_->setWidgetResizable(true);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setFocusPolicy(Qt::NoFocus);
    scroll_->installEventFilter(this);
    auto* cards = new QWidget(scroll_);
    cards->setObjectName(QStringLiteral("cards"));
    cardColumn_ = new QVBoxLayout(cards);
    cardColumn_->setContentsMargins(0, 0, 0, 0);
    nothing_ = label("said");
    nothing_->setText(tr("Nothing to do just now."));
    cardColumn_->addWidget(nothing_);
    cardColumn_->addStretch(1);
    scroll_->setWidget(cards);
    left->addWidget(scroll_, 1);
    body->addLayout(left, 5);

    auto* right = new QVBoxLayout;
    QLabel* rangeTitle = label("title");
    rangeTitle->setText(tr("On the range and in the oven"));
    range_ = new LiveRange(service_.service(), locale_, this);
    right->addWidget(rangeTitle);
    right->addWidget(range_, 1);
    QLabel* nextTitle = label("title");
    nextTitle->setText(tr("Next"));
    right->addWidget(nextTitle);
    constexpr int rows = 4;
    for (int i = 0; i < rows; ++i) {
        next_.push_back(label("next"));
        right->addWidget(next_.back());
    }
    body->addLayout(right, 3);
    column.addLayout(body, 1);
}

void CookAlongView::buildFoot(QVBoxLayout& column) {
    auto* row = new QHBoxLayout;
    QLabel* hint = label("title");
    hint->setText(
        tr("Up and down choose a card; its letters are its keys. 1 to 9 stop the alarm "
           "of that number."));
    QPushButton* end = smallButton(tr("End the service ..."));
    QPushButton* leave = smallButton(tr("Close"));
    connect(end, &QPushButton::clicked, this, &CookAlongView::endWanted);
    connect(leave, &QPushButton::clicked, this, &QWidget::close);
    row->addWidget(hint, 1);
    row->addWidget(end);
    row->addWidget(leave);
    column.addLayout(row);
}

}  // namespace rangeline
