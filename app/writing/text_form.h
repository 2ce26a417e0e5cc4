#pragma once
// A form of fields one below the other: lines of text and boxes to tick.

#include <QGridLayout>
#include <QWidget>
#include <vector>

#include "writing/field.h"

namespace rangeline {

class TextForm : public QWidget {
    Q_OBJECT

  public:
    /// `pairs` fields stand side by side in a row.
    explicit TextForm(const std::vector<FieldLook>& fields, int pairs = 1,
                      QWidget* parent = nullptr);

    void setTexts(const QStringList& texts);
    /// What was typed there is not understood; it stays until it is.
    void mark(int field);
    void forgetMarks();

  Q_SIGNALS:
    void written(int field, const QString& text);

  private:
    struct Row {
        QWidget* widget = nullptr;
        QString shown;
        bool marked = false;
    };
    QWidget* makeField(std::size_t number, const FieldLook& look);
    void typed(std::size_t number, const QString& text);

    std::vector<Row> fields_;
};

}  // namespace rangeline
