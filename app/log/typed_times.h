#pragma once
// Times of a class as they are typed afterwards, from the order of work that was filled in.

#include <QString>
#include <optional>

#include "model/dish.h"
#include "text/quantities.h"

namespace rangeline {

/// A time of day as typed: "18:05", "1805", "6.05", "6:05 pm", "6".
struct TypedTime {
    int minutes = 0;    ///< after midnight, or after noon as well where `half` is false
    bool half = false;  ///< whether morning or afternoon is known

    friend bool operator==(const TypedTime&, const TypedTime&) = default;
};
/// Empty for what is no time of day.
std::optional<TypedTime> typedTime(const QString& text);

/// The instant of that time of day that lies nearest to `near`, on its day, the one before or the
/// one after.
Instant nearestOf(const TypedTime& typed, Instant near, const Clock& clock);

/// What is wrong with what was typed, or worth a second look.
enum class TypedDoubt : std::uint8_t {
    None,
    NoTime,     ///< one of the texts is no time of day; wrong
    EndsFirst,  ///< it ends before it begins; wrong
    NoLength,   ///< it ends as it begins: it tells nothing of how long it took
    Long,       ///< more than twice its longest time
    Short,      ///< less than half its shortest time
    FarAway     ///< begins two hours or more from the plan
};
constexpr bool isWrong(TypedDoubt doubt) {
    return doubt == TypedDoubt::NoTime || doubt == TypedDoubt::EndsFirst;
}

/// What a step's two fields come to.
struct ReadTimes {
    std::optional<Instant> began;
    std::optional<Instant> ended;
    TypedDoubt doubt = TypedDoubt::None;
    bool nextDay = false;  ///< it ended on the day after it began

    /// Nothing while one of them is open.
    std::optional<Duration> took() const;
};
/// `planned` and `time` are those of the step as it was planned. Where only the hour of twelve is
/// known, the plan says which half of the day it is.
ReadTimes readTimes(const QString& began, const QString& ended, const Interval& planned,
                    const DurationRange& time, const Clock& clock);

}  // namespace rangeline
