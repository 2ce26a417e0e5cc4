#include "book/judge.h"

#include "model/validate.h"
#include "model/validate_alone.h"

namespace rangeline {
namespace {

std::optional<Fault> firstOf(std::vector<Fault> faults) {
    return faults.empty() ? std::nullopt : std::optional(std::move(faults.front()));
}

}  // namespace

std::optional<Fault> judgeDish(const Dish& dish) {
    return firstOf(validateDish(dish, 1));
}

std::optional<Fault> judgeKitchen(const Kitchen& kitchen) {
    return firstOf(validateKitchenAlone(kitchen, 1));
}

std::optional<Fault> judgeLesson(const Lesson& lesson) {
    return firstOf(validate(lesson, 1));
}

}  // namespace rangeline
