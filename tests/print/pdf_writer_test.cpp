#include "print/pdf_writer.h"

#include <gmock/gmock.h>

#include <QFile>
#include <QImage>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <algorithm>
#include <cmath>

#include "print/print_lessons.h"
#include "print/sheets.h"
#include "print/station_timeline_sheet.h"

namespace rangeline {
namespace {

using ::testing::HasSubstr;

/// The station timeline of a disturbed lesson of twenty steps on A4, as a file.
class Pdf : public ::testing::Test {
  protected:
    void SetUp() override {
        ASSERT_TRUE(dir_.isValid());
        const SheetPages sheet = makeStationTimeline(prepared_->input(), {layout_});
        pages_ = sheet.pages.size();
        ASSERT_FALSE(savePdf(path(), sheet, layout_));
    }

    std::string path() const { return dir_.filePath("timeline.pdf").toStdString(); }

    /// What the program says about the file; empty, and the test skipped, if it is not installed.
    std::string asked(const QString& program, QStringList arguments) const {
        if (QStandardPaths::findExecutable(program).isEmpty()) {
            return {};
        }
        QProcess process;
        process.start(program, arguments);
        process.waitForFinished();
        return process.readAllStandardOutput().toStdString();
    }

    QString file() const { return QString::fromStdString(path()); }

    std::unique_ptr<test::Prepared> prepared_ = test::disturbedLesson(20);
    PageLayout layout_;
    QTemporaryDir dir_;
    std::size_t pages_ = 0;
};

TEST_F(Pdf, TextCanBeSearched) {
    const std::string text = asked("pdftotext", {"-layout", file(), "-"});
    if (text.empty()) {
        GTEST_SKIP() << "pdftotext (poppler-utils) is not installed";
    }
    for (const char* part : {"Autumn table, an evening with friends", "Serve at",
                             "Crew:", "min to plating", "What decides plating", "Collisions",
                             "Home guidance. If you serve the public, follow your local food "
                             "code and health department.",
                             "Page 1 of"}) {
        EXPECT_THAT(text, HasSubstr(part));
    }
}

/// A word of a page as pdftotext (poppler) finds it, in points.
struct FoundWord {
    double left;
    double top;
    double bottom;
    QString text;
};

/// The first word of each recorded text is found at its place.
void expectTexts(const Picture& page, const std::vector<FoundWord>& words) {
    constexpr double tolerance = 1.0;  // points
    for (const Primitive& primitive : page) {
        const auto* text = std::get_if<TextShape>(&primitive.shape);
        if (text == nullptr || text->text.trimmed().isEmpty()) {
            continue;
        }
        const double middle = text->box.center().y();
        const bool there = std::ranges::any_of(words, [&](const FoundWord& word) {
            return std::abs(word.left - text->box.left()) <= tolerance && word.top < middle &&
                   middle < word.bottom && text->text.startsWith(word.text);
        });
        EXPECT_TRUE(there) << text->text.toStdString() << " at " << text->box.left() << ","
                           << text->box.top();
    }
}

/// The words of each page of what `pdftotext -bbox` says.
std::vector<std::vector<FoundWord>> wordsByPage(const std::string& boxes) {
    std::vector<std::vector<FoundWord>> pages;
    QXmlStreamReader xml(QString::fromStdString(boxes));
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) {
            continue;
        }
        if (xml.name() == u"page") {
            pages.emplace_back();
        } else if (xml.name() == u"word") {
            const QXmlStreamAttributes at = xml.attributes();
            const double left = at.value("xMin").toDouble();
            const double top = at.value("yMin").toDouble();
            const double bottom = at.value("yMax").toDouble();
            pages.back().push_back({left, top, bottom, xml.readElementText()});
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return pages;
}

TEST_F(Pdf, EveryTextOfEverySheetStandsWhereItWasMeasured) {
    std::vector<PrintedSheet> made;
    for (const Sheet& sheet : sheets()) {
        const PageLayout layout{Paper::A4, sheet.orientation};
        made.push_back({sheet.make(prepared_->input(), {layout}), layout});
    }
    ASSERT_FALSE(savePdf(path(), made, "All sheets"));
    const std::string boxes = asked("pdftotext", {"-bbox", file(), "-"});
    if (boxes.empty()) {
        GTEST_SKIP() << "pdftotext (poppler-utils) is not installed";
    }
    const auto found = wordsByPage(boxes);
    std::size_t number = 0;
    for (const PrintedSheet& sheet : made) {
        for (const Picture& page : sheet.pages.pages) {
            ASSERT_LT(number, found.size());
            SCOPED_TRACE(number + 1);
            expectTexts(page, found[number++]);
        }
    }
    EXPECT_EQ(number, found.size());
}

TEST_F(Pdf, TitlePagesAndPaper) {
    const std::string info = asked("pdfinfo", {file()});
    if (info.empty()) {
        GTEST_SKIP() << "pdfinfo (poppler-utils) is not installed";
    }
    EXPECT_THAT(info, HasSubstr("Autumn table, an evening with friends: station timeline"));
    EXPECT_THAT(info, HasSubstr("(A4)"));
    EXPECT_THAT(info, ::testing::ContainsRegex("Pages: +" + std::to_string(pages_) + "\n"));
}

TEST_F(Pdf, FontsAreEmbedded) {
    const std::string fonts = asked("pdffonts", {file()});
    if (fonts.empty()) {
        GTEST_SKIP() << "pdffonts (poppler-utils) is not installed";
    }
    const QStringList lines = QString::fromStdString(fonts).split('\n', Qt::SkipEmptyParts);
    ASSERT_GE(lines.size(), 3) << "a heading, a rule and at least one font";
    for (const QString& line : lines.sliced(2)) {
        const QStringList words = line.simplified().split(' ');
        EXPECT_EQ(words[words.size() - 5], "yes") << line.toStdString();
    }
}

TEST_F(Pdf, OnlyGrey) {
    QFile pdf(file());
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.readAll().startsWith("%PDF-"));
    const QString image = dir_.filePath("page");
    if (QStandardPaths::findExecutable("pdftoppm").isEmpty()) {
        GTEST_SKIP() << "pdftoppm (poppler-utils) is not installed";
    }
    asked("pdftoppm", {"-r", "40", "-f", "1", "-l", "1", "-singlefile", "-png", file(), image});
    const QImage page(image + ".png");
    ASSERT_FALSE(page.isNull());
    EXPECT_GT(page.width(), page.height()) << "landscape";
    EXPECT_TRUE(page.isGrayscale() || page.allGray());
}

TEST_F(Pdf, EverySheetKeepsItsOwnOrientation) {
    const PageLayout wide{Paper::A4, Orientation::Landscape};
    const PageLayout high{Paper::A4, Orientation::Portrait};
    const SheetPages page{"Sheet", TimelineStyle::paper(), {Picture()}};
    const std::vector<PrintedSheet> sheets = {{page, wide}, {page, high}, {page, wide}};
    ASSERT_FALSE(savePdf(path(), sheets, "All sheets"));
    const std::string info = asked("pdfinfo", {"-f", "1", "-l", "3", file()});
    if (info.empty()) {
        GTEST_SKIP() << "pdfinfo (poppler-utils) is not installed";
    }
    EXPECT_THAT(info, HasSubstr("All sheets"));
    EXPECT_THAT(info, ::testing::ContainsRegex("Page +1 size: +84[12]"));
    EXPECT_THAT(info, ::testing::ContainsRegex("Page +2 size: +59[45]"));
    EXPECT_THAT(info, ::testing::ContainsRegex("Page +3 size: +84[12]"));
}

TEST(SavePdf, SaysWhyItCannotWrite) {
    const PageLayout layout;
    const SheetPages sheet{"Nothing", TimelineStyle::paper(), {Picture()}};
    const auto fault = savePdf("/no/such/folder/timeline.pdf", sheet, layout);
    ASSERT_TRUE(fault);
    EXPECT_EQ(fault->code, FaultCode::CannotWrite);
}

}  // namespace
}  // namespace rangeline
