#pragma once
// Everything that is asked of one step.

#include <QScrollArea>
#include <map>
#include <set>
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

    /// Without a step nothing can be filled in. A part of the form in which something of this step
    /// could not be taken stays as it was typed.
    void showStep(const Dish& dish, const std::optional<StepId>& step);
    /// What is shown next fills every part.
    void forgetRefused();
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
    std::set<const StepSection*> refused_;  ///< by what stands in them now
    Step step_;
    bool filling_ = false;
};

}  // namespace rangeline
