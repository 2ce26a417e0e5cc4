#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QListWidget>
#include <QSpinBox>

#include "writing/step_section.h"

namespace rangeline {

/// What goes into the step, and what becomes of its food.
class FlowSection : public StepSection {
    Q_OBJECT

  public:
    FlowSection(Units units, QWidget* parent);
    void showStep(const Dish& dish, const Step& step) override;
    QString takeInto(Step& step) const override;

  private:
    void addKeeping();
    void addTicks();
    void fillUses(const Dish& dish, const Step& step);
    void scrollToWhatIsUsed();
    void fillAheads(const Dish& dish, const Step& step);
    void showKeeping(const Keeping& after);
    void offerWhatFits();
    QString takeKeeping(Step& step) const;
    QString takePlace(Keeping& after) const;

    StepId shown_;  ///< whose lines stand in `uses_`
    QListWidget* uses_;
    QLineEdit* atRoom_;
    QLineEdit* cold_;
    QLineEdit* hot_;
    QComboBox* storage_;
    QComboBox* place_;
    QSpinBox* amount_;
    QLineEdit* lowest_;
    QLineEdit* highest_;
    QComboBox* onlyIfAhead_;
    QCheckBox* ahead_;
    QCheckBox* plates_;
    QCheckBox* afterServing_;
};

}  // namespace rangeline
