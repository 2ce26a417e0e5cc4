#pragma once

#include <QCheckBox>
#include <QComboBox>

#include "writing/step_section.h"

namespace rangeline {

/// On what the step is cooked, and in what.
class HeatSection : public StepSection {
    Q_OBJECT

  public:
    HeatSection(Units units, QWidget* parent);
    void showStep(const Dish& dish, const Step& step) override;
    QString takeInto(Step& step) const override;

  private:
    void offerWhatFits();
    void fillCarriers(const Dish& dish, const Step& step);
    QString takeHeat(Step& step) const;
    QString takeBurner(Step& step) const;
    QString takeOven(Step& step) const;
    QString takeWare(Step& step) const;

    QComboBox* on_;
    QComboBox* level_;
    QLineEdit* power_;
    QLineEdit* lowest_;
    QLineEdit* highest_;
    QComboBox* mode_;
    QCheckBox* shut_;
    QComboBox* ware_;
    QLineEdit* width_;
    QComboBox* carriesOn_;
    QCheckBox* turnedOut_;
};

}  // namespace rangeline
