// The window's dialogs.

#include <QMessageBox>
#include <QStatusBar>

#include "check/verdict.h"
#include "inspect/lesson_head_dialog.h"
#include "print/dialog/print_dialog.h"
#include "rehearse/network.h"
#include "timeline_view/timeline_view.h"
#include "window/lesson_export.h"
#include "window/main_window.h"
#include "window/rehearse_dialog.h"

namespace rangeline {
namespace {

using Spreads = std::vector<std::pair<PlacementKey, SpreadMark>>;

Spreads spreadsOf(const Rehearsed& it) {
    Spreads spreads;
    for (std::size_t i = 0; i < it.rehearsal.bands.size(); ++i) {
        const Band& band = it.rehearsal.bands[i];
        spreads.emplace_back(it.index.keyOf(it.network.activities[i].node),
                             SpreadMark{0, band.beginEarly, band.beginLate, band.endEarly,
                                        band.endMiddle, band.endLate});
    }
    return spreads;
}

}  // namespace

void MainWindow::editHead() {
    LessonHeadDialog dialog(document_, locale_, this);
    dialog.exec();
}

void MainWindow::print() {
    PrintDialog dialog(document_, locale_, this);
    dialog.exec();
    if (!dialog.outcome().isEmpty()) {
        statusBar()->showMessage(dialog.outcome());
    }
}

void MainWindow::exportToOther() {
    const QString done = exportLesson(document_, locale_, this);
    if (!done.isEmpty()) {
        statusBar()->showMessage(done);
    }
}

void MainWindow::rehearse() {
    if (!canBeFollowed(document_.findings())) {
        say(tr("Something collides or has no place yet: arrange it first, then rehearse."));
        return;
    }
    if (networkOf(document_.index()).plating.empty()) {
        say(
            tr("No step ends on the plate, so there is no plating to be on time for: say so of the "
               "last step of a dish, then rehearse."));
        return;
    }
    auto* open = findChild<RehearseDialog*>();
    if (open == nullptr) {
        open = new RehearseDialog(document_, locale_, this);
        open->setAttribute(Qt::WA_DeleteOnClose);
        connect(open, &RehearseDialog::rehearsed, timeline_,
                [this](const std::shared_ptr<const Rehearsed>& done) {
                    timeline_->showSpreads(done ? spreadsOf(*done) : Spreads());
                });
    }
    open->show();
    open->raise();
    open->activateWindow();
}

void MainWindow::showHelp(HelpDialog::Page page) {
    if (help_ == nullptr) {
        help_ = new HelpDialog(this);
    }
    help_->open(page);
}

void MainWindow::showAbout() {
    QMessageBox::about(
        this, tr("About Rangeline"),
        tr("Rangeline plans a lesson of many components on one kitchen, so that everything is "
           "ready together, and says what collides and what decides plating.\n\nIts food-safety "
           "figures are those of the limits you choose; your local food code comes first."));
}

}  // namespace rangeline
