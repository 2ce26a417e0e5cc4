#include "print/page_frame.h"

#include "print/print_text.h"
#include "timeline/place_text.h"

namespace rangeline {
namespace {

constexpr double gap = 6;

}  // namespace

PageFrame::PageFrame(const PageLayout& layout, const TextMeasure& measure, QString title,
                     QString facts)
    : frame_(layout.frame()),
      measure_(measure),
      title_(std::move(title)),
      facts_(measure.wrapped(FontRole::Body, facts, layout.frame().width())) {}

QRectF PageFrame::body() const {
    const double head = measure_.lineHeight(FontRole::Title) +
                        measure_.lineHeight(FontRole::Body) * static_cast<double>(facts_.size());
    const double foot = measure_.lineHeight(FontRole::Small);
    return frame_.adjusted(0, head + gap, 0, -foot - gap);
}

void PageFrame::addHead(Picture& page) const {
    const double titleHeight = measure_.lineHeight(FontRole::Title);
    const QString title = measure_.fitted(FontRole::Title, title_, frame_.width());
    addText(measure_, page, Part::Page, -1, {title, {}, FontRole::Title, Colour::Ink},
            QRectF(frame_.left(), frame_.top(), frame_.width(), titleHeight));
    double top = frame_.top() + titleHeight;
    for (const QString& line : facts_) {
        const double height = measure_.lineHeight(FontRole::Body);
        addText(measure_, page, Part::Page, -1, {line, {}, FontRole::Body, Colour::Ink},
                QRectF(frame_.left(), top, frame_.width(), height));
        top += height;
    }
}

void PageFrame::addFoot(Picture& page, const QString& note, int number, int pages) const {
    const double height = measure_.lineHeight(FontRole::Small);
    const QRectF row(frame_.left(), frame_.bottom() - height, frame_.width(), height);
    page.push_back({LineShape{row.topLeft(), row.topRight(), Colour::GridStrong, 0.6}, Part::Page});
    const QString count =
        Printed::tr("Page %1 of %2").arg(QString::number(number), QString::number(pages));
    const double countWidth = measure_.width(FontRole::Small, count);
    const QString fitted = measure_.fitted(FontRole::Small, note, row.width() - countWidth - 12);
    addText(measure_, page, Part::Page, -1, {fitted, {}, FontRole::Small, Colour::InkSoft}, row);
    addText(measure_, page, Part::Page, -1,
            {count, {}, FontRole::Small, Colour::InkSoft, Align::Right}, row);
}

}  // namespace rangeline
