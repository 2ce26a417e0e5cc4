#include "writing/own_terms.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

#include "model/fridge.h"
#include "recipe/instruction.h"
#include "recipe/spoken_time.h"
#include "safety/techniques.h"

namespace rangeline {
namespace {

constexpr Temperature usualOven = Temperature::fahrenheit(375);
constexpr qint64 longestTime = 7 * 24 * 3600;  // seconds; longer ones are a slip

QString q(const std::string& text) {
    return QString::fromStdString(text);
}

std::string textIn(const QJsonObject& object, const char* key) {
    return object[QLatin1String(key)].toString().toStdString();
}

Duration timeIn(const QJsonObject& object, const char* key) {
    const qint64 seconds = object[QLatin1String(key)].toInteger();
    return Duration::seconds(std::clamp<qint64>(seconds, 0, longestTime));
}

OwnTechnique readTechnique(const QJsonObject& object) {
    const qint64 attention = object[QLatin1String("meanwhile")].toInteger();
    OwnTechnique read{textIn(object, "name"), timeIn(object, "least"), timeIn(object, "most"),
                      timeIn(object, "hands"),
                      static_cast<Attention>(std::clamp<qint64>(attention, 0, 2))};
    read.most = std::max(read.most, read.least);
    return read;
}

/// Long ranges are long for few dishes: nearer to the lower end.
Duration likelyWithin(Duration least, Duration most) {
    const std::int64_t minutes = (least.inSeconds() * 3 + most.inSeconds()) / 4 / 60;
    return std::max(Duration::minutes(minutes), least);
}

StepStart startOf(const OwnTechnique& own) {
    StepStart start = plainStart();
    start.time = timeAround(likelyWithin(own.least, own.most), own.least, own.most);
    // What is fixed must leave something of the shortest time for the rest.
    const bool handsFit = own.handsFirst < start.time.shortest;
    start.segments = attentionOf(handsFit ? own.handsFirst : Duration(), own.meanwhile);
    return start;
}

/// A burner of which nothing was said is as hot as usual.
void addLevel(Step& step, const StepStart& start) {
    auto* burner = std::get_if<BurnerHeat>(&step.heat);
    const auto* usual = std::get_if<BurnerHeat>(&start.heat);
    if (burner != nullptr && usual != nullptr && burner->level.empty()) {
        burner->level = usual->level;
    }
}

bool fits(const std::vector<Segment>& segments, const DurationRange& time) {
    Duration fixed;
    for (const Segment& segment : segments) {
        fixed = segment.stretches ? fixed : fixed + segment.length;
    }
    return fixed < time.shortest;
}

/// The cue stands in a field of its own, as the time before it does. A verb alone keeps it.
std::string withoutClosingCue(const std::string& name, const std::string& cue) {
    if (cue.empty() || !name.ends_with(cue)) {
        return name;
    }
    QString left = q(name.substr(0, name.size() - cue.size())).trimmed();
    while (left.endsWith(u',')) {
        left = left.chopped(1).trimmed();
    }
    return left.contains(u' ') ? left.toStdString() : name;
}

}  // namespace

std::string techniqueKey(const std::string& name) {
    return q(name).trimmed().replace(u' ', u'-').toLower().toStdString();
}

const OwnTechnique* findOwn(const OwnTerms& terms, const std::string& technique) {
    const auto it = std::ranges::find_if(terms.techniques, [&](const OwnTechnique& own) {
        return techniqueKey(own.name) == technique;
    });
    return it == terms.techniques.end() ? nullptr : &*it;
}

std::optional<UsualRange> usualRange(const std::string& technique, const OwnTerms& terms) {
    if (const OwnTechnique* own = findOwn(terms, technique)) {
        return UsualRange{own->least, own->most};
    }
    const Technique* known = findTechnique(technique);
    return known == nullptr ? std::nullopt : std::optional(UsualRange{known->least, known->most});
}

StepStart startOf(const std::string& technique, const OwnTerms& terms, Units units) {
    const OwnTechnique* own = findOwn(terms, technique);
    return own == nullptr ? usualStart(technique, units) : startOf(*own);
}

void setTechnique(Step& step, const std::string& technique, const OwnTerms& terms, Units units) {
    const StepStart before = startOf(step.technique, terms, units);
    step.technique = technique;
    if (usualRange(technique, terms)) {
        goOver(step, before, startOf(technique, terms, units));
    }
}

void suggest(Step& step, const OwnTerms& terms, Units units) {
    Instruction read = readInstruction(step.name, usualOven);
    step.heat = read.ovenAssumed ? Heat() : read.step.heat;
    step.wares = std::move(read.step.wares);
    step.cue = read.step.cue;
    step.plates = read.step.plates;
    setTechnique(step, read.step.technique, terms, units);
    const StepStart start = startOf(step.technique, terms, units);
    addLevel(step, start);
    if (start.cold) {
        keepInFridge(step, !read.step.pools.empty());
    }
    if (step.heat == Heat()) {
        step.heat = read.step.heat;
    }
    if (read.timesNamed > 0) {
        step.time = read.step.time;  // also where it is unusual: that is for the cook to judge
        step.name = withoutClosingTime(withoutClosingCue(step.name, step.cue));
    }
    if (!usualRange(step.technique, terms) || !fits(step.segments, step.time)) {
        step.segments = std::move(read.step.segments);
    }
}

std::string writeTerms(const OwnTerms& terms) {
    QJsonArray techniques;
    for (const OwnTechnique& own : terms.techniques) {
        techniques.append(QJsonObject{{"name", q(own.name)},
                                      {"least", static_cast<qint64>(own.least.inSeconds())},
                                      {"most", static_cast<qint64>(own.most.inSeconds())},
                                      {"hands", static_cast<qint64>(own.handsFirst.inSeconds())},
                                      {"meanwhile", static_cast<int>(own.meanwhile)}});
    }
    QJsonArray cuts;
    for (const OwnCut& own : terms.cuts) {
        cuts.append(QJsonObject{{"name", q(own.name)}, {"dimension", q(own.dimension)}});
    }
    return QJsonDocument(QJsonObject{{"techniques", techniques}, {"cuts", cuts}})
        .toJson(QJsonDocument::Compact)
        .toStdString();
}

OwnTerms readTerms(const std::string& text) {
    const QJsonObject object = QJsonDocument::fromJson(QByteArray::fromStdString(text)).object();
    OwnTerms terms;
    for (const QJsonValue& each : object["techniques"].toArray()) {
        OwnTechnique own = readTechnique(each.toObject());
        if (!own.name.empty()) {
            terms.techniques.push_back(std::move(own));
        }
    }
    for (const QJsonValue& each : object["cuts"].toArray()) {
        OwnCut own{textIn(each.toObject(), "name"), textIn(each.toObject(), "dimension")};
        if (!own.name.empty()) {
            terms.cuts.push_back(std::move(own));
        }
    }
    return terms;
}

}  // namespace rangeline
