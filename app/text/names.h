#pragma once
// What things of a lesson are called in a sentence: steps, washes, equipment, cooks.

#include <QLocale>
#include <QString>
#include <map>
#include <string>

#include "analysis/equipment_ref.h"
#include "model/expand.h"
#include "model/lesson.h"
#include "text/quantities.h"

namespace rangeline {

/// What the sentences are about. Lesson and expansion must outlive it and belong together.
struct TextContext {
    const Lesson& lesson;
    const Expanded& expanded;
    QLocale locale;
    Units units = lesson.head.units;  ///< to be read in; those of the lesson unless said
};

/// Capital first letter, also behind an opening quotation mark.
QString sentenceCase(QString text);
/// "a", "a and b", "a, b and c"
QString listText(const QStringList& items);

class Names {
  public:
    explicit Names(const TextContext& context);

    /// “Roast the thighs”; with component, batch and group in brackets where it would not be clear
    /// without. Washes and turning on: "washing sauté pan 2", "turning on the oven".
    QString step(const PlacementKey& key) const;
    /// The step's own name without quotation marks, for tables: "Roast the thighs".
    QString plainStep(const PlacementKey& key) const;
    QString component(const StepKey& key) const;

    /// "sauté pan 2", "group 2's oven", "Robin"; empty for nothing.
    QString equipment(const EquipmentRef& ref) const;
    /// The same within a sentence: "the oven", but "sauté pan 2" and "group 2's oven".
    QString withArticle(const EquipmentRef& ref) const;
    QString burner(const BurnerId& id, int group) const;
    QString oven(const OvenId& id, int group) const;
    QString ware(const WareSpot& spot, int group) const;
    QString cook(const CookId& id, int group) const;

  private:
    const Task* taskOf(const StepKey& key) const;
    QString nameWithoutTask(const StepId& id) const;
    QString qualifiers(const Task& task) const;
    QString washedWare(const WashKey& key) const;
    QString itemText(EquipmentSort sort, const Unit& unit) const;
    QString unitName(EquipmentSort sort, int unit) const;
    QString byId(EquipmentSort sort, int item, int group, const std::string& id) const;

    const TextContext& context_;
    std::map<std::string, int> stepsNamed_;
};

}  // namespace rangeline
