#pragma once
// A part of what is asked of a step. Adding one is a file with its fields and a line in
// step_form.cpp.

#include <QFormLayout>
#include <QGroupBox>
#include <QLineEdit>

#include "model/dish.h"
#include "model/lesson.h"

namespace rangeline {

class StepSection : public QGroupBox {
    Q_OBJECT

  public:
    StepSection(const QString& title, Units units, QWidget* parent);

    /// Fills the fields.
    virtual void showStep(const Dish& dish, const Step& step) = 0;
    /// Puts what the fields say into the step; why that cannot be, as a sentence, or nothing.
    virtual QString takeInto(Step& step) const = 0;

  Q_SIGNALS:
    void edited();

  protected:
    QFormLayout& form() { return *form_; }
    Units units() const { return units_; }
    /// A line of its own, or beside others where it is not added to the form.
    QLineEdit* makeEdit(const QString& name, const QString& hint = {});
    /// Several widgets in one line of the form.
    void addLine(const QString& label, std::initializer_list<QWidget*> widgets);

  private:
    QFormLayout* form_;
    Units units_;
};

}  // namespace rangeline
