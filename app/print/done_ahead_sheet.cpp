#include "print/done_ahead_sheet.h"

#include <algorithm>

#include "print/print_text.h"
#include "print/text_sheet.h"
#include "text/words.h"

namespace rangeline {
namespace {

using Rows = std::vector<std::vector<QString>>;

struct Found {
    const Component* component = nullptr;
    const Step* step = nullptr;
};

class DoneAheadLists {
  public:
    explicit DoneAheadLists(const TimelineInput& input)
        : lesson_(input.text.lesson),
          locale_(input.text.locale),
          names_(input.text),
          clock_(input.text) {}

    bool empty() const { return ahead().empty() && swapped().empty() && possible().isEmpty(); }

    void fill(TextFlow& flow) const {
        const Rows done = ahead();
        if (!done.empty()) {
            flow.heading(Printed::tr("Made before the lesson"), 3);
            flow.table({{{}, 3, FontRole::Body, CellKind::Tick},
                        {Printed::tr("What"), 30},
                        {Printed::tr("Made at"), 16, FontRole::BodyStrong},
                        {Printed::tr("Kept"), 22},
                        {Printed::tr("Keeps"), 12},
                        {Printed::tr("When taken out"), 26}},
                       done);
        }
        const Rows twins = swapped();
        if (!twins.empty()) {
            flow.heading(Printed::tr("Swapped in: begun before the class, its twin is ready"), 3);
            flow.table({{{}, 3, FontRole::Body, CellKind::Tick},
                        {Printed::tr("What"), 30},
                        {Printed::tr("Stands in"), 24},
                        {Printed::tr("Made of"), 44}},
                       twins);
        }
        if (!possible().isEmpty()) {
            flow.heading(Printed::tr("Could be made before as well"));
            flow.paragraph(listText(possible()));
        }
    }

  private:
    Found find(const StepId& id) const {
        for (const Serving& serving : lesson_.servings) {
            for (const Component& component : serving.dish.components) {
                const auto step = std::ranges::find(component.steps, id, &Step::id);
                if (step != component.steps.end()) {
                    return {&component, &*step};
                }
            }
        }
        return {};
    }

    QString what(const StepId& id) const {
        const Found found = find(id);
        return found.step == nullptr
                   ? q(id.text)
                   : Printed::tr("%1 (%2)").arg(q(found.step->name), q(found.component->name));
    }

    QString waresText(const std::vector<WareSpot>& wares) const {
        QStringList texts;
        for (const WareSpot& spot : wares) {
            texts << names_.ware(spot, 0);
        }
        return listText(texts);
    }

    QString keptText(const DoneAhead& it) const {
        QStringList parts;
        parts << (it.storage ? storageText(*it.storage) : Printed::tr("not said where"));
        if (it.place) {
            const int pool = poolItem(lesson_.kitchen, it.place->pool);
            parts << (pool < 0 ? q(it.place->pool.text)
                               : q(lesson_.kitchen.pools[static_cast<std::size_t>(pool)].name));
        }
        if (!it.wares.empty()) {
            parts << waresText(it.wares);
        }
        return parts.join(Printed::tr(", "));
    }

    QString keepsText(const Step& step, const std::optional<Storage>& storage) const {
        const auto& limit = storage == Storage::Cold ? step.after.cold : step.after.atRoom;
        return limit ? durationText(*limit, locale_) : Printed::tr("no limit stated");
    }

    /// The steps that are there only because the food was made before: tempering, reheating.
    QString whenTakenOut(const StepId& id) const {
        QStringList steps;
        for (const Serving& serving : lesson_.servings) {
            for (const Component& component : serving.dish.components) {
                for (const Step& step : component.steps) {
                    if (step.onlyIfAhead == id) {
                        steps << q(step.name);
                    }
                }
            }
        }
        return listText(steps);
    }

    Rows ahead() const {
        Rows rows;
        for (const DoneAhead& it : lesson_.choices.doneAhead) {
            const Found found = find(it.step);
            rows.push_back({{},
                            what(it.step),
                            clock_.at(Instant::serving() - it.before),
                            keptText(it),
                            found.step == nullptr ? QString() : keepsText(*found.step, it.storage),
                            whenTakenOut(it.step)});
        }
        return rows;
    }

    Rows swapped() const {
        Rows rows;
        for (const SwapIn& it : lesson_.choices.swapIns) {
            const Found found = find(it.step);
            QStringList made;
            if (found.component != nullptr) {
                for (const Ingredient& ingredient : found.component->ingredients) {
                    made << q(ingredient.name);
                }
            }
            rows.push_back({{}, what(it.step), waresText(it.wares), listText(made)});
        }
        return rows;
    }

    /// Steps that may be done ahead and are not.
    QStringList possible() const {
        QStringList steps;
        for (const Serving& serving : lesson_.servings) {
            for (const Component& component : serving.dish.components) {
                for (const Step& step : component.steps) {
                    const auto& ahead = lesson_.choices.doneAhead;
                    if (step.after.mayBeDoneAhead &&
                        std::ranges::find(ahead, step.id, &DoneAhead::step) == ahead.end()) {
                        steps << what(step.id);
                    }
                }
            }
        }
        return steps;
    }

    const Lesson& lesson_;
    QLocale locale_;
    Names names_;
    Clock clock_;
};

}  // namespace

QString doneAheadTitle() {
    return Printed::tr("Done ahead");
}

SheetPages makeDoneAhead(const TimelineInput& input, const SheetSetup& setup) {
    TextSheet sheet(input, setup.layout, doneAheadTitle());
    const DoneAheadLists lists(input);
    if (!lists.empty()) {
        sheet.section(doneAheadTitle(), [&](TextFlow& flow) { lists.fill(flow); });
    }
    return sheet.finish();
}

}  // namespace rangeline
