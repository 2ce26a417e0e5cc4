#pragma once
// Text in aligned columns for terminals, measured in character cells.

#include <QString>
#include <QStringList>
#include <vector>

namespace rangeline {

/// Cells that a terminal gives the text: none for combining marks, two for wide East Asian letters.
int displayWidth(const QString& text);

/// Broken at spaces into lines no wider than `width` (>= 1); a longer word is cut.
QStringList wrapped(const QString& text, int width);

struct Column {
    QString heading;
    bool wraps = false;  ///< shares what the others leave of the line; else as wide as its widest
};

/// A heading and one or more lines for each row, no wider than `width` as long as every wrapping
/// column keeps eight cells. No spaces at line ends. Each row has a text for each column.
QString inColumns(const std::vector<Column>& columns, const std::vector<QStringList>& rows,
                  int width);

}  // namespace rangeline
