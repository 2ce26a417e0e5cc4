#pragma once

namespace rangeline {

/// Names a type to the describe functions, without a value of it.
template <class T>
struct Of {};

}  // namespace rangeline
