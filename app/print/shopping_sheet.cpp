#include "print/shopping_sheet.h"

#include <algorithm>
#include <map>

#include "model/food_weights.h"
#include "model/measures.h"
#include "model/scaled_amount.h"
#include "print/print_text.h"
#include "print/text_sheet.h"

namespace rangeline {
namespace {

/// How much all dishes want of one ingredient.
struct Wanted {
    std::vector<Amount> amounts;
    KnownWeight weight;   ///< of them together
    bool weighed = true;  ///< whether every one of them has a known weight

    void add(const Ingredient& it, const Amount& amount) {
        amounts.push_back(amount);
        const auto known = weightOf(it, amount);
        weighed &= known.has_value();
        weight.low += known ? known->low : 0;
        weight.high += known ? known->high : 0;
    }
};

struct Bought {
    Wanted perGroup;
    Wanted inAll;
    bool toTaste = false;
    QStringList notes;
    QStringList components;
};

/// By kind, then by name; what has no kind comes last.
struct Shelf {
    bool operator<(const Shelf& other) const {
        return std::pair(kind.isEmpty(), kind) < std::pair(other.kind.isEmpty(), other.kind);
    }
    QString kind;
};
using List = std::map<Shelf, std::map<QString, Bought>>;

void addOnce(QStringList& list, const std::string& text) {
    if (!text.empty() && !list.contains(q(text))) {
        list << q(text);
    }
}

void add(const Ingredient& it, const Serving& serving, int times, Bought& bought) {
    if (it.amount) {
        bought.perGroup.add(it, amountToBuy(it, serving));
        bought.inAll.add(it, amountToBuy(it, serving, times));
    } else {
        bought.toTaste = true;
    }
    addOnce(bought.notes, it.note);
}

/// A finished twin of one of its steps is swapped in, so that everything in it is needed again.
bool hasTwin(const Component& component, const std::vector<SwapIn>& swapIns) {
    return std::ranges::any_of(component.steps, [&](const Step& step) {
        return std::ranges::find(swapIns, step.id, &SwapIn::step) != swapIns.end();
    });
}

List everythingOf(const Lesson& lesson, int times) {
    List list;
    for (const Serving& serving : lesson.servings) {
        for (const Component& component : serving.dish.components) {
            for (const Ingredient& it : component.ingredients) {
                Bought& bought = list[{q(it.kind)}][q(it.name)];
                add(it, serving, times, bought);
                addOnce(bought.components, component.name);
                if (hasTwin(component, lesson.choices.swapIns)) {
                    add(it, serving, times, bought);
                    addOnce(bought.components,
                            Printed::tr("the twin of %1").arg(q(component.name)).toStdString());
                }
            }
        }
    }
    return list;
}

class ShoppingList {
  public:
    ShoppingList(const TimelineInput& input, const SheetSetup& setup)
        : lesson_(input.text.lesson),
          units_(input.text.units),
          locale_(input.text.locale),
          times_(lesson_.head.groups.count * setup.classes),
          classes_(setup.classes) {}

    void fill(TextFlow& flow) const {
        flow.paragraph(forWhom(), FontRole::BodyStrong);
        const List list = everythingOf(lesson_, times_);
        for (const auto& [shelf, things] : list) {
            if (list.size() > 1) {
                flow.heading(shelf.kind.isEmpty() ? Printed::tr("Other") : sentenceCase(shelf.kind),
                             3);
            }
            flow.table(columns(), rows(things));
        }
    }

  private:
    QString forWhom() const {
        if (classes_ == 1 && lesson_.head.groups.count == 1) {
            return Printed::tr("As bought, with what is peeled and trimmed off.");
        }
        const QString groups = locale_.toString(lesson_.head.groups.count);
        const QString classes = locale_.toString(classes_);
        if (classes_ == 1) {
            return Printed::tr("As bought, for %1 groups.").arg(groups);
        }
        return lesson_.head.groups.count == 1
                   ? Printed::tr("As bought, for %1 classes.").arg(classes)
                   : Printed::tr("As bought, for %1 groups in each of %2 classes.")
                         .arg(groups, classes);
    }

    QString sumText(const Wanted& wanted, bool toTaste) const {
        QStringList parts;
        for (const Amount& sum : addedUp(wanted.amounts)) {
            parts << amountText(sum, locale_);
        }
        if (toTaste) {
            parts << Printed::tr("to taste");
        }
        const QString sum = parts.join(Printed::tr(" + "));
        return wanted.weighed && wanted.weight.high > 0
                   ? Printed::tr("%1 (about %2)")
                         .arg(sum, weightText(wanted.weight, units_, locale_))
                   : sum;
    }

    std::vector<TableColumn> columns() const {
        std::vector<TableColumn> made = {{{}, 3, FontRole::Body, CellKind::Tick},
                                         {Printed::tr("Amount"), 28, FontRole::BodyStrong},
                                         {Printed::tr("What"), 28},
                                         {Printed::tr("Note"), 18},
                                         {Printed::tr("For"), 28}};
        if (times_ > 1) {
            made.insert(made.begin() + 2, {Printed::tr("One group"), 20});
            made[1].title = Printed::tr("In all");
        }
        return made;
    }

    std::vector<std::vector<QString>> rows(const std::map<QString, Bought>& things) const {
        std::vector<std::vector<QString>> made;
        for (const auto& [name, bought] : things) {
            std::vector<QString> row = {{},
                                        sumText(bought.inAll, bought.toTaste),
                                        name,
                                        bought.notes.join(Printed::tr(", ")),
                                        bought.components.join(Printed::tr(", "))};
            if (times_ > 1) {
                row.insert(row.begin() + 2, sumText(bought.perGroup, bought.toTaste));
            }
            made.push_back(std::move(row));
        }
        return made;
    }

    const Lesson& lesson_;
    Units units_;
    QLocale locale_;
    int times_;
    int classes_;
};

}  // namespace

QString shoppingTitle() {
    return Printed::tr("Shopping list");
}

SheetPages makeShopping(const TimelineInput& input, const SheetSetup& setup) {
    TextSheet sheet(input, setup.layout, shoppingTitle());
    const auto& servings = input.text.lesson.servings;
    const bool any = std::ranges::any_of(servings, [](const Serving& serving) {
        return std::ranges::any_of(serving.dish.components, [](const Component& component) {
            return !component.ingredients.empty();
        });
    });
    if (any) {
        sheet.section(shoppingTitle(),
                      [&](TextFlow& flow) { ShoppingList(input, setup).fill(flow); });
    }
    return sheet.finish();
}

}  // namespace rangeline
