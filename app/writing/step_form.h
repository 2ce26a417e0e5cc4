#pragma once
// Everything that is asked of one step.

#include <QScrollArea>
#include <vector>

#include "writing/own_terms.h"
#include "writing/step_section.h"

namespace rangeline {

class TimeSection;

class StepForm : public QScrollArea {
    Q_OBJECT

  public:
    StepForm(Units units, QWidget* parent = nullptr);

    /// Without a step nothing can be filled in.
    void showStep(const Dish& dish, const std::optional<StepId>& step);
    void setTerms(const OwnTerms& terms);

  Q_SIGNALS:
    /// The step as it is to be.
    void edited(const rangeline::Step& step);
    /// Why what stands in a field cannot be taken; empty: it can.
    void refused(const QString& why);

  private:
    void take();

    TimeSection* time_;
    std::vector<StepSection*> sections_;
    Step step_;
    bool filling_ = false;
};

}  // namespace rangeline
