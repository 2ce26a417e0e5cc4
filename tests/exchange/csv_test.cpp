#include "exchange/csv.h"

#include <gmock/gmock.h>

namespace rangeline {
namespace {

std::string cell(const std::string& text) {
    const std::string all = writeCsv({{text}});
    return all.substr(3, all.size() - 5);  // without the mark and the line's end
}

TEST(Csv, BeginsWithTheMarkAndEndsRowsAsTheStandardSays) {
    EXPECT_EQ(writeCsv({{"a", "b"}, {"1", ""}}),
              "\xEF\xBB\xBF"
              "a,b\r\n1,\r\n");
}

TEST(Csv, QuotesWhatWouldBreakACell) {
    EXPECT_EQ(cell("salt, coarse"), "\"salt, coarse\"");
    EXPECT_EQ(cell("1\" dice"), "\"1\"\" dice\"");
    EXPECT_EQ(cell("two\nlines"), "\"two\nlines\"");
}

TEST(Csv, KeepsASpreadsheetFromRunningACellAsAFormula) {
    EXPECT_EQ(cell("=1+1"), "'=1+1");
    EXPECT_EQ(cell("@sum(a1)"), "'@sum(a1)");
    EXPECT_EQ(cell("+1 egg"), "'+1 egg");
    EXPECT_EQ(cell("-2+3"), "'-2+3");
    EXPECT_EQ(cell("\t=1"), "'\t=1");
}

TEST(Csv, LeavesNumbersNumbers) {
    EXPECT_EQ(cell("-12.5"), "-12.5");
    EXPECT_EQ(cell("+3"), "+3");
    EXPECT_EQ(cell("-"), "'-");
    EXPECT_EQ(cell("-1.2.3"), "'-1.2.3");
}

}  // namespace
}  // namespace rangeline
