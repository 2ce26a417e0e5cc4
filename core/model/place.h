#pragma once
// A place inside a lesson as the lesson file spells it: "servings[0].dish.components[2]". A chain
// of parts that costs nothing until a fault needs its text.

#include <string>
#include <string_view>

namespace rangeline {

/// Refers to the place it is in, which must outlive it.
class Place {
  public:
    Place() = default;

    Place key(std::string_view name) const { return Place(this, name, 0); }
    /// Counted from 0.
    Place at(std::size_t index) const { return Place(this, {}, index); }

    std::string text() const {
        if (parent_ == nullptr) {
            return {};
        }
        std::string before = parent_->text();
        if (key_.empty()) {
            return before + "[" + std::to_string(index_) + "]";
        }
        return before.empty() ? std::string(key_) : before + "." + std::string(key_);
    }

  private:
    Place(const Place* parent, std::string_view key, std::size_t index)
        : parent_(parent), key_(key), index_(index) {}

    const Place* parent_ = nullptr;
    std::string_view key_;
    std::size_t index_ = 0;
};

}  // namespace rangeline
