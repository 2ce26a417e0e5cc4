#include "library/comparison.h"

#include <QCoreApplication>
#include <algorithm>
#include <map>

#include "document/lesson_state.h"
#include "text/gathered_findings.h"
#include "text/plan_text.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Comparison)
};

std::vector<PlanRow> rowsOf(const LessonState& state, const QLocale& locale, Units units) {
    return planRows(state.index(), {state.lesson(), state.expanded(), locale, units});
}

Outcome outcome(const LessonState& state, const std::vector<PlanRow>& rows) {
    Outcome outcome;
    outcome.placed = static_cast<int>(rows.size());
    if (!rows.empty()) {
        const auto begin = [](const PlanRow& row) { return row.interval.begin; };
        const auto end = [](const PlanRow& row) { return row.interval.end; };
        outcome.total = end(*std::ranges::max_element(rows, {}, end)) - begin(rows.front());
        outcome.from = rows.front().clock;
    }
    for (const GatheredFinding& finding : gathered(state.findings())) {
        switch (finding.shown.severity) {
            case Severity::Open:
                ++outcome.open;
                break;
            case Severity::Collision:
                ++outcome.collisions;
                break;
            case Severity::Late:
                ++outcome.late;
                break;
            case Severity::Caution:
                ++outcome.toMind;
                break;
        }
    }
    return outcome;
}

/// When and how long; below that where and who.
QString placeText(const PlanRow& row) {
    QStringList where{row.where, row.who};
    where.removeAll(QString());
    return row.clock + QStringLiteral(", ") + row.length + u'\n' + where.join(QStringLiteral(", "));
}

using Rows = std::map<PlacementKey, const PlanRow*>;

Rows byKey(const std::vector<PlanRow>& rows) {
    Rows found;
    for (const PlanRow& row : rows) {
        found.emplace(row.key, &row);
    }
    return found;
}

std::vector<Moved> movedBetween(const std::vector<PlanRow>& before,
                                const std::vector<PlanRow>& after) {
    std::vector<Moved> moved;
    const Rows then = byKey(after);
    for (const PlanRow& row : before) {
        const auto found = then.find(row.key);
        const QString now = found == then.end() ? QString() : placeText(*found->second);
        if (now != placeText(row)) {
            moved.push_back({row.step, placeText(row), now});
        }
    }
    const Rows known = byKey(before);
    for (const PlanRow& row : after) {
        if (!known.contains(row.key)) {
            moved.push_back({row.step, {}, placeText(row)});
        }
    }
    return moved;
}

void addHead(const Head& before, const Head& after, QStringList& different) {
    const auto add = [&](bool other, const char* what) {
        if (other) {
            different << Text::tr(what);
        }
    };
    add(before.name != after.name, QT_TRANSLATE_NOOP("Comparison", "the name"));
    add(before.servingTime != after.servingTime || before.zone != after.zone,
        QT_TRANSLATE_NOOP("Comparison", "the serving time"));
    add(before.crew != after.crew, QT_TRANSLATE_NOOP("Comparison", "who is there"));
    add(before.groups != after.groups, QT_TRANSLATE_NOOP("Comparison", "the groups"));
    add(before.kitchenOpens != after.kitchenOpens ||
            before.cookingMayStart != after.cookingMayStart || before.tasting != after.tasting ||
            before.everyoneOut != after.everyoneOut,
        QT_TRANSLATE_NOOP("Comparison", "the class times"));
    add(before.guestAllergens != after.guestAllergens,
        QT_TRANSLATE_NOOP("Comparison", "what guests must not eat"));
}

QStringList differences(const Lesson& before, const Lesson& after) {
    QStringList different;
    addHead(before.head, after.head, different);
    if (before.kitchen != after.kitchen) {
        different << Text::tr("the kitchen");
    }
    const auto dishesOnly = [](const std::vector<Serving>& from, const std::vector<Serving>& than) {
        QStringList names;
        for (const Serving& serving : from) {
            if (std::ranges::find(than, serving) == than.end()) {
                names << QString::fromStdString(serving.dish.name);
            }
        }
        return names;
    };
    QStringList dishes = dishesOnly(before.servings, after.servings);
    dishes += dishesOnly(after.servings, before.servings);
    dishes.removeDuplicates();
    for (const QString& dish : dishes) {
        different << Text::tr("the dish “%1”").arg(dish);
    }
    if (before.choices != after.choices) {
        different << Text::tr("what is done ahead, swapped in or split into batches");
    }
    return different;
}

}  // namespace

Comparison compare(const Lesson& before, const Lesson& after, const QLocale& locale, Units units) {
    const LessonState left(before);
    const LessonState right(after);
    const std::vector<PlanRow> leftRows = rowsOf(left, locale, units);
    const std::vector<PlanRow> rightRows = rowsOf(right, locale, units);
    return {outcome(left, leftRows), outcome(right, rightRows), movedBetween(leftRows, rightRows),
            differences(before, after)};
}

}  // namespace rangeline
