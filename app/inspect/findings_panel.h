#pragma once
// What is found in the open lesson, by severity; where it is, and what could be done about it.

#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QTreeWidget>
#include <vector>

#include "document/lesson_document.h"
#include "document/repairs.h"
#include "text/gathered_findings.h"

namespace rangeline {

class FindingsPanel : public QWidget {
    Q_OBJECT

  public:
    FindingsPanel(LessonDocument& document, const QLocale& locale, QWidget* parent = nullptr);

    /// Chooses the first finding about that placement, if there is one.
    void chooseFor(const PlacementKey& key);

  Q_SIGNALS:
    /// The finding's place is to be shown.
    void placeWanted(const rangeline::Finding& finding);
    /// What is not placed yet is to be arranged.
    void arrangeWanted();
    /// A repair is looked at; empty changes: no longer.
    void previewed(const rangeline::SetPlacements& edit);
    void refused(const QString& why);

  private:
    void build();
    QWidget* makeRepairs();
    void listFindings();
    QTreeWidgetItem* addGroup(Severity severity);
    void addFinding(QTreeWidgetItem& group, int row);
    const GatheredFinding* chosen() const;
    void showChosen();
    void jump();
    void listRepairs(const GatheredFinding& finding);
    void preview();
    void applyRepair();

    LessonDocument& document_;
    QLocale locale_;
    std::vector<GatheredFinding> findings_;
    std::vector<Repair> repairs_;
    QStackedWidget* pages_ = nullptr;
    QLabel* nothing_ = nullptr;
    QTreeWidget* tree_ = nullptr;
    QWidget* repairPart_ = nullptr;
    QLabel* hint_ = nullptr;
    QLabel* note_ = nullptr;
    QTreeWidget* repairList_ = nullptr;
    QPushButton* preview_ = nullptr;
    QPushButton* apply_ = nullptr;
    QPushButton* arrange_ = nullptr;
};

}  // namespace rangeline
