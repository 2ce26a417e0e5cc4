#pragma once
// The dishes of a lesson: to how many, how much before or after the serving time; more and fewer.

#include <QVBoxLayout>
#include <QWidget>
#include <vector>

#include "model/lesson.h"

namespace rangeline {

class ServingsForm : public QWidget {
    Q_OBJECT

  public:
    explicit ServingsForm(std::vector<Serving> servings, QWidget* parent = nullptr);

    /// As filled in; the document is not touched.
    const std::vector<Serving>& servings() const { return servings_; }
    /// Adds the dish at the end, with ids that do not clash.
    void add(const Serving& serving);

  Q_SIGNALS:
    /// Other dishes are served, or to other covers.
    void edited();
    /// Dishes of another lesson are wanted.
    void moreWanted();

  private:
    void list();
    void addRow(int number);
    QWidget* makeFigures(int number, QWidget* parent);
    void takeOut(int number);

    std::vector<Serving> servings_;
    QVBoxLayout* rows_ = nullptr;
    QWidget* list_ = nullptr;
};

}  // namespace rangeline
