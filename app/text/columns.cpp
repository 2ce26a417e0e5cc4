#include "text/columns.h"

#include <algorithm>
#include <array>

namespace rangeline {

namespace {

constexpr int gap = 2;
constexpr int leastWrapping = 8;

/// Blocks that terminals show two cells wide (Unicode East Asian Width W and F, main blocks).
bool isWide(char32_t c) {
    struct Block {
        char32_t first, last;
    };
    static constexpr std::array<Block, 10> blocks{{{0x1100, 0x115F},
                                                   {0x2E80, 0x303E},
                                                   {0x3041, 0x33FF},
                                                   {0x3400, 0x4DBF},
                                                   {0x4E00, 0x9FFF},
                                                   {0xAC00, 0xD7A3},
                                                   {0xF900, 0xFAFF},
                                                   {0xFF00, 0xFF60},
                                                   {0x1F300, 0x1FAFF},
                                                   {0x20000, 0x3FFFD}}};
    return std::ranges::any_of(blocks, [c](const Block& b) { return b.first <= c && c <= b.last; });
}

int cellsOf(char32_t c) {
    switch (QChar::category(c)) {
        case QChar::Mark_NonSpacing:
        case QChar::Mark_Enclosing:
        case QChar::Other_Format:
        case QChar::Other_Control:
            return 0;
        default:
            return isWide(c) ? 2 : 1;
    }
}

/// How many UTF-16 units fit into `width` cells; at least one letter.
qsizetype fitting(const QString& text, int width) {
    qsizetype units = 0;
    int cells = 0;
    for (const char32_t c : text.toUcs4()) {
        cells += cellsOf(c);
        if (cells > width && units > 0) {
            break;
        }
        units += QChar::requiresSurrogates(c) ? 2 : 1;
    }
    return units;
}

QString padded(const QString& text, int width) {
    return text + QString(std::max(width - displayWidth(text), 0), ' ');
}

/// Fixed columns take what their widest text needs, the others share the rest by need.
std::vector<int> widthsOf(const std::vector<Column>& columns, const std::vector<QStringList>& rows,
                          int width) {
    std::vector<int> widths;
    int left = width - gap * (static_cast<int>(columns.size()) - 1);
    int wanted = 0;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        int widest = displayWidth(columns[i].heading);
        for (const QStringList& row : rows) {
            widest = std::max(widest, displayWidth(row[static_cast<qsizetype>(i)]));
        }
        widths.push_back(widest);
        (columns[i].wraps ? wanted : left) += columns[i].wraps ? widest : -widest;
    }
    for (std::size_t i = 0; i < columns.size() && wanted > std::max(left, 0); ++i) {
        if (columns[i].wraps) {
            const int share = std::max(left, 0) * widths[i] / wanted;
            widths[i] = std::max(share, std::min(widths[i], leastWrapping));
        }
    }
    return widths;
}

QString line(const std::vector<QStringList>& cells, const std::vector<int>& widths,
             qsizetype number) {
    QString text;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        text += padded(cells[i].value(number), widths[i] + gap);
    }
    while (text.endsWith(' ')) {
        text.chop(1);
    }
    return text + '\n';
}

QString rowText(const QStringList& row, const std::vector<int>& widths) {
    std::vector<QStringList> cells;
    qsizetype lines = 1;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        cells.push_back(wrapped(row[static_cast<qsizetype>(i)], std::max(widths[i], 1)));
        lines = std::max(lines, cells.back().size());
    }
    QString text;
    for (qsizetype number = 0; number < lines; ++number) {
        text += line(cells, widths, number);
    }
    return text;
}

}  // namespace

int displayWidth(const QString& text) {
    int cells = 0;
    for (const char32_t c : text.toUcs4()) {
        cells += cellsOf(c);
    }
    return cells;
}

QStringList wrapped(const QString& text, int width) {
    QStringList lines;
    QString current;
    for (QString word : text.simplified().split(' ')) {
        if (!current.isEmpty() && displayWidth(current) + 1 + displayWidth(word) <= width) {
            current += ' ' + word;
            continue;
        }
        if (!current.isEmpty()) {
            lines << current;
        }
        while (displayWidth(word) > width && fitting(word, width) < word.size()) {
            lines << word.first(fitting(word, width));
            word = word.sliced(fitting(word, width));
        }
        current = word;
    }
    return lines << current;
}

QString inColumns(const std::vector<Column>& columns, const std::vector<QStringList>& rows,
                  int width) {
    const std::vector<int> widths = widthsOf(columns, rows, width);
    QStringList headings;
    for (const Column& column : columns) {
        headings << column.heading;
    }
    QString text = rowText(headings, widths);
    for (const QStringList& row : rows) {
        text += rowText(row, widths);
    }
    return text;
}

}  // namespace rangeline
