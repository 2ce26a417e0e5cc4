#include "writing/learned_section.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include "text/quantities.h"

namespace rangeline {
namespace {

QString timesText(const Learned& learned, const QLocale& locale) {
    const DurationRange& time = learned.time;
    QString text = LearnedSection::tr("usually %1, from %2 to %3; cooked %4 times")
                       .arg(durationText(time.likely, locale), durationText(time.shortest, locale),
                            durationText(time.longest, locale))
                       .arg(learned.nights);
    if (learned.odd > 0) {
        text += learned.odd == 1 ? LearnedSection::tr(", one odd night left out")
                                 : LearnedSection::tr(", %1 odd nights left out").arg(learned.odd);
    }
    return text;
}

}  // namespace

LearnedSection::LearnedSection(Units units, QWidget* parent)
    : StepSection(tr("From the cooking log"), units, parent) {
    hide();
}

void LearnedSection::setLoggings(StepLoggings loggings) {
    loggings_ = std::move(loggings);
    showLearned();
}

void LearnedSection::showStep(const Dish&, const Step& step) {
    step_ = step;
    showLearned();
}

void LearnedSection::showLearned() {
    if (lines_ != nullptr) {
        // Perhaps from a button among them that is still being pressed.
        form().removeRow(form().rowCount() - 1);
        lines_ = nullptr;
    }
    const auto known = loggings_.find(step_.id);
    const auto learned = known == loggings_.end() ? std::nullopt : learnedFrom(known->second);
    setVisible(learned.has_value());
    if (!learned) {
        return;
    }
    lines_ = new QWidget(this);
    auto* column = new QVBoxLayout(lines_);
    column->setContentsMargins(0, 0, 0, 0);
    form().addRow(lines_);
    const QString each = step_.timePer == TimePer::Piece ? tr("For each piece: %1") : tr("%1");
    offer(each.arg(timesText(*learned, locale())), tr("everyone"), learned->time);
    for (const LearnedOfCook& cook : cooksWhoDiffer(known->second)) {
        const QString name = QString::fromStdString(cook.cook);
        offer(tr("%1: %2").arg(name, timesText(cook.learned, locale())), name, cook.learned.time);
    }
}

void LearnedSection::offer(const QString& text, const QString& whose, const DurationRange& time) {
    auto* line = new QWidget(lines_);
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    auto* label = new QLabel(text, line);
    label->setWordWrap(true);
    auto* take = new QPushButton(tr("Take these"), line);
    take->setAccessibleName(tr("Take the times of %1").arg(whose));
    take->setAutoDefault(false);
    take->setEnabled(!(time == step_.time));
    row->addWidget(label, 1);
    row->addWidget(take, 0, Qt::AlignTop);
    lines_->layout()->addWidget(line);
    // After the press has ended: taking shows the step anew, and the button is another one then.
    connect(
        take, &QPushButton::clicked, this,
        [this, time] {
            taken_ = time;
            Q_EMIT edited();
            taken_.reset();
        },
        Qt::QueuedConnection);
}

QString LearnedSection::takeInto(Step& step) const {
    if (taken_) {
        step.time = *taken_;
    }
    return {};
}

}  // namespace rangeline
