#include "print/overview_sheet.h"

#include <algorithm>
#include <array>

#include "analysis/at.h"
#include "analysis/cook_stretches.h"
#include "analysis/use_index.h"
#include "print/print_text.h"
#include "print/text_sheet.h"
#include "text/plating_text.h"

namespace rangeline {
namespace {

using Rows = std::vector<std::vector<QString>>;

class Overview {
  public:
    explicit Overview(const TimelineInput& input)
        : input_(input),
          index_(input.index),
          lesson_(input.text.lesson),
          locale_(input.text.locale),
          names_(input.text),
          clock_(input.text) {}

    /// The first so many of its parts.
    void fill(int parts, TextFlow& flow) const {
        using Part = void (Overview::*)(TextFlow&) const;
        constexpr std::array<Part, partCount> all = {&Overview::addDay, &Overview::addComponents,
                                                     &Overview::addCrew, &Overview::addOvens,
                                                     &Overview::addDeciding};
        for (int part = 0; part < parts; ++part) {
            (this->*all[static_cast<std::size_t>(part)])(flow);
        }
    }

    static constexpr int partCount = 5;

  private:
    void addDay(TextFlow& flow) const {
        std::vector<std::pair<Instant, QString>> times;
        const auto add = [&](const std::optional<Instant>& at, const char* what) {
            if (at) {
                times.emplace_back(*at, Printed::tr(what));
            }
        };
        const Head& head = lesson_.head;
        add(head.kitchenOpens, QT_TRANSLATE_NOOP("Print", "the kitchen opens"));
        add(head.cookingMayStart, QT_TRANSLATE_NOOP("Print", "cooking may start"));
        add(firstStart(), QT_TRANSLATE_NOOP("Print", "the first step begins"));
        add(head.tasting, QT_TRANSLATE_NOOP("Print", "tasting"));
        for (const Serving& serving : lesson_.servings) {
            times.emplace_back(Instant::serving() + serving.offset,
                               Printed::tr("%1: %2 plates")
                                   .arg(q(serving.dish.name),
                                        locale_.toString(serving.covers * head.groups.count)));
        }
        add(lastEnd(), QT_TRANSLATE_NOOP("Print", "the last step ends"));
        add(head.everyoneOut, QT_TRANSLATE_NOOP("Print", "everyone is out"));
        std::ranges::stable_sort(times, {}, [](const auto& each) { return each.first; });
        Rows rows;
        for (const auto& [at, what] : times) {
            rows.push_back({clock_.at(at), what});
        }
        flow.heading(Printed::tr("The times"), 3);
        flow.table({{Printed::tr("At"), 18, FontRole::BodyStrong}, {Printed::tr("What"), 82}},
                   rows);
    }

    std::optional<Instant> firstStart() const {
        std::optional<Instant> first;
        forAllPlaced([&](const Interval& interval) {
            first = first ? std::min(*first, interval.begin) : interval.begin;
        });
        return first;
    }

    std::optional<Instant> lastEnd() const {
        std::optional<Instant> last;
        forAllPlaced([&](const Interval& interval) {
            last = last ? std::max(*last, interval.end) : interval.end;
        });
        return last;
    }

    template <class Look>
    void forAllPlaced(const Look& look) const {
        for (int node = 0; node < index_.nodes(); ++node) {
            if (index_.placed(node)) {
                look(index_.placed(node).interval);
            }
        }
    }

    /// From the first step to the last one before serving, over all groups.
    void addComponents(TextFlow& flow) const {
        Rows rows;
        for (std::size_t serving = 0; serving < lesson_.servings.size(); ++serving) {
            const auto& components = lesson_.servings[serving].dish.components;
            for (std::size_t component = 0; component < components.size(); ++component) {
                const std::optional<Interval> span =
                    spanOf(static_cast<int>(serving), static_cast<int>(component));
                const auto steps = static_cast<int>(components[component].steps.size());
                if (steps > 0) {
                    rows.push_back({q(components[component].name), locale_.toString(steps),
                                    span ? clock_.at(span->begin) : Printed::tr("not placed"),
                                    span ? clock_.at(span->end) : QString()});
                }
            }
        }
        flow.heading(Printed::tr("The components"), 3);
        flow.table({{Printed::tr("Component"), 52, FontRole::BodyStrong},
                    {Printed::tr("Steps"), 12},
                    {Printed::tr("Begins"), 18},
                    {Printed::tr("Ready"), 18}},
                   rows);
    }

    std::optional<Interval> spanOf(int serving, int component) const {
        std::optional<Interval> span;
        for (int task = 0; task < index_.tasks(); ++task) {
            const Task& it = at(index_.expanded().tasks, task);
            if (it.serving != serving || it.component != component || !index_.placed(task) ||
                index_.step(task).afterServing) {
                continue;
            }
            const Interval& interval = index_.placed(task).interval;
            span = span ? Interval{std::min(span->begin, interval.begin),
                                   std::max(span->end, interval.end)}
                        : interval;
        }
        return span;
    }

    void addCrew(TextFlow& flow) const {
        Rows rows;
        for (int cook = 0; cook < index_.stations().cooks.size(); ++cook) {
            const std::vector<CookStretch> work = cookStretches(index_, cook);
            if (work.empty()) {
                continue;
            }
            Duration hands;
            Duration watching;
            Instant end = work.front().interval.end;
            for (const CookStretch& stretch : work) {
                hands += stretch.hands;
                watching += stretch.watching;
                end = std::max(end, stretch.interval.end);
            }
            rows.push_back({names_.equipment({EquipmentSort::Cook, cook}),
                            clock_.at(work.front().interval.begin), clock_.at(end),
                            durationText(hands, locale_), durationText(watching, locale_)});
        }
        if (!rows.empty()) {
            flow.heading(Printed::tr("The crew"), 3);
            flow.table({{Printed::tr("Who"), 32, FontRole::BodyStrong},
                        {Printed::tr("From"), 17},
                        {Printed::tr("To"), 17},
                        {Printed::tr("Hands"), 17},
                        {Printed::tr("Watching"), 17}},
                       rows);
        }
    }

    /// Each setting once, from its first load to its last.
    void addOvens(TextFlow& flow) const {
        Rows rows;
        for (int unit = 0; unit < index_.stations().ovens.size(); ++unit) {
            const QString oven = names_.equipment({EquipmentSort::Oven, unit});
            const Placed& on = index_.placed(index_.turnOnNode(unit));
            if (on) {
                rows.push_back({oven, clock_.at(on.interval.begin), Printed::tr("turned on")});
            }
            std::optional<Temperature> last;
            for (const OvenUse& use : index_.ovenUses(unit)) {
                if (last != use.setTo) {
                    rows.push_back({oven, clock_.at(std::max(use.interval.begin, longBefore)),
                                    Printed::tr("at %1").arg(
                                        temperatureText(use.setTo, input_.text.units, locale_))});
                }
                last = use.setTo;
            }
        }
        if (!rows.empty()) {
            flow.heading(Printed::tr("The ovens"), 3);
            flow.table({{Printed::tr("Oven"), 40, FontRole::BodyStrong},
                        {Printed::tr("At"), 20},
                        {Printed::tr("Heat"), 40}},
                       rows);
        }
    }

    /// As many lines as the page has room for; all of them are on the station timeline.
    void addDeciding(TextFlow& flow) const {
        constexpr double roomForAHeading = 60;
        constexpr double roomForLines = 40;
        if (input_.analysis.path.empty() || flow.roomLeft() < roomForAHeading) {
            return;
        }
        flow.heading(Printed::tr("What decides plating"));
        for (const QString& each : platingLines(input_.analysis, input_.text)) {
            if (flow.roomLeft() < roomForLines) {
                flow.paragraph(Printed::tr("And more: see the station timeline."));
                return;
            }
            flow.paragraph(each);
        }
    }

    const TimelineInput& input_;
    const UseIndex& index_;
    const Lesson& lesson_;
    QLocale locale_;
    Names names_;
    Clock clock_;
};

SheetPages withParts(const TimelineInput& input, const SheetSetup& setup, int parts) {
    TextSheet sheet(input, setup.layout, overviewTitle());
    sheet.section(overviewTitle(), [&](TextFlow& flow) { Overview(input).fill(parts, flow); });
    return sheet.finish();
}

}  // namespace

QString overviewTitle() {
    return Printed::tr("Overview");
}

SheetPages makeOverview(const TimelineInput& input, const SheetSetup& setup) {
    for (int parts = Overview::partCount; parts > 1; --parts) {
        SheetPages made = withParts(input, setup, parts);
        if (made.pages.size() <= 1) {
            return made;
        }
    }
    return withParts(input, setup, 1);
}

}  // namespace rangeline
