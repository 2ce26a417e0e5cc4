// What the looks on a timeline mean, as paper and the help show it.

#include "timeline/legend.h"

#include <gtest/gtest.h>

#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <algorithm>
#include <vector>

#include "timeline/primitives_qt.h"

namespace rangeline {
namespace {

const QRectF room(4, 4, 40, 16);

std::vector<LegendEntry> everyLook() {
    std::vector<LegendEntry> all(looksOfBlocks().begin(), looksOfBlocks().end());
    all.insert(all.end(), looksOfMarks().begin(), looksOfMarks().end());
    return all;
}

QImage painted(const LegendEntry& entry, const Palette& palette) {
    Picture picture;
    entry.paint(TimelineStyle::screen(), room, picture);
    QImage image(48, 24, QImage::Format_ARGB32_Premultiplied);
    image.fill(QColor::fromRgba(palette[Colour::Paper]));
    QPainter painter(&image);
    play(picture, painter, palette, QtFonts(TimelineStyle::screen(), 1));
    return image;
}

TEST(Legend, PaintsEachLookWithinItsRoomOnEveryMedium) {
    for (const TimelineStyle& style : {TimelineStyle::screen(), TimelineStyle::paper()}) {
        for (const LegendEntry& entry : everyLook()) {
            Picture picture;
            entry.paint(style, room, picture);
            EXPECT_FALSE(picture.empty()) << entry.text;
            for (const Primitive& primitive : picture) {
                EXPECT_EQ(primitive.part, Part::Legend);
                EXPECT_TRUE(room.adjusted(-1, -1, 1, 1).contains(inkBounds(primitive)))
                    << entry.text;
            }
        }
    }
}

TEST(Legend, TellsEveryLookFromEveryOtherAlsoInGrey) {
    for (const Palette* palette :
         {&Palette::lightScreen(), &Palette::darkScreen(), &Palette::greyPrint()}) {
        std::vector<QImage> met;
        for (const LegendEntry& entry : everyLook()) {
            met.push_back(painted(entry, *palette));
            for (std::size_t other = 0; other + 1 < met.size(); ++other) {
                EXPECT_NE(met[other], met.back()) << entry.text;
            }
        }
    }
}

TEST(Legend, SaysOfEachLookSomethingElse) {
    std::vector<QString> met;
    for (const LegendEntry& entry : everyLook()) {
        EXPECT_EQ(std::count(met.begin(), met.end(), entry.meaning()), 0) << entry.text;
        met.push_back(entry.meaning());
    }
}

}  // namespace
}  // namespace rangeline
