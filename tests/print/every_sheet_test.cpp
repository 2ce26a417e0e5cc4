#include <gtest/gtest.h>

#include <QFont>
#include <QFontInfo>
#include <QGuiApplication>
#include <set>

#include "print/page_rules.h"
#include "print/print_lessons.h"
#include "print/sheets.h"

namespace rangeline {
namespace {

/// Both are metric-wise unlike each other; the second is narrower.
enum class Fonts { Usual, Other };

struct Case {
    int steps;
    int covers;
    int nameLength;  ///< of steps, components and ingredients
    Paper paper;
    Fonts fonts = Fonts::Usual;
};

std::ostream& operator<<(std::ostream& out, const Case& it) {
    return out << it.steps << " steps, " << it.covers << " covers, names of " << it.nameLength
               << ", " << papers()[static_cast<std::size_t>(it.paper)].name
               << (it.fonts == Fonts::Other ? ", other fonts" : "");
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
    void SetUp() override {
        if (GetParam().fonts == Fonts::Other) {
            QGuiApplication::setFont(QFont(QStringLiteral("Liberation Serif")));
            ASSERT_EQ(QFontInfo(QGuiApplication::font()).family(), "Liberation Serif")
                << "fonts-liberation2 is not installed";
        }
    }
    void TearDown() override { QGuiApplication::setFont(usual_); }

  private:
    QFont usual_ = QGuiApplication::font();
};

TEST_P(EverySheet, KeepsThePageInOrder) {
    const test::Prepared prepared(namedLesson(GetParam()));
    for (const Sheet& sheet : sheets()) {
        SCOPED_TRACE(std::string(sheet.key));
        const PageLayout layout{GetParam().paper, sheet.orientation};
        test::expectGoodPages(sheet.make(prepared.input(), {layout}), layout);
    }
}

INSTANTIATE_TEST_SUITE_P(Lessons, EverySheet,
                         ::testing::Values(Case{6, 1, 3, Paper::A4}, Case{6, 24, 120, Paper::A4},
                                           Case{60, 8, 3, Paper::Letter},
                                           Case{60, 8, 120, Paper::Letter},
                                           Case{60, 8, 120, Paper::A3}, Case{300, 8, 3, Paper::A4},
                                           Case{300, 24, 120, Paper::Letter},
                                           Case{6, 24, 120, Paper::A4, Fonts::Other},
                                           Case{60, 8, 3, Paper::Letter, Fonts::Other},
                                           Case{60, 1, 120, Paper::A4, Fonts::Other}));

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
