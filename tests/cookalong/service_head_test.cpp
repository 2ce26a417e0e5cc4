// When a service plates unless the cook says otherwise, and what it leaves for the log.

#include "cookalong/service_head.h"

#include <gmock/gmock.h>

#include "live/machine.h"
#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

/// Served at 18:00 UTC; the first step begins an hour before.
Lesson lessonAtSix() {
    LessonBuilder builder;
    builder.step("simmer", {away(50_min)});
    builder.step("plate", {hands(5_min)}).plates = true;
    builder.uses("plate", "simmer");
    builder.place("simmer", -60);
    assign(builder.place("plate", -5), "ann");
    builder.lesson.head.servingTime = "2027-03-05T18:00";
    builder.lesson.head.zone = "UTC";
    return builder.lesson;
}

QDateTime at(const char* text) {
    QDateTime moment = QDateTime::fromString(QLatin1String(text), Qt::ISODate);
    moment.setTimeSpec(Qt::UTC);
    return moment;
}

TEST(CookAlongServing, IsTheLessonsOwnWhereThereIsTimeForIt) {
    EXPECT_EQ(usualServing(lessonAtSix(), at("2027-03-05T15:00:00")), at("2027-03-05T18:00:00"));
    EXPECT_EQ(usualServing(lessonAtSix(), at("2027-03-05T17:00:00")), at("2027-03-05T18:00:00"));
}

TEST(CookAlongServing, IsAsSoonAsThePlanAllowsWhereTheLessonsTimeIsOverOrOnAnotherDay) {
    EXPECT_EQ(usualServing(lessonAtSix(), at("2027-03-05T17:00:10")), at("2027-03-05T18:01:00"));
    EXPECT_EQ(usualServing(lessonAtSix(), at("2027-03-09T12:00:00")), at("2027-03-09T13:00:00"));
}

TEST(CookAlongServing, BeginsTheServiceByTheClockNow) {
    Machine machine;
    const auto now = QDateTime::fromMSecsSinceEpoch(machine.wall().count(), Qt::UTC);
    const live::ServiceHead head = serviceHead(lessonAtSix(), 7, now.addSecs(3600), machine);
    EXPECT_EQ(head.begun.at, -std::chrono::hours(1));
    EXPECT_EQ(head.begun.reading, machine.read());
    EXPECT_EQ(head.item, 7);
    EXPECT_NE(head.id, serviceHead(lessonAtSix(), 7, now, machine).id) << "like no other";
}

TEST(CookAlongLog, HasWhatWasStartedAndDone) {
    Machine machine;
    const auto now = QDateTime::fromMSecsSinceEpoch(machine.wall().count(), Qt::UTC);
    const live::ServiceHead head = serviceHead(lessonAtSix(), 7, now.addSecs(3600), machine);
    live::Service service(head.lesson);
    service.apply(live::Started{key("simmer")}, minute(-60));
    service.apply(live::Done{key("simmer")}, minute(-8));
    service.apply(live::Done{key("plate")}, minute(-1));
    const auto log = logOf(head, service);
    ASSERT_EQ(log.size(), 1U) << "of “plate” only the end is known";
    EXPECT_EQ(log.front().step, "simmer");
    EXPECT_EQ(log.front().took, 52_min);
    EXPECT_EQ(log.front().planned, 50_min);
    EXPECT_EQ(log.front().lesson->number, 7);
}

}  // namespace
}  // namespace rangeline::test
