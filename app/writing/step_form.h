#pragma once
// Everything that is asked of one step.

#include <QScrollArea>
#include <map>
#include <vector>

#include "rehearse/learned.h"
#include "writing/own_terms.h"
#include "writing/step_section.h"

namespace rangeline {

class LearnedSection;
class TimeSection;

class StepForm : public QScrollArea {
    Q_OBJECT

  public:
    StepForm(Units units, QWidget* parent = nullptr);

    /// Without a step nothing can be filled in.
    void showStep(const Dish& dish, const std::optional<StepId>& step);
    void setTerms(const OwnTerms& terms);
    /// What the cooking log says, by step.
    void setLoggings(const std::map<StepId, std::vector<Logging>>& loggings);

    /// Wide enough for its fields: they are scrolled in one direction only.
    QSize minimumSizeHint() const override;

  Q_SIGNALS:
    /// The step as it is to be.
    void edited(const rangeline::Step& step);
    /// Why what stands in a field cannot be taken; empty: it can.
    void refused(const QString& why);

  private:
    void take();

    TimeSection* time_;
    LearnedSection* learned_;
    std::vector<StepSection*> sections_;
    Step step_;
    bool filling_ = false;
};

}  // namespace rangeline
