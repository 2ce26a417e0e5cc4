#pragma once
// What stands on every page: head, foot and page number.

#include "print/page_layout.h"
#include "timeline/primitives.h"
#include "timeline/text_measure.h"

namespace rangeline {

/// References must outlive the frame.
class PageFrame {
  public:
    PageFrame(const PageLayout& layout, const TextMeasure& measure, QString title, QString facts);

    /// Between head and foot.
    QRectF body() const;
    void addHead(Picture& page) const;
    /// Requires 1 <= number <= pages.
    void addFoot(Picture& page, const QString& note, int number, int pages) const;

  private:
    QRectF frame_;
    const TextMeasure& measure_;
    QString title_;
    std::vector<QString> facts_;  ///< in lines
};

}  // namespace rangeline
