#include "writing/problem_list.h"

#include <QKeyEvent>
#include <QPainter>
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
    constexpr int most = 4;  // lines; the others are scrolled to
    lines_ = std::max(lines_, std::min(count(), most));
    constexpr double lineHigh = 1.8;  // wrapped ones have room, too
    setFixedHeight(static_cast<int>(lines_ * lineHigh * fontMetrics().height()) + 2 * frameWidth());
    viewport()->update();
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
