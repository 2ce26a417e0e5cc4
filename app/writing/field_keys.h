#pragma once
// Which field on the screen a fault speaks of.

#include <QString>
#include <QWidget>
#include <map>
#include <string>

namespace rangeline {

/// The field holds that part of the step or dish, in the words of a fault's place: "after.cold",
/// "wares[0].kind".
void setFieldKey(QWidget& field, const char* key);

/// The field below `root` of just that key, else the nearest that holds it ("burner" for
/// "burner.leastPower", "wares" for "wares[1]"); one that can be written in before another. Null
/// where there is none.
QWidget* fieldOf(QWidget& root, const std::string& key);

/// Marks the fields of those keys, says why where one points at them, and unmarks all others.
void markFields(QWidget& root, const std::map<std::string, QString>& why);

}  // namespace rangeline
