#include "inspect/findings_panel.h"

#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "inspect/repair_text.h"
#include "inspect/severity_mark.h"
#include "inspect/wrapping_delegate.h"
#include "text/fault_text.h"
#include "text/finding_text.h"

namespace rangeline {
namespace {

constexpr int findingRole = Qt::UserRole;
constexpr int severityRole = Qt::UserRole + 2;

}  // namespace

FindingsPanel::FindingsPanel(LessonDocument& document, const QLocale& locale, QWidget* parent)
    : QWidget(parent), document_(document), locale_(locale) {
    build();
    connect(&document, &LessonDocument::changed, this, &FindingsPanel::listFindings);
    listFindings();
}

void FindingsPanel::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    pages_ = new QStackedWidget(this);
    column->addWidget(pages_);
    nothing_ = new QLabel(pages_);
    nothing_->setWordWrap(true);
    nothing_->setAlignment(Qt::AlignCenter);
    nothing_->setMargin(12);
    pages_->addWidget(nothing_);

    auto* lists = new QWidget(pages_);
    auto* layout = new QVBoxLayout(lists);
    layout->setContentsMargins(0, 0, 0, 0);
    tree_ = new WrappingTree(tr("Findings"), lists);
    layout->addWidget(tree_, 3);
    layout->addWidget(makeRepairs(), 0);
    pages_->addWidget(lists);
    connect(tree_, &QTreeWidget::currentItemChanged, this, &FindingsPanel::showChosen);
    connect(tree_, &QTreeWidget::itemActivated, this, &FindingsPanel::jump);
    connect(tree_, &QTreeWidget::itemClicked, this, &FindingsPanel::jump);
}

QWidget* FindingsPanel::makeRepairs() {
    repairPart_ = new QWidget(this);
    auto* column = new QVBoxLayout(repairPart_);
    column->setContentsMargins(8, 4, 8, 8);
    for (QLabel** label : {&hint_, &note_}) {
        *label = new QLabel(repairPart_);
        (*label)->setWordWrap(true);
        column->addWidget(*label);
    }
    repairList_ = new WrappingTree(tr("What could be done"), repairPart_);
    repairList_->setRootIsDecorated(false);
    repairList_->setMaximumHeight(110);
    column->addWidget(repairList_);
    auto* row = new QHBoxLayout;
    preview_ = new QPushButton(tr("Try it out"), repairPart_);
    preview_->setCheckable(true);
    preview_->setToolTip(tr("Shows on the timeline what would change"));
    apply_ = new QPushButton(tr("Do it"), repairPart_);
    row->addWidget(preview_);
    row->addWidget(apply_);
    column->addLayout(row);
    arrange_ = new QPushButton(tr("Arrange what is on the shelf"), repairPart_);
    arrange_->setToolTip(tr("Finds places for what is not placed yet; all else stays"));
    column->addWidget(arrange_);
    connect(arrange_, &QPushButton::clicked, this, &FindingsPanel::arrangeWanted);
    connect(preview_, &QPushButton::clicked, this, &FindingsPanel::preview);
    connect(apply_, &QPushButton::clicked, this, &FindingsPanel::applyRepair);
    connect(repairList_, &QTreeWidget::currentItemChanged, this, &FindingsPanel::preview);
    connect(repairList_, &QTreeWidget::itemActivated, this, &FindingsPanel::applyRepair);
    return repairPart_;
}

// ---- the list ----

void FindingsPanel::listFindings() {
    preview_->setChecked(false);
    Q_EMIT previewed({});
    {
        const QSignalBlocker quiet(tree_);
        tree_->clear();
        QTreeWidgetItem* group = nullptr;
        findings_ = gathered(document_.findings());
        for (int number = 0; number < std::ssize(findings_); ++number) {
            const Severity severity = findings_[static_cast<std::size_t>(number)].shown.severity;
            if (group == nullptr ||
                group->data(0, severityRole).toInt() != static_cast<int>(severity)) {
                group = addGroup(severity);
            }
            addFinding(*group, number);
        }
        tree_->expandAll();
    }
    const bool none = findings_.empty();
    nothing_->setText(document_.lesson().servings.empty()
                          ? tr("Here stands what collides, what is late and what to mind.")
                          : tr("Nothing collides, nothing is late.\n\nWhatever you move is checked "
                               "at once; what is wrong appears here, with ways to put it right."));
    pages_->setCurrentIndex(none ? 0 : 1);
    repairPart_->setVisible(false);
}

QTreeWidgetItem* FindingsPanel::addGroup(Severity severity) {
    std::ptrdiff_t count = 0;
    for (const GatheredFinding& row : findings_) {
        const bool open = severity == Severity::Open;  // there each step is one
        count += row.shown.severity != severity ? 0 : open ? std::ssize(row.parts) : 1;
    }
    auto* group = new QTreeWidgetItem(tree_);
    group->setText(
        0, tr("%1 (%2)").arg(severityText(severity), locale_.toString(static_cast<qint64>(count))));
    group->setIcon(0, severityMark(severity, palette()));
    group->setData(0, findingRole, -1);
    group->setData(0, severityRole, static_cast<int>(severity));
    return group;
}

void FindingsPanel::addFinding(QTreeWidgetItem& group, int number) {
    const Finding& finding = findings_[static_cast<std::size_t>(number)].shown;
    const TextContext text = document_.text(locale_);
    auto* item = new QTreeWidgetItem(&group);
    item->setData(0, findingRole, number);
    item->setData(0, WrappingDelegate::strongLine, title(finding));
    item->setText(0, sentence(finding, text));
    item->setData(0, Qt::AccessibleTextRole,
                  QStringLiteral("%1: %2. %3")
                      .arg(severityText(finding.severity), title(finding), item->text(0)));
}

const GatheredFinding* FindingsPanel::chosen() const {
    const QTreeWidgetItem* item = tree_->currentItem();
    const int number = item == nullptr ? -1 : item->data(0, findingRole).toInt();
    return number < 0 || number >= std::ssize(findings_)
               ? nullptr
               : &findings_[static_cast<std::size_t>(number)];
}

void FindingsPanel::chooseFor(const PlacementKey& key) {
    for (int group = 0; group < tree_->topLevelItemCount(); ++group) {
        QTreeWidgetItem* rows = tree_->topLevelItem(group);
        for (int row = 0; row < rows->childCount(); ++row) {
            const auto number = rows->child(row)->data(0, findingRole).toUInt();
            const auto& keys = findings_[number].shown.keys;
            if (std::ranges::find(keys, key) != keys.end()) {
                tree_->setCurrentItem(rows->child(row));
                return;
            }
        }
    }
}

void FindingsPanel::jump() {
    if (const GatheredFinding* finding = chosen()) {
        Q_EMIT placeWanted(finding->shown);
    }
}

// ---- what could be done ----

void FindingsPanel::showChosen() {
    const GatheredFinding* finding = chosen();
    preview_->setChecked(false);
    Q_EMIT previewed({});
    repairPart_->setVisible(finding != nullptr);
    if (finding == nullptr) {
        return;
    }
    const TextContext text = document_.text(locale_);
    hint_->setText(hint(finding->shown, text));
    const bool needsNote = needsSafetyNote({finding->shown});
    note_->setText(needsNote ? safetyNote(text.lesson.head.profile, text.lesson.kitchen.room,
                                          text.units, locale_)
                             : QString());
    note_->setVisible(needsNote);
    listRepairs(*finding);
}

void FindingsPanel::listRepairs(const GatheredFinding& finding) {
    const TextContext text = document_.text(locale_);
    repairs_.clear();
    const bool notPlaced = finding.shown.code == FindingCode::NotPlaced;
    arrange_->setVisible(notPlaced);
    // One by one is no help with many.
    const bool many = notPlaced && finding.parts.size() > 3;
    for (const Finding& part : many ? std::vector<Finding>() : finding.parts) {
        for (const Repair& repair : repairsFor(document_.state(), part)) {
            const bool known = std::ranges::any_of(
                repairs_, [&repair](const Repair& other) { return other.edit == repair.edit; });
            if (!known) {
                repairs_.push_back(repair);
            }
        }
    }
    const QSignalBlocker quiet(repairList_);
    repairList_->clear();
    for (const Repair& repair : repairs_) {
        auto* item = new QTreeWidgetItem(repairList_, {repairText(repair, text)});
        item->setToolTip(0, item->text(0));
    }
    repairList_->setCurrentItem(repairList_->topLevelItem(0));
    repairList_->setVisible(!repairs_.empty());
    apply_->setVisible(!repairs_.empty());
    preview_->setVisible(std::ranges::any_of(repairs_, [](const Repair& repair) {
        return std::holds_alternative<SetPlacements>(repair.edit);
    }));
}

void FindingsPanel::preview() {
    const int row = repairList_->indexOfTopLevelItem(repairList_->currentItem());
    const bool on = preview_->isChecked() && row >= 0 && row < std::ssize(repairs_);
    const SetPlacements* moved =
        on ? std::get_if<SetPlacements>(&repairs_[static_cast<std::size_t>(row)].edit) : nullptr;
    Q_EMIT previewed(moved != nullptr ? *moved : SetPlacements{});
}

void FindingsPanel::applyRepair() {
    const int row = repairList_->indexOfTopLevelItem(repairList_->currentItem());
    if (row < 0 || row >= std::ssize(repairs_)) {
        return;
    }
    const Repair repair = repairs_[static_cast<std::size_t>(row)];
    const QString words = repairList_->currentItem()->text(0);
    if (const auto fault = document_.apply(repair.edit, words)) {
        Q_EMIT refused(sentence(*fault));
    }
}

}  // namespace rangeline
