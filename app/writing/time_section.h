#pragma once

#include <QComboBox>
#include <QLabel>

#include "writing/own_terms.h"
#include "writing/step_section.h"

namespace rangeline {

/// Attention as a form asks for it: hands at first, something meanwhile, hands at last.
struct AttentionParts {
    Duration before;
    Attention middle = Attention::Hands;
    Duration after;

    /// Empty for segments that are none of this form.
    static std::optional<AttentionParts> of(const std::vector<Segment>& segments);
    std::vector<Segment> segments() const;

    friend bool operator==(const AttentionParts&, const AttentionParts&) = default;
};

class TimeSection : public StepSection {
    Q_OBJECT

  public:
    TimeSection(Units units, QWidget* parent);
    void showStep(const Dish& dish, const Step& step) override;
    QString takeInto(Step& step) const override;
    /// After all sections: a technique that is another brings what is usual for it.
    void takeTechnique(Step& step) const;
    /// What there is to choose from, and what is usual for it.
    void setTerms(const OwnTerms& terms);

  private:
    void estimateCooling();
    QString takeTimes(Step& step) const;
    void showUsual(const std::string& technique);

    QLineEdit* name_;
    OwnTerms terms_;
    QComboBox* technique_;
    QLabel* usual_;
    QLineEdit* cue_;
    QLineEdit* likely_;
    QLineEdit* shortest_;
    QLineEdit* longest_;
    QLineEdit* before_;
    QLineEdit* after_;
    QComboBox* middle_;
};

}  // namespace rangeline
