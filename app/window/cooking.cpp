#include "window/cooking.h"

#include <QApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <algorithm>

#include "cookalong/cook_along_view.h"
#include "cookalong/service_head.h"
#include "inspect/clock_field.h"
#include "library/book_desk.h"
#include "text/quantities.h"
#include "window/kept_lesson.h"

namespace rangeline {
namespace {

/// When plating is to be; nothing where the cook does not begin.
std::optional<QDateTime> askForServing(const Lesson& lesson, const QLocale& locale,
                                       const QDateTime& now, QWidget& window) {
    QDialog dialog(&window);
    dialog.setWindowTitle(Cooking::tr("Cook along"));
    auto* form = new QFormLayout(&dialog);
    const Clock clock(lesson.head, locale);
    const QDateTime usual = usualServing(lesson, now);
    auto* field =
        new ClockField(Cooking::tr("Plating at"), locale, ClockField::Shows::Time, &dialog);
    field->setTwelveHours(clock.twelveHours());
    field->setMoment(usual.toTimeZone(clock.moment(Instant::serving()).timeZone()));
    auto* text = new QLabel(
        Cooking::tr("Every step counts from plating. A service is kept on the disk as it goes; if "
                    "the computer stops, it goes on with the right times."),
        &dialog);
    text->setWordWrap(true);
    form->addRow(text);
    form->addRow(Cooking::tr("&Plating at"), field);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, &dialog);
    buttons->addButton(Cooking::tr("&Begin"), QDialogButtonBox::AcceptRole);
    form->addRow(buttons);
    QObject::connect(buttons, &QDialogButtonBox::accepted, &dialog, [&] {
        field->read();
        if (field->refusal().isEmpty()) {
            dialog.accept();
        }
    });
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    if (dialog.exec() != QDialog::Accepted) {
        return std::nullopt;
    }
    return field->moment(clock.moment(Instant::serving()).timeZone());
}

bool isUnfinished(const live::Service& service) {
    return std::ranges::any_of(service.works(), [](const auto& one) {
        return one.second.stage == live::Stage::Waiting || one.second.stage == live::Stage::Running;
    });
}

}  // namespace

Cooking::Cooking(const LessonDocument& document, BookDesk& desk, const QLocale& locale,
                 const live::ClockSource& clock, QWidget& window)
    : QObject(&window),
      document_(document),
      desk_(desk),
      locale_(locale),
      clock_(clock),
      window_(window) {}

Cooking::~Cooking() = default;

QString Cooking::pathWithoutBook() {
    return QFileInfo(unsavedFolder()).path() + QStringLiteral("/cooking.service");
}

QString Cooking::pathBeside(const QString& book) {
    return book + QStringLiteral(".service");
}

QString Cooking::path() const {
    return desk_.book() != nullptr && desk_.journal().lesson() ? pathBeside(desk_.book()->path())
                                                               : pathWithoutBook();
}

void Cooking::start() {
    if (view_) {
        view_->raise();
        view_->activateWindow();
        return;
    }
    auto left = live::ServiceFile::open(nameOnDisk(path()));
    if (left.ok()) {
        left.value().reset();
        offer(path());
    } else if (left.error() == live::FileFault::NotThere) {
        begin();
    } else {
        sayFault(left.error(), path());
    }
}

void Cooking::begin() {
    Lesson lesson = document_.lesson();
    lesson.head.units = document_.units();  // as it is read on the page
    if (lesson.placements.empty()) {
        Q_EMIT said(tr("Arrange the lesson first: without a plan there is nothing to follow."));
        return;
    }
    const auto serving = askForServing(lesson, locale_, QDateTime::currentDateTimeUtc(), window_);
    if (!serving) {
        return;
    }
    QDir().mkpath(QFileInfo(path()).path());
    const auto item = desk_.journal().lesson();
    auto file = live::ServiceFile::begin(
        nameOnDisk(path()), serviceHead(lesson, item ? item->number : 0, *serving, clock_));
    if (file.ok()) {
        goOn(std::move(file.value()));
    } else {
        sayFault(file.error(), path());
    }
}

void Cooking::offer(const QString& path) {
    offered_.push_back(path);
    if (isAsking_) {
        return;  // one question at a time
    }
    isAsking_ = true;
    while (!offered_.empty()) {
        const QString next = offered_.front();
        offered_.pop_front();
        if (!view_) {
            ask(next);
        }
    }
    isAsking_ = false;
}

void Cooking::ask(const QString& path) {
    auto left = live::ServiceFile::open(nameOnDisk(path));
    if (!left.ok()) {
        if (left.error() == live::FileFault::Unreadable) {
            sayFault(left.error(), path);
        }
        return;
    }
    const live::ServiceHead& head = left.value()->head();
    const auto& entries = left.value()->entries();
    if (!entries.empty() && std::holds_alternative<live::Ended>(entries.back().event)) {
        service_ = std::make_unique<CookAlong>(std::move(left.value()), clock_);
        keepInLog();
        return;
    }
    const Clock clock(head.lesson.head, locale_);
    QMessageBox question(&window_);
    question.setIcon(QMessageBox::Question);
    question.setWindowTitle(tr("Cook along"));
    question.setText(
        tr("“%1”, plating at %2, is being cooked.")
            .arg(QString::fromStdString(head.lesson.head.name), clock.at(Instant::serving())));
    question.setInformativeText(tr("Its timers have gone on. What is overdue rings now."));
    QPushButton* goOnButton = question.addButton(tr("&Go on with it"), QMessageBox::AcceptRole);
    QPushButton* drop = question.addButton(tr("&End it"), QMessageBox::DestructiveRole);
    question.addButton(tr("Ask &later"), QMessageBox::RejectRole);
    question.setDefaultButton(goOnButton);
    question.exec();
    if (question.clickedButton() == goOnButton) {
        goOn(std::move(left.value()));
    } else if (question.clickedButton() == drop) {
        service_ = std::make_unique<CookAlong>(std::move(left.value()), clock_);
        service_->end();
        keepInLog();
    }
}

void Cooking::goOn(std::unique_ptr<live::ServiceFile> file) {
    const int damaged = file->damagedLines();
    const QString copy = QString::fromStdString(file->path()) + QStringLiteral(".damaged");
    service_ = std::make_unique<CookAlong>(std::move(file), clock_);
    view_ = std::make_unique<CookAlongView>(*service_, locale_, [this] {
        QApplication::beep();
        QApplication::alert(view_.get());  // where another window is in front
    });
    connect(view_.get(), &CookAlongView::endWanted, this, &Cooking::end);
    connect(view_.get(), &CookAlongView::closed, this, [this] {
        Q_EMIT said(
            tr("The service goes on, but nothing rings while its page is closed. “Cook "
               "along” opens it again."));
        QMetaObject::invokeMethod(this, &Cooking::close, Qt::QueuedConnection);
    });
    view_->resize(window_.size());
    view_->showMaximized();
    view_->setFocus();
    service_->run();
    if (damaged > 0) {
        Q_EMIT said(tr("The end of what was kept of the service is damaged and left out: look "
                       "whether every step stands as it should. A copy is in “%1”.")
                        .arg(copy));
    }
}

void Cooking::end() {
    if (isUnfinished(service_->service()) &&
        QMessageBox::question(view_.get(), tr("End the service"),
                              tr("Some steps are not done. End the service all the same?"),
                              QMessageBox::Yes | QMessageBox::No,
                              QMessageBox::No) != QMessageBox::Yes) {
        return;
    }
    service_->end();
    keepInLog();
}

/// Whether the book that the service was begun in is open.
bool Cooking::isBookOpen() const {
    return desk_.book() != nullptr &&
           QFileInfo(pathBeside(desk_.book()->path())) ==
               QFileInfo(QString::fromStdString(service_->file().path()));
}

void Cooking::keepInLog() {
    const live::ServiceHead& head = service_->file().head();
    auto entries = logOf(head, service_->service());
    const bool hasBook = head.item > 0;
    if (hasBook && !entries.empty() && !isBookOpen()) {
        Q_EMIT said(
            tr("The service is over. Its times are kept beside the book that it was begun "
               "in, and go into the log when that is opened."));
        QMetaObject::invokeMethod(this, &Cooking::close, Qt::QueuedConnection);
        return;
    }
    if (!hasBook || entries.empty()) {
        service_->removeFile();
        Q_EMIT said(hasBook ? tr("The service is over. No step was both started and done, so "
                                 "nothing is in the log.")
                            : tr("The service is over. The lesson is in no book, so its times are "
                                 "not in a log."));
        QMetaObject::invokeMethod(this, &Cooking::close, Qt::QueuedConnection);
        return;
    }
    const auto count = static_cast<int>(entries.size());
    desk_.book()->ask(
        [id = head.id, entries = std::move(entries)](Book& book) {
            return addServiceToLog(book, id, entries);
        },
        [this, count](const std::optional<BookFault>& fault) {
            if (fault) {
                desk_.sayFault(*fault);
                Q_EMIT said(
                    tr("The times of the service are not in the log yet. They are kept "
                       "beside the book and tried again when it is opened."));
            } else {
                service_->removeFile();
                Q_EMIT said(
                    tr("The service is over. Steps whose times are now in the book’s log: %1.")
                        .arg(count));
            }
            close();
        });
}

void Cooking::close() {
    if (view_) {
        view_->disconnect(this);
        view_->close();  // the last window may go with it
    }
    view_.reset();
    service_.reset();
}

void Cooking::sayFault(live::FileFault fault, const QString& path) {
    switch (fault) {
        case live::FileFault::Elsewhere:
            Q_EMIT said(tr("This is being cooked along in another window of Rangeline."));
            return;
        case live::FileFault::Unreadable:
            Q_EMIT said(tr("What is kept of a service in “%1” cannot be read. Move the file away "
                           "to begin another one.")
                            .arg(path));
            return;
        case live::FileFault::NotThere:
        case live::FileFault::CannotWrite:
            Q_EMIT said(tr("A service cannot be kept in “%1”. Make room there, or see whether the "
                           "folder may be written.")
                            .arg(path));
            return;
    }
}

}  // namespace rangeline
