#pragma once

#include <QListWidget>
#include <vector>

#include "writing/problems.h"

namespace rangeline {

/// All problems, one a line; as high as it once had to be, so that nothing jumps. Clicking one, or
/// Enter, leads to it.
class ProblemList : public QListWidget {
    Q_OBJECT

  public:
    explicit ProblemList(QWidget* parent = nullptr);

    void show(std::vector<Problem> problems);

  Q_SIGNALS:
    void wanted(const rangeline::Problem& problem);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void fit();
    void go(int row);

    std::vector<Problem> problems_;
    int high_ = 0;  ///< once needed at this width
};

}  // namespace rangeline
