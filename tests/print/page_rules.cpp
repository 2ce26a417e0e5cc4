#include "print/page_rules.h"

#include <algorithm>

namespace rangeline::test {
namespace {

std::vector<const TextShape*> textsOf(const Picture& page) {
    std::vector<const TextShape*> texts;
    for (const Primitive& primitive : page) {
        if (const auto* text = std::get_if<TextShape>(&primitive.shape)) {
            texts.push_back(text);
        }
    }
    return texts;
}

void expectInsideMargins(const Picture& page, const PageLayout& layout) {
    const QRectF frame = layout.frame().adjusted(-1, -1, 1, 1);
    for (const Primitive& primitive : page) {
        const QRectF ink = inkBounds(primitive);
        EXPECT_TRUE(frame.contains(ink))
            << "part " << static_cast<int>(primitive.part) << " item " << primitive.item << " at "
            << ink.left() << "," << ink.top() << " to " << ink.right() << "," << ink.bottom();
    }
}

void expectNoTextOverAnother(const std::vector<const TextShape*>& texts) {
    constexpr double tolerance = 0.5;  // points
    for (std::size_t a = 0; a < texts.size(); ++a) {
        for (std::size_t b = 0; b < a; ++b) {
            const QRectF both = texts[a]->box.intersected(texts[b]->box);
            EXPECT_FALSE(both.width() > tolerance && both.height() > tolerance)
                << texts[a]->text.toStdString() << " covers " << texts[b]->text.toStdString();
        }
    }
}

void expectNoHeadCut(const Picture& page) {
    for (const Primitive& primitive : page) {
        const auto* text = std::get_if<TextShape>(&primitive.shape);
        const bool cut = text != nullptr && text->text.endsWith(QChar(0x2026));
        EXPECT_FALSE(cut && primitive.part == Part::Page && text->font == FontRole::BodyStrong)
            << text->text.toStdString();
    }
}

void expectReadable(const std::vector<const TextShape*>& texts, const TimelineStyle& style) {
    constexpr double leastPoints = 8;
    for (const TextShape* text : texts) {
        EXPECT_GE(style.fontSize(text->font), leastPoints) << text->text.toStdString();
    }
}

}  // namespace

void expectGoodPages(const SheetPages& sheet, const PageLayout& layout) {
    EXPECT_FALSE(sheet.pages.empty());
    int number = 0;
    for (const Picture& page : sheet.pages) {
        const auto foot = QStringLiteral("Page %1 of %2").arg(++number).arg(sheet.pages.size());
        SCOPED_TRACE(foot.toStdString());
        const std::vector<const TextShape*> texts = textsOf(page);
        EXPECT_TRUE(
            std::ranges::any_of(texts, [&](const TextShape* text) { return text->text == foot; }));
        expectInsideMargins(page, layout);
        expectNoTextOverAnother(texts);
        expectNoHeadCut(page);
        expectReadable(texts, sheet.style);
        if (testing::Test::HasFailure()) {
            return;
        }
    }
}

}  // namespace rangeline::test
