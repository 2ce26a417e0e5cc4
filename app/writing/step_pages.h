#pragma once
// What is asked of the chosen step and its component, on four pages: the step's form, what few
// steps need, what waits for what, and how the component is made simpler.

#include <QTabWidget>
#include <map>
#include <optional>
#include <vector>

#include "model/dish.h"
#include "model/lesson.h"
#include "rehearse/learned.h"
#include "writing/own_terms.h"

namespace rangeline {

class MorePage;
class OrderPage;
class SimplerPage;
class StepForm;

class StepPages : public QTabWidget {
    Q_OBJECT

  public:
    StepPages(Units units, QWidget* parent = nullptr);

    /// Without a step only what is asked of dish and component is there to be seen.
    void showStep(const Dish& dish, const std::optional<StepId>& step, std::size_t component);
    /// What could not be taken of what was typed is given up when a step is shown next.
    void forgetRefused();
    void setTerms(const OwnTerms& terms);
    /// What the cooking log says, by step.
    void setLoggings(const std::map<StepId, std::vector<Logging>>& loggings);
    /// Opens the page with the field that faults call so, and goes there.
    void goTo(const std::string& field);

  Q_SIGNALS:
    /// The step as it is to be.
    void edited(const rangeline::Step& step);
    /// The dish as it is to be.
    void dishEdited(const rangeline::Dish& dish);
    void stepChosen(const rangeline::StepId& step);
    /// Why what stands in a field cannot be taken; empty: it can.
    void refused(const QString& why);

  private:
    StepForm* form_;
    MorePage* more_;
    OrderPage* order_;
    SimplerPage* simpler_;
};

}  // namespace rangeline
