#include "timeline/palette.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "support/contrast.h"

namespace rangeline {
namespace {

using test::contrast;
using test::luminance;

// CIE 1976 lightness, 0 to 100 (formula from memory).
double lightness(QRgb c) {
    const double y = luminance(c);
    return y > 0.008856 ? 116 * std::cbrt(y) - 16 : 903.3 * y;
}

constexpr std::array grounds = {Colour::Paper,    Colour::LaneBand,   Colour::HeadBand,
                                Colour::OvenFill, Colour::BurnerFill, Colour::WareFill,
                                Colour::CookFill, Colour::PoolFill,   Colour::PaleFill};
constexpr std::array plotGrounds = {Colour::Paper, Colour::LaneBand};
constexpr std::array fills = {Colour::OvenFill, Colour::BurnerFill, Colour::WareFill,
                              Colour::CookFill, Colour::PoolFill};

class PaletteContrast : public ::testing::TestWithParam<const Palette*> {};

TEST_P(PaletteContrast, WcagExampleValues) {
    EXPECT_NEAR(contrast(0xFF000000, 0xFFFFFFFF), 21.0, 1e-9);
    // The grey #767676 is widely given as the lightest that passes on white (4.54:1, from memory).
    EXPECT_NEAR(contrast(0xFF767676, 0xFFFFFFFF), 4.54, 0.01);
}

TEST_P(PaletteContrast, TextOnEveryGround) {
    const Palette& palette = *GetParam();
    for (const Colour ground : grounds) {
        EXPECT_GE(contrast(palette[Colour::Ink], palette[ground]), 4.5)
            << "ground " << static_cast<int>(ground);
    }
    for (const Colour ground : {Colour::Paper, Colour::LaneBand, Colour::HeadBand}) {
        EXPECT_GE(contrast(palette[Colour::InkSoft], palette[ground]), 4.5);
        EXPECT_GE(contrast(palette[Colour::Serving], palette[ground]), 4.5);
    }
}

TEST_P(PaletteContrast, EdgesAndMarksOnThePlot) {
    const Palette& palette = *GetParam();
    for (const Colour ground : plotGrounds) {
        for (const Colour part :
             {Colour::Outline, Colour::Heavy, Colour::Collision, Colour::Serving,
              Colour::Temperature, Colour::Selection, Colour::Reach}) {
            EXPECT_GE(contrast(palette[part], palette[ground]), 3.0)
                << "part " << static_cast<int>(part);
        }
    }
}

TEST_P(PaletteContrast, StatesOnEveryFill) {
    const Palette& palette = *GetParam();
    for (const Colour fill : fills) {
        EXPECT_GE(contrast(palette[Colour::Heavy], palette[fill]), 3.0);
        EXPECT_GE(contrast(palette[Colour::Collision], palette[fill]), 3.0)
            << "fill " << static_cast<int>(fill);
    }
}

INSTANTIATE_TEST_SUITE_P(All, PaletteContrast,
                         ::testing::Values(&Palette::lightScreen(), &Palette::darkScreen(),
                                           &Palette::greyPrint()));

TEST(Palette, FillsDifferInLightnessWhereColourIsLost) {
    for (const Palette* palette : {&Palette::lightScreen(), &Palette::greyPrint()}) {
        for (std::size_t a = 0; a < fills.size(); ++a) {
            for (std::size_t b = 0; b < a; ++b) {
                EXPECT_GE(
                    std::abs(lightness((*palette)[fills[a]]) - lightness((*palette)[fills[b]])),
                    3.0)
                    << "fills " << a << " and " << b;
            }
        }
    }
}

TEST(Palette, PaperIsGreyAndItsGroundWhite) {
    const Palette& palette = Palette::greyPrint();
    EXPECT_EQ(palette[Colour::Paper], 0xFFFFFFFFU);
    for (int role = 1; role < colourCount; ++role) {
        const QRgb c = palette[static_cast<Colour>(role)];
        EXPECT_TRUE(qRed(c) == qGreen(c) && qGreen(c) == qBlue(c)) << "role " << role;
    }
}

}  // namespace
}  // namespace rangeline
