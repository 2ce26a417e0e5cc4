#include "writing/leaving.h"

#include <QCoreApplication>
#include <QMessageBox>
#include <QPushButton>

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Leaving)
};

}  // namespace

Leaving askHowToLeave(QWidget* parent, const QString& title) {
    QMessageBox box(QMessageBox::Question, title,
                    Text::tr("What you changed is not in the book yet."), QMessageBox::NoButton,
                    parent);
    auto* later = box.addButton(Text::tr("Leave it for &later"), QMessageBox::AcceptRole);
    auto* giveUp = box.addButton(Text::tr("&Give it up"), QMessageBox::DestructiveRole);
    auto* goOn = box.addButton(Text::tr("Go &on writing"), QMessageBox::RejectRole);
    box.setDefaultButton(later);
    box.setEscapeButton(goOn);
    box.exec();
    return box.clickedButton() == later    ? Leaving::ForLater
           : box.clickedButton() == giveUp ? Leaving::GiveUp
                                           : Leaving::GoOn;
}

}  // namespace rangeline
