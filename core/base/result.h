#pragma once
// A value or the reason why there is none. Bad input gives a Result; broken invariants assert.

#include <cassert>
#include <utility>
#include <variant>

namespace rangeline {

template <class T, class E>
class [[nodiscard]] Result {
  public:
    Result(T value) : state_(std::in_place_index<0>, std::move(value)) {}
    Result(E error) : state_(std::in_place_index<1>, std::move(error)) {}

    bool ok() const { return state_.index() == 0; }
    /// Requires ok().
    const T& value() const {
        assert(ok());
        return std::get<0>(state_);
    }
    T& value() {
        assert(ok());
        return std::get<0>(state_);
    }
    /// Requires !ok().
    const E& error() const {
        assert(!ok());
        return std::get<1>(state_);
    }

  private:
    std::variant<T, E> state_;
};

}  // namespace rangeline
