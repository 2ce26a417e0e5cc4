#pragma once
// What a book lists.

#include <compare>
#include <cstdint>
#include <string>
#include <vector>

namespace rangeline {

struct ItemId {
    std::int64_t number = 0;

    friend auto operator<=>(const ItemId&, const ItemId&) = default;
};

enum class ItemKind : std::uint8_t { Kitchen = 1, Dish = 2, Lesson = 3 };
enum class ItemState : std::uint8_t {
    InUse = 0,
    Archived = 1,
    Deleted = 2  ///< kept until it is purged, so that it can be brought back
};

struct Item {
    ItemId id;
    ItemKind kind = ItemKind::Lesson;
    std::string name;
    ItemState state = ItemState::InUse;

    friend bool operator==(const Item&, const Item&) = default;
};

inline constexpr std::int64_t mostItems = 20'000;

}  // namespace rangeline
