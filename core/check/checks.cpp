#include "check/checks.h"

#include <array>

namespace rangeline {
namespace {

constexpr std::array registry = {
    Check{"not placed", Subject::Task, checkNotPlaced},
};

}  // namespace

std::span<const Check> checks() {
    return registry;
}

}  // namespace rangeline
