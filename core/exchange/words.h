#pragma once
// The words that stand for choices in a lesson file. One table each, for reading and writing.

#include <array>
#include <optional>
#include <string_view>
#include <utility>

#include "model/lesson.h"

namespace rangeline {

template <class Enum>
struct Words;

template <>
struct Words<OvenMode> {
    static constexpr std::array list{std::pair{"bake", OvenMode::Bake},
                                     std::pair{"convection", OvenMode::Convection},
                                     std::pair{"broil", OvenMode::Broil}};
};
template <>
struct Words<TimePer> {
    static constexpr std::array list{std::pair{"load", TimePer::Load},
                                     std::pair{"piece", TimePer::Piece}};
};
template <>
struct Words<Attention> {
    static constexpr std::array list{std::pair{"hands", Attention::Hands},
                                     std::pair{"watch", Attention::Watch},
                                     std::pair{"away", Attention::Away}};
};
template <>
struct Words<Storage> {
    static constexpr std::array list{std::pair{"room", Storage::Room},
                                     std::pair{"cold", Storage::Cold},
                                     std::pair{"hot-on-burner", Storage::HotOnBurner},
                                     std::pair{"hot-in-oven", Storage::HotInOven}};
};
template <>
struct Words<Scaling> {
    static constexpr std::array list{std::pair{"with-covers", Scaling::WithCovers},
                                     std::pair{"fixed", Scaling::Fixed},
                                     std::pair{"seasoning", Scaling::Seasoning}};
};
template <>
struct Words<Units> {
    static constexpr std::array list{std::pair{"us", Units::UsCustomary},
                                     std::pair{"metric", Units::Metric}};
};
template <>
struct Words<SafetyProfile> {
    static constexpr std::array list{std::pair{"household", SafetyProfile::Household},
                                     std::pair{"food-code", SafetyProfile::FoodCode}};
};
template <>
struct Words<Aim> {
    static constexpr std::array list{std::pair{"start-late", Aim::StartLate},
                                     std::pair{"fresh", Aim::Fresh}, std::pair{"calm", Aim::Calm},
                                     std::pair{"few-pans", Aim::FewPans}};
};

/// The word in the table. Every value of an enum has one.
template <class Enum>
constexpr std::string_view wordOf(Enum value) {
    for (const auto& [word, meaning] : Words<Enum>::list) {
        if (meaning == value) {
            return word;
        }
    }
    return {};
}

/// What the word stands for; nothing if it is not in the table.
template <class Enum>
constexpr std::optional<Enum> meaningOf(std::string_view text) {
    for (const auto& [word, meaning] : Words<Enum>::list) {
        if (word == text) {
            return meaning;
        }
    }
    return std::nullopt;
}

}  // namespace rangeline
