#include "writing/unusual_times.h"

#include <QCoreApplication>

#include "text/quantities.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(UnusualTimes)
};

/// Times by the piece and events are not judged.
bool isUnusual(const Step& step, const std::optional<UsualRange>& usual) {
    const bool judged = usual && !step.isEvent() && step.timePer == TimePer::Load;
    return judged && (step.time.likely < usual->least || step.time.likely > usual->most);
}

}  // namespace

std::vector<UnusualTime> unusualTimes(const Dish& dish, const OwnTerms& terms,
                                      const QLocale& locale) {
    std::vector<UnusualTime> sentences;
    for (const Component& component : dish.components) {
        for (const Step& step : component.steps) {
            const auto usual = usualRange(step.technique, terms);
            if (isUnusual(step, usual)) {
                sentences.push_back(
                    {step.id, Text::tr("To know: “%1” takes %2; usual for it are %3 to %4.")
                                  .arg(QString::fromStdString(step.name),
                                       durationText(step.time.likely, locale),
                                       durationText(usual->least, locale),
                                       durationText(usual->most, locale))});
            }
        }
    }
    return sentences;
}

}  // namespace rangeline
