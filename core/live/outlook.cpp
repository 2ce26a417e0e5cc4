#include "live/outlook.h"

#include <algorithm>

namespace rangeline::live {

Outlook outlook(const Service& service, const Course& course) {
    Outlook found;
    bool first = true;
    for (const Deadline& deadline : course.network.plating) {
        const auto number = static_cast<std::size_t>(deadline.activity);
        const auto known = service.works().find(course.keys[number]);
        if (known == service.works().end() || known->second.stage == Stage::Skipped) {
            continue;
        }
        const Instant latest = deadline.latest + service.servedLater();
        const Duration late = course.at(number, deadline.offset) - latest;
        found.plated &= known->second.stage == Stage::Done;
        if (first || late > found.behind) {
            found.behind = late;
            found.plating = latest + std::max(late, Duration());
            first = false;
        }
    }
    return found;
}

Outlook outlook(const Service& service, Instant now) {
    return outlook(service, courseOf(service, now));
}

}  // namespace rangeline::live
