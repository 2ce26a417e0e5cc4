#pragma once
// One sort of a kitchen's things as a table: a row for each, a column for each thing to say of it.

#include <QTableWidget>
#include <functional>
#include <vector>

#include "model/kitchen.h"
#include "model/lesson.h"

namespace rangeline {

/// How one thing is told and typed.
struct KitchenColumn {
    QString title;
    /// What stands in the cell of that row.
    std::function<QString(const Kitchen&, std::size_t row)> shown;
    /// Puts what is typed into the kitchen; false if it cannot be.
    std::function<bool(Kitchen&, std::size_t row, const QString& text)> taken;
};

struct KitchenTableKind {
    QString title;
    std::vector<KitchenColumn> columns;
    std::function<std::size_t(const Kitchen&)> count;
    std::function<void(Kitchen&)> add;  ///< a usual one more, at the end
    std::function<void(Kitchen&, std::size_t row)> remove;
};

/// Burners, ovens, pans and boards, places, cooks: in the order in which they are asked for.
std::vector<KitchenTableKind> kitchenTables(Units units);

class KitchenTable : public QWidget {
    Q_OBJECT

  public:
    KitchenTable(KitchenTableKind kind, QWidget* parent);
    void showKitchen(const Kitchen& kitchen);
    void goTo(int row);

  Q_SIGNALS:
    void edited(const rangeline::Kitchen& kitchen);
    void refused(const QString& why);

  private:
    void cellChanged(int row, int column);

    KitchenTableKind kind_;
    Kitchen kitchen_;
    QTableWidget* table_;
    bool filling_ = false;
};

}  // namespace rangeline
