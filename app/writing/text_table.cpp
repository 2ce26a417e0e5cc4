#include "writing/text_table.h"

#include <QCompleter>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QScopedValueRollback>
#include <QStyledItemDelegate>
#include <QTimer>

namespace rangeline {
namespace {

/// Editors with the choices of their column; Escape keeps what was typed.
class CellDelegate : public QStyledItemDelegate {
  public:
    explicit CellDelegate(TextTable& table) : QStyledItemDelegate(&table), table_(table) {}

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem&,
                          const QModelIndex& index) const override {
        const FieldLook& look = table_.columns()[static_cast<std::size_t>(index.column())];
        auto* line = new QLineEdit(parent);
        line->setFrame(false);
        line->setAccessibleName(look.title);
        if (!look.choices.isEmpty()) {
            auto* completer = new QCompleter(look.choices, line);
            completer->setCaseSensitivity(Qt::CaseInsensitive);
            completer->setFilterMode(Qt::MatchContains);
            line->setCompleter(completer);
            // All there is to choose from, where nothing stands yet.
            QTimer::singleShot(0, line, [line, completer] {
                if (line->text().isEmpty() && line->hasFocus()) {
                    completer->complete();
                }
            });
        }
        return line;
    }

    bool eventFilter(QObject* object, QEvent* event) override {
        auto* editor = qobject_cast<QWidget*>(object);
        const bool key =
            event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride;
        if (key && editor != nullptr && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
            event->accept();
            if (event->type() == QEvent::KeyPress) {
                Q_EMIT commitData(editor);
                Q_EMIT closeEditor(editor, QAbstractItemDelegate::NoHint);
            }
            return true;
        }
        return QStyledItemDelegate::eventFilter(object, event);
    }

  private:
    TextTable& table_;
};

}  // namespace

TextTable::TextTable(const QString& name, std::vector<FieldLook> columns, QWidget* parent)
    : QTableWidget(0, static_cast<int>(columns.size()), parent), columns_(std::move(columns)) {
    setAccessibleName(name);
    setItemDelegate(new CellDelegate(*this));
    setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::DoubleClicked |
                    QAbstractItemView::SelectedClicked | QAbstractItemView::EditKeyPressed);
    setTabKeyNavigation(false);
    setSelectionMode(QAbstractItemView::SingleSelection);
    verticalHeader()->hide();
    horizontalHeader()->setStretchLastSection(true);
    horizontalHeader()->setSectionsClickable(false);
    QStringList titles;
    for (int column = 0; column < columnCount(); ++column) {
        titles << columns_[static_cast<std::size_t>(column)].title;
        setColumnWidth(column, usualWidth(column));
    }
    setHorizontalHeaderLabels(titles);
    connect(this, &QTableWidget::itemChanged, this,
            [this](const QTableWidgetItem* item) { cellEdited(*item); });
    setLines({});
}

int TextTable::usualWidth(int column) const {
    const FieldLook& look = columns_[static_cast<std::size_t>(column)];
    const int letter = fontMetrics().averageCharWidth();
    return std::max(fontMetrics().horizontalAdvance(look.title) + 3 * letter, look.width * letter);
}

void TextTable::setWideColumn(int column) {
    wideColumn_ = column;
    horizontalHeader()->setStretchLastSection(false);
    fillWidth();
}

void TextTable::resizeEvent(QResizeEvent* event) {
    QTableWidget::resizeEvent(event);
    fillWidth();
}

void TextTable::fillWidth() {
    if (wideColumn_ < 0) {
        return;
    }
    const int others = horizontalHeader()->length() - columnWidth(wideColumn_);
    setColumnWidth(wideColumn_, std::max(viewport()->width() - others, usualWidth(wideColumn_)));
}

void TextTable::setChoices(int column, const QStringList& choices) {
    columns_[static_cast<std::size_t>(column)].choices = choices;
}

void TextTable::setLines(const std::vector<QStringList>& lines) {
    const QScopedValueRollback filling(filling_, true);
    setRowCount(static_cast<int>(lines.size()) + 1);
    for (int row = 0; row < rowCount(); ++row) {
        for (int column = 0; column < columnCount(); ++column) {
            const auto marked = marked_.find({row, column});
            const bool last = row == rowCount() - 1;
            const QString text = marked != marked_.end() ? marked->second
                                 : last                  ? QString()
                                        : lines[static_cast<std::size_t>(row)].value(column);
            if (item(row, column) == nullptr) {
                setItem(row, column, new QTableWidgetItem);
            }
            QTableWidgetItem& cell = *item(row, column);
            const FieldLook& look = columns_[static_cast<std::size_t>(column)];
            cell.setText(text);
            cell.setToolTip(look.wanted);
            cell.setData(Qt::AccessibleTextRole, QStringLiteral("%1: %2").arg(look.title, text));
            QFont font = this->font();
            font.setItalic(marked != marked_.end());
            font.setBold(marked != marked_.end());
            cell.setFont(font);
        }
    }
}

void TextTable::mark(int line, int column) {
    marked_[{line, column}] = item(line, column)->text();
}

void TextTable::forgetMarks() {
    marked_.clear();
}

void TextTable::cellEdited(const QTableWidgetItem& item) {
    if (filling_) {
        return;
    }
    const int line = item.row();
    const int column = item.column();
    marked_.erase({line, column});
    if (line == lines() && item.text().trimmed().isEmpty()) {
        return;
    }
    // What follows fills the table anew: not while the editor is still being closed.
    deliver();
    typed_ = Typed{line, column, item.text()};
    QMetaObject::invokeMethod(this, &TextTable::deliver, Qt::QueuedConnection);
}

void TextTable::deliver() {
    if (const auto typed = std::exchange(typed_, std::nullopt)) {
        Q_EMIT written(typed->line, typed->column, typed->text);
    }
}

void TextTable::goTo(int line, int column) {
    if (line >= 0 && line < rowCount()) {
        setCurrentCell(line, column);
    }
}

void TextTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
    const int line = currentRow();
    QTableWidget::closeEditor(editor, hint);
    if (hint == QAbstractItemDelegate::SubmitModelCache) {
        QMetaObject::invokeMethod(
            this, [this, line] { goTo(line + 1, 0); }, Qt::QueuedConnection);
    }
}

void TextTable::keyPressEvent(QKeyEvent* event) {
    const int line = currentRow();
    const bool moves = event->modifiers() == Qt::AltModifier;
    const bool inside = line >= 0 && line < lines();
    if (event->key() == Qt::Key_Delete && inside) {
        forgetMarks();
        Q_EMIT removeWanted(line);
    } else if (moves && event->key() == Qt::Key_Up && inside && line > 0) {
        forgetMarks();
        Q_EMIT moveWanted(line, line - 1);
        goTo(line - 1, currentColumn());
    } else if (moves && event->key() == Qt::Key_Down && inside && line + 1 < lines()) {
        forgetMarks();
        Q_EMIT moveWanted(line, line + 1);
        goTo(line + 1, currentColumn());
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (state() != QAbstractItemView::EditingState) {
            edit(currentIndex());
        }
    } else if (event->key() == Qt::Key_Escape) {
        event->ignore();
    } else {
        QTableWidget::keyPressEvent(event);
    }
}

}  // namespace rangeline
