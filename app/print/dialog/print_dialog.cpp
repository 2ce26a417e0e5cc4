#include "print/dialog/print_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinterInfo>
#include <QProgressDialog>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include "check/check.h"
#include "print/dialog/page_preview.h"
#include "print/dialog/print_choices.h"
#include "print/dialog/print_pages.h"
#include "print/pdf_writer.h"
#include "text/fault_text.h"

namespace rangeline {
namespace {

/// Shorter work shows no progress.
constexpr int patience = 400;

QString textOf(std::string_view latin) {
    return QString::fromUtf8(latin.data(), static_cast<qsizetype>(latin.size()));
}

}  // namespace

PrintDialog::PrintDialog(const LessonDocument& document, const QLocale& locale, QWidget* parent)
    : QDialog(parent), document_(document), locale_(locale) {
    setWindowTitle(tr("Print"));
    preview_ = new PagePreview;
    auto* left = new QVBoxLayout;
    left->addWidget(makeSheetList());
    left->addWidget(makeOptions());
    left->addStretch();
    count_ = new QLabel;
    left->addWidget(count_);
    auto* top = new QHBoxLayout;
    top->addLayout(left);
    top->addWidget(preview_, 1);
    auto* all = new QVBoxLayout(this);
    all->addLayout(top, 1);
    all->addWidget(makeButtons());
    renewing_.setSingleShot(true);
    renewing_.setInterval(0);
    connect(&renewing_, &QTimer::timeout, this, &PrintDialog::renew);
    resize(900, 640);
    choicesChanged();
}

QWidget* PrintDialog::makeSheetList() {
    const PrintChoices last = PrintChoices::remembered();
    auto* group = new QGroupBox(tr("Sheets"));
    auto* layout = new QVBoxLayout(group);
    layout->setSpacing(2);
    for (const Sheet& sheet : sheets()) {
        auto* box = new QCheckBox(sheet.title());
        box->setChecked(last.sheets.contains(textOf(sheet.key)));
        connect(box, &QCheckBox::toggled, this, &PrintDialog::choicesChanged);
        layout->addWidget(box);
        boxes_[&sheet] = box;
    }
    auto* all = new QPushButton(tr("Choose all"));
    connect(all, &QPushButton::clicked, this, [this] {
        for (const auto& each : boxes_) {
            each.second->setChecked(true);
        }
    });
    layout->addSpacing(layout->spacing());
    layout->addWidget(all, 0, Qt::AlignLeft);
    return group;
}

QWidget* PrintDialog::makeOptions() {
    const Lesson& lesson = document_.lesson();
    const PrintChoices last = PrintChoices::remembered();
    auto* holder = new QWidget;
    auto* form = new QFormLayout(holder);
    form->setContentsMargins(0, 0, 0, 0);
    paper_ = new QComboBox;
    for (const PaperKind& kind : papers()) {
        paper_->addItem(textOf(kind.name));
    }
    paper_->setCurrentIndex(static_cast<int>(last.paper.value_or(usualPaper(document_.units()))));
    paper_->setAccessibleName(tr("Paper"));
    form->addRow(tr("&Paper:"), paper_);
    units_ = new QComboBox;
    units_->addItems({tr("°F, inches"), tr("°C, centimetres")});
    units_->setCurrentIndex(static_cast<int>(document_.units()));
    units_->setAccessibleName(tr("Units"));
    form->addRow(tr("&Units:"), units_);
    cook_ = new QComboBox;
    cook_->addItem(tr("everyone"));
    for (const CookId& id : lesson.head.crew) {
        const int item = cookItem(lesson.kitchen, id);
        cook_->addItem(
            QString::fromStdString(lesson.kitchen.cooks[static_cast<std::size_t>(item)].name));
    }
    cook_->setAccessibleName(tr("Work of"));
    form->addRow(tr("&Work of:"), cook_);
    classes_ = new QSpinBox;
    classes_->setRange(1, 100);
    classes_->setValue(last.classes);
    classes_->setAccessibleName(tr("Buy for classes"));
    form->addRow(tr("&Buy for classes:"), classes_);
    for (QComboBox* box : {paper_, units_, cook_}) {
        connect(box, &QComboBox::currentIndexChanged, this, &PrintDialog::choicesChanged);
    }
    connect(classes_, &QSpinBox::valueChanged, this, &PrintDialog::choicesChanged);
    return holder;
}

QWidget* PrintDialog::makeButtons() {
    auto* holder = new QWidget;
    auto* layout = new QHBoxLayout(holder);
    layout->setContentsMargins(0, 0, 0, 0);
    save_ = new QPushButton(tr("&Save as PDF ..."));
    save_->setDefault(true);
    print_ = new QPushButton(tr("P&rint ..."));
    if (QPrinterInfo::availablePrinterNames().isEmpty()) {
        auto* none = new QLabel(tr("No printer is set up on this computer."));
        layout->addWidget(none);
        print_->setAccessibleDescription(none->text());
    }
    auto* close = new QPushButton(tr("Close"));
    layout->addStretch();
    for (QPushButton* button : {save_, print_, close}) {
        layout->addWidget(button);
    }
    connect(save_, &QPushButton::clicked, this, &PrintDialog::savePdf);
    connect(print_, &QPushButton::clicked, this, &PrintDialog::sendToPrinter);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    return holder;
}

std::vector<const Sheet*> PrintDialog::chosenSheets() const {
    std::vector<const Sheet*> chosen;
    for (const Sheet& sheet : sheets()) {
        if (boxes_.at(&sheet)->isChecked()) {
            chosen.push_back(&sheet);
        }
    }
    return chosen;
}

SheetSetup PrintDialog::setup() const {
    SheetSetup setup;
    setup.layout.paper = static_cast<Paper>(paper_->currentIndex());
    setup.classes = classes_->value();
    if (cook_->currentIndex() > 0) {
        const auto index = static_cast<std::size_t>(cook_->currentIndex() - 1);
        setup.cook = document_.lesson().head.crew[index];
    }
    return setup;
}

void PrintDialog::choicesChanged() {
    renewing_.start();
}

void PrintDialog::renew() {
    const std::vector<const Sheet*> chosen = chosenSheets();
    TextContext text = document_.text(locale_);
    text.units = static_cast<Units>(units_->currentIndex());
    QProgressDialog progress(tr("Making the pages ..."), tr("Stop"), 0,
                             static_cast<int>(chosen.size()), this);
    progress.setWindowModality(Qt::WindowModal);
    progress.setMinimumDuration(patience);
    std::vector<PrintedSheet> made =
        makeSheets({document_.index(), text, document_.findings(), document_.analysis()}, chosen,
                   setup(), [&](int done) {
                       progress.setValue(done);
                       return !progress.wasCanceled();
                   });
    const bool whole = made.size() == chosen.size();
    preview_->setSheets(std::move(made));
    const int pages = pageCount(preview_->sheets());
    count_->setText(chosen.empty() ? tr("Choose a sheet.")
                    : whole        ? tr("Pages: %1").arg(pages)
                                   : tr("Stopped: not all sheets are there."));
    save_->setEnabled(pages > 0 && whole);
    print_->setEnabled(pages > 0 && whole && !QPrinterInfo::availablePrinterNames().isEmpty());
}

bool PrintDialog::savePdfTo(const QString& path) {
    const QString title = QString::fromStdString(document_.lesson().head.name);
    if (const auto fault =
            rangeline::savePdf(QFile::encodeName(path).toStdString(), preview_->sheets(), title)) {
        QMessageBox::warning(this, tr("The sheets were not saved"),
                             QStringLiteral("%1: %2").arg(path, sentence(*fault)));
        return false;
    }
    outcome_ = tr("Saved to %1").arg(QFileInfo(path).fileName());
    remember();
    return true;
}

void PrintDialog::savePdf() {
    const QString name = document_.path().isEmpty()
                             ? document_.nameForFile()
                             : QFileInfo(document_.path()).absolutePath() + u'/' +
                                   QFileInfo(document_.path()).completeBaseName();
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save the sheets to"), name + QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (!path.isEmpty() && savePdfTo(path)) {
        accept();
    }
}

void PrintDialog::sendToPrinter() {
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(QString::fromStdString(document_.lesson().head.name));
    printer.setPageLayout(setup().layout.qtLayout());
    QPrintDialog choose(&printer, this);
    choose.setOption(QAbstractPrintDialog::PrintToFile, false);
    if (choose.exec() != Accepted) {
        return;
    }
    if (!printPages(printer, preview_->sheets())) {
        QMessageBox::warning(
            this, tr("Nothing was printed"),
            tr("The printer %1 did not take the pages.").arg(printer.printerName()));
        return;
    }
    outcome_ = tr("Sent to %1").arg(printer.printerName());
    remember();
    accept();
}

void PrintDialog::remember() const {
    PrintChoices choices;
    for (const Sheet* sheet : chosenSheets()) {
        choices.sheets << textOf(sheet->key);
    }
    choices.paper = setup().layout.paper;
    choices.classes = classes_->value();
    choices.remember();
}

}  // namespace rangeline
