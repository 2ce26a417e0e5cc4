#include "library/book_bar.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include "library/book_desk.h"
#include "text/book_fault_text.h"

namespace rangeline {

BookBar::BookBar(BookDesk& desk, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      text_(new QLabel(this)),
      retry_(new QPushButton(tr("&Try again"), this)),
      copy_(new QPushButton(tr("Save a &copy ..."), this)),
      salvage_(new QPushButton(tr("Save what can be &read ..."), this)) {
    setFrameShape(QFrame::StyledPanel);
    text_->setWordWrap(true);
    text_->setTextFormat(Qt::PlainText);
    auto* row = new QHBoxLayout(this);
    row->addWidget(text_, 1);
    for (QPushButton* button : {retry_, copy_, salvage_}) {
        row->addWidget(button, 0, Qt::AlignTop);
    }
    connect(retry_, &QPushButton::clicked, &desk, [&desk] { desk.journal().retry(); });
    connect(copy_, &QPushButton::clicked, &desk, &BookDesk::askForCopy);
    connect(salvage_, &QPushButton::clicked, &desk, &BookDesk::askForSalvage);
    connect(&desk, &BookDesk::stateChanged, this, &BookBar::showState);
    hide();
}

QString BookBar::text() const {
    return text_->text();
}

void BookBar::showState() {
    const OpenBook* book = desk_.book();
    const auto& unwritten = desk_.journal().fault();
    const std::optional<BookFault> why = unwritten ? unwritten
                                         : book != nullptr && book->isSettled()
                                             ? book->whyNotWritable()
                                             : std::nullopt;
    const bool damaged = why && isDamage(why->code);
    retry_->setVisible(unwritten && !damaged);
    copy_->setVisible(why && !damaged);
    salvage_->setVisible(damaged);
    say(!why ? desk_.noBook()
             : (unwritten ? tr("The last change is not in “%1” yet: %2. It stays in this window.")
                          : tr("“%1”: %2."))
                   .arg(QFileInfo(book->path()).fileName(), sentence(*why)));
}

void BookBar::say(const QString& text) {
    text_->setText(text);
    setAccessibleName(text);
    setVisible(!text.isEmpty());
}

}  // namespace rangeline
