#include "window/arranger.h"

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>
#include <thread>

#include "check/verdict.h"
#include "text/arrange_text.h"
#include "text/fault_text.h"

namespace rangeline {

Lesson withPlacedPinned(Lesson lesson) {
    for (auto& [key, placement] : lesson.placements) {
        placement.pinned = placement.pinned || std::holds_alternative<StepKey>(key);
    }
    return lesson;
}

Arranger::Arranger(LessonDocument& document, const QLocale& locale, QWidget* parent)
    : QDialog(parent),
      document_(document),
      locale_(locale),
      text_(new QLabel(this)),
      graph_(new ProgressGraph(document, locale, this)),
      stop_(new QPushButton(tr("Stop here"), this)),
      showSoon_(new QTimer(this)) {
    setWindowTitle(tr("Arranging"));
    setWindowModality(Qt::WindowModal);
    constexpr int widest = 380;
    text_->setWordWrap(true);
    text_->setMinimumWidth(widest);
    // What it says while it goes on may take two lines.
    text_->setMinimumHeight(2 * text_->fontMetrics().lineSpacing() + 2);
    text_->setAlignment(Qt::AlignLeading | Qt::AlignTop);
    auto* bar = new QProgressBar(this);
    bar->setRange(0, 0);
    bar->setTextVisible(false);
    bar->setAccessibleName(tr("Arranging"));
    stop_->setToolTip(tr("Takes the best plan found so far"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(text_);
    column->addWidget(graph_);
    column->addWidget(bar);
    column->addWidget(stop_, 0, Qt::AlignRight);
    // A dialog that goes before the desktop has shown it can keep the keyboard from the window.
    showSoon_->setSingleShot(true);
    showSoon_->setInterval(300);
    connect(showSoon_, &QTimer::timeout, this, &QDialog::show);
    connect(stop_, &QPushButton::clicked, this, &Arranger::reject);
    connect(&job_, &ArrangeJob::progressed, this, &Arranger::showProgress);
    connect(&job_, &ArrangeJob::finished, this, &Arranger::take);
}

void Arranger::start(ArrangeScope scope, const ArrangeOptions& options) {
    if (running_) {
        return;
    }
    running_ = true;
    scope_ = scope;
    text_->setText(tr("Looking for a first plan ..."));
    stop_->setEnabled(true);
    ArrangeOptions chosen = options;
    chosen.stayClose = scope == ArrangeScope::Close;
    chosen.threads = std::thread::hardware_concurrency() > 1 ? 2 : 1;
    graph_->clear();
    begun_ = document_.lesson();
    job_.start(asArranged(), chosen);
    showSoon_->start();
}

Lesson Arranger::asArranged() const {
    return scope_ == ArrangeScope::Shelf ? withPlacedPinned(begun_) : begun_;
}

void Arranger::showProgress(const ArrangeProgress& progress) {
    if (progress.best) {
        text_->setText(progressText(progress, document_.shownHead(), locale_));
        graph_->add(progress, text_->text());
    }
}

void Arranger::reject() {
    if (!running_) {
        hide();
        return;
    }
    stop_->setEnabled(false);
    text_->setText(tr("Stopping ..."));
    job_.stop();
}

void Arranger::take(const ArrangeResult& result) {
    running_ = false;
    showSoon_->stop();
    graph_->clear();
    hide();
    if (!(document_.lesson() == begun_)) {
        Q_EMIT done(tr("The lesson was changed meanwhile, so the plan is not taken: arrange it "
                       "again."),
                    false);
        return;
    }
    Lesson planned = begun_;
    const QString text = arrangeText(result, document_.shownHead(), locale_);
    if (result.placements.empty()) {
        const QString said = scope_ == ArrangeScope::Shelf
                                 ? tr("%1 What is placed already was held where it is.").arg(text)
                                 : text;
        Q_EMIT done(said, false);
        if (result.status == ArrangeStatus::NotPossible) {
            Q_EMIT notPossible(asArranged(), said);
        }
        return;
    }
    planned.placements = result.placements;
    for (const auto& [key, before] : document_.lesson().placements) {
        if (const auto placed = planned.placements.find(key); placed != planned.placements.end()) {
            placed->second.pinned = before.pinned;
        }
    }
    // The checker is the judge of the planner: what it objects to is never shown.
    if (!keepsRules(checkLesson(planned, expand(planned)), planned.head.lateAllowed)) {
        Q_EMIT done(tr("The plan that was found breaks a rule of this lesson, so it is not shown. "
                       "Please report the lesson."),
                    false);
        return;
    }
    const auto fault = document_.apply(
        placementDifference(document_.lesson().placements, planned.placements), tr("arrange"));
    Q_EMIT done(fault ? sentence(*fault) : text, !fault);
}

}  // namespace rangeline
