#pragma once
// The one answer to the question in which units the user reads and writes.

#include <QAction>
#include <QLocale>
#include <QObject>

#include "model/lesson.h"

namespace rangeline {

class ChosenUnits : public QObject {
    Q_OBJECT

  public:
    /// Until the user has chosen, those of the locale. The choice is kept in the user's settings.
    explicit ChosenUnits(const QLocale& locale, QObject* parent = nullptr);

    Units units() const { return units_; }
    void choose(Units units);
    /// Makes the actions choose, and shows in them what is chosen.
    void connectTo(QAction& us, QAction& metric);

  Q_SIGNALS:
    void changed(rangeline::Units units);

  private:
    Units units_;
};

}  // namespace rangeline
