#include "window/reasons.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "text/explain_text.h"
#include "text/fault_text.h"

namespace rangeline {
namespace {

constexpr double secondsLimit = 20;  // for the reason, and again for what would help

}  // namespace

/// The lesson explained, with what sentences need. Stays where it is.
struct Reasons::Subject {
    Subject(Lesson asArranged, const QLocale& locale, Units units)
        : lesson(std::move(asArranged)),
          expanded(expand(lesson)),
          text{lesson, expanded, locale, units} {}

    Lesson lesson;
    Expanded expanded;
    TextContext text;
};

Reasons::Reasons(LessonDocument& document, const QLocale& locale, QWidget* parent)
    : QFrame(parent),
      document_(document),
      locale_(locale),
      title_(new QLabel(this)),
      scroll_(new QScrollArea(this)) {
    setFrameShape(QFrame::StyledPanel);
    setObjectName(QStringLiteral("reasons"));
    title_->setWordWrap(true);
    title_->setTextFormat(Qt::PlainText);
    auto* away = new QToolButton(this);
    away->setText(tr("Put away"));
    away->setAutoRaise(true);
    away->setAccessibleName(tr("Put the reasons away"));
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setAccessibleName(tr("Reasons and what would help"));
    auto* head = new QHBoxLayout;
    head->addWidget(title_, 1);
    head->addWidget(away, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->addLayout(head);
    column->addWidget(scroll_);
    connect(away, &QToolButton::clicked, this, &Reasons::putAway);
    connect(&document_, &LessonDocument::changed, this, [this](const LessonChange& change) {
        if (!change.onlyUnits) {
            putAway();
        }
    });
    connect(&job_, &ExplainJob::explained, this, &Reasons::showExplanation);
    connect(&job_, &ExplainJob::remediesFound, this, &Reasons::showRemedies);
    hide();
}

Reasons::~Reasons() = default;

/// As high as all of it, but leaving the timeline half of the window; side by side where the window
/// is wide.
void Reasons::fitHeight() {
    if (columns_ == nullptr) {
        return;
    }
    constexpr int wide = 560;
    const int width = scroll_->viewport()->width();
    columns_->setDirection(width < wide ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    columns_->invalidate();
    const int wanted = columns_->heightForWidth(width);
    const int room = window()->height() / 2 - title_->height();
    scroll_->setFixedHeight(std::clamp(wanted, 0, std::max(room, 0)));
}

void Reasons::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    fitHeight();
}

void Reasons::explain(const Lesson& asArranged, const QString& what) {
    subject_ = std::make_unique<Subject>(asArranged, locale_, document_.units());
    title_->setText(tr("%1 Looking for the reason ...").arg(what));
    auto* content = new QWidget;
    columns_ = new QBoxLayout(QBoxLayout::LeftToRight, content);
    lines_ = new QVBoxLayout;
    help_ = new QVBoxLayout;
    columns_->addLayout(lines_, 1);
    columns_->addLayout(help_, 1);
    scroll_->setWidget(content);
    scroll_->hide();
    show();
    RemedyOptions options;
    options.explain.secondsLimit = secondsLimit;
    options.helperName = tr("Helper").toStdString();
    job_.start(subject_->lesson, options);
}

QString Reasons::title() const {
    return title_->text();
}

void Reasons::putAway() {
    job_.stop();
    hide();
}

void Reasons::addLine(QVBoxLayout& column, const QString& text) {
    auto* line = new QLabel(text);
    line->setWordWrap(true);
    line->setTextFormat(Qt::PlainText);
    line->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    column.addWidget(line);
}

void Reasons::showExplanation(const Explanation& explanation) {
    title_->setText(notPossibleText(explanation));
    for (const QString& line : requirementLines(explanation.requirements, subject_->text)) {
        addLine(*lines_, tr("• %1").arg(line));
    }
    if (!explanation.requirements.empty()) {
        scroll_->show();
        addLine(*help_, tr("Looking for what would help ..."));
    }
    lines_->addStretch(1);
    QTimer::singleShot(0, this, &Reasons::fitHeight);  // once the lines have their sizes
}

void Reasons::showRemedies(const std::vector<Remedy>& remedies) {
    if (help_->count() > 0) {
        delete help_->itemAt(0)->widget();  // "Looking ..."
    }
    addLine(*help_, remedies.empty() ? tr("No single change that was tried would help.")
                                     : tr("What would help, each on its own:"));
    for (const Remedy& remedy : remedies) {
        addRemedy(remedy);
    }
    help_->addStretch(1);
    QTimer::singleShot(0, this, &Reasons::fitHeight);
}

void Reasons::addRemedy(const Remedy& remedy) {
    auto* row = new QHBoxLayout;
    auto* text = new QLabel(remedyText(remedy, subject_->text));
    text->setWordWrap(true);
    text->setTextFormat(Qt::PlainText);
    auto* button = new QPushButton(tr("Do this"));
    button->setAccessibleName(sentenceCase(remedyName(remedy, subject_->text)));
    row->addWidget(button, 0, Qt::AlignTop);
    row->addWidget(text, 1);
    help_->addLayout(row);
    connect(
        button, &QPushButton::clicked, this, [this, remedy] { make(remedy); },
        Qt::QueuedConnection);
}

Edit Reasons::withOwnPins(Edit edit) const {
    if (auto* moved = std::get_if<SetPlacements>(&edit)) {
        for (PlacementChange& change : moved->changes) {
            const auto own = document_.lesson().placements.find(change.key);
            if (own != document_.lesson().placements.end() && change.placement) {
                const bool before = subject_->lesson.placements.at(change.key).pinned;
                change.placement->pinned = own->second.pinned && change.placement->pinned == before;
            }
        }
    }
    return edit;
}

void Reasons::make(const Remedy& remedy) {
    const QString name = remedyName(remedy, subject_->text);
    std::vector<Edit> edits;
    for (const Edit& edit : remedy.edits) {
        edits.push_back(withOwnPins(edit));
    }
    if (const auto fault = document_.apply(std::move(edits), name)) {
        Q_EMIT refused(sentence(*fault));
    } else {
        Q_EMIT made();
    }
}

}  // namespace rangeline
