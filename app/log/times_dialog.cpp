#include "log/times_dialog.h"

#include <QHBoxLayout>
#include <QMessageBox>
#include <QPointer>
#include <QUuid>
#include <QVBoxLayout>

#include "live/review.h"
#include "log/review_view.h"
#include "text/book_fault_text.h"

namespace rangeline {

TimesDialog::TimesDialog(BookDesk& desk, const QLocale& locale, const QDate& today, QWidget* parent)
    : QDialog(parent),
      desk_(desk),
      locale_(locale),
      service_(QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString()) {
    setWindowTitle(tr("Times of a class"));
    table_ = new TimesTable(desk.document(), locale, this);
    auto* column = new QVBoxLayout(this);
    pages_ = new QStackedWidget(this);
    auto* typing = new QWidget(pages_);
    auto* inside = new QVBoxLayout(typing);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->addWidget(makeTop(today));
    inside->addWidget(table_, 1);
    pages_->addWidget(typing);
    column->addWidget(pages_, 1);
    column->addWidget(makeBottom());
    constexpr QSize usual(960, 600);
    resize(usual);
    connect(table_, &TimesTable::typed, this, &TimesDialog::typed);
    connect(day_, &QDateEdit::dateChanged, this, [this] {
        table_->setHead(lesson().head);
        typed();
    });
    table_->setHead(lesson().head);
    typed();
    table_->setFocus();
}

QWidget* TimesDialog::makeTop(const QDate& today) {
    auto* top = new QWidget(this);
    auto* row = new QHBoxLayout(top);
    row->setContentsMargins(0, 0, 0, 0);
    const QDate planned =
        Clock(desk_.document().shownHead(), locale_).moment(Instant::serving()).date();
    day_ = new QDateEdit(std::min(planned, today), top);
    day_->setCalendarPopup(true);
    day_->setAccessibleName(tr("Day of the class"));
    number_ = new QSpinBox(top);
    number_->setRange(1, 9999);
    number_->setAccessibleName(tr("Number on paper"));
    auto* go = new QPushButton(tr("&Go to it"), top);
    go->setAutoDefault(false);
    auto* dayLabel = new QLabel(tr("Class of the &day"), top);
    dayLabel->setBuddy(day_);
    auto* numberLabel = new QLabel(tr("&Number on paper"), top);
    numberLabel->setBuddy(number_);
    row->addWidget(dayLabel);
    row->addWidget(day_);
    row->addStretch(1);
    row->addWidget(numberLabel);
    row->addWidget(number_);
    row->addWidget(go);
    connect(go, &QPushButton::clicked, this, [this] {
        if (!table_->goTo(number_->value())) {
            count_->setText(tr("No step has the number %1.").arg(number_->value()));
        }
    });
    return top;
}

QWidget* TimesDialog::makeBottom() {
    auto* bottom = new QWidget(this);
    auto* row = new QHBoxLayout(bottom);
    row->setContentsMargins(0, 0, 0, 0);
    count_ = new QLabel(bottom);
    count_->setWordWrap(true);
    another_ = new QCheckBox(tr("It was a &second class on that day"), bottom);
    another_->hide();
    log_ = new QPushButton(tr("&Put into the log"), bottom);
    close_ = new QPushButton(tr("&Close"), bottom);
    for (QPushButton* button : {log_, close_}) {
        button->setAutoDefault(false);
    }
    row->addWidget(count_, 1);
    row->addWidget(another_);
    row->addWidget(log_);
    row->addWidget(close_);
    connect(log_, &QPushButton::clicked, this, &TimesDialog::log);
    connect(close_, &QPushButton::clicked, this, &TimesDialog::reject);
    return bottom;
}

Lesson TimesDialog::lesson() const {
    Lesson lesson = desk_.document().lesson();
    QDateTime serving =
        QDateTime::fromString(QString::fromStdString(lesson.head.servingTime), Qt::ISODate);
    serving.setDate(day_->date());
    lesson.head = desk_.document().shownHead();
    lesson.head.servingTime = serving.toString(QStringLiteral("yyyy-MM-dd'T'HH:mm")).toStdString();
    return lesson;
}

void TimesDialog::typed() {
    const auto both = static_cast<int>(table_->taken().size());
    const int wrong = table_->wrong();
    QString text =
        tr("%1 of %2 steps have both times; gaps do no harm.").arg(both).arg(table_->rowCount());
    if (wrong > 0) {
        text = tr("%1 to be put right first.").arg(wrong) + QChar(u' ') + text;
    }
    count_->setText(text);
    log_->setEnabled(both > 0 && wrong == 0 && !logged_);
}

void TimesDialog::log() {
    log_->setFocus();  // a time that is being typed still is one of them
    const auto item = desk_.journal().lesson();
    if (desk_.book() == nullptr || !item) {
        count_->setText(tr("The lesson is in no book that is open."));
        return;
    }
    if (!log_->isEnabled()) {
        return;
    }
    log_->setEnabled(false);
    const auto taken = table_->taken();
    const auto work = [service = service_, another = another_->isChecked(),
                       entries = logEntries(lesson(), item, taken)](Book& book) {
        return logClass(book, service, entries, another);
    };
    desk_.book()->ask(work, [self = QPointer(this), taken](const Result<Logged, BookFault>& done) {
        if (self == nullptr) {
            return;
        }
        if (!done.ok()) {
            self->typed();
            self->count_->setText(sentence(done.error()));
        } else if (done.value() == Logged::AlreadyThere) {
            self->typed();
            self->count_->setText(
                tr("Not logged: the log has some of these steps for that day already."));
            self->another_->show();
        } else {
            self->logged_ = true;
            self->showReview(taken);
        }
    });
}

void TimesDialog::showReview(const std::vector<live::Taken>& taken) {
    const Lesson planned = lesson();
    pages_->setCurrentIndex(
        pages_->addWidget(new ReviewView(planned, live::review(planned, taken), locale_, pages_)));
    count_->setText(taken.size() == 1
                        ? tr("The times of 1 step are in the log.")
                        : tr("The times of %1 steps are in the log.").arg(taken.size()));
    another_->hide();
    log_->hide();
    close_->setFocus();
}

void TimesDialog::reject() {
    if (!logged_ && !table_->isEmpty()) {
        QMessageBox box(QMessageBox::Question, tr("Times of a class"),
                        tr("The times that were typed are not in the log yet."),
                        QMessageBox::NoButton, this);
        const auto* drop = box.addButton(tr("Give them &up"), QMessageBox::DestructiveRole);
        auto* goOn = box.addButton(tr("Go &on typing"), QMessageBox::RejectRole);
        box.setDefaultButton(goOn);
        box.exec();
        if (box.clickedButton() != drop) {
            return;
        }
    }
    QDialog::reject();
}

}  // namespace rangeline
