#include "print/text_flow.h"

#include <algorithm>
#include <numeric>

#include "timeline/place_text.h"

namespace rangeline {
namespace {

constexpr double columnGap = 10;
constexpr double rowGap = 2.5;
constexpr double ruleWidth = 0.5;
constexpr double markedRuleWidth = 1.2;

}  // namespace

TextFlow::TextFlow(const TextMeasure& measure, const QRectF& body, std::function<Picture()> newPage)
    : measure_(measure), body_(body), newPage_(std::move(newPage)), y_(body.bottom()) {}

void TextFlow::startPage() {
    pages_.push_back(newPage_());
    y_ = body_.top();
}

void TextFlow::need(double height) {
    if (pages_.empty() || y_ + height > body_.bottom()) {
        startPage();
    }
}

void TextFlow::space(double height) {
    y_ += height;
}

void TextFlow::figure(double height,
                      const std::function<void(Picture& page, const QRectF& room)>& paint) {
    need(height);
    paint(pages_.back(), QRectF(body_.left(), y_, body_.width(), height));
    y_ += height;
}

void TextFlow::line(const QString& text, FontRole font, double left) {
    const double height = measure_.lineHeight(font);
    need(height);
    addText(measure_, pages_.back(), Part::Page, -1, {text, {}, font, Colour::Ink},
            QRectF(left, y_, body_.right() - left, height));
    y_ += height;
}

void TextFlow::heading(const QString& text, int lines) {
    const bool first = pages_.empty() || y_ <= body_.top();
    const double above = first ? 0 : measure_.lineHeight(FontRole::Heading) * 0.7;
    const double whole = above + measure_.lineHeight(FontRole::Heading) +
                         lines * measure_.lineHeight(FontRole::Body);
    if (pages_.empty() || y_ + whole > body_.bottom()) {
        startPage();
    } else {
        y_ += above;
    }
    line(measure_.fitted(FontRole::Heading, text, body_.width()), FontRole::Heading, body_.left());
    y_ += rowGap;
}

void TextFlow::paragraph(const QString& text, FontRole font, double indent) {
    const double left = body_.left() + indent;
    const std::vector<QString> lines = measure_.wrapped(font, text, body_.right() - left);
    // Two lines together at least, so that none stands alone at a page's foot.
    need(measure_.lineHeight(font) * static_cast<double>(std::min<std::size_t>(2, lines.size())));
    for (const QString& it : lines) {
        line(it, font, left);
    }
    y_ += rowGap;
}

double TextFlow::widthOf(const std::vector<TableColumn>& columns, const TableColumn& column) const {
    const double shares =
        std::accumulate(columns.begin(), columns.end(), 0.0,
                        [](double sum, const TableColumn& each) { return sum + each.share; });
    const double gaps = columnGap * static_cast<double>(columns.size() - 1);
    return (body_.width() - gaps) * column.share / shares;
}

TextFlow::Cells TextFlow::wrap(const std::vector<TableColumn>& columns,
                               const std::vector<QString>& row) const {
    Cells cells;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        cells.push_back(measure_.wrapped(columns[i].font, row[i], widthOf(columns, columns[i])));
    }
    return cells;
}

double TextFlow::heightOf(const std::vector<TableColumn>& columns, const Cells& cells) const {
    double height = 0;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        height = std::max(
            height, measure_.lineHeight(columns[i].font) * static_cast<double>(cells[i].size()));
    }
    return height + 2 * rowGap;
}

TextFlow::Cells TextFlow::titlesOf(const std::vector<TableColumn>& columns) const {
    Cells titles;
    for (const TableColumn& column : columns) {
        titles.push_back(
            measure_.wrapped(FontRole::BodyStrong, column.title, widthOf(columns, column)));
    }
    return titles;
}

double TextFlow::headHeight(const Cells& titles) const {
    std::size_t most = 1;
    for (const std::vector<QString>& lines : titles) {
        most = std::max(most, lines.size());
    }
    return measure_.lineHeight(FontRole::BodyStrong) * static_cast<double>(most) + rowGap;
}

void TextFlow::tableHead(const std::vector<TableColumn>& columns, const Cells& titles) {
    const double lineHeight = measure_.lineHeight(FontRole::BodyStrong);
    const double bottom = y_ + headHeight(titles) - rowGap;
    double left = body_.left();
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const double width = widthOf(columns, columns[i]);
        double top = bottom - lineHeight * static_cast<double>(titles[i].size());
        for (const QString& text : titles[i]) {
            addText(measure_, pages_.back(), Part::Page, -1,
                    {text, {}, FontRole::BodyStrong, Colour::Ink},
                    QRectF(left, top, width, lineHeight));
            top += lineHeight;
        }
        left += width + columnGap;
    }
    y_ = bottom + rowGap;
}

void TextFlow::tableRule(const std::vector<TableColumn>& columns, const Cells& cells) {
    bool marked = false;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        marked = marked || (columns[i].kind == CellKind::Mark && !cells[i].empty() &&
                            !cells[i].front().isEmpty());
    }
    pages_.back().push_back({LineShape{{body_.left(), y_},
                                       {body_.right(), y_},
                                       marked ? Colour::Ink : Colour::GridStrong,
                                       marked ? markedRuleWidth : ruleWidth},
                             Part::Page});
}

void TextFlow::tableCell(const TableColumn& column, const std::vector<QString>& lines,
                         const QRectF& room) {
    Picture& page = pages_.back();
    const double height = measure_.lineHeight(column.font);
    BoxShape box;
    box.outline = Colour::Outline;
    box.outlineWidth = ruleWidth;
    if (column.kind == CellKind::Tick) {
        const double size = std::min(height * 0.75, room.width());
        box.rect = QRectF(room.left(), room.top() + (height - size) / 2, size, size);
        page.push_back({box, Part::Page});
        return;
    }
    if (column.kind == CellKind::Blank) {
        box.rect = room;
        page.push_back({box, Part::Page});
        return;
    }
    double top = room.top();
    for (const QString& text : lines) {
        addText(measure_, page, Part::Page, -1, {text, {}, column.font, Colour::Ink},
                QRectF(room.left(), top, room.width(), height));
        top += height;
    }
}

void TextFlow::tableRow(const std::vector<TableColumn>& columns, const Cells& cells) {
    tableRule(columns, cells);
    const double height = heightOf(columns, cells);
    double left = body_.left();
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const double width = widthOf(columns, columns[i]);
        tableCell(columns[i], cells[i], QRectF(left, y_ + rowGap, width, height - 2 * rowGap));
        left += width + columnGap;
    }
    y_ += height;
}

void TextFlow::table(const std::vector<TableColumn>& columns,
                     const std::vector<std::vector<QString>>& rows) {
    const Cells titles = titlesOf(columns);
    const double head = headHeight(titles);
    bool headed = false;
    for (const std::vector<QString>& row : rows) {
        const Cells cells = wrap(columns, row);
        const double height = heightOf(columns, cells);
        if (pages_.empty() || y_ + height + (headed ? 0 : head) > body_.bottom()) {
            startPage();
            headed = false;
        }
        if (!headed) {
            tableHead(columns, titles);
            headed = true;
        }
        tableRow(columns, cells);
    }
}

}  // namespace rangeline
