#include "text/finding_text.h"

#include <QCoreApplication>
#include <algorithm>

#include "safety/foods.h"
#include "safety/holding.h"
#include "text/finding_words.h"
#include "text/words.h"

namespace rangeline {

namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Finding)
};

/// Fills the marks of a pattern from one finding.
class Filler {
  public:
    Filler(const Finding& finding, const TextContext& context)
        : finding_(finding), context_(context), names_(context), clock_(context) {}

    QString fill(const QString& pattern) const {
        QString text;
        qsizetype done = 0;
        for (qsizetype open = pattern.indexOf('{'); open >= 0; open = pattern.indexOf('{', done)) {
            const qsizetype close = pattern.indexOf('}', open);
            text += pattern.sliced(done, open - done);
            text += mark(pattern.sliced(open + 1, close - open - 1));
            done = close + 1;
        }
        return sentenceCase(text + pattern.sliced(done));
    }

  private:
    QString mark(const QString& name) const {
        if (name[0].isDigit()) {
            return figure(name[0].digitValue(), name.mid(2));
        }
        if (name == "a" || name == "b") {
            return step(name == "a" ? 0 : 1);
        }
        if (name == "all") {
            return allSteps();
        }
        if (name == "count") {
            return context_.locale.toString(static_cast<qlonglong>(finding_.keys.size()));
        }
        if (name == "thing") {
            return names_.equipment(finding_.equipment);
        }
        if (name == "span") {
            return clock_.span(finding_.interval);
        }
        if (name == "held") {
            return held();
        }
        if (name == "short") {
            return shortBy();
        }
        return clock_.at(name == "at" ? finding_.interval.begin : finding_.interval.end);
    }

    /// Food made before the lesson has no placement: then the last known step stands for it.
    QString step(std::size_t number) const {
        return finding_.keys.empty()
                   ? QString()
                   : names_.step(finding_.keys[std::min(number, finding_.keys.size() - 1)]);
    }

    /// How long the core temperature has to last, for the food that one of the figures names.
    QString held() const {
        const SafetyProfile profile = context_.lesson.head.profile;
        for (const Figure& value : finding_.figures) {
            const auto* key = std::get_if<std::string>(&value);
            const Food* food = key == nullptr ? nullptr : findFood(*key);
            if (food != nullptr && food->core(profile) && food->core(profile)->held > Duration()) {
                return (profile == SafetyProfile::Household ? Text::tr(" and let it rest %1")
                                                            : Text::tr(" and hold it there for %1"))
                    .arg(durationText(food->core(profile)->held, context_.locale));
            }
        }
        return {};
    }

    QString shortBy() const {
        const auto* given = std::get_if<Duration>(&finding_.figures.at(0));
        const auto* wanted = std::get_if<Duration>(&finding_.figures.at(1));
        return given == nullptr || wanted == nullptr
                   ? QString()
                   : durationText(*wanted - *given, context_.locale);
    }

    QString allSteps() const {
        QStringList steps;
        for (const PlacementKey& key : finding_.keys) {
            steps << names_.step(key);
        }
        return listText(steps);
    }

    QString figure(int number, const QString& domain) const {
        if (static_cast<std::size_t>(number) >= finding_.figures.size()) {
            return {};
        }
        const Figure& value = finding_.figures[static_cast<std::size_t>(number)];
        return std::visit([&](const auto& v) { return plain(v, domain); }, value);
    }

    QString plain(Duration v, const QString&) const { return durationText(v, context_.locale); }
    QString plain(Instant v, const QString&) const { return clock_.at(v); }
    QString plain(Temperature v, const QString&) const {
        return temperatureText(v, context_.units, context_.locale);
    }
    QString plain(Length v, const QString&) const {
        return lengthText(v, context_.units, context_.locale);
    }
    QString plain(std::int64_t v, const QString& domain) const {
        if (domain == "volume") {
            return volumeText(v, context_.units, context_.locale);
        }
        const QString number = context_.locale.toString(static_cast<qlonglong>(v));
        return domain == "power" ? Text::tr("%1 W").arg(number) : number;
    }
    QString plain(const std::string& v, const QString& domain) const {
        struct Domain {
            const char* name;
            QString (*text)(std::string_view);
        };
        static constexpr Domain domains[] = {
            {"mode", modeText},         {"storage", storageText}, {"need", needText},
            {"allergen", allergenText}, {"food", foodText},       {"danger", dangerText},
            {"source", sourceText},     {"dial", dialText},
        };
        for (const Domain& known : domains) {
            if (domain == QLatin1String(known.name)) {
                return known.text(v);
            }
        }
        return QString::fromStdString(v);
    }

    const Finding& finding_;
    const TextContext& context_;
    Names names_;
    Clock clock_;
};

/// The cook of the kitchen that a placement names although they are not in the crew.
const Cook* absentCook(const Finding& finding, const Lesson& lesson) {
    if (finding.code != FindingCode::UnknownEquipment || finding.figures.empty()) {
        return nullptr;
    }
    const auto* id = std::get_if<std::string>(&finding.figures.front());
    const auto cook = std::ranges::find_if(lesson.kitchen.cooks, [&](const Cook& each) {
        return id != nullptr && each.id.text == *id;
    });
    return cook == lesson.kitchen.cooks.end() ? nullptr : &*cook;
}

}  // namespace

QString title(FindingCode code) {
    return Text::tr(wordsOf(code).title);
}

QString title(const Finding& finding) {
    if (finding.code != FindingCode::Danger || finding.figures.empty()) {
        return title(finding.code);
    }
    const QString text = dangerText(std::get<std::string>(finding.figures.front()));
    const qsizetype end = text.indexOf(u':');
    return end < 0 ? title(finding.code) : text.left(1).toUpper() + text.mid(1, end - 1);
}

QString sentence(const Finding& finding, const TextContext& context) {
    if (const Cook* absent = absentCook(finding, context.lesson)) {
        return Filler(finding, context)
            .fill(Text::tr("{a} is given to %1, who is not there today.")
                      .arg(QString::fromStdString(absent->name)));
    }
    return Filler(finding, context).fill(Text::tr(sentencePattern(finding)));
}

QString hint(const Finding& finding, const TextContext& context) {
    if (absentCook(finding, context.lesson) != nullptr) {
        return Text::tr("Give it to somebody who is there, or let Arrange choose.");
    }
    const char* pattern = wordsOf(finding.code).hint;
    // Translating an empty text would give the header of the translation.
    return *pattern == '\0' ? QString() : Filler(finding, context).fill(Text::tr(pattern));
}

QString severityText(Severity severity) {
    switch (severity) {
        case Severity::Collision:
            return Text::tr("Collision");
        case Severity::Late:
            return Text::tr("Late");
        case Severity::Open:
            return Text::tr("To do");
        case Severity::Caution:
            break;
    }
    return Text::tr("Caution");
}

QString safetyNote(SafetyProfile profile, const std::optional<Temperature>& room, Units units,
                   const QLocale& locale) {
    const HoldingLimits& limits = holdingLimits(profile);
    const auto degrees = [&](Temperature t) { return temperatureText(t, units, locale); };
    QStringList lines;
    lines << (profile == SafetyProfile::Household ? Text::tr("Limits chosen: household (%1).")
                                                  : Text::tr("Limits chosen: Food Code (%1)."))
                 .arg(sourceText(limits.timeSource));
    lines << Text::tr(
                 "Cold food at or below %1, hot food at or above %2, no more than %3 in between.")
                 .arg(degrees(limits.cold), degrees(limits.hot), durationText(limits.out, locale));
    if (limits.hotRoom) {
        lines << Text::tr("In a room above %1 no more than %2.")
                     .arg(degrees(*limits.hotRoom), durationText(limits.outInHotRoom, locale));
    }
    if (limits.isHot(room)) {
        lines << Text::tr("This kitchen is written down with %1.").arg(degrees(*room));
    }
    if (profile == SafetyProfile::FoodCode) {
        for (const CoolingStage& stage : coolingStages()) {
            lines << Text::tr("Cool from %1 to %2 within %3.")
                         .arg(degrees(stage.from), degrees(stage.to),
                              durationText(stage.within, locale));
        }
    }
    lines << Text::tr(
        "Home guidance. If you serve the public, follow your local food code and health "
        "department.");
    return lines.join(' ');
}

bool needsSafetyNote(const std::vector<Finding>& findings) {
    return std::ranges::any_of(findings, [](const Finding& finding) {
        switch (finding.code) {
            case FindingCode::OutOfTemperatureTooLong:
            case FindingCode::CoreBelowLimit:
            case FindingCode::CoreNotStated:
            case FindingCode::CrossContact:
            case FindingCode::AllergenContact:
            case FindingCode::GuestAllergen:
                return true;
            default:
                return false;
        }
    });
}

}  // namespace rangeline
