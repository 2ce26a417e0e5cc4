#pragma once

#include <QLabel>
#include <QTreeWidget>
#include <QWidget>

#include "library/comparison.h"

namespace rangeline {

/// Two lessons in two columns: what each comes to, then what is placed otherwise.
class ComparisonView : public QWidget {
    Q_OBJECT

  public:
    explicit ComparisonView(QWidget* parent = nullptr);

    void show(const Comparison& comparison, const QString& before, const QString& after,
              const QLocale& locale);
    /// Says the words instead of a comparison.
    void say(const QString& text);

  private:
    QTreeWidgetItem* addGroup(const QString& name);

    QLabel* words_;
    QTreeWidget* rows_;
};

}  // namespace rangeline
