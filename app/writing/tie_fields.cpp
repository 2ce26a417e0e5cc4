#include <QCoreApplication>
#include <algorithm>

#include "model/equipment_kinds.h"
#include "model/quantity_text.h"
#include "writing/field_values.h"
#include "writing/more_fields.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(TieFields)
};

FieldLook look(const QString& title, const QString& wanted, int width) {
    FieldLook look{title, wanted};
    look.width = width;
    return look;
}

FieldLook stepLook(const QString& title, const StepNames& names, int width) {
    FieldLook seen = look(title, Text::tr("the name of another step of this dish"), width);
    for (const std::string& name : names.names) {
        seen.choices << QString::fromStdString(name);
    }
    return seen;
}

Vocabulary kindWords(EquipmentRole role) {
    Vocabulary words;
    for (const EquipmentKind& kind : equipmentKinds()) {
        if (kind.role == role) {
            words.keys.emplace_back(kind.key);
            words.words << QString::fromStdString(words.keys.back()).replace(u'-', u' ');
        }
    }
    return words;
}

/// One of the vocabulary's; `keyIn` is the text of the thing that holds its key.
template <class T, class KeyIn>
Field<T> kindField(const QString& title, const Vocabulary& words, KeyIn keyIn) {
    FieldLook seen = look(title, {}, 12);
    seen.choices = words.words;
    seen.wanted = Text::tr("one of: %1").arg(seen.choices.join(QStringLiteral(", ")));
    return {std::move(seen), [=](const T& need) { return words.wordOf(keyIn(need)); },
            [=](T& need, const QString& text) {
                const std::string key = words.keyOf(text);
                const bool known = std::ranges::find(words.keys, key) != words.keys.end();
                if (known) {
                    keyIn(need) = key;
                }
                return known;
            }};
}

Field<WareNeed> carriesOnField(const StepNames& names) {
    return {stepLook(Text::tr("The one of step"), names, 18),
            [names](const WareNeed& need) {
                return need.carriesOn ? QString::fromStdString(names.nameOf(*need.carriesOn))
                                      : QString();
            },
            [names](WareNeed& need, const QString& text) {
                const StepId id = names.idOf(text.trimmed().toStdString());
                const bool understood = !id.empty() || text.trimmed().isEmpty();
                if (understood) {
                    need.carriesOn = id.empty() ? std::nullopt : std::optional(id);
                }
                return understood;
            }};
}

Field<WareNeed> volumeField() {
    return optionalField<WareNeed>(
        look(Text::tr("Holds"), Text::tr("a volume such as 2 L"), 6), &WareNeed::leastMillilitres,
        [](std::int64_t value) { return QString::fromStdString(volumeText(value)); }, volumeIn);
}

std::optional<int> fewIn(const QString& text) {
    bool whole = false;
    const int value = text.trimmed().toInt(&whole);
    return whole && value >= 1 && value <= 50 ? std::optional(value) : std::nullopt;
}

QString endWord(StepEnd end) {
    return end == StepEnd::Start ? Text::tr("start") : Text::tr("end");
}

/// From which end, to which end the wait is counted.
Field<Tie> endField(const QString& title, StepEnd Tie::*member) {
    FieldLook seen = look(title, Text::tr("start or end"), 7);
    seen.choices = {endWord(StepEnd::Start), endWord(StepEnd::End)};
    return {std::move(seen), [member](const Tie& tie) { return endWord(tie.*member); },
            [member](Tie& tie, const QString& text) {
                for (const StepEnd end : {StepEnd::Start, StepEnd::End}) {
                    if (endWord(end).compare(text.trimmed(), Qt::CaseInsensitive) == 0) {
                        tie.*member = end;
                        return true;
                    }
                }
                return false;
            }};
}

}  // namespace

std::vector<Field<WareNeed>> wareFields(const StepNames& names, Units units) {
    return {kindField<WareNeed>(
                Text::tr("Pan or tool"), kindWords(EquipmentRole::Ware),
                [](auto& need) -> auto& { return need.kind; }),
            carriesOnField(names),
            valueField<WareNeed>(
                look(Text::tr("Width"), Text::tr("a least width such as 10 in or 26 cm"), 7),
                &WareNeed::leastWidth, [units](Length value) { return fieldText(value, units); },
                [units](const QString& text) {
                    return text.trimmed().isEmpty() ? std::optional(Length())
                                                    : lengthIn(text, units);
                }),
            volumeField(),
            valueField<WareNeed>(
                look(Text::tr("Count"), Text::tr("1 to 50"), 6), &WareNeed::count,
                [](int value) { return QString::number(value); }, &fewIn),
            yesNoField<WareNeed>(Text::tr("Then free"), &WareNeed::turnedOut)};
}

Vocabulary poolWords() {
    return kindWords(EquipmentRole::Pool);
}

std::vector<Field<PoolNeed>> poolFields() {
    return {kindField<PoolNeed>(
                Text::tr("Place or tap"), poolWords(),
                [](auto& need) -> auto& { return need.pool.text; }),
            valueField<PoolNeed>(
                look(Text::tr("How much of it"), Text::tr("1 to 50"), 14), &PoolNeed::amount,
                [](int value) { return QString::number(value); }, &fewIn)};
}

std::vector<Field<Tie>> tieFields(const StepNames& names) {
    return {{stepLook(Text::tr("After the step"), names, 22),
             [names](const Tie& tie) { return QString::fromStdString(names.nameOf(tie.from)); },
             [names](Tie& tie, const QString& text) {
                 const StepId id = names.idOf(text.trimmed().toStdString());
                 tie.from = id.empty() ? tie.from : id;
                 return !id.empty();
             }},
            yesNoField<Tie>(Text::tr("Food goes in"), &Tie::goesIn),
            valueField<Tie>(
                look(Text::tr("At least"), Text::tr("a time such as 5 min"), 8), &Tie::least,
                [](Duration value) { return value == Duration() ? QString() : fieldText(value); },
                [](const QString& text) {
                    return text.trimmed().isEmpty() ? std::optional(Duration()) : durationIn(text);
                }),
            optionalField<Tie>(
                look(Text::tr("Within"), Text::tr("a time such as 20 min"), 8), &Tie::most,
                [](Duration value) { return fieldText(value); }, &durationIn),
            yesNoField<Tie>(Text::tr("By load"), &Tie::each),
            endField(Text::tr("From its"), &Tie::fromEnd),
            endField(Text::tr("To this one’s"), &Tie::toEnd)};
}

}  // namespace rangeline
