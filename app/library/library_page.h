#pragma once
// What the open book holds, with a search as one types.

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTabBar>
#include <QTreeWidget>
#include <optional>
#include <set>

#include "library/book_desk.h"

namespace rangeline {

class LibraryPage : public QWidget {
    Q_OBJECT

  public:
    explicit LibraryPage(BookDesk& desk, QWidget* parent = nullptr);

  Q_SIGNALS:
    void lessonWanted(rangeline::ItemId lesson);
    void newWanted(rangeline::ItemKind kind);
    void dishWanted(rangeline::ItemId dish);
    void kitchenWanted(rangeline::ItemId kitchen);
    /// The open lesson gets its name through its document, so that undo knows of it.
    void renameOpenWanted(const QString& name);

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    QWidget* makeHead();
    QWidget* makeButtons();
    void bookOpened();
    void fill();
    void fillWithFound(const std::vector<Hit>& hits);
    void addRow(const Item& item, const QString& note);
    void tidy(const std::optional<ItemId>& chosen);
    QTreeWidgetItem* rowOf(ItemId id) const;
    void showEmpty();
    void currentChanged();
    ItemKind kindListed() const;
    const Item* current() const;
    void open();
    void makeNew();
    void duplicateCurrent();
    void renameCurrent();
    void archiveCurrent();
    void deleteOrBringBack();
    void purge();
    int countDeleted() const;
    bool isShown(const Item& item) const;
    void setStateOf(ItemId id, ItemState state);

    BookDesk& desk_;
    QLabel* name_ = nullptr;
    QLineEdit* search_ = nullptr;
    QTabBar* kinds_ = nullptr;
    QCheckBox* archived_ = nullptr;
    QTreeWidget* list_ = nullptr;
    QLabel* teaching_ = nullptr;
    QPushButton* new_ = nullptr;
    QPushButton* open_ = nullptr;
    QPushButton* duplicate_ = nullptr;
    QPushButton* rename_ = nullptr;
    QPushButton* archive_ = nullptr;
    QPushButton* delete_ = nullptr;
    QPushButton* purge_ = nullptr;
    std::set<std::int64_t> justDeleted_;  ///< since the book was opened
    int asked_ = 0;                       ///< answers to earlier searches come too late
};

}  // namespace rangeline
