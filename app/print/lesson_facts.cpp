#include "print/lesson_facts.h"

#include <algorithm>

#include "print/print_text.h"

namespace rangeline {

QString crewText(const Lesson& lesson) {
    QStringList names;
    for (const CookId& cook : lesson.head.crew) {
        const int item = cookItem(lesson.kitchen, cook);
        names << (item < 0 ? q(cook.text)
                           : q(lesson.kitchen.cooks[static_cast<std::size_t>(item)].name));
    }
    return listText(names);
}

QString dishesText(const Lesson& lesson) {
    QStringList dishes;
    for (const Serving& serving : lesson.servings) {
        dishes
            << Printed::tr("%1 for %2").arg(q(serving.dish.name), QString::number(serving.covers));
    }
    return listText(dishes);
}

QString lessonFacts(const TimelineInput& input, const QString& whereCollisions) {
    const TextContext& text = input.text;
    const Head& head = text.lesson.head;
    const Clock clock(text);
    const QDateTime serving = clock.moment(Instant::serving());
    QStringList facts;
    facts << Printed::tr("Serve at %1, %2")
                 .arg(clock.at(Instant::serving()),
                      text.locale.toString(serving.date(), QLocale::LongFormat));
    facts << dishesText(text.lesson) << Printed::tr("Crew: %1").arg(crewText(text.lesson));
    if (head.groups.count > 1) {
        facts << Printed::tr("%1 groups").arg(QString::number(head.groups.count));
    }
    facts << (text.units == Units::UsCustomary ? Printed::tr("temperatures in °F")
                                               : Printed::tr("temperatures in °C"));
    const auto collisions =
        std::ranges::count(input.findings, Severity::Collision, &Finding::severity);
    if (collisions > 0) {
        facts
            << Printed::tr("collisions: %1, %2").arg(QString::number(collisions), whereCollisions);
    }
    return facts.join(QStringLiteral("  ·  "));
}

}  // namespace rangeline
