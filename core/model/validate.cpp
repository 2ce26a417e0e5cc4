#include "model/validate.h"

namespace rangeline {

std::vector<Fault> validate(const Lesson&, std::size_t) { return {}; }

}  // namespace rangeline
