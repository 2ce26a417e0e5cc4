#include "text/machine_form.h"

#include <algorithm>
#include <array>

#include "exchange/words.h"
#include "text/arrange_text.h"
#include "text/fault_text.h"
#include "text/finding_text.h"
#include "text/finding_words.h"
#include "text/plating_text.h"

namespace rangeline {

namespace {

QString q(const std::string& text) {
    return QString::fromStdString(text);
}

QJsonValue number(std::int64_t value) {
    return static_cast<qint64>(value);
}

QJsonObject figure(const Figure& value, const Clock& clock) {
    struct Visitor {
        const Clock& clock;
        QJsonObject operator()(Duration v) const {
            return {{"duration_seconds", number(v.inSeconds())}};
        }
        QJsonObject operator()(Instant v) const {
            return {{"instant_seconds", number(v.inSeconds())}, {"instant", clock.iso(v)}};
        }
        QJsonObject operator()(Temperature v) const {
            return {{"temperature_celsius", v.inCelsius()},
                    {"temperature_fahrenheit", v.inFahrenheit()}};
        }
        QJsonObject operator()(Length v) const {
            return {{"length_millimetres", v.inMillimetres()}};
        }
        QJsonObject operator()(std::int64_t v) const { return {{"number", number(v)}}; }
        QJsonObject operator()(const std::string& v) const { return {{"text", q(v)}}; }
    };
    return std::visit(Visitor{clock}, value);
}

void addInterval(QJsonObject& object, const Interval& interval, const Clock& clock) {
    object["start_seconds"] = number(interval.begin.inSeconds());
    object["end_seconds"] = number(interval.end.inSeconds());
    object["start"] = clock.iso(interval.begin);
    object["end"] = clock.iso(interval.end);
}

QJsonObject stepForm(const StepKey& key) {
    return {{"step", q(key.step.text)}, {"batch", key.batch}, {"group", key.group}};
}

QString severityKey(Severity severity) {
    constexpr std::array keys{"collision", "late", "open", "caution"};
    return keys[static_cast<std::size_t>(severity)];
}

QString sortKey(EquipmentSort sort) {
    constexpr std::array keys{"none", "burner", "oven", "ware", "pool", "cook"};
    return keys[static_cast<std::size_t>(sort)];
}

QString heldByKey(HeldBy by) {
    constexpr std::array keys{"deadline", "wait", "equipment", "cook", "pin"};
    return keys[static_cast<std::size_t>(by)];
}

QString statusKey(ArrangeStatus status) {
    constexpr std::array keys{"proved", "found", "not-possible", "stopped"};
    return keys[static_cast<std::size_t>(status)];
}

QJsonObject equipmentForm(const EquipmentRef& ref, const Names& names) {
    return {{"sort", sortKey(ref.sort)}, {"unit", ref.unit}, {"name", names.equipment(ref)}};
}

QJsonObject spareForm(const Spare& spare, const PlatingAnalysis& analysis,
                      const TextContext& context) {
    QJsonArray holds;
    for (const Hold& hold : spare.holds) {
        QJsonObject form{{"by", heldByKey(hold.by)}};
        if (hold.next >= 0) {
            form["next"] = toMachine(analysis.spares[static_cast<std::size_t>(hold.next)].key);
        }
        holds << form;
    }
    return {{"placement", toMachine(spare.key)},
            {"spare_seconds", number(spare.spare.inSeconds())},
            {"pinned", spare.pinned},
            {"held_by", holds},
            {"sentence", platingLine(spare, analysis, context)}};
}

}  // namespace

QJsonObject toMachine(const Fault& fault) {
    return {{"place", q(fault.place)}, {"sentence", sentence(fault)}};
}

QJsonObject toMachine(const PlacementKey& key) {
    if (const auto* step = std::get_if<StepKey>(&key)) {
        QJsonObject form = stepForm(*step);
        form["kind"] = "step";
        return form;
    }
    if (const auto* wash = std::get_if<WashKey>(&key)) {
        return {{"kind", "wash"}, {"after", stepForm(wash->after)}, {"spot", wash->spot}};
    }
    const auto& turnOn = std::get<TurnOnKey>(key);
    return {{"kind", "turn-on"}, {"oven", q(turnOn.oven.text)}, {"group", turnOn.group}};
}

QJsonObject toMachine(const Finding& finding, const TextContext& context) {
    const Clock clock(context);
    QJsonObject form{{"code", wordsOf(finding.code).key},
                     {"severity", severityKey(finding.severity)},
                     {"title", title(finding.code)},
                     {"sentence", sentence(finding, context)},
                     {"hint", hint(finding, context)}};
    QJsonArray keys;
    for (const PlacementKey& key : finding.keys) {
        keys << toMachine(key);
    }
    form["placements"] = keys;
    QJsonArray figures;
    for (const Figure& value : finding.figures) {
        figures << figure(value, clock);
    }
    form["figures"] = figures;
    if (finding.equipment.sort != EquipmentSort::None) {
        form["equipment"] = equipmentForm(finding.equipment, Names(context));
    }
    if (!finding.interval.empty()) {
        addInterval(form, finding.interval, clock);
    }
    return form;
}

QJsonArray toMachine(const std::vector<Finding>& findings, const TextContext& context) {
    QJsonArray array;
    for (const Finding& finding : findings) {
        array << toMachine(finding, context);
    }
    return array;
}

QJsonArray toMachine(const std::vector<PlanRow>& rows, const TextContext& context) {
    const Clock clock(context);
    QJsonArray array;
    for (const PlanRow& row : rows) {
        QJsonObject form{{"placement", toMachine(row.key)},
                         {"name", row.step},
                         {"where", row.where},
                         {"who", row.who},
                         {"cue", row.cue}};
        addInterval(form, row.interval, clock);
        form["pinned"] = context.lesson.placements.at(row.key).pinned;
        array << form;
    }
    return array;
}

QJsonObject toMachine(const PlatingAnalysis& analysis, const TextContext& context) {
    QJsonArray spares;
    for (const Spare& spare : analysis.spares) {
        spares << spareForm(spare, analysis, context);
    }
    QJsonArray path;
    for (const int number : analysis.path) {
        path << toMachine(analysis.spares[static_cast<std::size_t>(number)].key);
    }
    return {{"decides_plating", path}, {"spares", spares}};
}

QJsonObject toMachine(const ArrangeResult& result, const Head& head, const QLocale& locale) {
    const Clock clock(head, locale);
    const ArrangeStatistics& statistics = result.statistics;
    QJsonObject form{{"status", statusKey(result.status)},
                     {"sentence", arrangeText(result, head, locale)},
                     {"seconds_to_first", statistics.secondsToFirst},
                     {"seconds_to_best", statistics.secondsToBest},
                     {"seconds", statistics.seconds},
                     {"conflicts", number(statistics.conflicts)},
                     {"decisions", number(statistics.decisions)},
                     {"restarts", number(statistics.restarts)}};
    if (result.last.best) {
        form["best_start_seconds"] = number(result.last.best->inSeconds());
        form["best_start"] = clock.iso(*result.last.best);
        form["bound_seconds"] = number(result.last.bound.inSeconds());
        form["bound"] = clock.iso(result.last.bound);
    }
    form["aim"] = QString::fromStdString(std::string(wordOf(result.last.aim)));
    if (result.last.aimBest) {
        form["aim_best"] = number(*result.last.aimBest);
        form["aim_bound"] = number(result.last.aimBound);
    }
    return form;
}

}  // namespace rangeline
