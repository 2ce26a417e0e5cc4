#include "writing/ingredient_fields.h"

#include <QCoreApplication>
#include <map>

#include "model/quantity_text.h"
#include "recipe/cuts.h"
#include "recipe/ingredient_amount.h"
#include "recipe/plain_words.h"
#include "safety/allergens.h"
#include "text/cut_text.h"
#include "text/words.h"
#include "writing/more_fields.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(IngredientFields)
};

QString q(const std::string& text) {
    return QString::fromStdString(text);
}

FieldLook look(const QString& title, const QString& wanted, int width, const char* key) {
    FieldLook seen{title, wanted};
    seen.width = width;
    seen.key = key;
    return seen;
}

/// "1 1/2 tsp"; an empty text is no amount. False for anything else.
bool takeAmountFrom(const QString& text, Ingredient& ingredient) {
    const std::string plain = plainLine(text.toStdString());
    std::string_view rest = plain;
    const auto taken = takeAmount(rest);
    if (plain.empty()) {
        ingredient.amount.reset();
        return true;
    }
    if (!taken || !(trimmed(rest).empty() || taken->amount.unit.empty())) {
        return false;
    }
    ingredient.amount = taken->amount;
    if (!trimmed(rest).empty()) {
        ingredient.amount->unit = std::string(trimmed(rest));  // the cook's own unit
    }
    return true;
}

Field<Ingredient> amountField() {
    return {
        look(Text::tr("Amount"), Text::tr("an amount such as 1 1/2 tsp, or nothing"), 9, "amount"),
        [](const Ingredient& it) { return it.amount ? q(toText(*it.amount)) : QString(); },
        [](Ingredient& it, const QString& text) { return takeAmountFrom(text, it); }};
}

/// Cuts of the trade are told with their dimension, which the ingredient need not write down; the
/// cook's own are written with theirs.
Field<Ingredient> cutField(const OwnTerms& terms, Units units, const QLocale& locale) {
    FieldLook seen = look(Text::tr("Cut"), {}, 13, "cut");
    for (const OwnCut& own : terms.cuts) {
        seen.choices << q(own.dimension.empty() ? own.name : own.name + ", " + own.dimension);
    }
    for (const Cut& cut : cuts()) {
        seen.choices << cutText(std::string(cut.name), units, locale);
    }
    return {std::move(seen), [=](const Ingredient& it) { return cutText(it.cut, units, locale); },
            [=](Ingredient& it, const QString& text) {
                it.cut = cutWithoutDimension(text.trimmed(), locale).toStdString();
                return true;
            }};
}

Field<Ingredient> containsField() {
    Vocabulary words;
    for (const Allergen& known : allergens()) {
        words.keys.emplace_back(known.key);
        words.words << allergenText(known.key);
    }
    FieldLook seen =
        look(Text::tr("Contains"),
             Text::tr("allergens, with commas: %1").arg(words.words.join(QStringLiteral(", "))), 10,
             "allergens");
    seen.choices = words.words;
    return {std::move(seen),
            [words](const Ingredient& it) { return listShown(it.allergens, words); },
            [words](Ingredient& it, const QString& text) {
                it.allergens = readList(text, words);
                return true;
            }};
}

Field<Ingredient> usableField() {
    return valueField<Ingredient>(
        look(Text::tr("Usable %"), Text::tr("1 to 100: what is left of what was bought"), 8,
             "usablePercent"),
        &Ingredient::usablePercent, [](int percent) { return QString::number(percent); },
        [](const QString& text) -> std::optional<int> {
            bool ok = false;
            const int percent = QString(text).remove(u'%').trimmed().toInt(&ok);
            return ok && percent >= 1 && percent <= 100 ? std::optional(percent) : std::nullopt;
        });
}

Field<Ingredient> scalingField() {
    const std::map<Scaling, QString> words = {{Scaling::WithCovers, Text::tr("with covers")},
                                              {Scaling::Seasoning, Text::tr("to taste")},
                                              {Scaling::Fixed, Text::tr("always the same")}};
    FieldLook seen = look(Text::tr("Scales"),
                          Text::tr("“%1”, “%2” (half as much for the covers added) or “%3”")
                              .arg(words.at(Scaling::WithCovers), words.at(Scaling::Seasoning),
                                   words.at(Scaling::Fixed)),
                          12, "scaling");
    for (const auto& [scaling, word] : words) {
        seen.choices << word;
    }
    return {std::move(seen), [words](const Ingredient& it) { return words.at(it.scaling); },
            [words](Ingredient& it, const QString& text) {
                for (const auto& [scaling, word] : words) {
                    if (word.compare(text.trimmed(), Qt::CaseInsensitive) == 0) {
                        it.scaling = scaling;
                        return true;
                    }
                }
                return false;
            }};
}

}  // namespace

std::vector<Field<Ingredient>> ingredientFields(const OwnTerms& terms, Units units,
                                                const QLocale& locale) {
    return {
        amountField(),
        textField(look(Text::tr("What"), {}, 16, "name"), &Ingredient::name),
        cutField(terms, units, locale),
        textField(look(Text::tr("Note"), {}, 9, "note"), &Ingredient::note),
        containsField(),
        textField(look(Text::tr("Bought with"), Text::tr("a word such as vegetables"), 10, "kind"),
                  &Ingredient::kind),
        usableField(),
        scalingField()};
}

}  // namespace rangeline
