#include "window/chosen_units.h"

#include <QActionGroup>
#include <QSettings>

#include "exchange/words.h"
#include "text/usual_units.h"

namespace rangeline {
namespace {

const QString key = QStringLiteral("units");

}  // namespace

ChosenUnits::ChosenUnits(const QLocale& locale, QObject* parent)
    : QObject(parent),
      units_(meaningOf<Units>(QSettings().value(key).toString().toStdString())
                 .value_or(usualUnits(locale))) {}

void ChosenUnits::choose(Units units) {
    const std::string_view word = wordOf(units);
    QSettings().setValue(key, QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size())));
    if (units != units_) {
        units_ = units;
        Q_EMIT changed(units);
    }
}

void ChosenUnits::connectTo(QAction& us, QAction& metric) {
    auto* group = new QActionGroup(this);
    for (const auto& [action, units] :
         {std::pair(&us, Units::UsCustomary), {&metric, Units::Metric}}) {
        action->setCheckable(true);
        action->setChecked(units == units_);
        group->addAction(action);
        connect(action, &QAction::triggered, this, [this, units = units] { choose(units); });
    }
}

}  // namespace rangeline
