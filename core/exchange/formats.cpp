#include "exchange/formats.h"

#include <algorithm>
#include <array>

#include "exchange/lesson_file.h"
#include "exchange/recipe_file.h"

namespace rangeline {
namespace {

constexpr std::array rows{
    Format{"lesson", ".json", readLesson, writeLesson},
    Format{"recipe", ".jsonld", nullptr, writeRecipes},
};

}  // namespace

std::span<const Format> formats() {
    return rows;
}

const Format* formatFor(std::string_view path) {
    const auto* found =
        std::ranges::find_if(rows, [&](const Format& f) { return path.ends_with(f.ending); });
    return found == rows.end() ? nullptr : found;
}

}  // namespace rangeline
