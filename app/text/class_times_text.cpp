#include "text/class_times_text.h"

#include <QCoreApplication>

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(ClassTimes)
};

}  // namespace

QStringList timesOutOfOrder(const Head& head) {
    const auto& opens = head.kitchenOpens;
    const auto& cooking = head.cookingMayStart;
    const auto& tasting = head.tasting;
    const auto& out = head.everyoneOut;
    QStringList wrong;
    if (opens && *opens >= Instant::serving()) {
        wrong << Text::tr("The kitchen opens only after the plates are served.");
    }
    if (cooking && *cooking >= Instant::serving()) {
        wrong << Text::tr("Cooking starts only after the plates are served.");
    }
    if (opens && cooking && *cooking < *opens) {
        wrong << Text::tr("Cooking starts before the kitchen opens.");
    }
    if (tasting && *tasting < Instant::serving()) {
        wrong << Text::tr("Tasting comes before the plates are served.");
    }
    if (out && *out <= Instant::serving()) {
        wrong << Text::tr("Everyone is out before the plates are served.");
    } else if (out && tasting && *out < *tasting) {
        wrong << Text::tr("Everyone is out before the tasting.");
    }
    return wrong;
}

}  // namespace rangeline
