#pragma once
// Draws list rows as a strong first line and, below it, wrapped lines of explanation, as high as
// the width of the view asks for.

#include <QStyledItemDelegate>
#include <QTreeWidget>

namespace rangeline {

class WrappingDelegate : public QStyledItemDelegate {
  public:
    /// Text of the strong line, if there is one. The item's own text below it takes as many lines
    /// as it needs.
    static constexpr int strongLine = Qt::UserRole + 1;

    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

  private:
    bool isPlain(const QStyleOptionViewItem& option, const QModelIndex& index) const;
};

/// A list of such rows: one column as wide as the view, the rows as high as that width asks for.
class WrappingTree : public QTreeWidget {
  public:
    WrappingTree(const QString& accessibleName, QWidget* parent);

  protected:
    void resizeEvent(QResizeEvent* event) override;
};

}  // namespace rangeline
