#include "print/shopping_sheet.h"

#include <algorithm>
#include <map>

#include "model/scaled_amount.h"
#include "print/print_text.h"
#include "print/text_sheet.h"

namespace rangeline {
namespace {

/// One ingredient with what all dishes want of it.
struct Bought {
    std::vector<Amount> perGroup;  ///< one for each unit
    std::vector<Amount> total;
    bool toTaste = false;
    QStringList notes;
    QStringList dishes;
};

void add(std::vector<Amount>& sums, const Amount& amount) {
    const auto same = std::ranges::find(sums, amount.unit, &Amount::unit);
    if (same == sums.end()) {
        sums.push_back(amount);
        return;
    }
    same->low = same->low + amount.low;
    same->high = same->high + amount.high;
}

void addOnce(QStringList& list, const std::string& text) {
    if (!text.empty() && !list.contains(q(text))) {
        list << q(text);
    }
}

std::map<QString, Bought> everythingOf(const Lesson& lesson) {
    std::map<QString, Bought> list;
    for (const Serving& serving : lesson.servings) {
        for (const Component& component : serving.dish.components) {
            for (const Ingredient& it : component.ingredients) {
                Bought& bought = list[q(it.name)];
                if (it.amount) {
                    add(bought.perGroup, scaledAmount(it, serving));
                    add(bought.total, scaledAmount(it, serving, lesson.head.groups.count));
                } else {
                    bought.toTaste = true;
                }
                addOnce(bought.notes, it.note);
                addOnce(bought.dishes, component.name);
            }
        }
    }
    return list;
}

QString sumText(const std::vector<Amount>& sums, bool toTaste, const QLocale& locale) {
    QStringList parts;
    for (const Amount& sum : sums) {
        parts << amountText(sum, locale);
    }
    if (toTaste) {
        parts << words("to taste");
    }
    return parts.join(words(" + "));
}

void addList(const TimelineInput& input, TextFlow& flow) {
    const int groups = input.text.lesson.head.groups.count;
    std::vector<TableColumn> columns = {{{}, 3, FontRole::Body, CellKind::Tick},
                                        {words("Amount"), 22, FontRole::BodyStrong},
                                        {words("What"), 30},
                                        {words("Note"), 18},
                                        {words("For"), 32}};
    if (groups > 1) {
        columns.insert(columns.begin() + 2, {words("Each group"), 20});
        columns[1].title = words("In all");
    }
    std::vector<std::vector<QString>> rows;
    for (const auto& [name, bought] : everythingOf(input.text.lesson)) {
        std::vector<QString> row = {{},
                                    sumText(bought.total, bought.toTaste, input.text.locale),
                                    name,
                                    bought.notes.join(words(", ")),
                                    bought.dishes.join(words(", "))};
        if (groups > 1) {
            row.insert(row.begin() + 2,
                       sumText(bought.perGroup, bought.toTaste, input.text.locale));
        }
        rows.push_back(std::move(row));
    }
    flow.table(columns, rows);
}

}  // namespace

QString shoppingTitle() {
    return words("Shopping list");
}

SheetPages makeShopping(const TimelineInput& input, const PageLayout& layout) {
    TextSheet sheet(input, layout, shoppingTitle());
    sheet.section(shoppingTitle(), [&](TextFlow& flow) { addList(input, flow); });
    return sheet.finish();
}

}  // namespace rangeline
