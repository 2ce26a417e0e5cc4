#include "writing/step_pages.h"

#include <QScrollArea>

#include "writing/field_keys.h"
#include "writing/more_page.h"
#include "writing/order_page.h"
#include "writing/simpler_page.h"
#include "writing/step_form.h"

namespace rangeline {

StepPages::StepPages(Units units, QWidget* parent)
    : QTabWidget(parent),
      form_(new StepForm(units, this)),
      more_(new MorePage(units, this)),
      order_(new OrderPage(this)),
      simpler_(new SimplerPage(this)) {
    addTab(form_, tr("The ste&p"));
    addTab(more_, tr("&More of it"));
    addTab(order_, tr("What wa&its for what"));
    addTab(simpler_, tr("If time is &short"));
    connect(form_, &StepForm::edited, this, &StepPages::edited);
    connect(form_, &StepForm::refused, this, &StepPages::refused);
    connect(more_, &MorePage::edited, this, &StepPages::edited);
    connect(more_, &MorePage::dishEdited, this, &StepPages::dishEdited);
    connect(order_, &OrderPage::dishEdited, this, &StepPages::dishEdited);
    connect(order_, &OrderPage::stepChosen, this, &StepPages::stepChosen);
    connect(simpler_, &SimplerPage::dishEdited, this, &StepPages::dishEdited);
}

void StepPages::showStep(const Dish& dish, const std::optional<StepId>& step,
                         std::size_t component) {
    form_->showStep(dish, step);
    more_->showStep(dish, step);
    order_->showStep(dish, step);
    simpler_->showComponent(dish, component);
}

void StepPages::setLoggings(const std::map<StepId, std::vector<Logging>>& loggings) {
    form_->setLoggings(loggings);
}

void StepPages::forgetRefused() {
    form_->forgetRefused();
}

void StepPages::setTerms(const OwnTerms& terms) {
    form_->setTerms(terms);
}

void StepPages::goTo(const std::string& key) {
    QWidget* field = fieldOf(*this, key);
    if (field == nullptr) {
        return;
    }
    for (int page = 0; page < count(); ++page) {
        if (widget(page)->isAncestorOf(field)) {
            setCurrentIndex(page);
            if (auto* scrolled = qobject_cast<QScrollArea*>(widget(page))) {
                scrolled->ensureWidgetVisible(field);
            }
        }
    }
    field->setFocus();
}

}  // namespace rangeline
