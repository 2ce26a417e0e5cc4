#include "library/change_offer.h"

#include <QDialog>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QPointer>
#include <QVBoxLayout>

#include "book/library.h"
#include "library/comparison_view.h"
#include "model/dish_copy.h"
#include "model/validate.h"
#include "text/fault_text.h"
#include "text/names.h"

namespace rangeline {
namespace {

struct Changed {
    std::vector<Edit> edits;
    QStringList names;
};

/// The serving with the dish as the book has it now.
void replaceDishIn(std::vector<Serving>& servings, std::size_t number, Dish dish) {
    std::vector<Serving> others = servings;
    others.erase(others.begin() + static_cast<std::ptrdiff_t>(number));
    servings[number].dish = besideOthers(std::move(dish), others);
}

/// Nothing is offered of what cannot be read: the book says so when it is looked at there.
Changed changedSince(Book& book, ItemId id, Lesson lesson) {
    Changed changed;
    const auto outdated = outdatedParts(book, id);
    if (!outdated.ok()) {
        return changed;
    }
    if (outdated.value().kitchen) {
        auto kitchen = book.kitchen(*outdated.value().kitchen);
        if (kitchen.ok()) {
            changed.names << ChangeOffer::tr("the kitchen “%1”")
                                 .arg(QString::fromStdString(kitchen.value().name));
            changed.edits.emplace_back(SetKitchen{std::move(kitchen.value())});
        }
    }
    std::vector<Serving> servings = lesson.servings;
    for (const auto& [number, item] : outdated.value().servings) {
        auto dish = book.dish(item);
        if (dish.ok() && number < servings.size()) {
            changed.names
                << ChangeOffer::tr("the dish “%1”").arg(QString::fromStdString(dish.value().name));
            replaceDishIn(servings, number, std::move(dish.value()));
        }
    }
    if (servings != lesson.servings) {
        changed.edits.emplace_back(SetServings{servings});
        changed.edits.emplace_back(SetChoices{choicesFor(std::move(lesson.choices), servings)});
    }
    return changed;
}

}  // namespace

ChangeOffer::ChangeOffer(BookDesk& desk, const QLocale& locale, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      locale_(locale),
      text_(new QLabel(this)),
      see_(new QPushButton(tr("&See what it would do ..."), this)) {
    setFrameShape(QFrame::StyledPanel);
    text_->setWordWrap(true);
    text_->setTextFormat(Qt::PlainText);
    auto* away = new QPushButton(tr("Not now"), this);
    away->setAccessibleName(tr("Leave the lesson as it is for now"));
    auto* row = new QHBoxLayout(this);
    row->addWidget(text_, 1);
    row->addWidget(see_);
    row->addWidget(away);
    connect(see_, &QPushButton::clicked, this, &ChangeOffer::showWhat);
    connect(away, &QPushButton::clicked, this, &QWidget::hide);
    connect(&desk.document(), &LessonDocument::changed, this, [this](const LessonChange& change) {
        if (change.all || change.structure) {
            ++asked_;
            hide();
        }
    });
    hide();
}

void ChangeOffer::look() {
    const auto lesson = desk_.journal().lesson();
    const int number = ++asked_;
    hide();
    if (!lesson || !desk_.isWritable()) {
        return;
    }
    desk_.book()->ask([id = *lesson, now = desk_.document().lesson()](
                          Book& book) { return changedSince(book, id, now); },
                      [this, self = QPointer(this), number](const Changed& changed) {
                          if (self && number == asked_) {
                              offer(changed.edits, changed.names);
                          }
                      });
}

void ChangeOffer::offer(const std::vector<Edit>& edits, const QStringList& names) {
    edits_ = edits;
    const QString what = sentenceCase(listText(names));
    text_->setText(names.size() == 1
                       ? tr("%1 has changed in the book since this lesson was made.").arg(what)
                       : tr("%1 have changed in the book since this lesson was made.").arg(what));
    setAccessibleName(text_->text());
    setVisible(!edits.empty());
}

void ChangeOffer::showWhat() {
    LessonDocument& document = desk_.document();
    Lesson changed = document.lesson();
    for (const Edit& edit : edits_) {
        rangeline::apply(changed, edit);
    }
    QDialog dialog(this);
    dialog.setWindowTitle(tr("What the change would do"));
    auto* view = new ComparisonView(&dialog);
    auto* buttons = new QDialogButtonBox(&dialog);
    auto* take = buttons->addButton(tr("&Take the change"), QDialogButtonBox::AcceptRole);
    buttons->addButton(tr("&Leave the lesson as it is"), QDialogButtonBox::RejectRole);
    auto* column = new QVBoxLayout(&dialog);
    column->addWidget(view, 1);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, &dialog, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    const auto faults = validate(changed, 1);
    if (faults.empty()) {
        view->show(compare(document.lesson(), changed, locale_, document.units()), tr("as it is"),
                   tr("with the change"), locale_);
    } else {
        view->say(tr("The change cannot be taken as it is. %1").arg(sentence(faults.front())));
        take->setEnabled(false);
    }
    constexpr QSize usual(820, 480);
    dialog.resize(usual);
    if (dialog.exec() == QDialog::Accepted) {
        document.apply(edits_, tr("take the change from the book"));
        hide();
    }
}

}  // namespace rangeline
