#include "cookalong/step_card_view.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

namespace rangeline {
namespace {

constexpr double widthAlone = 110;  // of the only button of a compact card, at scale 1

QLabel* label(const char* role, QWidget* parent) {
    auto* made = new QLabel(parent);
    made->setProperty("role", QLatin1String(role));
    made->setTextFormat(Qt::PlainText);
    return made;
}

QString wordOf(CardPress press) {
    switch (press) {
        case CardPress::Started:
            return StepCardView::tr("Started");
        case CardPress::Done:
            return StepCardView::tr("Done");
        case CardPress::MoreTime:
            return StepCardView::tr("5 more minutes");
        case CardPress::NotReady:
            return StepCardView::tr("Not ready yet");
        case CardPress::Skip:
            return StepCardView::tr("Skip");
    }
    return {};
}

}  // namespace

Qt::Key keyOf(CardPress press) {
    constexpr std::array keys{Qt::Key_S, Qt::Key_D, Qt::Key_M, Qt::Key_N, Qt::Key_K};
    return keys[static_cast<std::size_t>(press)];
}

StepCardView::StepCardView(QWidget* parent) : QFrame(parent) {
    all_ = new QBoxLayout(QBoxLayout::TopToBottom, this);
    auto* top = new QHBoxLayout;
    mark_ = new QWidget(this);
    auto* words = new QVBoxLayout;
    name_ = label("name", this);
    where_ = label("where", this);
    state_ = label("state", this);
    figure_ = label("figure", this);
    figure_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    for (QLabel* each : {name_, where_, state_}) {
        each->setWordWrap(true);
        words->addWidget(each);
    }
    words->setSpacing(0);
    top->addWidget(mark_);
    top->addLayout(words, 1);
    top->addWidget(figure_);
    all_->addLayout(top, 1);
    auto* row = new QHBoxLayout;
    for (const CardPress press : cardPresses) {
        auto* button = new QPushButton(this);
        button->setFocusPolicy(Qt::TabFocus);
        connect(button, &QPushButton::clicked, this, [this, press] { Q_EMIT pressed(press); });
        row->addWidget(button,
                       press == CardPress::MoreTime || press == CardPress::NotReady ? 3 : 2);
        buttons_[static_cast<std::size_t>(press)] = button;
    }
    all_->addLayout(row);
}

void StepCardView::setLook(const LiveColours& colours, double scale) {
    colours_ = colours;
    scale_ = scale;
    const int inset = static_cast<int>(10 * scale);
    layout()->setContentsMargins(inset + static_cast<int>(8 * scale), inset, inset, inset);
    layout()->setSpacing(static_cast<int>(8 * scale));
    mark_->setFixedWidth(static_cast<int>(44 * scale));
    update();
}

void StepCardView::show(const StepCard& card, bool chosen, bool compact) {
    card_ = card;
    chosen_ = chosen;
    name_->setText(card.name);
    where_->setText(card.cue.isEmpty()     ? card.where
                    : card.where.isEmpty() ? card.cue
                                           : tr("%1 – %2").arg(card.where, card.cue));
    where_->setVisible(!where_->text().isEmpty());
    state_->setText(card.bellNumber > 0
                        ? tr("%1. Alarm %2").arg(card.stateText).arg(card.bellNumber)
                        : card.stateText);
    state_->setVisible(!compact);
    all_->setDirection(compact ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    figure_->setText(card.figure);
    setAccessibleName(tr("%1, %2, %3").arg(card.name, card.stateText, card.figure));
    setAccessibleDescription(where_->text());
    showButtons(compact);
    update();
}

void StepCardView::showButtons(bool onlyUsual) {
    const bool waits = card_.state == CardState::Due || card_.state == CardState::Later;
    const CardPress usual = waits ? CardPress::Started : CardPress::Done;
    for (const CardPress press : cardPresses) {
        QPushButton* it = button(press);
        const QString key = QKeySequence(keyOf(press)).toString(QKeySequence::NativeText);
        it->setText(chosen_ ? tr("%1  %2").arg(key, wordOf(press)) : wordOf(press));
        it->setAccessibleName(tr("%1: %2").arg(wordOf(press), card_.name));
        it->setVisible(onlyUsual ? press == usual : press != CardPress::Started || waits);
        if (it->property("usual").toBool() != (press == usual)) {
            it->setProperty("usual", press == usual);
            it->setStyleSheet(it->styleSheet());  // the rule for the property is looked at anew
        }
        const int alone = qRound(widthAlone * scale_);
        it->setMinimumWidth(onlyUsual ? std::max(alone, it->minimumSizeHint().width()) : 0);
    }
}

QColor StepCardView::stateColour() const {
    switch (card_.state) {
        case CardState::Later:
            return colours_.line;
        case CardState::Due:
            return colours_.due;
        case CardState::Runs:
            return colours_.runs;
        case CardState::Look:
        case CardState::Rings:
            return colours_.look;
    }
    return colours_.line;
}

/// A shape of its own for each state: an arrow to start, a ring that runs, a filled disc to look
/// at, a bell that rings.
void StepCardView::paintMark(QPainter& painter, const QRectF& box) const {
    const QColor colour = stateColour();
    const QPointF c = box.center();
    const double r = box.width() / 2;
    painter.setPen(QPen(colour, r / 4));
    painter.setBrush(Qt::NoBrush);
    QPainterPath path;
    switch (card_.state) {
        case CardState::Later:
        case CardState::Due:
            path.moveTo(c.x() - r * 0.6, c.y() - r * 0.8);
            path.lineTo(c.x() + r * 0.8, c.y());
            path.lineTo(c.x() - r * 0.6, c.y() + r * 0.8);
            path.closeSubpath();
            painter.fillPath(path, colour);
            break;
        case CardState::Runs:
            painter.drawEllipse(c, r * 0.75, r * 0.75);
            painter.drawLine(c, c + QPointF(0, -r * 0.5));
            painter.drawLine(c, c + QPointF(r * 0.35, 0));
            break;
        case CardState::Look:
            painter.setBrush(colour);
            painter.drawEllipse(c, r * 0.7, r * 0.7);
            break;
        case CardState::Rings:
            path.moveTo(c.x() - r * 0.8, c.y() + r * 0.5);
            path.quadTo(c.x() - r * 0.45, c.y() + r * 0.2, c.x() - r * 0.45, c.y() - r * 0.25);
            path.quadTo(c.x() - r * 0.35, c.y() - r * 0.85, c.x(), c.y() - r * 0.85);
            path.quadTo(c.x() + r * 0.35, c.y() - r * 0.85, c.x() + r * 0.45, c.y() - r * 0.25);
            path.quadTo(c.x() + r * 0.45, c.y() + r * 0.2, c.x() + r * 0.8, c.y() + r * 0.5);
            path.closeSubpath();
            painter.fillPath(path, colour);
            painter.setBrush(colour);
            painter.setPen(Qt::NoPen);
            painter.drawEllipse(QPointF(c.x(), c.y() + r * 0.72), r * 0.2, r * 0.2);
            break;
    }
}

void StepCardView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double edge = (chosen_ ? 4 : 1.5) * scale_;
    const QRectF box = QRectF(rect()).adjusted(edge / 2, edge / 2, -edge / 2, -edge / 2);
    painter.setPen(QPen(chosen_ ? colours_.chosen : colours_.line, edge));
    painter.setBrush(colours_.panel);
    painter.drawRect(box);
    painter.fillRect(QRectF(edge, edge, 8 * scale_, height() - 2 * edge), stateColour());
    const double size = 36 * scale_;
    const QRect place = mark_->geometry();
    paintMark(painter, QRectF(place.left(), place.top() + 4 * scale_, size, size));
}

void StepCardView::mousePressEvent(QMouseEvent*) {
    Q_EMIT chosen();
}

}  // namespace rangeline
