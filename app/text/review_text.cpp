#include "text/review_text.h"

#include <QCoreApplication>

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Review)
};

QString deciderText(const live::Decider& decider, const Names& names, const QLocale& locale) {
    QStringList why;
    if (decider.longer > Duration()) {
        why << Text::tr("%1 longer than planned").arg(durationText(decider.longer, locale));
    }
    if (decider.idle > Duration()) {
        why << Text::tr("begun %1 later than it could").arg(durationText(decider.idle, locale));
    }
    if (!decider.known) {
        why << Text::tr("its times are not known");
    }
    const QString name = names.step(decider.key);
    return why.isEmpty() ? name : Text::tr("%1 (%2)").arg(name, why.join(Text::tr(", ")));
}

}  // namespace

QString platedText(const live::Review& review, const QLocale& locale) {
    if (!review.late) {
        return Text::tr("When plating was done is not known.");
    }
    if (*review.late > Duration()) {
        return Text::tr("Plating was done %1 late.").arg(durationText(*review.late, locale));
    }
    return *review.late == Duration() ? Text::tr("Plating was done just on time.")
                                      : Text::tr("Plating was done %1 before its time.")
                                            .arg(durationText(-*review.late, locale));
}

QString decidersText(const live::Review& review, const TextContext& context) {
    const Names names(context);
    QStringList deciders;
    for (const live::Decider& decider : review.deciders) {
        deciders << deciderText(decider, names, context.locale);
    }
    return deciders.isEmpty() ? QString()
                              : Text::tr("What decided plating in fact, one after the other: %1.")
                                    .arg(deciders.join(Text::tr("; ")));
}

std::vector<ReviewRow> reviewRows(const live::Review& review, const TextContext& context) {
    const Names names(context);
    const Clock clock(context.lesson.head, context.locale);
    const auto differs = [&](Duration by, const QString& more, const QString& less) {
        return by == Duration()  ? Text::tr("as planned")
               : by > Duration() ? more.arg(durationText(by, context.locale))
                                 : less.arg(durationText(-by, context.locale));
    };
    std::vector<ReviewRow> rows;
    for (const live::ReviewedStep& step : review.steps) {
        rows.push_back({sentenceCase(names.plainStep(step.key)), clock.span(step.planned),
                        clock.span(step.real),
                        differs(step.later, Text::tr("%1 later"), Text::tr("%1 sooner")),
                        differs(step.longer, Text::tr("%1 longer"), Text::tr("%1 less"))});
    }
    return rows;
}

}  // namespace rangeline
