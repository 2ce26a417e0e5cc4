#include <gmock/gmock.h>

#include <functional>
#include <set>

#include "print/print_lessons.h"
#include "print/sheets.h"

namespace rangeline {
namespace {

struct Case {
    int steps;
    int covers;
    int nameLength;  ///< of steps, components and ingredients
    Paper paper;
};

std::ostream& operator<<(std::ostream& out, const Case& it) {
    return out << it.steps << " steps, " << it.covers << " covers, names of " << it.nameLength
               << (it.paper == Paper::A4 ? ", A4" : ", Letter");
}

/// Words of nine letters, as long as asked for.
std::string nameOf(int length) {
    std::string name;
    while (static_cast<int>(name.size()) < length) {
        name += "parsnips ";
    }
    name.resize(static_cast<std::size_t>(length), 'x');
    return name;
}

Lesson namedLesson(const Case& it) {
    Lesson lesson = test::placedLesson(it.steps)->lesson();
    Serving& serving = lesson.servings.front();
    serving.covers = it.covers;
    serving.dish.perCover = nameOf(it.nameLength);
    for (Component& component : serving.dish.components) {
        component.name = nameOf(it.nameLength);
        component.ingredients = {
            {nameOf(it.nameLength), Amount{{3, 2}, {3, 2}, "tsp"}, "1/8-in slices", "", {"milk"}},
            {"salt", std::nullopt, "", nameOf(it.nameLength), {}}};
        for (Step& step : component.steps) {
            step.name = nameOf(it.nameLength);
            step.technique = "sear";
            step.hazards.dangers = {"hot-fat"};
        }
    }
    lesson.kitchen.wares.front().name = nameOf(it.nameLength);
    return lesson;
}

class EverySheet : public ::testing::TestWithParam<Case> {
  protected:
    void forEach(const std::function<void(const PageLayout&, const SheetPages&)>& look) {
        for (const Sheet& sheet : sheets()) {
            SCOPED_TRACE(std::string(sheet.key));
            const PageLayout layout{GetParam().paper, sheet.orientation};
            look(layout, sheet.make(prepared_.input(), {layout}));
        }
    }

    test::Prepared prepared_{namedLesson(GetParam())};
};

TEST_P(EverySheet, StaysInsideTheMargins) {
    forEach([](const PageLayout& layout, const SheetPages& sheet) {
        const QRectF frame = layout.frame().adjusted(-1, -1, 1, 1);
        for (const Picture& page : sheet.pages) {
            for (const Primitive& primitive : page) {
                const QRectF ink = inkBounds(primitive);
                ASSERT_TRUE(frame.contains(ink)) << ink.left() << "," << ink.top() << " to "
                                                 << ink.right() << "," << ink.bottom();
            }
        }
    });
}

TEST_P(EverySheet, HasNoTextOverAnother) {
    constexpr double tolerance = 0.5;
    forEach([&](const PageLayout&, const SheetPages& sheet) {
        for (const Picture& page : sheet.pages) {
            std::vector<const TextShape*> texts;
            for (const Primitive& primitive : page) {
                if (const auto* text = std::get_if<TextShape>(&primitive.shape)) {
                    texts.push_back(text);
                }
            }
            for (std::size_t a = 0; a < texts.size(); ++a) {
                for (std::size_t b = 0; b < a; ++b) {
                    const QRectF both = texts[a]->box.intersected(texts[b]->box);
                    ASSERT_FALSE(both.width() > tolerance && both.height() > tolerance)
                        << texts[a]->text.toStdString() << " covers "
                        << texts[b]->text.toStdString();
                }
            }
        }
    });
}

TEST_P(EverySheet, CutsNoHeadOfAColumn) {
    forEach([](const PageLayout&, const SheetPages& sheet) {
        for (const Picture& page : sheet.pages) {
            for (const Primitive& primitive : page) {
                const auto* text = std::get_if<TextShape>(&primitive.shape);
                const bool cut = text != nullptr && text->text.endsWith(QChar(0x2026));
                EXPECT_FALSE(cut && primitive.part == Part::Page &&
                             text->font == FontRole::BodyStrong)
                    << text->text.toStdString();
            }
        }
    });
}

TEST_P(EverySheet, NumbersItsPagesAndIsReadable) {
    constexpr double leastPoints = 8;
    forEach([&](const PageLayout&, const SheetPages& sheet) {
        int number = 0;
        for (const Picture& page : sheet.pages) {
            const auto foot = QStringLiteral("Page %1 of %2").arg(++number).arg(sheet.pages.size());
            bool found = false;
            for (const Primitive& primitive : page) {
                if (const auto* text = std::get_if<TextShape>(&primitive.shape)) {
                    found = found || text->text == foot;
                    EXPECT_GE(sheet.style.fontSize(text->font), leastPoints);
                }
            }
            EXPECT_TRUE(found) << foot.toStdString();
        }
        EXPECT_GE(number, 1);
    });
}

INSTANTIATE_TEST_SUITE_P(Lessons, EverySheet,
                         ::testing::Values(Case{6, 1, 3, Paper::A4}, Case{6, 24, 120, Paper::A4},
                                           Case{60, 8, 3, Paper::Letter},
                                           Case{60, 8, 120, Paper::Letter}));

TEST(Sheets, HaveKeysOfTheirOwn) {
    std::set<std::string_view> keys;
    for (const Sheet& sheet : sheets()) {
        EXPECT_TRUE(keys.insert(sheet.key).second) << sheet.key;
        EXPECT_EQ(findSheet(sheet.key), &sheet);
    }
    EXPECT_EQ(findSheet("poem"), nullptr);
}

}  // namespace
}  // namespace rangeline
