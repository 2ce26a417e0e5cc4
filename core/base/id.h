#pragma once
// Names that things carry in files and refer to each other by. A StepId cannot be passed for a
// CookId.

#include <compare>
#include <functional>
#include <string>

namespace rangeline {

template <class Tag>
struct Id {
    std::string text;

    bool empty() const { return text.empty(); }
    friend auto operator<=>(const Id&, const Id&) = default;
};

using BurnerId = Id<struct BurnerTag>;
using OvenId = Id<struct OvenTag>;
using WareId = Id<struct WareTag>;
using PoolId = Id<struct PoolTag>;
using CookId = Id<struct CookTag>;
using DishId = Id<struct DishTag>;
using ComponentId = Id<struct ComponentTag>;
using StepId = Id<struct StepTag>;

}  // namespace rangeline

template <class Tag>
struct std::hash<rangeline::Id<Tag>> {
    std::size_t operator()(const rangeline::Id<Tag>& id) const noexcept {
        return std::hash<std::string>()(id.text);
    }
};
