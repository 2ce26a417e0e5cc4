#include "window/lesson_export.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>

#include "exchange/safe_write.h"
#include "export/exports.h"
#include "text/fault_text.h"

namespace rangeline {
namespace {

class LessonExport {
    Q_DECLARE_TR_FUNCTIONS(LessonExport)
};

QString textOf(std::string_view latin) {
    return QString::fromUtf8(latin.data(), static_cast<qsizetype>(latin.size()));
}

QString filterOf(const Export& each) {
    return QStringLiteral("%1 (*%2)").arg(each.title(), textOf(each.ending));
}

/// With the ending of the chosen filter where the name has none that is known.
QString withEnding(const QString& path, const QString& filter) {
    if (exportFor(path) != nullptr) {
        return path;
    }
    for (const Export& each : exports()) {
        if (filter == filterOf(each)) {
            return path + textOf(each.ending);
        }
    }
    return path + textOf(exports().front().ending);
}

}  // namespace

std::optional<Fault> exportTo(const QString& path, const LessonDocument& document,
                              const QLocale& locale) {
    const TextContext text = document.text(locale);
    const auto made =
        exportFor(path)->make({document.index(), text, document.findings(), document.analysis()},
                              {QDateTime::currentSecsSinceEpoch()});
    return made.ok() ? writeFile(QFile::encodeName(path).toStdString(), made.value())
                     : std::optional<Fault>(made.error());
}

QString exportLesson(const LessonDocument& document, const QLocale& locale, QWidget* parent) {
    QStringList filters;
    for (const Export& each : exports()) {
        filters << filterOf(each);
    }
    const QString name = document.path().isEmpty()
                             ? document.nameForFile()
                             : QFileInfo(document.path()).absolutePath() + u'/' +
                                   QFileInfo(document.path()).completeBaseName();
    QString filter;
    const QString chosen =
        QFileDialog::getSaveFileName(parent, LessonExport::tr("Save for another program"), name,
                                     filters.join(QStringLiteral(";;")), &filter);
    if (chosen.isEmpty()) {
        return {};
    }
    const QString path = withEnding(chosen, filter);
    if (path != chosen && QFileInfo::exists(path) &&
        QMessageBox::question(parent, LessonExport::tr("Save for another program"),
                              LessonExport::tr("“%1” is there already. Replace it?")
                                  .arg(QFileInfo(path).fileName())) != QMessageBox::Yes) {
        return {};
    }
    if (const auto fault = exportTo(path, document, locale)) {
        QMessageBox::warning(parent, LessonExport::tr("The lesson was not written"),
                             QStringLiteral("%1: %2").arg(path, sentence(*fault)));
        return {};
    }
    return LessonExport::tr("Written to %1").arg(QFileInfo(path).fileName());
}

}  // namespace rangeline
