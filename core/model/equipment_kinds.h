#pragma once
// The kinds of countable equipment, as data. Adding a kind is adding a row in
// equipment_kinds.cpp; nothing switches on a kind.

#include <cstdint>
#include <span>
#include <string_view>

namespace rangeline {

enum class EquipmentRole : std::uint8_t {
    Ware,  ///< taken for a chain and cleaned after
    Pool   ///< only counted
};

struct EquipmentKind {
    std::string_view key;  ///< as written in lesson files
    EquipmentRole role;
    bool goesOnBurner;
    bool goesInOven;
    bool isCuttingSurface;  ///< cross-contact is judged on it
    bool keepsCold;         ///< food stored on it counts as cold
};

std::span<const EquipmentKind> equipmentKinds();
/// Null if there is no such kind.
const EquipmentKind* findEquipmentKind(std::string_view key);

}  // namespace rangeline
