#include "export/calendar_export.h"

#include <QCryptographicHash>

#include "analysis/at.h"
#include "export/export_text.h"
#include "export/works_at.h"
#include "text/plan_text.h"

namespace rangeline {
namespace {

std::string text(const QString& from) {
    return from.toStdString();
}

class CalendarMaker {
  public:
    CalendarMaker(const TimelineInput& input, const ExportSetup& setup)
        : input_(input),
          setup_(setup),
          head_(input.text.lesson.head),
          clock_(head_, input.text.locale),
          names_(input.text) {}

    Calendar run() const {
        Calendar calendar{head_.name, setup_.now, {}};
        for (const PlanRow& row : planRows(input_.index, input_.text)) {
            const int node = input_.index.nodeOf(row.key);
            if (!setup_.cook || worksAt(input_.index, node, *setup_.cook)) {
                calendar.events.push_back(event(node, row));
            }
        }
        addServings(calendar);
        return calendar;
    }

  private:
    UnixSeconds unix(Instant instant) const { return clock_.moment(instant).toSecsSinceEpoch(); }

    /// Tells lessons apart that have steps with the same ids.
    std::string uid(const QString& thing) const {
        const QByteArray lesson =
            QByteArray::fromStdString(head_.name + '\n' + head_.servingTime + '\n' + head_.zone);
        const QByteArray hash =
            QCryptographicHash::hash(lesson, QCryptographicHash::Sha256).toHex().left(16);
        return text(thing) + '-' + hash.toStdString() + "@rangeline";
    }

    static QString uidPart(const StepKey& key) {
        return QStringLiteral("%1.%2.%3")
            .arg(QString::fromStdString(key.step.text))
            .arg(key.batch)
            .arg(key.group);
    }
    static QString uidPart(const WashKey& key) {
        return QStringLiteral("wash.%1.%2").arg(uidPart(key.after)).arg(key.spot);
    }
    static QString uidPart(const TurnOnKey& key) {
        return QStringLiteral("on.%1.%2").arg(QString::fromStdString(key.oven.text)).arg(key.group);
    }

    CalendarEvent event(int node, const PlanRow& row) const {
        CalendarEvent made;
        made.uid = uid(std::visit([](const auto& key) { return uidPart(key); }, row.key));
        made.begin = unix(row.interval.begin);
        made.end = unix(row.interval.end);
        made.summary = text(row.step);
        made.location = text(row.where);
        made.description = text(description(row));
        made.alarms.push_back({made.begin, text(Exported::tr("Start: %1").arg(row.step))});
        if (endsAlone(node)) {
            const QString what =
                row.cue.isEmpty() ? row.step : Exported::tr("%1: %2").arg(row.step, row.cue);
            made.alarms.push_back({made.end, text(Exported::tr("Look at: %1").arg(what))});
        }
        return made;
    }

    /// Its last stretch leaves the cook's hands free, so that nobody may notice the end.
    bool endsAlone(int node) const {
        const auto& segments = input_.index.placed(node).timing.segments;
        return !segments.empty() && segments.back().attention != Attention::Hands;
    }

    static QString description(const PlanRow& row) {
        QStringList lines;
        if (!row.cue.isEmpty()) {
            lines << Exported::tr("Until: %1").arg(row.cue);
        }
        if (!row.who.isEmpty()) {
            lines << Exported::tr("Who: %1").arg(row.who);
        }
        lines << Exported::tr("Takes: %1").arg(row.length)
              << Exported::tr("To plating: %1").arg(row.toPlating);
        return lines.join(u'\n');
    }

    void addServings(Calendar& calendar) const {
        const Lesson& lesson = input_.text.lesson;
        for (int group = 0; group < head_.groups.count; ++group) {
            for (std::size_t i = 0; i < lesson.servings.size(); ++i) {
                const Instant at =
                    Instant::serving() + lesson.servings[i].offset + head_.groups.stagger * group;
                CalendarEvent serving;
                serving.uid = uid(QStringLiteral("serve.%1.%2").arg(i).arg(group));
                serving.begin = serving.end = unix(at);
                serving.summary = text(servingText(lesson.servings[i], group));
                serving.alarms.push_back({serving.begin, serving.summary});
                calendar.events.push_back(std::move(serving));
            }
        }
    }

    QString servingText(const Serving& serving, int group) const {
        const QString dish = QString::fromStdString(serving.dish.name);
        const QString number = input_.text.locale.toString(group + 1);
        return head_.groups.count > 1 ? Exported::tr("Serve: %1 (group %2)").arg(dish, number)
                                      : Exported::tr("Serve: %1").arg(dish);
    }

    const TimelineInput& input_;
    const ExportSetup& setup_;
    const Head& head_;
    Clock clock_;
    Names names_;
};

}  // namespace

QString calendarTitle() {
    return Exported::tr("A calendar that reminds of every step");
}

Result<std::string, Fault> makeCalendar(const TimelineInput& input, const ExportSetup& setup) {
    return writeCalendar(CalendarMaker(input, setup).run());
}

}  // namespace rangeline
