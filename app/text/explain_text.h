#pragma once
// Why a lesson is not possible or cannot start later, and what would help.

#include <QJsonObject>
#include <QString>
#include <QStringList>
#include <vector>

#include "arrange/explain.h"
#include "arrange/remedies.h"
#include "text/names.h"

namespace rangeline {

/// "The kitchen opens at 4:00 PM.", "There is only one sauté pan."
QString requirementText(const Requirement& requirement, const TextContext& context);

/// One sentence for each; what follows step by step is told as one.
QStringList requirementLines(const std::vector<Requirement>& requirements,
                             const TextContext& context);

/// "Not possible: these cannot hold together.", with what is known about the set.
QString notPossibleText(const Explanation& explanation);
/// "It cannot start later because of these together."
QString noLaterText(const Explanation& explanation);

/// "Serve 12 min later: it is possible then, starting at 4:52 PM."
QString remedyText(const Remedy& remedy, const TextContext& context);
/// The name of the step of undo: "serve 12 min later".
QString remedyName(const Remedy& remedy, const TextContext& context);

QJsonObject toMachine(const Explanation& explanation, const TextContext& context);
QJsonObject toMachine(const Remedy& remedy, const TextContext& context);

}  // namespace rangeline
