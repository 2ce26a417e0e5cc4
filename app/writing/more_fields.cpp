#include "writing/more_fields.h"

#include <QCoreApplication>
#include <algorithm>

#include "safety/allergens.h"
#include "safety/dangers.h"
#include "text/words.h"
#include "writing/field_values.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(MoreFields)
};

/// A danger is written by its key's words: "hot fat".
QString dangerName(std::string_view key) {
    return QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size())).replace(u'-', u' ');
}

template <class Row>
Vocabulary vocabulary(std::span<const Row> rows, QString (*wordOf)(std::string_view)) {
    Vocabulary words;
    for (const Row& row : rows) {
        words.keys.emplace_back(row.key);
        words.words << wordOf(row.key);
    }
    return words;
}

Field<Step> listField(const QString& title, std::vector<std::string> Hazards::*member,
                      const Vocabulary& words) {
    FieldLook look{
        title,
        Text::tr("one or several, with commas: %1").arg(words.words.join(QStringLiteral(", ")))};
    return {std::move(look),
            [=](const Step& step) { return listShown(step.hazards.*member, words); },
            [=](Step& step, const QString& text) {
                step.hazards.*member = readList(text, words);
                return true;
            }};
}

Field<Step> hazard(const QString& title, bool Hazards::*member) {
    return yesNoField<Step>(
        title, [=](const Step& step) { return step.hazards.*member; },
        [=](Step& step, bool yes) { step.hazards.*member = yes; });
}

Field<Step> staysOnHeatField() {
    Field<Step> field = yesNoField<Step>(
        Text::tr("stays on the burner of the step it goes on from"),
        [](const Step& step) {
            const auto* heat = std::get_if<BurnerHeat>(&step.heat);
            return heat != nullptr && heat->staysOnHeat;
        },
        [](Step& step, bool yes) {
            if (auto* heat = std::get_if<BurnerHeat>(&step.heat)) {
                heat->staysOnHeat = yes;
            }
        });
    field.look.key = "burner.staysOnHeat";
    return field;
}

}  // namespace

std::string Vocabulary::keyOf(const QString& text) const {
    const QString wanted = text.trimmed();
    for (qsizetype i = 0; i < words.size(); ++i) {
        if (words[i].compare(wanted, Qt::CaseInsensitive) == 0) {
            return keys[static_cast<std::size_t>(i)];
        }
    }
    return wanted.toStdString();
}

QString Vocabulary::wordOf(const std::string& key) const {
    const auto found = std::ranges::find(keys, key);
    return found == keys.end() ? QString::fromStdString(key) : words[found - keys.begin()];
}

std::vector<std::string> readList(const QString& text, const Vocabulary& words) {
    std::vector<std::string> keys;
    for (const QString& part : text.split(u',', Qt::SkipEmptyParts)) {
        const std::string key = words.keyOf(part);
        if (!key.empty() && std::ranges::find(keys, key) == keys.end()) {
            keys.push_back(key);
        }
    }
    return keys;
}

QString listShown(const std::vector<std::string>& keys, const Vocabulary& words) {
    QStringList shown;
    for (const std::string& key : keys) {
        shown << words.wordOf(key);
    }
    return shown.join(QStringLiteral(", "));
}

std::vector<Field<Segment>> attentionFields() {
    const QStringList words{attentionWord(Attention::Hands), attentionWord(Attention::Watch),
                            attentionWord(Attention::Away)};
    const QString rest = Text::tr("the rest");
    FieldLook needs{Text::tr("It needs"), words.join(QStringLiteral(", ")), words};
    needs.width = 18;
    FieldLook length{Text::tr("How long"), Text::tr("a time such as 2 min, or “the rest”"), {rest}};
    return {{std::move(needs), [](const Segment& part) { return attentionWord(part.attention); },
             [](Segment& part, const QString& text) {
                 const auto attention = attentionIn(text);
                 part.attention = attention.value_or(part.attention);
                 return attention.has_value();
             }},
            {std::move(length),
             [rest](const Segment& part) { return part.stretches ? rest : fieldText(part.length); },
             [rest](Segment& part, const QString& text) {
                 const auto value = durationIn(text);
                 part.stretches = text.trimmed() == rest;
                 part.length = value.value_or(Duration());
                 return part.stretches || value;
             }}};
}

std::vector<Field<Step>> moreFields() {
    return {listField(Text::tr("Allergens"), &Hazards::allergens,
                      vocabulary(allergens(), &allergenText)),
            listField(Text::tr("Dangers"), &Hazards::dangers, vocabulary(dangers(), &dangerName)),
            textField(FieldLook{Text::tr("Only who can"), Text::tr("an ability: teacher")},
                      &Step::needsAbility),
            hazard(Text::tr("handles raw meat, fish or egg"), &Hazards::raw),
            hazard(Text::tr("handles food that is not cooked after"), &Hazards::readyToEat),
            staysOnHeatField(),
            yesNoField<Step>(Text::tr("several cooks may share the pieces"), &Step::mayBeShared),
            yesNoField<Step>(Text::tr("the pan is washed between loads"), &Step::batchesNeedWash),
            yesNoField<Step>(Text::tr("the class watches, nobody else works"), &Step::classWatches),
            yesNoField<Step>(
                Text::tr("one made before class may be swapped in"),
                [](const Step& step) { return step.after.mayBeSwappedIn; },
                [](Step& step, bool yes) { step.after.mayBeSwappedIn = yes; })};
}

}  // namespace rangeline
