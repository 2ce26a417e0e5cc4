#pragma once
// Chooses what of a lesson is printed and how, shows the pages as they will be, and makes one PDF
// or sends them to a printer. Needs no printer.

#include <QDialog>
#include <QLocale>
#include <QTimer>
#include <map>

#include "document/lesson_document.h"
#include "print/print_job.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QPushButton;
class QSpinBox;

namespace rangeline {

class PagePreview;

class PrintDialog : public QDialog {
    Q_OBJECT

  public:
    PrintDialog(const LessonDocument& document, const QLocale& locale, QWidget* parent = nullptr);

    /// What was said after the last thing done: "Saved to supper.pdf"; empty if nothing was.
    const QString& outcome() const { return outcome_; }
    /// Into a file; says in a message what is wrong. False if it was not saved.
    bool savePdfTo(const QString& path);

  private:
    QWidget* makeSheetList();
    QWidget* makeOptions();
    QWidget* makeButtons();
    std::vector<const Sheet*> chosenSheets() const;
    SheetSetup setup() const;
    void choicesChanged();
    /// Makes the pages of what is chosen; with a dialog to stop it where it takes long.
    void renew();
    void savePdf();
    void sendToPrinter();
    void remember() const;

    const LessonDocument& document_;
    QLocale locale_;
    std::map<const Sheet*, QCheckBox*> boxes_;
    QComboBox* paper_ = nullptr;
    QComboBox* units_ = nullptr;
    QComboBox* cook_ = nullptr;
    QSpinBox* classes_ = nullptr;
    QLabel* count_ = nullptr;
    QPushButton* save_ = nullptr;
    QPushButton* print_ = nullptr;
    PagePreview* preview_ = nullptr;
    QTimer renewing_;
    QString outcome_;
};

}  // namespace rangeline
