#pragma once
// What other covers change, in kitchen words: the same before it is accepted in the window and on
// the terminal.

#include <QJsonObject>
#include <QString>
#include <QStringList>
#include <vector>

#include "check/covers_change.h"
#include "text/names.h"

namespace rangeline {

struct CoversSection {
    QString heading;
    QStringList lines;
};

/// Covers, amounts, loads and times, what is wrong then; sections without a line are left out.
/// `after` is the context of the lesson after the change.
std::vector<CoversSection> coversSections(const CoversChange& change, const TextContext& after);

/// The same for programs.
QJsonObject toMachine(const CoversChange& change, const TextContext& after);

}  // namespace rangeline
