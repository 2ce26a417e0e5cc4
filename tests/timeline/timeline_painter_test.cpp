#include "timeline/timeline_painter.h"

#include <gmock/gmock.h>

#include <chrono>

#include "timeline/fixed_measure.h"
#include "timeline/sample_timeline.h"

namespace rangeline {
namespace {

using ::testing::Contains;
using ::testing::Not;

struct Painted {
    TimelineModel model;
    TimelineLayout layout;
    Picture picture;
};

Painted paint(TimelineModel model, const TimelineStyle& style, double perMinute = 4,
              const TimelineOverlay& overlay = {}) {
    const test::FixedMeasure measure(style);
    const Interval window{model.span.begin, model.span.end + Duration::minutes(10)};
    TimelineLayout layout =
        layOut(model, style, {{0, 0}, perMinute, 1.0, window, usedLanes(model)});
    Picture picture = paintTimeline({model, layout, style, measure}, overlay);
    return {std::move(model), std::move(layout), std::move(picture)};
}

std::vector<const TextShape*> textsIn(const Picture& picture) {
    std::vector<const TextShape*> texts;
    for (const Primitive& primitive : picture) {
        if (const auto* text = std::get_if<TextShape>(&primitive.shape)) {
            texts.push_back(text);
        }
    }
    return texts;
}

std::vector<QString> wordsOf(const Picture& picture, Part part) {
    std::vector<QString> words;
    for (const Primitive& primitive : picture) {
        const auto* text = std::get_if<TextShape>(&primitive.shape);
        if (text != nullptr && primitive.part == part) {
            words.push_back(text->text);
        }
    }
    return words;
}

/// The boxes of a block.
std::vector<const BoxShape*> boxesOf(const Picture& picture, int block) {
    std::vector<const BoxShape*> boxes;
    for (const Primitive& primitive : picture) {
        const auto* box = std::get_if<BoxShape>(&primitive.shape);
        const bool ofBlock = primitive.part == Part::MainBlock || primitive.part == Part::EchoBlock;
        if (box != nullptr && ofBlock && primitive.item == block) {
            boxes.push_back(box);
        }
    }
    return boxes;
}

int marksOf(const Picture& picture, int block, Mark mark) {
    int marks = 0;
    for (const Primitive& primitive : picture) {
        const auto* shape = std::get_if<MarkShape>(&primitive.shape);
        marks += shape != nullptr && primitive.item == block && shape->mark == mark ? 1 : 0;
    }
    return marks;
}

void expectTextsApart(const Picture& picture) {
    const std::vector<const TextShape*> texts = textsIn(picture);
    constexpr double tolerance = 0.5;
    for (std::size_t a = 0; a < texts.size(); ++a) {
        for (std::size_t b = 0; b < a; ++b) {
            const QRectF both = texts[a]->box.intersected(texts[b]->box);
            EXPECT_FALSE(both.width() > tolerance && both.height() > tolerance)
                << texts[a]->text.toStdString() << " covers " << texts[b]->text.toStdString();
        }
    }
}

TEST(Painter, InkStaysInsideThePicture) {
    for (const auto* style : {&TimelineStyle::screen(), &TimelineStyle::paper()}) {
        for (const double perMinute : {0.5, 2.0, 4.0, 11.3}) {
            const Painted painted = paint(test::sampleTimeline(), *style, perMinute);
            const QRectF bounds = painted.layout.bounds.adjusted(-1.5, -1.5, 1.5, 1.5);
            for (const Primitive& primitive : painted.picture) {
                EXPECT_TRUE(bounds.contains(inkBounds(primitive)))
                    << "part " << static_cast<int>(primitive.part) << " item " << primitive.item;
            }
        }
    }
}

TEST(Painter, TextsDoNotCoverEachOther) {
    for (const auto* style : {&TimelineStyle::screen(), &TimelineStyle::paper()}) {
        for (const double perMinute : {1.0, 2.5, 4.0, 9.0}) {
            TimelineModel model = test::sampleTimeline();
            model.items[1].name = "Sear the thighs until the skin is deep gold all over";
            expectTextsApart(paint(model, *style, perMinute).picture);
        }
    }
}

TEST(Painter, NamesWhereTheyFitNumbersAlways) {
    const Painted painted = paint(test::sampleTimeline(), TimelineStyle::paper());
    const std::vector<QString> words = wordsOf(painted.picture, Part::MainBlock);
    for (const char* number : {"1", "2", "3", "4", "5"}) {
        EXPECT_THAT(words, Contains(QString(number)));
    }
    EXPECT_THAT(words, Contains(QString("Roast")));
}

TEST(Painter, ShortStepsAreNamedBesideTheirBlock) {
    // Five minutes are 10 points wide: the number does not fit in, but the row is free.
    const Painted painted = paint(test::sampleTimeline(), TimelineStyle::paper(), 2);
    EXPECT_THAT(wordsOf(painted.picture, Part::MainBlock), Contains(QString("4")));
}

TEST(Painter, CollisionIsHatchedAndMarked) {
    const Painted painted = paint(test::sampleTimeline(), TimelineStyle::screen(), 8);
    bool hatched = false;
    for (const BoxShape* box : boxesOf(painted.picture, 2)) {
        hatched = hatched || box->pattern == Pattern::Hatch;
    }
    EXPECT_TRUE(hatched);
    EXPECT_EQ(marksOf(painted.picture, 2, Mark::Warning), 1);
    EXPECT_EQ(marksOf(painted.picture, 0, Mark::Warning), 0);
}

TEST(Painter, WhatDecidesPlatingHasAHeavyEdge) {
    const TimelineStyle& style = TimelineStyle::paper();
    const Painted painted = paint(test::sampleTimeline(), style);
    const auto heavy = [&](int block) {
        int edges = 0;
        for (const BoxShape* box : boxesOf(painted.picture, block)) {
            edges += box->outline == Colour::Heavy && box->outlineWidth == style.heavyLine ? 1 : 0;
        }
        return edges;
    };
    EXPECT_EQ(heavy(4), 1);
    EXPECT_EQ(heavy(0), 0);
}

TEST(Painter, PinsAreMarkedOnTheMainBlock) {
    const Painted painted = paint(test::sampleTimeline(), TimelineStyle::screen(), 8);
    EXPECT_EQ(marksOf(painted.picture, 3, Mark::Pin), 1);
    EXPECT_EQ(marksOf(painted.picture, 2, Mark::Pin), 0);
}

TEST(Painter, WaitingIsDotted) {
    const Painted painted = paint(test::sampleTimeline(), TimelineStyle::paper());
    const std::vector<const BoxShape*> boxes = boxesOf(painted.picture, 7);
    ASSERT_EQ(boxes.size(), 1U);
    EXPECT_EQ(boxes.front()->pattern, Pattern::Dots);
    EXPECT_EQ(boxes.front()->stroke, Stroke::Dotted);
}

TEST(Painter, HandsAndWatchingLookDifferent) {
    const Painted painted = paint(test::sampleTimeline(), TimelineStyle::paper());
    std::vector<Stroke> strokes;
    for (const BoxShape* box : boxesOf(painted.picture, 6)) {
        if (box->outline == Colour::Outline) {
            strokes.push_back(box->stroke);
        }
    }
    EXPECT_EQ(strokes, (std::vector{Stroke::Solid, Stroke::Dashed}));
}

TEST(Painter, SomethingThatTakesNoTimeIsADiamond) {
    const Painted painted = paint(test::sampleTimeline(), TimelineStyle::paper());
    EXPECT_EQ(marksOf(painted.picture, 5, Mark::Event), 1);
}

TEST(Painter, AxesSayClockMinutesAndServing) {
    const Painted painted = paint(test::sampleTimeline(), TimelineStyle::screen(), 4);
    const std::vector<QString> words = wordsOf(painted.picture, Part::Axis);
    EXPECT_THAT(words, Contains(QString("-30")));  // the sample's clock
    EXPECT_THAT(words, Contains(QString("30")));   // minutes to plating
    EXPECT_THAT(words, Contains(QString("serve")));
    EXPECT_THAT(wordsOf(painted.picture, Part::OvenLine), Contains(QString("425 °F")));
}

TEST(Painter, SelectionLightsTheItemInAllItsLanes) {
    TimelineOverlay overlay;
    overlay.selected = {0};
    overlay.reachOf = 0;
    overlay.ghosts = {
        {test::burnerLane, {Instant::atMinutes(-50), Instant::atMinutes(-40)}, "Roast", true}};
    const Painted painted = paint(test::sampleTimeline(), TimelineStyle::screen(), 4, overlay);
    int rings = 0;
    bool reach = false;
    bool ghost = false;
    for (const Primitive& primitive : painted.picture) {
        const auto* box = std::get_if<BoxShape>(&primitive.shape);
        if (box != nullptr && primitive.part == Part::Overlay) {
            rings += box->outline == Colour::Selection && box->fill == Colour::None ? 1 : 0;
            reach = reach || (box->fill == Colour::Reach && box->rect.width() == 40);
            ghost = ghost || (box->stroke == Stroke::Dashed && box->pattern == Pattern::Hatch);
        }
    }
    EXPECT_EQ(rings, 3);
    EXPECT_TRUE(reach);
    EXPECT_TRUE(ghost);
}

TEST(Painter, OnlyWhatIsExposedIsPainted) {
    const TimelineModel model = test::largeTimeline(3000);
    const TimelineStyle& style = TimelineStyle::screen();
    const test::FixedMeasure measure(style);
    const TimelineLayout layout =
        layOut(model, style, {{0, 0}, 4, 1.0, model.span, allLanes(model)});
    Picture part;
    paintPlot({model, layout, style, measure}, QRectF(1000, 0, 300, 400), part);
    Picture whole;
    paintPlot({model, layout, style, measure}, layout.plot, whole);
    const auto blocks = [](const Picture& picture) {
        return std::ranges::count(picture, Part::MainBlock, &Primitive::part);
    };
    EXPECT_GT(blocks(part), 0);
    EXPECT_LT(blocks(part), blocks(whole) / 20);
}

TEST(Painter, PaperTextsAreLargeEnough) {
    const TimelineStyle& style = TimelineStyle::paper();
    for (int role = 0; role < fontRoleCount; ++role) {
        EXPECT_GE(style.fontSize(static_cast<FontRole>(role)), 8);
    }
    EXPECT_GE(style.fontSize(FontRole::Block), 9);
    EXPECT_GE(style.fontSize(FontRole::BlockStrong), 9);
}

}  // namespace
}  // namespace rangeline
