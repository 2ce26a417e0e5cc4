#pragma once
// What few steps need: more than one pan or tool, attention in several parts, allergens and
// dangers, who does it how.

#include <QPushButton>
#include <QScrollArea>
#include <functional>
#include <memory>
#include <vector>

#include "model/dish.h"
#include "model/lesson.h"

namespace rangeline {

template <class T>
class FormOf;
template <class T>
class TableOf;

class MorePage : public QScrollArea {
    Q_OBJECT

  public:
    explicit MorePage(Units units, QWidget* parent = nullptr);
    ~MorePage() override;

    /// Without a step nothing can be written.
    void showStep(const Dish& dish, const std::optional<StepId>& step);

  Q_SIGNALS:
    void edited(const rangeline::Step& step);
    void dishEdited(const rangeline::Dish& dish);

  private:
    void makeTables(QWidget* inside);
    /// The change of a step that a table of such things makes.
    template <class T>
    std::function<void(std::vector<T>)> into(std::vector<T> Step::*list);
    void carryOn();

    Units units_;
    Dish dish_;
    Step step_;
    std::unique_ptr<TableOf<WareNeed>> wares_;
    std::unique_ptr<TableOf<PoolNeed>> pools_;
    std::unique_ptr<TableOf<Segment>> attention_;
    std::unique_ptr<FormOf<Step>> form_;
    QPushButton* samePan_ = nullptr;
};

}  // namespace rangeline
