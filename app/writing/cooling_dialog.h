#pragma once

#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <optional>

#include "model/lesson.h"
#include "safety/cooling.h"

namespace rangeline {

/// Estimates how long food takes to cool in a room, while it is typed how it lies and how thick.
class CoolingDialog : public QDialog {
    Q_OBJECT

  public:
    CoolingDialog(Units units, QWidget* parent);

    /// Of what stands in the fields; nothing where they say nothing that cools.
    std::optional<CoolingEstimate> estimate() const;

  private:
    QLineEdit* makeEdit(const QString& name, const QString& text);
    void say();

    Units units_;
    QComboBox* lying_;
    QLineEdit* size_;
    QLineEdit* hot_;
    QLineEdit* cooled_;
    QLineEdit* room_;
    QLabel* result_;
    QPushButton* use_;
};

}  // namespace rangeline
