#include "exchange/csv.h"

#include <algorithm>
#include <cctype>
#include <string_view>

namespace rangeline {
namespace {

constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";

bool isNumber(std::string_view cell) {
    if (cell.starts_with('-') || cell.starts_with('+')) {
        cell.remove_prefix(1);
    }
    const bool digits = std::ranges::all_of(
        cell, [](unsigned char letter) { return std::isdigit(letter) != 0 || letter == '.'; });
    return digits && !cell.empty() && cell != "." && std::ranges::count(cell, '.') <= 1;
}

bool looksLikeFormula(const std::string& cell) {
    constexpr std::string_view openers = "=+-@\t\r";
    return !cell.empty() && openers.find(cell.front()) != std::string_view::npos && !isNumber(cell);
}

void addCell(std::string& out, const std::string& cell) {
    const std::string text = looksLikeFormula(cell) ? '\'' + cell : cell;
    if (text.find_first_of(",\"\r\n") == std::string::npos) {
        out += text;
        return;
    }
    out += '"';
    for (const char letter : text) {
        out.append(letter == '"' ? 2 : 1, letter);
    }
    out += '"';
}

}  // namespace

std::string writeCsv(const std::vector<CsvRow>& rows) {
    std::string out(byteOrderMark);
    for (const CsvRow& row : rows) {
        for (std::size_t i = 0; i < row.size(); ++i) {
            out += i == 0 ? "" : ",";
            addCell(out, row[i]);
        }
        out += "\r\n";
    }
    return out;
}

}  // namespace rangeline
