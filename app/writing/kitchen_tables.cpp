// What is asked of a kitchen, table by table. A column is an entry here.

#include <QCoreApplication>
#include <algorithm>
#include <set>

#include "model/equipment_kinds.h"
#include "model/quantity_text.h"
#include "writing/field_values.h"
#include "writing/kitchen_table.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(KitchenTables)
};

QString q(const std::string& text) {
    return QString::fromStdString(text);
}

template <class Things>
std::string freeId(const Things& things, const std::string& stem) {
    std::set<std::string> taken;
    for (const auto& each : things) {
        taken.insert(each.id.text);
    }
    int number = 1;
    while (taken.contains(stem + std::to_string(number))) {
        ++number;
    }
    return stem + std::to_string(number);
}

/// A column of a name, whatever the things are.
template <class Things>
KitchenColumn nameColumn(Things Kitchen::*things) {
    return {Text::tr("Name"),
            [=](const Kitchen& k, std::size_t row) { return q((k.*things)[row].name); },
            [=](Kitchen& k, std::size_t row, const QString& text) {
                (k.*things)[row].name = text.toStdString();
                return !text.isEmpty();
            }};
}

/// A column of a whole number of at least one.
template <class Things, class Thing>
KitchenColumn countColumn(const QString& title, Things Kitchen::*things, int Thing::*member,
                          int most) {
    return {title,
            [=](const Kitchen& k, std::size_t row) {
                return QString::number((k.*things)[row].*member);
            },
            [=](Kitchen& k, std::size_t row, const QString& text) {
                bool ok = false;
                const int number = text.toInt(&ok);
                (k.*things)[row].*member = number;
                return ok && number >= 1 && number <= most;
            }};
}

template <class Things, class Thing>
KitchenColumn lengthColumn(const QString& title, Things Kitchen::*things, Length Thing::*member,
                           Units units) {
    return {title,
            [=](const Kitchen& k, std::size_t row) {
                return fieldText((k.*things)[row].*member, units);
            },
            [=](Kitchen& k, std::size_t row, const QString& text) {
                const auto length = lengthIn(text, units);
                (k.*things)[row].*member = length.value_or(Length());
                return length.has_value();
            }};
}

template <class Things>
KitchenColumn kindColumn(Things Kitchen::*things, EquipmentRole role) {
    return {Text::tr("Kind"),
            [=](const Kitchen& k, std::size_t row) {
                return q((k.*things)[row].kind).replace(u'-', u' ');
            },
            [=](Kitchen& k, std::size_t row, const QString& text) {
                const std::string key = QString(text).toLower().replace(u' ', u'-').toStdString();
                const EquipmentKind* kind = findEquipmentKind(key);
                (k.*things)[row].kind = key;
                return kind != nullptr && kind->role == role;
            }};
}

template <class Things>
auto counter(Things Kitchen::*things) {
    return [=](const Kitchen& k) { return (k.*things).size(); };
}

template <class Things>
auto remover(Things Kitchen::*things) {
    return [=](Kitchen& k, std::size_t row) {
        (k.*things).erase((k.*things).begin() + static_cast<std::ptrdiff_t>(row));
    };
}

KitchenTableKind burners(Units units) {
    const KitchenColumn power{Text::tr("Power"),
                              [](const Kitchen& k, std::size_t row) {
                                  const auto& it = k.burners[row].power;
                                  return it ? q(toText(*it)) : QString();
                              },
                              [](Kitchen& k, std::size_t row, const QString& text) {
                                  const auto read = parsePower(text.toStdString());
                                  k.burners[row].power =
                                      read.ok() ? std::optional(read.value()) : std::nullopt;
                                  return read.ok() || text.isEmpty();
                              }};
    return {
        Text::tr("Burners"),
        {nameColumn(&Kitchen::burners),
         lengthColumn(Text::tr("Widest vessel"), &Kitchen::burners, &Burner::widestVessel, units),
         power,
         lengthColumn(Text::tr("From the left"), &Kitchen::burners, &Burner::fromLeft, units),
         lengthColumn(Text::tr("From the front"), &Kitchen::burners, &Burner::fromFront, units)},
        counter(&Kitchen::burners),
        [](Kitchen& k) {
            Burner burner;
            burner.id = {freeId(k.burners, "burner-")};
            burner.name = Text::tr("Burner").toStdString();
            burner.widestVessel = Length::inches(10);
            k.burners.push_back(burner);
        },
        remover(&Kitchen::burners)};
}

KitchenColumn warmUpColumn(Temperature to, Units units) {
    return {Text::tr("Warm-up to %1").arg(fieldText(to, units)),
            [=](const Kitchen& k, std::size_t row) { return fieldText(k.ovens[row].warmUpTo(to)); },
            [=](Kitchen& k, std::size_t row, const QString& text) {
                const auto takes = durationIn(text);
                std::vector<WarmUpPoint>& points = k.ovens[row].warmUp;
                std::erase_if(points, [&](const WarmUpPoint& point) { return point.to == to; });
                points.push_back({to, takes.value_or(Duration())});
                std::ranges::sort(points, {}, &WarmUpPoint::to);
                return takes.has_value();
            }};
}

KitchenTableKind ovens(Units units) {
    const auto limit = [units](const QString& title, Temperature Oven::*member) {
        return KitchenColumn{title,
                             [=](const Kitchen& k, std::size_t row) {
                                 return fieldText(k.ovens[row].*member, units);
                             },
                             [=](Kitchen& k, std::size_t row, const QString& text) {
                                 const auto read = temperatureIn(text, units);
                                 k.ovens[row].*member = read.value_or(Temperature());
                                 return read.has_value();
                             }};
    };
    return {Text::tr("Ovens"),
            {nameColumn(&Kitchen::ovens),
             countColumn(Text::tr("Rack slots"), &Kitchen::ovens, &Oven::slots, 10),
             limit(Text::tr("Lowest"), &Oven::lowest), limit(Text::tr("Highest"), &Oven::highest),
             warmUpColumn(Temperature::fahrenheit(350), units),
             warmUpColumn(Temperature::fahrenheit(450), units)},
            counter(&Kitchen::ovens),
            [](Kitchen& k) {
                Oven oven;
                oven.id = {freeId(k.ovens, "oven-")};
                oven.name = Text::tr("Oven").toStdString();
                oven.slots = 2;
                oven.lowest = Temperature::fahrenheit(175);
                oven.highest = Temperature::fahrenheit(500);
                oven.warmUp = {{Temperature::fahrenheit(350), Duration::minutes(15)},
                               {Temperature::fahrenheit(450), Duration::minutes(25)}};
                k.ovens.push_back(oven);
            },
            remover(&Kitchen::ovens)};
}

KitchenTableKind wares(Units units) {
    const KitchenColumn cleaning{
        Text::tr("Washing takes"),
        [](const Kitchen& k, std::size_t row) { return fieldText(k.wares[row].cleaning.takes); },
        [](Kitchen& k, std::size_t row, const QString& text) {
            const auto takes = durationIn(text);
            k.wares[row].cleaning.takes = takes.value_or(Duration());
            return takes.has_value();
        }};
    return {Text::tr("Pans, boards, tools"),
            {nameColumn(&Kitchen::wares), kindColumn(&Kitchen::wares, EquipmentRole::Ware),
             countColumn(Text::tr("How many"), &Kitchen::wares, &Ware::count, 1000),
             lengthColumn(Text::tr("Width"), &Kitchen::wares, &Ware::width, units), cleaning},
            counter(&Kitchen::wares),
            [](Kitchen& k) {
                Ware ware;
                ware.id = {freeId(k.wares, "ware-")};
                ware.name = Text::tr("Pan").toStdString();
                ware.kind = "saute-pan";
                ware.width = Length::inches(10);
                ware.cleaning.takes = Duration::minutes(3);
                const auto sink = std::ranges::find(k.pools, "sink", &Pool::kind);
                if (sink != k.pools.end()) {
                    ware.cleaning.sink = sink->id;
                }
                k.wares.push_back(ware);
            },
            remover(&Kitchen::wares)};
}

KitchenTableKind pools() {
    return {Text::tr("Sinks, shelves, counter"),
            {nameColumn(&Kitchen::pools), kindColumn(&Kitchen::pools, EquipmentRole::Pool),
             countColumn(Text::tr("Room for"), &Kitchen::pools, &Pool::capacity, 1000)},
            counter(&Kitchen::pools),
            [](Kitchen& k) {
                k.pools.push_back(
                    {{freeId(k.pools, "place-")}, Text::tr("Counter").toStdString(), "counter", 1});
            },
            [](Kitchen& k, std::size_t row) {
                for (Ware& ware : k.wares) {
                    if (ware.cleaning.sink == k.pools[row].id) {
                        ware.cleaning.sink.reset();
                    }
                }
                k.pools.erase(k.pools.begin() + static_cast<std::ptrdiff_t>(row));
            }};
}

KitchenTableKind cooks() {
    const KitchenColumn can{Text::tr("Can, besides cooking"),
                            [](const Kitchen& k, std::size_t row) {
                                QStringList words;
                                for (const std::string& word : k.cooks[row].can) {
                                    words << q(word);
                                }
                                return words.join(QStringLiteral(", "));
                            },
                            [](Kitchen& k, std::size_t row, const QString& text) {
                                k.cooks[row].can.clear();
                                for (const QString& word : text.split(u',', Qt::SkipEmptyParts)) {
                                    k.cooks[row].can.push_back(word.trimmed().toStdString());
                                }
                                return true;
                            }};
    return {Text::tr("Cooks"),
            {nameColumn(&Kitchen::cooks),
             countColumn(Text::tr("Takes % of the usual time"), &Kitchen::cooks, &Cook::pacePercent,
                         1000),
             can},
            counter(&Kitchen::cooks),
            [](Kitchen& k) {
                k.cooks.push_back(
                    {{freeId(k.cooks, "cook-")}, Text::tr("Cook").toStdString(), 100, {}});
            },
            remover(&Kitchen::cooks)};
}

}  // namespace

std::vector<KitchenTableKind> kitchenTables(Units units) {
    return {burners(units), ovens(units), wares(units), pools(), cooks()};
}

}  // namespace rangeline
