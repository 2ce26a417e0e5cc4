#include "inspect/wrapping_delegate.h"

#include <QApplication>
#include <QPainter>
#include <QTreeView>

namespace rangeline {
namespace {

constexpr int padding = 5;
constexpr int slim = 3;  // of a row without a strong line

int paddingOf(const QString& head) {
    return head.isEmpty() ? slim : padding;
}

QFont strong(QFont font) {
    font.setBold(true);
    return font;
}

int heightOf(const QFont& font, int width, const QString& text) {
    return QFontMetrics(font)
        .boundingRect(QRect(0, 0, width, QWIDGETSIZE_MAX), Qt::TextWordWrap, text)
        .height();
}

/// A tree does not tell a delegate how wide its column is.
int widthFor(const QStyleOptionViewItem& option, const QModelIndex& index) {
    const auto* tree = qobject_cast<const QTreeView*>(option.widget);
    if (tree == nullptr) {
        return option.rect.width();
    }
    int depth = 0;
    for (QModelIndex above = index.parent(); above.isValid(); above = above.parent()) {
        ++depth;
    }
    return tree->viewport()->width() - tree->indentation() * (depth + 1);
}

}  // namespace

/// Whether it is drawn as usual: one line without a line above it.
bool WrappingDelegate::isPlain(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyleOptionViewItem row = option;
    initStyleOption(&row, index);
    return index.data(strongLine).toString().isEmpty() &&
           QFontMetrics(row.font).horizontalAdvance(row.text) <
               widthFor(option, index) - 2 * padding;
}

void WrappingDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
    const QString head = index.data(strongLine).toString();
    if (isPlain(option, index)) {
        QStyledItemDelegate::paint(painter, option, index);
        return;
    }
    QStyleOptionViewItem row = option;
    initStyleOption(&row, index);
    const QString text = row.text;
    row.text.clear();
    const QStyle* style = row.widget == nullptr ? QApplication::style() : row.widget->style();
    style->drawControl(QStyle::CE_ItemViewItem, &row, painter, row.widget);
    const bool selected = row.state.testFlag(QStyle::State_Selected);
    painter->save();
    painter->setPen(row.palette.color(selected ? QPalette::HighlightedText : QPalette::Text));
    const int pad = paddingOf(head);
    QRect room = row.rect.adjusted(pad, pad, -pad, -pad);
    if (!head.isEmpty()) {
        painter->setFont(strong(row.font));
        painter->drawText(room, Qt::TextWordWrap, head, &room);
        room = row.rect.adjusted(padding, padding + room.height(), -padding, 0);
    }
    painter->setFont(row.font);
    painter->drawText(room, Qt::TextWordWrap, text);
    painter->restore();
}

QSize WrappingDelegate::sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const {
    const QString head = index.data(strongLine).toString();
    if (isPlain(option, index)) {
        return QStyledItemDelegate::sizeHint(option, index) + QSize(0, slim);
    }
    QStyleOptionViewItem row = option;
    initStyleOption(&row, index);
    const int width = widthFor(option, index) - 2 * padding;
    const int above = head.isEmpty() ? 0 : heightOf(strong(row.font), width, head);
    const int height = above + heightOf(row.font, width, row.text);
    return {width, height + 2 * paddingOf(head)};
}

WrappingTree::WrappingTree(const QString& accessibleName, QWidget* parent) : QTreeWidget(parent) {
    constexpr int narrow = 14;
    setHeaderHidden(true);
    setAccessibleName(accessibleName);
    setIndentation(narrow);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setItemDelegate(new WrappingDelegate(this));
}

void WrappingTree::resizeEvent(QResizeEvent* event) {
    QTreeWidget::resizeEvent(event);
    // Heights are remembered until the rows are laid out anew.
    scheduleDelayedItemsLayout();
}

}  // namespace rangeline
