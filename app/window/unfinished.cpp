// Drafts of the book: what is asked about them.

#include <QMessageBox>
#include <QPushButton>

#include "window/book_writing.h"

namespace rangeline {

/// Once for each book, as soon as it takes changes.
void BookWriting::lookForInterrupted() {
    if (looked_ || !desk_.isWritable()) {
        return;
    }
    looked_ = true;
    desk_.book()->ask([](Book& book) { return interruptedDraft(book); },
                      [this](const std::optional<DraftKey>& key) {
                          if (key) {
                              offerInterrupted(*key);
                          }
                      });
}

void BookWriting::offerInterrupted(const DraftKey& key) {
    const bool dish = key.sort == DraftSort::Dish;
    auto* box = new QMessageBox(QMessageBox::Question, tr("Not finished"),
                                dish ? tr("A dish was being written when the program ended.")
                                     : tr("A kitchen was being written when the program ended."),
                                QMessageBox::NoButton, &window_);
    box->setAttribute(Qt::WA_DeleteOnClose);
    const auto* goOn = box->addButton(tr("Go &on writing"), QMessageBox::AcceptRole);
    box->addButton(tr("&Later"), QMessageBox::RejectRole);
    connect(box, &QMessageBox::finished, this, [this, box, goOn, dish, key] {
        if (box->clickedButton() == goOn) {
            goingOn_ = true;
            dish ? writeDishOf(key.item) : writeKitchenOf(key.item);
        } else {
            desk_.change(&endDraft);
        }
    });
    box->open();
}

/// Whether to go on with the draft or begin anew; neither where the question is left.
std::optional<bool> BookWriting::asksToGoOn(const std::string& name) {
    QMessageBox box(
        QMessageBox::Question, tr("Not finished"),
        tr("“%1” was begun and is not kept in the book yet.").arg(QString::fromStdString(name)),
        QMessageBox::Cancel, &window_);
    const auto* goOn = box.addButton(tr("Go &on with it"), QMessageBox::AcceptRole);
    const auto* anew = box.addButton(tr("Begin a&new"), QMessageBox::DestructiveRole);
    box.exec();
    const QAbstractButton* clicked = box.clickedButton();
    return clicked == goOn || clicked == anew ? std::optional(clicked == goOn) : std::nullopt;
}

}  // namespace rangeline
