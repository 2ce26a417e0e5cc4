#pragma once

#include <QVBoxLayout>
#include <map>
#include <vector>

#include "rehearse/learned.h"
#include "writing/step_section.h"

namespace rangeline {

/// By step of a dish.
using StepLoggings = std::map<StepId, std::vector<Logging>>;

/// What the cooking log teaches of the step's time, offered with a button each. Not there where it
/// teaches nothing; nothing changes unless it is taken.
class LearnedSection : public StepSection {
    Q_OBJECT

  public:
    LearnedSection(Units units, QWidget* parent);

    void setLoggings(StepLoggings loggings);
    void showStep(const Dish& dish, const Step& step) override;
    /// The times that were just taken, if any.
    QString takeInto(Step& step) const override;

  private:
    void showLearned();
    void offer(const QString& text, const QString& whose, const DurationRange& time);

    StepLoggings loggings_;
    Step step_;
    std::optional<DurationRange> taken_;
    QWidget* lines_ = nullptr;
};

}  // namespace rangeline
