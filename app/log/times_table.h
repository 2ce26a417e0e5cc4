#pragma once
// Steps in the order of the printed order of work, with two fields each: when it began and ended.

#include <QTableWidget>
#include <vector>

#include "document/lesson_document.h"
#include "live/taken.h"
#include "log/typed_times.h"

namespace rangeline {

class TimesTable : public QTableWidget {
    Q_OBJECT

  public:
    /// The steps of the lesson that have a place.
    TimesTable(const LessonDocument& document, const QLocale& locale, QWidget* parent = nullptr);

    /// The times are of that lesson on another day.
    void setHead(const Head& head);
    /// To the field for the begin of the step with that number on paper; false: there is none.
    bool goTo(int number);
    /// Steps with both times.
    std::vector<live::Taken> taken() const;
    int wrong() const;
    bool isEmpty() const;

  Q_SIGNALS:
    void typed();

  protected:
    /// From field to field.
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    /// Keys leave the table from the last time on, and back from the first.
    bool focusNextPrevChild(bool next) override;
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;

  private:
    struct Row {
        StepKey key;
        int number = 0;
        Interval planned;
        DurationRange time;
    };

    bool isAtEnd(bool next) const;
    ReadTimes read(int row) const;
    void showRow(int row);
    QString doubtText(TypedDoubt doubt, const Row& row) const;

    QLocale locale_;
    std::vector<Row> rows_;
    Clock clock_;
};

}  // namespace rangeline
