#include "print/dialog/page_preview.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <algorithm>

#include "print/pdf_writer.h"
#include "timeline/primitives_qt.h"

namespace rangeline {
namespace {

constexpr double gap = 14;
/// Wider pages only look coarse.
constexpr double mostPixelsInPoint = 1.6;

}  // namespace

PagePreview::PagePreview(QWidget* parent) : QAbstractScrollArea(parent) {
    setAccessibleName(tr("Preview of the pages"));
    setFocusPolicy(Qt::StrongFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    // Always there, so that pages do not change their size when it comes and goes.
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
}

void PagePreview::setSheets(std::vector<PrintedSheet> sheets) {
    sheets_ = std::move(sheets);
    setAccessibleDescription(tr("Pages: %1").arg(pageCount(sheets_)));
    layOut();
    viewport()->update();
}

void PagePreview::layOut() {
    pages_.clear();
    const double room = std::max(viewport()->width() - 2 * gap, 50.0);
    double top = gap;
    for (std::size_t sheet = 0; sheet < sheets_.size(); ++sheet) {
        const QSizeF paper = sheets_[sheet].layout.size();
        const double scale = std::min(room / paper.width(), mostPixelsInPoint);
        for (std::size_t page = 0; page < sheets_[sheet].pages.pages.size(); ++page) {
            const QSizeF size = paper * scale;
            pages_.push_back(
                {sheet, page, QRectF(QPointF(gap + (room - size.width()) / 2, top), size)});
            top += size.height() + gap;
        }
    }
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setSingleStep(40);
    verticalScrollBar()->setRange(0, std::max(0, static_cast<int>(top) - viewport()->height()));
}

void PagePreview::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    painter.fillRect(viewport()->rect(), palette().color(QPalette::Mid));
    const double offset = verticalScrollBar()->value();
    for (const Page& page : pages_) {
        const QRectF rect = page.rect.translated(0, -offset);
        if (!rect.intersects(viewport()->rect())) {
            continue;
        }
        const PrintedSheet& sheet = sheets_[page.sheet];
        painter.fillRect(rect, Qt::white);
        painter.save();
        painter.setClipRect(rect);
        painter.translate(rect.topLeft());
        // Measured for paper, so that it is exactly what is printed, made smaller as a whole.
        const double smaller = rect.width() / sheet.layout.size().width() / pixelsPerPoint;
        painter.scale(smaller, smaller);
        painter.setRenderHint(QPainter::Antialiasing);
        play(sheet.pages.pages[page.page], painter, Palette::greyPrint(),
             QtFonts(sheet.pages.style, pixelsPerPoint));
        painter.restore();
    }
    if (hasFocus()) {
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
        painter.drawRect(viewport()->rect().adjusted(1, 1, -1, -1));
    }
}

void PagePreview::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    layOut();
}

void PagePreview::keyPressEvent(QKeyEvent* event) {
    QScrollBar* bar = verticalScrollBar();
    switch (event->key()) {
        case Qt::Key_Home:
            bar->setValue(0);
            break;
        case Qt::Key_End:
            bar->setValue(bar->maximum());
            break;
        case Qt::Key_PageUp:
            bar->triggerAction(QAbstractSlider::SliderPageStepSub);
            break;
        case Qt::Key_PageDown:
            bar->triggerAction(QAbstractSlider::SliderPageStepAdd);
            break;
        default:
            QAbstractScrollArea::keyPressEvent(event);
    }
}

}  // namespace rangeline
