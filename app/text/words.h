#pragma once
// Kitchen words for the keys that core uses: modes, storage, allergens, foods, dangers, sources. A
// word that is in no table is the cook's own and stays as it is.

#include <QString>
#include <string_view>

#include "model/dish.h"
#include "model/kitchen.h"
#include "model/lesson.h"

namespace rangeline {

QString modeText(OvenMode mode);
QString modeText(std::string_view key);     ///< "bake", "convection", "broil"
QString storageText(std::string_view key);  ///< "room", "cold", "hot-on-burner", "hot-in-oven"
QString storageText(Storage storage);
QString profileText(SafetyProfile profile);
QString needText(std::string_view key);  ///< "burner", "oven", "ware", "cook", "watcher"
QString allergenText(std::string_view key);
QString foodText(std::string_view key);
/// What to mind and what to do, one or two sentences.
QString dangerText(std::string_view key);
QString sourceText(std::string_view key);
/// A dial's step: "25 F" reads "25 °F".
QString dialText(std::string_view step);

}  // namespace rangeline
