#pragma once

#include <cassert>
#include <cstddef>

namespace rangeline {

/// The element with that index; indexes of the model are ints, with -1 for "none".
template <class List>
decltype(auto) at(List&& list, int index) {
    assert(index >= 0 && static_cast<std::size_t>(index) < list.size());
    return list[static_cast<std::size_t>(index)];
}

}  // namespace rangeline
