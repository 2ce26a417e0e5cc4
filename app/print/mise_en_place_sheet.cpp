#include "print/mise_en_place_sheet.h"

#include "model/scaled_amount.h"
#include "print/print_text.h"
#include "print/text_sheet.h"
#include "text/cut_text.h"
#include "text/words.h"

namespace rangeline {
namespace {

/// How the amount was come by where it did not simply follow the covers.
QString scalingNote(const Ingredient& ingredient, const Serving& serving) {
    if (!ingredient.amount || serving.covers == serving.dish.writtenFor) {
        return {};
    }
    switch (ingredient.scaling) {
        case Scaling::WithCovers:
            return {};
        case Scaling::Fixed:
            return Printed::tr("the same for any covers");
        case Scaling::Seasoning:
            return Printed::tr("then to taste");
    }
    return {};
}

QString noteText(const Ingredient& ingredient, const Serving& serving) {
    QStringList parts;
    if (const QString scaling = scalingNote(ingredient, serving); !scaling.isEmpty()) {
        parts << scaling;
    }
    if (!ingredient.note.empty()) {
        parts << q(ingredient.note);
    }
    for (const std::string& allergen : ingredient.allergens) {
        parts << Printed::tr("contains %1").arg(allergenText(allergen));
    }
    return parts.join(Printed::tr(", "));
}

class MiseEnPlace {
  public:
    explicit MiseEnPlace(const TextContext& text)
        : lesson_(text.lesson), locale_(text.locale), units_(text.units) {}

    void fill(const Serving& serving, TextFlow& flow) const {
        const QString covers = Printed::tr("%1, for %2 covers")
                                   .arg(q(serving.dish.name), locale_.toString(serving.covers));
        flow.paragraph(
            groups() > 1
                ? Printed::tr("%1, for each of %2 groups").arg(covers, locale_.toString(groups()))
                : covers,
            FontRole::BodyStrong);
        for (const Component& component : serving.dish.components) {
            if (!component.ingredients.empty()) {
                addComponent(component, serving, flow);
            }
        }
    }

  private:
    int groups() const { return lesson_.head.groups.count; }

    QString amount(const Ingredient& it, const Serving& serving, int times) const {
        if (!it.amount) {
            return Printed::tr("to taste");
        }
        const KitchenAmount measured = measuredAmount(it, serving, times);
        const QString text = measuredText(measured, locale_);
        const auto weight = weightOf(it, measured.amount);
        return weight ? Printed::tr("%1 (about %2)").arg(text, weightText(*weight, units_, locale_))
                      : text;
    }

    void addComponent(const Component& component, const Serving& serving, TextFlow& flow) const {
        std::vector<TableColumn> columns = {{{}, 3, FontRole::Body, CellKind::Tick},
                                            {Printed::tr("Amount"), 16, FontRole::BodyStrong},
                                            {Printed::tr("What"), 32},
                                            {Printed::tr("Cut"), 27},
                                            {Printed::tr("Note"), 24}};
        if (groups() > 1) {
            columns[1].title = Printed::tr("A group");
            columns.insert(columns.begin() + 2, {Printed::tr("In all"), 14});
        }
        std::vector<std::vector<QString>> rows;
        for (const Ingredient& it : component.ingredients) {
            std::vector<QString> row = {{},
                                        amount(it, serving, 1),
                                        q(it.name),
                                        cutText(it.cut, units_, locale_),
                                        noteText(it, serving)};
            if (groups() > 1) {
                row.insert(row.begin() + 2, amount(it, serving, groups()));
            }
            rows.push_back(std::move(row));
        }
        flow.heading(q(component.name), 4);
        flow.table(columns, rows);
    }

    const Lesson& lesson_;
    QLocale locale_;
    Units units_;
};

}  // namespace

QString miseEnPlaceTitle() {
    return Printed::tr("Mise en place");
}

SheetPages makeMiseEnPlace(const TimelineInput& input, const SheetSetup& setup) {
    TextSheet sheet(input, setup.layout, miseEnPlaceTitle());
    const MiseEnPlace lists(input.text);
    for (const Serving& serving : input.text.lesson.servings) {
        sheet.section(miseEnPlaceTitle(), [&](TextFlow& flow) { lists.fill(serving, flow); });
    }
    return sheet.finish();
}

}  // namespace rangeline
