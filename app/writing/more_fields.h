#pragma once
// What can be written of a step beyond its form, each as a line of text.

#include "model/dish.h"
#include "model/lesson.h"
#include "writing/field.h"
#include "writing/ties.h"

namespace rangeline {

std::vector<Field<Tie>> tieFields(const StepNames& names);
std::vector<Field<WareNeed>> wareFields(const StepNames& names, Units units);
/// Shelf, counter, sink and the like, taken while the step goes on.
std::vector<Field<PoolNeed>> poolFields();
/// Attention of any form, one part after the other.
std::vector<Field<Segment>> attentionFields();
/// What can hurt, and who does it how.
std::vector<Field<Step>> moreFields();

/// Keys of a table and the words for them.
struct Vocabulary {
    std::vector<std::string> keys;
    QStringList words;

    /// The key of that word or key; the text itself where it is neither.
    std::string keyOf(const QString& text) const;
    QString wordOf(const std::string& key) const;
};
/// What there is only so much of: shelf, counter, sink.
Vocabulary poolWords();
/// "milk, egg" as keys and back.
std::vector<std::string> readList(const QString& text, const Vocabulary& words);
QString listShown(const std::vector<std::string>& keys, const Vocabulary& words);

}  // namespace rangeline
