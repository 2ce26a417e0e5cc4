// Explanations as JSON, for programs.

#include <QJsonArray>

#include "text/explain_text.h"

namespace rangeline {
namespace {

const char* keyOf(ExplainStatus status) {
    switch (status) {
        case ExplainStatus::Smallest:
            return "smallest";
        case ExplainStatus::NotProvedSmall:
            return "not-proved-smallest";
        case ExplainStatus::Possible:
            return "possible";
        case ExplainStatus::Stopped:
            break;
    }
    return "stopped";
}

const char* keyOf(RequirementKind kind) {
    constexpr const char* keys[] = {"kitchen-opens", "cooking-may-start", "plate-keeps",
                                    "serving",       "after-serving",     "everyone-out",
                                    "follows",       "keeps-for",         "burners",
                                    "wares",         "pool-capacity",     "oven-slots",
                                    "oven-settings", "oven-warm-up",      "hands",
                                    "watching",      "class-watches",     "wash",
                                    "widest-vessel", "door-shut",         "oven-fits",
                                    "pinned",        "pinned-wash",       "pinned-turn-on",
                                    "nobody-can",    "no-ware",           "no-burner",
                                    "no-oven",       "hands-inside"};
    static_assert(std::size(keys) == static_cast<std::size_t>(RequirementKind::HandsInside) + 1);
    return keys[static_cast<std::size_t>(kind)];
}

const char* keyOf(RemedyKind kind) {
    constexpr const char* keys[] = {
        "serve-later", "open-earlier",   "cook-earlier", "leave-later",
        "wait-less",   "wait-longer",    "keep-longer",  "plates-wait-longer",
        "unpin",       "do-ahead",       "turn-out",     "another-ware",
        "more-room",   "another-burner", "another-oven", "another-cook"};
    static_assert(std::size(keys) == static_cast<std::size_t>(RemedyKind::AnotherCook) + 1);
    return keys[static_cast<std::size_t>(kind)];
}

}  // namespace

QJsonObject toMachine(const Explanation& explanation, const TextContext& context) {
    QJsonArray requirements;
    for (const Requirement& requirement : explanation.requirements) {
        requirements.append(QJsonObject{{"kind", keyOf(requirement.kind)},
                                        {"sentence", requirementText(requirement, context)}});
    }
    return {{"status", keyOf(explanation.status)},
            {"requirements", requirements},
            {"questions", static_cast<qint64>(explanation.questions)},
            {"conflicts", static_cast<qint64>(explanation.conflicts)}};
}

QJsonObject toMachine(const Remedy& remedy, const TextContext& context) {
    const Clock clock(context);
    QJsonObject object{{"kind", keyOf(remedy.kind)},
                       {"sentence", remedyText(remedy, context)},
                       {"start_seconds", static_cast<qint64>(remedy.start.inSeconds())}};
    if (remedy.by) {
        object["by_seconds"] = static_cast<qint64>(remedy.by->inSeconds());
        object["least"] = remedy.least;
    }
    return object;
}

}  // namespace rangeline
