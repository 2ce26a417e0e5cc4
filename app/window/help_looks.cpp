#include "window/help_looks.h"

#include <QGridLayout>
#include <QLabel>
#include <QPainter>

#include "inspect/screen_palette.h"
#include "timeline/legend.h"
#include "timeline/primitives_qt.h"

namespace rangeline {
namespace {

constexpr QSize swatchSize(72, 24);
constexpr int between = 12;

/// A look as it is drawn on the timeline, light or dark as that is.
class Swatch : public QWidget {
  public:
    explicit Swatch(const LegendEntry& entry) : entry_(entry) { setFixedSize(swatchSize); }

  protected:
    void paintEvent(QPaintEvent* /*event*/) override {
        const TimelineStyle& style = TimelineStyle::screen();
        const QtFonts fonts(style, 1);
        Picture picture = {{BoxShape{.rect = rect(), .fill = Colour::Paper}, Part::Ground}};
        entry_.paint(style, QRectF(rect()).adjusted(4, 2, -4, -2), picture);
        QPainter painter(this);
        play(picture, painter, screenPalette(*this), fonts);
    }

  private:
    const LegendEntry& entry_;
};

}  // namespace

QWidget* makeHelpOnLooks() {
    auto* content = new QWidget;
    auto* grid = new QGridLayout(content);
    grid->setHorizontalSpacing(between);
    grid->setColumnStretch(1, 1);
    int row = 0;
    for (const auto& looks : {coloursOfBlocks(), looksOfBlocks(), looksOfMarks()}) {
        for (const LegendEntry& entry : looks) {
            grid->addWidget(new Swatch(entry), row, 0, Qt::AlignVCenter);
            auto* meaning = new QLabel(entry.meaning());
            meaning->setTextFormat(Qt::PlainText);
            meaning->setWordWrap(true);
            grid->addWidget(meaning, row++, 1);
        }
        grid->setRowMinimumHeight(row++, between);
    }
    grid->setRowStretch(row, 1);
    return content;
}

}  // namespace rangeline
