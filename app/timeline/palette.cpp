#include "timeline/palette.h"

namespace rangeline {
namespace {

constexpr QRgb rgb(unsigned hex) {
    return 0xFF000000U | hex;
}

struct Row {
    Colour role;
    unsigned light;
    unsigned dark;
    unsigned grey;
};

// Terracotta for the oven, butter for the burners, pewter for the pans, sage for the cooks, sand
// for the counter. The light fills differ in lightness too, so they stay apart in grey.
constexpr std::array rows = {
    Row{Colour::Paper, 0xFDFCF8, 0x1D2123, 0xFFFFFF},
    Row{Colour::LaneBand, 0xF5F2EA, 0x23282A, 0xF6F6F6},
    Row{Colour::HeadBand, 0xECE7DB, 0x2B3134, 0xEEEEEE},
    Row{Colour::Grid, 0xE0DACB, 0x343B3E, 0xE2E2E2},
    Row{Colour::GridStrong, 0xB5AD9B, 0x59636A, 0xBEBEBE},
    Row{Colour::Ink, 0x22272B, 0xEEEBE3, 0x000000},
    Row{Colour::InkSoft, 0x525A60, 0xBAB8B0, 0x404040},
    Row{Colour::OvenFill, 0xD99C78, 0x7C4730, 0xB4B4B4},
    Row{Colour::BurnerFill, 0xF3DE9C, 0x665018, 0xDEDEDE},
    Row{Colour::WareFill, 0xA3B9C6, 0x415A69, 0xCCCCCC},
    Row{Colour::CookFill, 0xB9D2A4, 0x3C5433, 0xE9E9E9},
    Row{Colour::PoolFill, 0xD2BE9C, 0x594D3C, 0xC0C0C0},
    Row{Colour::PaleFill, 0xFAF6EC, 0x2A2F31, 0xFAFAFA},
    Row{Colour::Outline, 0x6A6C68, 0x98A0A4, 0x606060},
    Row{Colour::Heavy, 0x14181A, 0xFFFDF6, 0x000000},
    Row{Colour::Collision, 0xA0261A, 0xFF9E8C, 0x000000},
    Row{Colour::Serving, 0x66284F, 0xE3ABD2, 0x202020},
    Row{Colour::Temperature, 0x9A4217, 0xF0A86C, 0x202020},
    Row{Colour::Selection, 0x15596C, 0x7CCADB, 0x202020},
    Row{Colour::Reach, 0x5E8A95, 0x6F98A2, 0x707070},
};

template <class Pick>
constexpr auto tableOf(Pick pick) {
    std::array<QRgb, colourCount> table{};
    for (const Row& row : rows) {
        table[static_cast<std::size_t>(row.role)] = rgb(pick(row));
    }
    return table;
}

static_assert(rows.size() + 1 == colourCount, "every role but None has a row");

}  // namespace

const Palette& Palette::lightScreen() {
    static const Palette palette(tableOf([](const Row& row) { return row.light; }));
    return palette;
}

const Palette& Palette::darkScreen() {
    static const Palette palette(tableOf([](const Row& row) { return row.dark; }));
    return palette;
}

const Palette& Palette::greyPrint() {
    static const Palette palette(tableOf([](const Row& row) { return row.grey; }));
    return palette;
}

}  // namespace rangeline
