#include "window/lesson_files.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>

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
    question.setText(tr("“%1” has changes that are not saved.")
                         .arg(QString::fromStdString(document_.lesson().head.name)));
    QPushButton* keep = question.addButton(tr("&Save them"), QMessageBox::AcceptRole);
    QPushButton* drop = question.addButton(tr("&Give them up"), QMessageBox::DestructiveRole);
    question.addButton(tr("Go &back"), QMessageBox::RejectRole);
    question.setDefaultButton(keep);
    question.exec();
    return question.clickedButton() == drop || (question.clickedButton() == keep && save());
}

QString LessonFiles::folder() const {
    return document_.path().isEmpty()
               ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
               : QFileInfo(document_.path()).absolutePath();
}

bool LessonFiles::open() {
    if (!mayLeave()) {
        return false;
    }
    const QString path = QFileDialog::getOpenFileName(&window_, tr("Open a lesson"), folder(),
                                                      tr("Lessons (*.json)"));
    return !path.isEmpty() && openFile(path);
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

bool LessonFiles::save() {
    return document_.path().isEmpty() ? saveAs() : saveTo(document_.path());
}

bool LessonFiles::saveAs() {
    const QString before =
        document_.path().isEmpty()
            ? QStringLiteral("%1/%2.json")
                  .arg(folder(), QString::fromStdString(document_.lesson().head.name))
            : document_.path();
    QFileDialog dialog(&window_, tr("Save the lesson as"), before, tr("Lessons (*.json)"));
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("json"));
    dialog.selectFile(before);
    return dialog.exec() == QDialog::Accepted && saveTo(dialog.selectedFiles().constFirst());
}

bool LessonFiles::saveTo(const QString& path) {
    if (const auto fault = document_.save(path)) {
        QMessageBox::warning(&window_, tr("The lesson was not saved"), sentence(*fault));
        return false;
    }
    recent_.add(path);
    Q_EMIT said(tr("Saved to %1").arg(QFileInfo(path).fileName()));
    return true;
}

}  // namespace rangeline
