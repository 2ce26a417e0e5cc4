#include "window/lesson_files.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>

#include "exchange/lesson_file.h"
#include "text/fault_text.h"

namespace rangeline {

LessonFiles::LessonFiles(LessonDocument& document, QWidget& window)
    : QObject(&window), document_(document), window_(window) {}

bool LessonFiles::mayLeave() {
    if (!document_.isModified()) {
        return true;
    }
    QMessageBox question(&window_);
    question.setIcon(QMessageBox::Question);
    question.setWindowTitle(tr("Unsaved changes"));
    question.setText(tr("“%1” is in no book, and has changes that are not saved.")
                         .arg(QString::fromStdString(document_.lesson().head.name)));
    QPushButton* keep =
        question.addButton(tr("&Copy it out to a file ..."), QMessageBox::AcceptRole);
    QPushButton* drop = question.addButton(tr("&Give them up"), QMessageBox::DestructiveRole);
    question.addButton(tr("Go &back"), QMessageBox::RejectRole);
    question.setDefaultButton(keep);
    question.exec();
    return question.clickedButton() == drop || (question.clickedButton() == keep && copyOut());
}

QString LessonFiles::folder() const {
    return document_.path().isEmpty()
               ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
               : QFileInfo(document_.path()).absolutePath();
}

QString LessonFiles::ask() {
    return QFileDialog::getOpenFileName(&window_, tr("Open a book or a lesson"), folder(),
                                        tr("Books and lessons (*.rangeline *.json)"));
}

bool LessonFiles::openFile(const QString& path) {
    if (const auto fault = document_.load(path)) {
        QMessageBox::warning(
            &window_, tr("This lesson cannot be opened"),
            QStringLiteral("%1\n\n%2").arg(QFileInfo(path).fileName(), sentence(*fault)));
        return false;
    }
    recent_.add(path);
    return true;
}

bool LessonFiles::copyOut() {
    const QString before = document_.path().isEmpty()
                               ? QStringLiteral("%1/%2.json").arg(folder(), document_.nameForFile())
                               : document_.path();
    QFileDialog dialog(&window_, tr("Copy the lesson to"), before, tr("Lessons (*.json)"));
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("json"));
    dialog.selectFile(before);
    return dialog.exec() == QDialog::Accepted && copyTo(dialog.selectedFiles().constFirst());
}

bool LessonFiles::copyTo(const QString& path) {
    const auto fault = document_.isKeptByItself()
                           ? saveLesson(path.toStdString(), document_.lesson())
                           : document_.save(path);
    if (fault) {
        QMessageBox::warning(&window_, tr("The lesson was not copied"), sentence(*fault));
        return false;
    }
    recent_.add(path);
    Q_EMIT said(tr("Copied to %1").arg(QFileInfo(path).fileName()));
    return true;
}

}  // namespace rangeline
