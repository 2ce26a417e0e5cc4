#include "window/help_dialog.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QScrollArea>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>
#include <vector>

#include "window/help_looks.h"

namespace rangeline {
namespace {

struct Line {
    const char* what;  ///< empty: a heading
    const char* how;
};

// What has to be done, then by which key or movement.
constexpr Line lines[] = {
    {"", QT_TRANSLATE_NOOP("rangeline::HelpDialog", "With the mouse")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Choose a step"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Click it; Ctrl+click adds more")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Move a step"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog",
                       "Drag it along, or up and down to another burner, "
                       "slot, pan or cook")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Move without dragging"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog",
                       "Double-click it, then click where it is to go; or − and + under Chosen "
                       "step")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Place from the shelf"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Drag it onto the timeline")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "End a step that has begun"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Drag it along: only its end moves")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "See more or less time"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog",
                       "Ctrl and the wheel; Shift and the wheel goes "
                       "along")},
    {"", QT_TRANSLATE_NOOP("rangeline::HelpDialog", "On the timeline, with keys")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Go from step to step"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Arrow keys, Home, End")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Move by a minute"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog", "+ and −, or Ctrl+Left and Ctrl+Right")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "To another burner, slot, pan or cook"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Ctrl+Up and Ctrl+Down")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Take in hand, put down"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Enter; in between, the arrow keys carry it")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Put it back as it was"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Escape")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Pin, or take the pin off"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog", "P")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Back to the shelf"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Delete")},
    {"", QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Everywhere")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Arrange everything"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog",
                       "F5; Shift+F5 only the shelf; Ctrl+F5 moving "
                       "little")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Take back, do again"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Ctrl+Z, Ctrl+Shift+Z")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Closer, wider, the whole lesson"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Ctrl++, Ctrl+−, Ctrl+0")},
    {QT_TRANSLATE_NOOP("rangeline::HelpDialog", "From panel to panel"),
     QT_TRANSLATE_NOOP("rangeline::HelpDialog", "Tab, Shift+Tab")}};

QFont strong(QFont font) {
    font.setBold(true);
    return font;
}

QLabel* text(const QString& words) {
    auto* label = new QLabel(words);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setAlignment(Qt::AlignLeading | Qt::AlignTop);
    return label;
}

/// Scrolls with the keyboard where the screen is low.
QScrollArea* page(QWidget* content, const QString& name) {
    auto* area = new QScrollArea;
    area->setWidget(content);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setAccessibleName(name);
    return area;
}

QWidget* firstSteps() {
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    const QStringList steps = {
        HelpDialog::tr(
            "Open a lesson. Its lanes are the oven with its rack slots, the burners, the pans, the "
            "cooks and the sink; each block is one step, from left to right in the order of time. "
            "The line at the right is when the plates are served."),
        HelpDialog::tr("Steps that have no time yet wait on the shelf. Drag one onto a burner or "
                       "an oven slot, "
                       "or have them arranged."),
        HelpDialog::tr("Drag a block. What would collide is hatched while you drag, with the "
                       "reason beside the "
                       "pointer. Nothing is done before you let go, and Escape puts it back."),
        HelpDialog::tr(
            "Read the findings. Each leads to its place on the timeline and says what could be "
            "done; a repair can be tried out before it is made."),
        HelpDialog::tr(
            "Choose a block. What it waits for and what waits for it is linked, and Chosen step "
            "says how many minutes it has to spare. Blocks with a heavy frame decide when the "
            "plates are ready."),
        HelpDialog::tr(
            "Pin what must stay where it is, then arrange the rest. Every change can be taken "
            "back.")};
    for (qsizetype number = 0; number < steps.size(); ++number) {
        column->addWidget(text(HelpDialog::tr("%1.  %2").arg(number + 1).arg(steps[number])));
    }
    column->addStretch(1);
    return content;
}

QWidget* keysAndMouse() {
    auto* content = new QWidget;
    auto* grid = new QGridLayout(content);
    constexpr int between = 18;
    grid->setHorizontalSpacing(between);
    grid->setColumnStretch(1, 1);
    int row = 0;
    for (const Line& line : lines) {
        if (*line.what == '\0') {
            QLabel* heading = text(HelpDialog::tr(line.how));
            heading->setFont(strong(heading->font()));
            heading->setContentsMargins(0, row == 0 ? 0 : between / 2, 0, 0);
            grid->addWidget(heading, row++, 0, 1, 2);
            continue;
        }
        grid->addWidget(text(HelpDialog::tr(line.what)), row, 0);
        grid->addWidget(text(HelpDialog::tr(line.how)), row++, 1);
    }
    grid->setRowStretch(row, 1);
    return content;
}

}  // namespace

HelpDialog::HelpDialog(QWidget* parent) : QDialog(parent), pages_(new QTabWidget(this)) {
    setWindowTitle(tr("Help"));
    pages_->addTab(page(firstSteps(), tr("First steps")), tr("&First steps"));
    pages_->addTab(page(keysAndMouse(), tr("Keys and mouse")), tr("&Keys and mouse"));
    pages_->addTab(page(makeHelpOnLooks(), tr("Looks of blocks")), tr("&Looks of blocks"));
    pages_->tabBar()->setAccessibleName(tr("Pages of the help"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(pages_);
    column->addWidget(buttons);
    constexpr QSize wanted(620, 560);
    resize(wanted.boundedTo(parent == nullptr ? wanted : parent->size() - QSize(40, 60)));
}

void HelpDialog::open(Page page) {
    pages_->setCurrentIndex(static_cast<int>(page));
    show();
    raise();
    activateWindow();
}

}  // namespace rangeline
