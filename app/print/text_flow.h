#pragma once
// Headings, paragraphs and tables that run over as many pages as they need.

#include <cstdint>
#include <functional>
#include <vector>

#include "timeline/primitives.h"
#include "timeline/text_measure.h"

namespace rangeline {

enum class CellKind : std::uint8_t {
    Text,
    Mark,   ///< text; where there is any, the row begins with a heavier rule
    Tick,   ///< a box to tick
    Blank,  ///< a box to write in
};

struct TableColumn {
    QString title;
    double share = 1;  ///< of the width, against the other columns' shares
    FontRole font = FontRole::Body;
    CellKind kind = CellKind::Text;
};

class TextFlow {
  public:
    /// `newPage` gives an empty page with its head. Both outlive the flow.
    TextFlow(const TextMeasure& measure, const QRectF& body, std::function<Picture()> newPage);

    /// Keeps at least `lines` lines of what follows on the same page.
    void heading(const QString& text, int lines = 2);
    void paragraph(const QString& text, FontRole font = FontRole::Body, double indent = 0);
    /// The titles are repeated on every page. Rows stay whole.
    void table(const std::vector<TableColumn>& columns,
               const std::vector<std::vector<QString>>& rows);
    void space(double height);
    /// A picture of that height over the whole width, all of it on one page.
    void figure(double height, const std::function<void(Picture& page, const QRectF& room)>& paint);
    /// What is left of the page; all of it before the first thing.
    double roomLeft() const { return pages_.empty() ? body_.height() : body_.bottom() - y_; }
    /// What follows begins on a new page, if there is anything yet.
    void breakPage() { y_ = body_.bottom(); }

    std::vector<Picture> takePages() { return std::move(pages_); }

  private:
    using Cells = std::vector<std::vector<QString>>;  ///< lines of each column

    void need(double height);
    void startPage();
    void line(const QString& text, FontRole font, double left);
    Cells wrap(const std::vector<TableColumn>& columns, const std::vector<QString>& row) const;
    double heightOf(const std::vector<TableColumn>& columns, const Cells& cells) const;
    void tableRule(const std::vector<TableColumn>& columns, const Cells& cells);
    void tableCell(const TableColumn& column, const std::vector<QString>& lines,
                   const QRectF& room);
    Cells titlesOf(const std::vector<TableColumn>& columns) const;
    double headHeight(const Cells& titles) const;
    void tableHead(const std::vector<TableColumn>& columns, const Cells& titles);
    void tableRow(const std::vector<TableColumn>& columns, const Cells& cells);
    double widthOf(const std::vector<TableColumn>& columns, const TableColumn& column) const;

    const TextMeasure& measure_;
    QRectF body_;
    std::function<Picture()> newPage_;
    std::vector<Picture> pages_;
    double y_ = 0;
};

}  // namespace rangeline
