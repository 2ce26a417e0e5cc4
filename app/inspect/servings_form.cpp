#include "inspect/servings_form.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>

#include "analysis/at.h"
#include "model/dish_copy.h"

namespace rangeline {
namespace {

constexpr int mostCovers = 999;
constexpr int mostMinutes = 24 * 60;
constexpr int secondsInMinute = 60;

QString nameOf(const Serving& serving) {
    return QString::fromStdString(serving.dish.name);
}

}  // namespace

ServingsForm::ServingsForm(std::vector<Serving> servings, QWidget* parent)
    : QWidget(parent), servings_(std::move(servings)), rows_(new QVBoxLayout(this)) {
    rows_->setContentsMargins(0, 0, 0, 0);
    auto* more = new QPushButton(tr("Add &dishes of another lesson ..."), this);
    more->setAutoDefault(false);
    rows_->addWidget(more, 0, Qt::AlignLeft);
    connect(more, &QPushButton::clicked, this, &ServingsForm::moreWanted);
    list();
}

void ServingsForm::list() {
    delete list_;
    list_ = new QWidget(this);
    auto* column = new QVBoxLayout(list_);
    column->setContentsMargins(0, 0, 0, 0);
    rows_->insertWidget(0, list_);
    if (servings_.empty()) {
        auto* nothing = new QLabel(tr("Nothing is served yet. A dish brings its components and "
                                      "steps along; they wait on the shelf until placed."),
                                   list_);
        nothing->setWordWrap(true);
        column->addWidget(nothing);
    }
    for (int number = 0; number < std::ssize(servings_); ++number) {
        addRow(number);
    }
}

void ServingsForm::addRow(int number) {
    const QString name = nameOf(at(servings_, number));
    auto* label = new QLabel(name, list_);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    list_->layout()->addWidget(label);
    list_->layout()->addWidget(makeFigures(number, list_));
}

QWidget* ServingsForm::makeFigures(int number, QWidget* parent) {
    Serving& serving = at(servings_, number);
    const QString name = nameOf(serving);
    auto* row = new QWidget(parent);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    auto* covers = new QSpinBox(row);
    covers->setRange(1, mostCovers);
    covers->setValue(serving.covers);
    covers->setSuffix(tr(" covers"));
    covers->setAccessibleName(tr("%1, covers").arg(name));
    auto* later = new QSpinBox(row);
    later->setRange(-mostMinutes, mostMinutes);
    later->setValue(static_cast<int>(serving.offset.inSeconds() / secondsInMinute));
    later->setSuffix(tr(" min after"));
    later->setToolTip(tr("Served so long after the lesson’s serving time; below 0: before it"));
    later->setAccessibleName(tr("%1, minutes after the serving time").arg(name));
    auto* again = new QPushButton(tr("Once more"), row);
    again->setAccessibleName(tr("%1, once more").arg(name));
    auto* out = new QPushButton(tr("Take out"), row);
    out->setAccessibleName(tr("%1, take out").arg(name));
    for (QWidget* part : std::initializer_list<QWidget*>{covers, later, again, out}) {
        layout->addWidget(part);
    }
    layout->addStretch(1);
    for (QPushButton* button : {again, out}) {
        button->setAutoDefault(false);
    }
    connect(covers, &QSpinBox::valueChanged, this, [this, number](int value) {
        at(servings_, number).covers = value;
        Q_EMIT edited();
    });
    connect(later, &QSpinBox::valueChanged, this,
            [this, number](int value) { at(servings_, number).offset = Duration::minutes(value); });
    // The rows are made anew: not while one of their buttons is still at work.
    connect(
        again, &QPushButton::clicked, this, [this, number] { add(Serving(at(servings_, number))); },
        Qt::QueuedConnection);
    connect(
        out, &QPushButton::clicked, this, [this, number] { takeOut(number); },
        Qt::QueuedConnection);
    return row;
}

void ServingsForm::add(const Serving& serving) {
    servings_.push_back({besideOthers(serving.dish, servings_), serving.covers, serving.offset});
    list();
    Q_EMIT edited();
}

void ServingsForm::takeOut(int number) {
    if (number < std::ssize(servings_)) {
        servings_.erase(servings_.begin() + number);
        list();
        Q_EMIT edited();
    }
}

}  // namespace rangeline
