#include "print/mise_en_place_sheet.h"

#include "model/scaled_amount.h"
#include "print/print_text.h"
#include "print/text_sheet.h"
#include "text/words.h"

namespace rangeline {
namespace {

QString noteText(const Ingredient& ingredient) {
    QStringList parts;
    if (!ingredient.note.empty()) {
        parts << q(ingredient.note);
    }
    for (const std::string& allergen : ingredient.allergens) {
        parts << words("contains %1").arg(allergenText(allergen));
    }
    return parts.join(words(", "));
}

void addComponent(const Component& component, const Serving& serving, const QLocale& locale,
                  TextFlow& flow) {
    std::vector<std::vector<QString>> rows;
    for (const Ingredient& it : component.ingredients) {
        const QString amount =
            it.amount ? amountText(scaledAmount(it, serving), locale) : words("to taste");
        rows.push_back({{}, amount, q(it.name), q(it.cut), noteText(it)});
    }
    flow.heading(q(component.name), 4);
    flow.table({{{}, 3, FontRole::Body, CellKind::Tick},
                {words("Amount"), 16, FontRole::BodyStrong},
                {words("What"), 32},
                {words("Cut"), 27},
                {words("Note"), 24}},
               rows);
}

}  // namespace

QString miseEnPlaceTitle() {
    return words("Mise en place");
}

SheetPages makeMiseEnPlace(const TimelineInput& input, const PageLayout& layout) {
    TextSheet sheet(input, layout, miseEnPlaceTitle());
    const Lesson& lesson = input.text.lesson;
    for (const Serving& serving : lesson.servings) {
        const QString covers =
            words("%1, for %2 covers")
                .arg(q(serving.dish.name), input.text.locale.toString(serving.covers));
        sheet.section(miseEnPlaceTitle(), [&](TextFlow& flow) {
            flow.paragraph(
                lesson.head.groups.count > 1
                    ? words("%1, for each of %2 groups")
                          .arg(covers, input.text.locale.toString(lesson.head.groups.count))
                    : covers,
                FontRole::BodyStrong);
            for (const Component& component : serving.dish.components) {
                if (!component.ingredients.empty()) {
                    addComponent(component, serving, input.text.locale, flow);
                }
            }
        });
    }
    return sheet.finish();
}

}  // namespace rangeline
