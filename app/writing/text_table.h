#pragma once
// A table that is written in like a list on paper: Enter goes to the next line, Tab to the next
// field, the line at the end is there for more. Escape keeps what was typed; what is not understood
// stays in its cell, marked.

#include <QTableWidget>
#include <map>
#include <optional>
#include <utility>
#include <vector>

#include "writing/field.h"

namespace rangeline {

class TextTable : public QTableWidget {
    Q_OBJECT

  public:
    TextTable(const QString& name, std::vector<FieldLook> columns, QWidget* parent = nullptr);

    /// The lines, without the empty one at the end. Marked cells keep their text.
    void setLines(const std::vector<QStringList>& lines);
    void setChoices(int column, const QStringList& choices);
    /// Takes the room that the others leave, but never less than its usual width: then the table
    /// scrolls.
    void setWideColumn(int column);
    /// Tells of what was typed last now instead of in a moment: before the table is filled with
    /// something else.
    void deliver();
    /// The text of that cell was not understood.
    void mark(int line, int column);
    /// What is marked goes at the next setLines().
    void forgetMarks();
    const std::vector<FieldLook>& columns() const { return columns_; }
    /// How many lines have something.
    int lines() const { return rowCount() - 1; }

  Q_SIGNALS:
    /// `line` is lines() where a new one is begun.
    void written(int line, int column, const QString& text);
    void removeWanted(int line);
    void moveWanted(int from, int to);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;

  private:
    int usualWidth(int column) const;
    void fillWidth();
    void cellEdited(const QTableWidgetItem& item);
    void goTo(int line, int column);

    std::vector<FieldLook> columns_;
    struct Typed {
        int line = 0;
        int column = 0;
        QString text;
    };

    std::map<std::pair<int, int>, QString> marked_;
    std::optional<Typed> typed_;  ///< and not told of yet
    bool filling_ = false;
    int wideColumn_ = -1;  ///< -1: none
};

}  // namespace rangeline
