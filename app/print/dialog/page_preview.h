#pragma once
// The pages as they come out of the printer, one below the other.

#include <QAbstractScrollArea>
#include <vector>

#include "print/print_job.h"

namespace rangeline {

class PagePreview : public QAbstractScrollArea {
    Q_OBJECT

  public:
    explicit PagePreview(QWidget* parent = nullptr);

    void setSheets(std::vector<PrintedSheet> sheets);
    const std::vector<PrintedSheet>& sheets() const { return sheets_; }
    QSize sizeHint() const override { return {520, 560}; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    struct Page {
        std::size_t sheet = 0;
        std::size_t page = 0;
        QRectF rect;  ///< in the whole picture, in pixels
    };
    void layOut();

    std::vector<PrintedSheet> sheets_;
    std::vector<Page> pages_;
};

}  // namespace rangeline
