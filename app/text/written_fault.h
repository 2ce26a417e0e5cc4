#pragma once
// What is wrong with a dish or a kitchen as its writer is told: without keys and ids.

#include <QString>
#include <functional>

#include "model/fault.h"

namespace rangeline {

/// The name of a step; empty for what is none.
using NameOfStep = std::function<QString(const std::string& id)>;

/// What is wrong and what to do, without where: "it stays on a burner but goes on in no pan from
/// one". Begins with a small letter, has no full stop.
QString writtenSentence(const Fault& fault, const NameOfStep& nameOf);

/// What the field is called that the place of a fault ends in ("…wares[0].leastWidth" is the
/// "least width"); empty where it ends in none.
QString writtenField(const std::string& place);

}  // namespace rangeline
