#include <algorithm>

#include "model/quantity_text.h"
#include "model/simpler_form.h"
#include "model/validate_parts.h"

namespace rangeline {
namespace {

/// What is met once in a lesson, across all of its dishes.
struct Met {
    MetIds dishes, components, steps;
};

void ingredient(ValueChecks& checks, const Place& place, const Ingredient& ingredient) {
    checks.text(place.key("name"), ingredient.name);
    if (ingredient.amount) {
        const Place amount = place.key("amount");
        checks.fraction(amount, ingredient.amount->low);
        checks.fraction(amount, ingredient.amount->high);
        if (checks.none() && ingredient.amount->high < ingredient.amount->low) {
            checks.report(amount, FaultCode::Contradiction, {"amount", "amount"});
        }
        const std::string& unit = ingredient.amount->unit;
        checks.text(amount, unit);
        const auto isLetter = [](char c) {
            return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                   static_cast<unsigned char>(c) >= 0x80;
        };
        if (!unit.empty() && (!isLetter(unit.front()) || unit.back() == ' ')) {
            checks.report(amount, FaultCode::BadText, {"not-a-unit", unit});
        }
    }
    checks.text(place.key("cut"), ingredient.cut);
    checks.text(place.key("note"), ingredient.note);
    checks.texts(place.key("allergens"), ingredient.allergens);
    checks.text(place.key("kind"), ingredient.kind);
    checks.whole(place.key("usablePercent"), ingredient.usablePercent, 1, 100);
}

void link(ValueChecks& checks, const Place& place, const Link& link, const StepIndex& steps) {
    validateStepReference(checks, place.key("from"), link.from.step, steps);
    validateStepReference(checks, place.key("to"), link.to.step, steps);
    checks.offset(place.key("least"), link.least);
    checks.offset(place.key("most"), link.most.value_or(Duration()));
    if (link.most && *link.most < link.least) {
        checks.report(place, FaultCode::LinkOrder, {toText(link.least), toText(*link.most)});
    }
}

void simplerForm(ValueChecks& checks, const Place& place, const Component& component) {
    const SimplerForm& simpler = *component.simpler;
    checks.text(place.key("how"), simpler.how);
    if (simpler.how.empty()) {
        checks.report(place.key("how"), FaultCode::MissingKey, {"how"});
    }
    const Place without = place.key("without");
    checks.whole(without, static_cast<std::int64_t>(simpler.without.size()), 1, 2000);
    MetIds met;
    for (std::size_t i = 0; i < simpler.without.size() && !checks.full(); ++i) {
        const StepId& id = simpler.without[i];
        const auto step = std::ranges::find(component.steps, id, &Step::id);
        if (step == component.steps.end()) {
            checks.report(without.at(i), FaultCode::UnknownReference, {id.text, "step"});
        } else if (const char* field = keptFor(*step)) {
            checks.report(without.at(i), FaultCode::Contradiction, {"without", field});
        } else if (!met.insert(id.text).second) {
            checks.report(without.at(i), FaultCode::DuplicateId, {id.text});
        }
    }
}

void component(ValueChecks& checks, const Place& place, const Component& component,
               const Kitchen& kitchen, const StepIndex& index, Met& met) {
    checks.newId(place.key("id"), component.id.text, met.components);
    checks.text(place.key("name"), component.name);
    const Place ingredients = place.key("ingredients");
    for (std::size_t i = 0; i < component.ingredients.size() && !checks.full(); ++i) {
        ingredient(checks, ingredients.at(i), component.ingredients[i]);
    }
    const Place steps = place.key("steps");
    for (std::size_t i = 0; i < component.steps.size() && !checks.full(); ++i) {
        const Place step = steps.at(i);
        checks.newId(step.key("id"), component.steps[i].id.text, met.steps);
        validateStep(checks, step, component.steps[i], kitchen, index);
    }
    if (component.simpler) {
        simplerForm(checks, place.key("simpler"), component);
    }
}

void dish(ValueChecks& checks, const Place& place, const Dish& dish, const Kitchen& kitchen,
          const StepIndex& index, Met& met) {
    checks.newId(place.key("id"), dish.id.text, met.dishes);
    checks.text(place.key("name"), dish.name);
    checks.whole(place.key("writtenFor"), dish.writtenFor, 1, mostCovers);
    checks.text(place.key("perCover"), dish.perCover);
    checks.duration(place.key("platesHold"), dish.platesHold);
    const Place components = place.key("components");
    for (std::size_t i = 0; i < dish.components.size() && !checks.full(); ++i) {
        component(checks, components.at(i), dish.components[i], kitchen, index, met);
    }
    const Place links = place.key("links");
    for (std::size_t i = 0; i < dish.links.size() && !checks.full(); ++i) {
        link(checks, links.at(i), dish.links[i], index);
    }
}

void tooMany(ValueChecks& checks, const Place& place, std::size_t count, std::size_t limit) {
    if (count > limit) {
        checks.report(place, FaultCode::TooMany, {std::to_string(count), std::to_string(limit)});
    }
}

}  // namespace

void validateServings(ValueChecks& checks, const Lesson& lesson, const StepIndex& steps) {
    const Place file;
    const Place place = file.key("servings");
    tooMany(checks, place, steps.all().size(), 2000);
    std::size_t links = 0;
    for (const Serving& serving : lesson.servings) {
        links += serving.dish.links.size();
    }
    tooMany(checks, place, links, 20'000);
    Met met;
    for (std::size_t i = 0; i < lesson.servings.size() && !checks.full(); ++i) {
        const Serving& serving = lesson.servings[i];
        const Place at = place.at(i);
        checks.whole(at.key("covers"), serving.covers, 1, mostCovers);
        checks.offset(at.key("offset"), serving.offset);
        dish(checks, at.key("dish"), serving.dish, lesson.kitchen, steps, met);
    }
}

}  // namespace rangeline
