#pragma once
// What is wrong with a dish or a kitchen that is being written, each with where it is.

#include <QLocale>
#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "model/dish.h"
#include "model/kitchen.h"
#include "writing/own_terms.h"

namespace rangeline {

struct Problem {
    QString text;                            ///< a sentence that says where, too
    std::optional<std::size_t> component{};  ///< of the dish
    std::optional<StepId> step{};
    std::string field{};   ///< within the step or the dish: "after.cold", "uses[1]"
    bool caution = false;  ///< worth knowing, not wrong

    friend bool operator==(const Problem&, const Problem&) = default;
};

/// All that keeps the dish out of the book, then what is worth knowing.
std::vector<Problem> problemsOf(const Dish& dish, const OwnTerms& terms, const QLocale& locale);
std::vector<Problem> problemsOf(const Kitchen& kitchen);
/// Whether nothing but cautions is among them.
bool mayBeKept(const std::vector<Problem>& problems);

}  // namespace rangeline
