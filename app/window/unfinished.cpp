// Drafts of the book: what is asked about them.

#include <QInputDialog>
#include <QMessageBox>
#include <QPushButton>
#include <algorithm>

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
            dish ? writeDishOf(key) : writeKitchenOf(key);
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

template <class Part>
void BookWriting::beginOrGoOn(DraftSort sort, const QString& fresh,
                              const std::function<void(const DraftKey&)>& goOn,
                              const std::function<void(const DraftKey&)>& begin) {
    desk_.book()->ask(
        [sort](Book& book) { return newDrafts<Part>(book, sort); },
        [this, sort, fresh, goOn, begin](const std::vector<NewDraft>& drafts) {
            const auto key = drafts.empty() ? DraftKey{sort, {}} : asksWhich(drafts, sort, fresh);
            if (!key) {
                return;
            }
            const auto begun = std::ranges::find(drafts, *key, &NewDraft::key);
            goingOn_ = begun != drafts.end();
            goingOn_ ? goOn(*key) : begin(*key);
        });
}

template void BookWriting::beginOrGoOn<Dish>(DraftSort, const QString&,
                                             const std::function<void(const DraftKey&)>&,
                                             const std::function<void(const DraftKey&)>&);
template void BookWriting::beginOrGoOn<Kitchen>(DraftSort, const QString&,
                                                const std::function<void(const DraftKey&)>&,
                                                const std::function<void(const DraftKey&)>&);

/// Which of those begun, or another; nothing where the question is left.
std::optional<DraftKey> BookWriting::asksWhich(const std::vector<NewDraft>& drafts, DraftSort sort,
                                               const QString& fresh) {
    QStringList choices;
    for (const NewDraft& draft : drafts) {
        choices << tr("Go on with “%1”").arg(QString::fromStdString(draft.name));
    }
    const auto free = freeDraft(drafts, sort);
    if (free) {
        choices << fresh;
    }
    // Names may be there twice: the place in the list tells which one is meant.
    for (int number = 0; number < choices.size(); ++number) {
        choices[number] = tr("%1. %2").arg(number + 1).arg(choices[number]);
    }
    bool chosen = false;
    const QString choice = QInputDialog::getItem(
        &window_, tr("Not finished"), tr("These were begun and are not kept in the book yet."),
        choices, 0, false, &chosen);
    if (!chosen) {
        return std::nullopt;
    }
    const auto number = static_cast<std::size_t>(choices.indexOf(choice));
    return number < drafts.size() ? std::optional(drafts[number].key) : free;
}

}  // namespace rangeline
