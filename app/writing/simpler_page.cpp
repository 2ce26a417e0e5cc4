#include "writing/simpler_page.h"

#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "model/simpler_form.h"
#include "writing/field_keys.h"

namespace rangeline {

SimplerPage::SimplerPage(QWidget* parent)
    : QWidget(parent),
      whose_(new QLabel(this)),
      how_(new QLineEdit(this)),
      without_(new QListWidget(this)) {
    whose_->setWordWrap(true);
    how_->setAccessibleName(tr("How it is made simpler"));
    how_->setPlaceholderText(tr("such as: lemon squeezed over it, no sauce"));
    setFieldKey(*how_, "simpler.how");
    without_->setAccessibleName(tr("Steps that fall away"));
    setFieldKey(*without_, "simpler.without");
    auto* falls = new QLabel(tr("These of its steps &fall away:"), this);
    falls->setBuddy(without_);
    auto* column = new QVBoxLayout(this);
    column->addWidget(whose_);
    column->addWidget(how_);
    column->addWidget(falls);
    column->addWidget(without_, 1);
    connect(how_, &QLineEdit::editingFinished, this, &SimplerPage::take);
    connect(without_, &QListWidget::itemChanged, this, &SimplerPage::take);
}

void SimplerPage::showComponent(const Dish& dish, std::size_t component) {
    dish_ = dish;
    component_ = component;
    const Component& shown = dish_.components[component_];
    whose_->setText(tr("When time runs short while cooking, “%1” may be made simpler. How?")
                        .arg(QString::fromStdString(shown.name)));
    const QString how = shown.simpler ? QString::fromStdString(shown.simpler->how) : QString();
    if (how_->text() != how) {
        how_->setText(how);
    }
    listSteps(shown);
}

/// Lines stay where they are: one of them may be what is just being ticked.
void SimplerPage::listSteps(const Component& component) {
    const QSignalBlocker quiet(without_);
    while (without_->count() > static_cast<int>(component.steps.size())) {
        delete without_->takeItem(without_->count() - 1);
    }
    for (std::size_t i = 0; i < component.steps.size(); ++i) {
        const Step& step = component.steps[i];
        const auto row = static_cast<int>(i);
        QListWidgetItem* line = without_->item(row);
        line = line == nullptr ? new QListWidgetItem(without_) : line;
        const bool away =
            component.simpler && std::ranges::count(component.simpler->without, step.id) > 0;
        const bool free = away || keptFor(step) == nullptr;
        line->setText(QString::fromStdString(step.name));
        line->setFlags(line->flags().setFlag(Qt::ItemIsEnabled, free));
        line->setCheckState(away ? Qt::Checked : Qt::Unchecked);
        line->setToolTip(free ? QString()
                              : tr("Plating, what comes after serving, raw food and what cooks to "
                                   "a temperature cannot fall away."));
    }
}

void SimplerPage::take() {
    Component& component = dish_.components[component_];
    SimplerForm form{how_->text().trimmed().toStdString(), {}};
    for (int row = 0; row < without_->count(); ++row) {
        if (without_->item(row)->checkState() == Qt::Checked) {
            form.without.push_back(component.steps[static_cast<std::size_t>(row)].id);
        }
    }
    const bool none = form.how.empty() && form.without.empty();
    auto simpler = none ? std::nullopt : std::optional(std::move(form));
    if (simpler != component.simpler) {
        component.simpler = std::move(simpler);
        Q_EMIT dishEdited(Dish(dish_));
    }
}

}  // namespace rangeline
