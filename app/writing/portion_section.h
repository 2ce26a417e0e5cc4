#pragma once

#include <QComboBox>
#include <QLabel>
#include <QSpinBox>

#include "writing/step_section.h"

namespace rangeline {

/// How much there is of it, who is needed, and what can hurt.
class PortionSection : public StepSection {
    Q_OBJECT

  public:
    PortionSection(Units units, QWidget* parent);
    void showStep(const Dish& dish, const Step& step) override;
    QString takeInto(Step& step) const override;

  private:
    void sayWhatFits(const Step& step);
    QString takeSize(Step& step) const;

    QLineEdit* perCover_;
    QLineEdit* width_;
    QLineEdit* volume_;
    QLabel* fits_;
    Ware ware_;  ///< of the step's kind and least width
    QSpinBox* perBatch_;
    QComboBox* timePer_;
    QSpinBox* cooks_;
    QComboBox* food_;
    QLineEdit* core_;
};

}  // namespace rangeline
