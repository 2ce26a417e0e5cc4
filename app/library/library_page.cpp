#include "library/library_page.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QInputDialog>
#include <QMessageBox>
#include <QVBoxLayout>
#include <algorithm>

#include "book/library.h"

namespace rangeline {
namespace {

ItemId idOf(const QTreeWidgetItem& row) {
    return {row.data(0, Qt::UserRole).toLongLong()};
}

constexpr int usualWidth = 900;
constexpr ItemKind kindsShown[] = {ItemKind::Lesson, ItemKind::Dish, ItemKind::Kitchen};

QString placeFound(const Hit& hit) {
    const QString text = QString::fromStdString(hit.text);
    switch (hit.in) {
        case FoundIn::Name:
            break;
        case FoundIn::Ingredient:
            return LibraryPage::tr("ingredient: %1").arg(text);
        case FoundIn::Technique:
            return LibraryPage::tr("technique: %1").arg(text);
        case FoundIn::Cue:
            return LibraryPage::tr("cue: %1").arg(text);
    }
    return {};
}

QString kindText(ItemKind kind) {
    return kind == ItemKind::Lesson ? LibraryPage::tr("lesson")
           : kind == ItemKind::Dish ? LibraryPage::tr("dish")
                                    : LibraryPage::tr("kitchen");
}

QString newText(ItemKind kind) {
    return kind == ItemKind::Lesson ? LibraryPage::tr("New &lesson ...")
           : kind == ItemKind::Dish ? LibraryPage::tr("&Write a dish ...")
                                    : LibraryPage::tr("&Write down a kitchen ...");
}

}  // namespace

LibraryPage::LibraryPage(BookDesk& desk, QWidget* parent)
    : QWidget(parent), desk_(desk), list_(new QTreeWidget(this)), teaching_(new QLabel(this)) {
    auto* column = new QVBoxLayout(this);
    column->addWidget(makeHead());
    teaching_->setWordWrap(true);
    teaching_->setAlignment(Qt::AlignCenter);
    list_->setAccessibleName(tr("What the book holds"));
    auto* row = new QHBoxLayout;
    row->addWidget(list_, 1);
    row->addWidget(teaching_, 1);
    row->addWidget(makeButtons());
    column->addLayout(row, 1);
    list_->setRootIsDecorated(false);
    list_->setUniformRowHeights(true);
    list_->setAllColumnsShowFocus(true);
    list_->header()->setStretchLastSection(true);
    constexpr double fractionOfNames = 0.6;
    list_->header()->resizeSection(0, static_cast<int>(fractionOfNames * usualWidth));
    connect(list_, &QTreeWidget::itemActivated, this, &LibraryPage::open);
    connect(list_, &QTreeWidget::currentItemChanged, this, &LibraryPage::currentChanged);
    connect(&desk, &BookDesk::bookOpened, this, &LibraryPage::bookOpened);
    connect(&desk, &BookDesk::stateChanged, this,
            [this] { desk_.book() == nullptr ? fill() : currentChanged(); });
}

QWidget* LibraryPage::makeHead() {
    auto* head = new QWidget(this);
    auto* column = new QVBoxLayout(head);
    column->setContentsMargins(0, 0, 0, 0);
    name_ = new QLabel(head);
    QFont large = name_->font();
    constexpr double larger = 1.4;
    large.setPointSizeF(large.pointSizeF() * larger);
    name_->setFont(large);
    search_ = new QLineEdit(head);
    search_->setClearButtonEnabled(true);
    search_->setPlaceholderText(tr("Search names, ingredients, techniques and cues"));
    search_->setAccessibleName(tr("Search the book"));
    kinds_ = new QTabBar(head);
    kinds_->setAccessibleName(tr("What is listed"));
    for (const QString& name : {tr("L&essons"), tr("&Dishes"), tr("&Kitchens")}) {
        kinds_->addTab(name);
    }
    archived_ = new QCheckBox(tr("Show what is arch&ived or deleted, too"), head);
    auto* row = new QHBoxLayout;
    row->addWidget(kinds_);
    row->addStretch(1);
    row->addWidget(archived_);
    column->addWidget(name_);
    column->addWidget(search_);
    column->addLayout(row);
    connect(search_, &QLineEdit::textChanged, this, &LibraryPage::fill);
    connect(kinds_, &QTabBar::currentChanged, this, &LibraryPage::fill);
    connect(archived_, &QCheckBox::toggled, this, &LibraryPage::fill);
    return head;
}

QWidget* LibraryPage::makeButtons() {
    auto* box = new QWidget(this);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& text, void (LibraryPage::*act)()) {
        auto* button = new QPushButton(text, box);
        connect(button, &QPushButton::clicked, this, act);
        column->addWidget(button);
        return button;
    };
    new_ = add({}, &LibraryPage::makeNew);
    for (const ItemKind kind : kindsShown) {
        new_->setText(newText(kind));
        new_->setMinimumWidth(std::max(new_->minimumWidth(), new_->sizeHint().width()));
    }
    new_->setText(newText(kindListed()));
    open_ = add(tr("&Open"), &LibraryPage::open);
    duplicate_ = add(tr("D&uplicate"), &LibraryPage::duplicateCurrent);
    rename_ = add(tr("&Rename ..."), &LibraryPage::renameCurrent);
    archive_ = add(tr("Archi&ve"), &LibraryPage::archiveCurrent);
    delete_ = add(tr("Dele&te"), &LibraryPage::deleteOrBringBack);
    purge_ = add(tr("Delete &for good ..."), &LibraryPage::purge);
    purge_->setToolTip(tr("Takes all that was deleted out of the book"));
    column->addStretch(1);
    return box;
}

// ---- what is shown ----

void LibraryPage::bookOpened() {
    connect(desk_.book(), &OpenBook::itemsChanged, this, &LibraryPage::fill);
    name_->setText(QFileInfo(desk_.book()->path()).completeBaseName());
    name_->setToolTip(desk_.book()->path());
    justDeleted_.clear();
    search_->clear();
    fill();
}

void LibraryPage::fill() {
    const int number = ++asked_;
    if (desk_.book() == nullptr) {
        list_->clear();
        name_->clear();
        tidy({});
        return;
    }
    if (const QString words = search_->text().trimmed(); !words.isEmpty()) {
        desk_.book()->find(words, [this, number](const std::vector<Hit>& hits) {
            if (number == asked_) {
                fillWithFound(hits);
            }
        });
        return;
    }
    const Item* before = current();
    const std::optional<ItemId> chosen = before ? std::optional(before->id) : std::nullopt;
    list_->clear();
    const ItemKind kind = kindListed();
    for (const Item& item : desk_.book()->items()) {
        if (item.kind == kind && isShown(item)) {
            addRow(item, item.state == ItemState::Archived  ? tr("archived")
                         : item.state == ItemState::Deleted ? tr("deleted")
                                                            : QString());
        }
    }
    tidy(chosen);
}

/// What was deleted just now can still be seen, to be brought back.
bool LibraryPage::isShown(const Item& item) const {
    return item.state == ItemState::InUse || archived_->isChecked() ||
           (item.state == ItemState::Deleted && justDeleted_.contains(item.id.number));
}

void LibraryPage::fillWithFound(const std::vector<Hit>& hits) {
    list_->clear();
    for (const Hit& hit : hits) {
        const Item* item = desk_.book()->item(hit.item);
        if (item != nullptr && isShown(*item)) {
            const QString place = placeFound(hit);
            addRow(*item, place.isEmpty() ? kindText(item->kind)
                                          : kindText(item->kind) + QStringLiteral(", ") + place);
        }
    }
    tidy({});
}

void LibraryPage::addRow(const Item& item, const QString& note) {
    auto* row = new QTreeWidgetItem(list_, {QString::fromStdString(item.name), note});
    row->setData(0, Qt::UserRole, static_cast<qlonglong>(item.id.number));
    row->setToolTip(0, row->text(0));
    row->setToolTip(1, note);
}

/// The list is filled: chooses in it, and says something where it is empty.
void LibraryPage::tidy(const std::optional<ItemId>& chosen) {
    const bool searching = !search_->text().trimmed().isEmpty();
    list_->setHeaderLabels({tr("Name"), searching ? tr("Found as") : tr("To know")});
    list_->setColumnHidden(1, !searching && !archived_->isChecked() && justDeleted_.empty());
    QTreeWidgetItem* row = chosen ? rowOf(*chosen) : nullptr;
    list_->setCurrentItem(row != nullptr ? row : list_->topLevelItem(0));
    kinds_->setEnabled(!searching);
    showEmpty();
    currentChanged();
}

QTreeWidgetItem* LibraryPage::rowOf(ItemId id) const {
    for (int number = 0; number < list_->topLevelItemCount(); ++number) {
        if (idOf(*list_->topLevelItem(number)) == id) {
            return list_->topLevelItem(number);
        }
    }
    return nullptr;
}

/// Who comes from a lesson finds it chosen.
void LibraryPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    const auto lesson = desk_.journal().lesson();
    if (QTreeWidgetItem* row = lesson ? rowOf(*lesson) : nullptr; row != nullptr) {
        list_->setCurrentItem(row);
    }
}

void LibraryPage::showEmpty() {
    const bool empty = list_->topLevelItemCount() == 0;
    QString text = tr("Nothing in the book has these words.");
    if (search_->text().trimmed().isEmpty()) {
        text =
            kinds_->currentIndex() == 0
                ? tr("No lesson is here yet. Make one of dishes and a kitchen of this book with "
                     "“New lesson”, or open a lesson from a file: it is copied into the book, "
                     "with its kitchen and its dishes, and its file stays as it is.")
                : tr("Nothing is here yet. Open a lesson from a file: its kitchen and its dishes "
                     "come into the book with it.");
    }
    teaching_->setText(text);
    teaching_->setVisible(empty);
    list_->setVisible(!empty);
}

ItemKind LibraryPage::kindListed() const {
    return kindsShown[std::max(0, kinds_->currentIndex())];
}

const Item* LibraryPage::current() const {
    const QTreeWidgetItem* row = list_->currentItem();
    return row == nullptr || desk_.book() == nullptr ? nullptr : desk_.book()->item(idOf(*row));
}

void LibraryPage::currentChanged() {
    const Item* item = current();
    const bool deleted = item != nullptr && item->state == ItemState::Deleted;
    const bool writable = item != nullptr && desk_.isWritable();
    new_->setText(newText(kindListed()));
    new_->setEnabled(desk_.isWritable());
    open_->setEnabled(item != nullptr && !deleted && (item->kind == ItemKind::Lesson || writable));
    for (QPushButton* button : {duplicate_, rename_, archive_}) {
        button->setEnabled(writable && !deleted);
    }
    delete_->setEnabled(writable);
    delete_->setText(deleted ? tr("Brin&g back") : tr("Dele&te"));
    purge_->setVisible(archived_->isChecked());
    purge_->setEnabled(desk_.isWritable() && countDeleted() > 0);
    const bool archived = item != nullptr && item->state == ItemState::Archived;
    archive_->setText(archived ? tr("Back from the archi&ve") : tr("Archi&ve"));
}

// ---- what is done ----

void LibraryPage::open() {
    const Item* item = current();
    if (item != nullptr && item->state == ItemState::Deleted) {
        return;
    }
    if (item != nullptr && item->kind == ItemKind::Lesson) {
        Q_EMIT lessonWanted(item->id);
    } else if (item != nullptr && item->kind == ItemKind::Dish && desk_.isWritable()) {
        Q_EMIT dishWanted(item->id);
    } else if (item != nullptr && item->kind == ItemKind::Kitchen && desk_.isWritable()) {
        Q_EMIT kitchenWanted(item->id);
    }
}

void LibraryPage::makeNew() {
    Q_EMIT newWanted(kindListed());
}

void LibraryPage::duplicateCurrent() {
    const Item item = *current();
    const std::string name = tr("%1 (copy)").arg(QString::fromStdString(item.name)).toStdString();
    desk_.change([item, name](Book& book) -> std::optional<BookFault> {
        const auto copy = duplicate(book, item.id, name);
        return copy.ok() ? std::nullopt : std::optional(copy.error());
    });
}

void LibraryPage::renameCurrent() {
    const Item item = *current();
    bool given = false;
    const QString name =
        QInputDialog::getText(this, tr("Rename"), tr("New name"), QLineEdit::Normal,
                              QString::fromStdString(item.name), &given)
            .trimmed();
    if (!given || name.isEmpty()) {
        return;
    }
    if (desk_.journal().lesson() == item.id) {
        Q_EMIT renameOpenWanted(name);
        return;
    }
    desk_.change(
        [id = item.id, name = name.toStdString()](Book& book) { return rename(book, id, name); });
}

void LibraryPage::setStateOf(ItemId id, ItemState state) {
    desk_.change([id, state](Book& book) { return setState(book, id, state); });
}

void LibraryPage::archiveCurrent() {
    const Item* item = current();
    setStateOf(item->id,
               item->state == ItemState::Archived ? ItemState::InUse : ItemState::Archived);
}

int LibraryPage::countDeleted() const {
    return desk_.book() == nullptr ? 0
                                   : static_cast<int>(std::ranges::count(
                                         desk_.book()->items(), ItemState::Deleted, &Item::state));
}

void LibraryPage::purge() {
    const auto lesson = desk_.journal().lesson();
    const Item* open = lesson ? desk_.book()->item(*lesson) : nullptr;
    if (open != nullptr && open->state == ItemState::Deleted) {
        Q_EMIT desk_.said(tr("The open lesson is one of those: bring it back or open another."));
        return;
    }
    const auto answer = QMessageBox::question(
        this, tr("Delete for good"),
        tr("What was deleted in this book (%1) cannot be brought back then. Delete it for good?")
            .arg(countDeleted()));
    if (answer == QMessageBox::Yes) {
        justDeleted_.clear();
        desk_.change([](Book& book) { return purgeDeleted(book); });
    }
}

void LibraryPage::deleteOrBringBack() {
    const Item* item = current();
    const bool deleted = item->state == ItemState::Deleted;
    if (!deleted) {
        justDeleted_.insert(item->id.number);
    }
    setStateOf(item->id, deleted ? ItemState::InUse : ItemState::Deleted);
}

}  // namespace rangeline
