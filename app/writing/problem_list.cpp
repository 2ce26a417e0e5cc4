#include "writing/problem_list.h"

#include <QKeyEvent>
#include <QPainter>
#include <QResizeEvent>
#include <QStyle>

namespace rangeline {

ProblemList::ProblemList(QWidget* parent) : QListWidget(parent) {
    setAccessibleName(tr("What is missing or wrong"));
    setToolTip(tr("Click a line, or press Enter on it, to go there"));
    setWordWrap(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(this, &QListWidget::itemClicked, this,
            [this](QListWidgetItem* line) { go(row(line)); });
}

void ProblemList::show(std::vector<Problem> problems) {
    if (problems != problems_) {
        problems_ = std::move(problems);
        clear();
        for (const Problem& problem : problems_) {
            const auto mark =
                problem.caution ? QStyle::SP_MessageBoxInformation : QStyle::SP_MessageBoxWarning;
            addItem(new QListWidgetItem(style()->standardIcon(mark), problem.text));
        }
    }
    fit();
    viewport()->update();
}

void ProblemList::fit() {
    constexpr int most = 4;  // the others are scrolled to
    constexpr double oneLine = 1.8;
    int high = static_cast<int>(oneLine * fontMetrics().height());
    if (isVisible() && count() > 0) {  // else its width is not known yet
        high = std::max(high, visualItemRect(item(std::min(count(), most) - 1)).bottom() + 1 -
                                  visualItemRect(item(0)).top());
    }
    high_ = std::max(high_, high);
    setFixedHeight(high_ + 2 * frameWidth());
}

void ProblemList::showEvent(QShowEvent* event) {
    QListWidget::showEvent(event);
    fit();
}

void ProblemList::resizeEvent(QResizeEvent* event) {
    QListWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) {
        high_ = 0;
        fit();
    }
}

void ProblemList::go(int row) {
    if (row >= 0 && row < static_cast<int>(problems_.size())) {
        const Problem problem = problems_[static_cast<std::size_t>(row)];
        Q_EMIT wanted(problem);
    }
}

void ProblemList::paintEvent(QPaintEvent* event) {
    QListWidget::paintEvent(event);
    if (count() == 0) {
        QPainter painter(viewport());
        painter.setPen(palette().color(QPalette::PlaceholderText));
        painter.drawText(viewport()->rect().adjusted(fontMetrics().height() / 2, 0, 0, 0),
                         Qt::AlignVCenter | Qt::AlignLeft, tr("Nothing is missing."));
    }
}

void ProblemList::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        go(currentRow());
    } else {
        QListWidget::keyPressEvent(event);
    }
}

}  // namespace rangeline
