#include <QCoreApplication>
#include <algorithm>

#include "timeline/paint_help.h"

namespace rangeline {
namespace {

constexpr double gapBetweenRows = 1;

/// In the lane of what is washed or turned on, that need not be named again.
QString nameOf(const TimelineItem& item, BlockKind block, LaneKind lane) {
    if (block == BlockKind::Wash && lane == LaneKind::Ware) {
        return QCoreApplication::translate("Timeline", "wash");
    }
    if (block == BlockKind::TurnOn && lane == LaneKind::OvenHeat) {
        return QCoreApplication::translate("Timeline", "turn on");
    }
    return item.name;
}

/// Paints one block: ground, state, marks, then its number and name where there is room.
class BlockPainter {
  public:
    BlockPainter(const PaintJob& job, const BlockBox& box, Picture& out)
        : job_(job),
          style_(job.style),
          box_(box),
          block_(job.model.blocks[static_cast<std::size_t>(box.block)]),
          item_(job.model.items[static_cast<std::size_t>(block_.item)]),
          lane_(job.model.lanes[static_cast<std::size_t>(block_.lane)]),
          rect_(box.rect.adjusted(0, gapBetweenRows / 2, 0, -gapBetweenRows / 2)),
          part_(block_.main ? Part::MainBlock : Part::EchoBlock),
          out_(out),
          number_(job.style.numbers ? QString::number(item_.number) : QString()),
          name_(nameOf(item_, block_.kind, lane_.kind)),
          numberWidth_(width(FontRole::BlockStrong, number_)) {}

    void run() {
        if (rect_.width() <= 0) {
            paintEvent();
        } else {
            paintGround();
            paintState();
            paintBegun();
            paintMarks();
        }
        paintTexts();
    }

  private:
    void add(const BoxShape& box) { out_.push_back({box, part_, box_.block}); }

    void paintEvent() {
        const double size = std::min(style_.markSize, rect_.height());
        const QRectF& plot = job_.layout.plot;
        const double left = std::clamp(rect_.left() - size / 2, plot.left(), plot.right() - size);
        const QRectF box(left, rect_.center().y() - size / 2, size, size);
        const Colour colour = item_.collides ? Colour::Collision : Colour::Ink;
        out_.push_back({MarkShape{Mark::Event, box, colour}, part_, box_.block});
        rect_ = box;
    }

    /// The whole block's box; what is done in it decides ground and edge.
    BoxShape groundBox() const {
        BoxShape box;
        box.rect = rect_;
        box.outline = Colour::Outline;
        box.outlineWidth = style_.thinLine;
        box.fill = block_.main ? fillOf(lane_.kind) : Colour::PaleFill;
        if (block_.kind == BlockKind::Waiting) {
            makeWaiting(box);
        } else if (block_.kind == BlockKind::TurnOn || block_.kind == BlockKind::ChangeOver) {
            box.fill = Colour::PaleFill;
            box.pattern = Pattern::Levels;
            box.patternColour = Colour::GridStrong;
        } else if (block_.kind == BlockKind::Wash) {
            box.fill = Colour::PaleFill;
        }
        return box;
    }

    static void makeWaiting(BoxShape& box) {
        box.fill = Colour::PaleFill;
        box.pattern = Pattern::Dots;
        box.patternColour = Colour::Outline;
        box.stroke = Stroke::Dotted;
    }

    void paintGround() {
        if (block_.segments.empty()) {
            add(groundBox());
            return;
        }
        bool slivers = false;
        for (const BlockSegment& segment : block_.segments) {
            const Interval seen = intersection(segment.interval, job_.layout.window);
            if (!seen.empty()) {
                const Extent extent = job_.layout.scale.snapped(seen);
                paintSegment(segment.attention, extent);
                slivers = slivers || isSliver(extent.width());
            }
        }
        // Slivers have no edges of their own: one goes round all of them.
        if (block_.segments.size() > 1 && slivers) {
            BoxShape edge;
            edge.rect = rect_;
            edge.outline = Colour::Outline;
            edge.outlineWidth = style_.thinLine;
            add(edge);
        }
    }

    /// So narrow that edges of its own would hide what is in it.
    bool isSliver(double width) const { return width < 2 * style_.inset; }

    void paintSegment(Attention attention, const Extent& extent) {
        BoxShape box;
        box.rect = QRectF(extent.begin, rect_.top(), extent.width(), rect_.height());
        box.outline = Colour::Outline;
        box.outlineWidth = style_.thinLine;
        box.fill = Colour::CookFill;
        if (attention == Attention::Watch) {
            box.fill = Colour::PaleFill;
            box.stroke = Stroke::Dashed;
        } else if (attention == Attention::Away) {
            makeWaiting(box);
        }
        if (block_.segments.size() > 1 && isSliver(extent.width())) {
            box.outline = Colour::None;
            box.pattern = Pattern::None;
        }
        add(box);
    }

    void paintState() {
        BoxShape box;
        box.rect = rect_;
        if (item_.collides && block_.kind != BlockKind::Waiting) {
            box.pattern = Pattern::Hatch;
            box.patternColour = Colour::Collision;
            box.outline = Colour::Collision;
            box.outlineWidth = style_.thinLine;
            add(box);
        }
        const bool shown = block_.main || lane_.kind == LaneKind::Cook;
        if (item_.decides && shown && block_.kind != BlockKind::Waiting) {
            box.pattern = Pattern::None;
            box.outline = Colour::Heavy;
            box.outlineWidth = style_.heavyLine;
            isSliver(rect_.width()) ? addRails(box) : add(box);
        }
    }

    /// The frame without its sides, which would leave a sliver no ground.
    void addRails(BoxShape frame) {
        frame.fill = frame.outline;
        frame.outline = Colour::None;
        frame.rect.setHeight(frame.outlineWidth);
        add(frame);
        frame.rect.moveBottom(rect_.bottom());
        add(frame);
    }

    /// What has begun is fast at its left end.
    void paintBegun() {
        if (item_.begun && block_.main) {
            BoxShape bar;
            bar.rect = QRectF(rect_.left(), rect_.top(),
                              std::min(1.5 * style_.heavyLine, rect_.width()), rect_.height());
            bar.fill = Colour::Heavy;
            add(bar);
        }
    }

    void paintMark(Mark mark, double left, Colour colour) {
        const double size = style_.markSize;
        const QRectF box(left, rect_.center().y() - size / 2, size, size);
        if (item_.collides) {
            BoxShape plate;
            plate.rect = box.adjusted(-1, -1, 1, 1);
            plate.fill = Colour::PaleFill;
            add(plate);
        }
        out_.push_back({MarkShape{mark, box, colour}, part_, box_.block});
    }

    /// Marks stand at the ends of the block, as long as its number keeps its room: where it comes
    /// from before the window at the left, the rest at the right.
    void paintMarks() {
        const double step = style_.markSize + style_.inset / 2;
        double spare = rect_.width() - numberWidth_ - 2 * style_.inset;
        textLeft_ = style_.inset;
        textRight_ = style_.inset;
        if (box_.cutLeft && spare >= step) {
            paintMark(Mark::ContinuesLeft, rect_.left() + style_.inset / 2, Colour::Ink);
            textLeft_ += style_.markSize;
            spare -= step;
        }
        const auto fromRight = [&](bool wanted, Mark mark, Colour colour) {
            if (wanted && spare >= step) {
                textRight_ += step;
                spare -= step;
                paintMark(mark, rect_.right() - textRight_ + style_.inset / 2, colour);
            }
        };
        fromRight(box_.cutRight, Mark::ContinuesRight, Colour::Ink);
        fromRight(item_.pinned && block_.main, Mark::Pin, Colour::Ink);
        fromRight(item_.collides && block_.main, Mark::Warning, Colour::Collision);
    }

    double width(FontRole font, const QString& text) const {
        return text.isEmpty() ? 0 : job_.measure.width(font, text);
    }

    void paintTexts() {
        if (block_.kind == BlockKind::Waiting || block_.kind == BlockKind::ChangeOver) {
            return;
        }
        double inside = rect_.width() - textLeft_ - textRight_;
        if (lane_.kind == LaneKind::OvenHeat) {
            inside *= 0.85;  // the rising line takes the rest
        }
        const double gap = number_.isEmpty() ? 0 : style_.inset;
        const QString name =
            job_.measure.fitted(FontRole::Block, name_, inside - numberWidth_ - gap);
        const bool isEvent = box_.rect.width() <= 0;
        if (isEvent || inside < numberWidth_) {
            paintNarrow(isEvent, gap);
            return;
        }
        const QString beside = job_.measure.fitted(FontRole::Block, name_, roomBeside());
        if (name == name_ || beside.size() <= name.size()) {
            paintInside(number_, name, numberWidth_ + gap);
        } else {
            paintInside(number_, QString(), 0);
            paintBeside(QString(), beside);
        }
    }

    /// The number in the middle of the block if it is just wide enough, else beside it.
    void paintNarrow(bool isEvent, double gap) {
        if (!isEvent && rect_.width() >= numberWidth_ + 2 * style_.heavyLine) {
            textLeft_ = (rect_.width() - numberWidth_) / 2;
            paintInside(number_, QString(), 0);
            paintBeside(QString(), job_.measure.fitted(FontRole::Block, name_, roomBeside()));
        } else if (isLookedFor()) {
            paintBeside(number_, job_.measure.fitted(FontRole::Block, name_,
                                                     roomBeside() - numberWidth_ - gap));
        }
    }

    /// Whether a cook looks for the block here, so that the layout keeps room beside it.
    bool isLookedFor() const {
        return lane_.kind == LaneKind::Cook || (block_.main && lane_.kind != LaneKind::OvenHeat);
    }

    double roomBeside() const {
        return isLookedFor() ? box_.freeRight - rect_.right() - 2 * style_.inset : 0;
    }

    QRectF textRow() const {
        if (lane_.kind == LaneKind::OvenHeat) {
            return QRectF(rect_.left(), rect_.top(), rect_.width(),
                          job_.measure.lineHeight(FontRole::BlockStrong));
        }
        return rect_;
    }

    void paintInside(const QString& number, const QString& name, double nameOffset) {
        const QRectF row = textRow().adjusted(textLeft_, 0, 0, 0);
        const double used = name.isEmpty() ? width(FontRole::BlockStrong, number)
                                           : nameOffset + width(FontRole::Block, name);
        if (hasTexture() && used > 0) {
            paintPlate(row, used);
        }
        addText(job_.measure, out_, part_, box_.block,
                {number, {}, FontRole::BlockStrong, Colour::Ink}, row);
        addText(job_.measure, out_, part_, box_.block, {name, {}, FontRole::Block, Colour::Ink},
                row.adjusted(nameOffset, 0, 0, 0));
    }

    /// Whether the block's ground makes its text hard to read.
    bool hasTexture() const {
        return item_.collides || block_.segments.size() > 1 || lane_.kind == LaneKind::OvenHeat;
    }

    /// Plain ground below the text of such a block.
    void paintPlate(const QRectF& row, double textWidth) {
        const double height =
            std::min(job_.measure.lineHeight(FontRole::Block), row.height() - 2 * style_.heavyLine);
        BoxShape plate;
        plate.rect = QRectF(row.left() - 1, row.center().y() - height / 2, textWidth + 2, height);
        const bool filled =
            block_.main && block_.kind == BlockKind::Work && block_.segments.empty();
        plate.fill = filled ? fillOf(lane_.kind) : Colour::PaleFill;
        add(plate);
    }

    void paintBeside(const QString& number, const QString& name) {
        QRectF row = textRow();
        row.moveLeft(rect_.right() + style_.inset * 0.6);
        addText(job_.measure, out_, part_, box_.block,
                {number, {}, FontRole::BlockStrong, Colour::Ink}, row);
        const double offset =
            number.isEmpty() ? 0 : width(FontRole::BlockStrong, number) + style_.inset;
        addText(job_.measure, out_, part_, box_.block, {name, {}, FontRole::Block, Colour::Ink},
                row.adjusted(offset, 0, 0, 0));
    }

    const PaintJob& job_;
    const TimelineStyle& style_;
    const BlockBox& box_;
    const TimelineBlock& block_;
    const TimelineItem& item_;
    const Lane& lane_;
    QRectF rect_;
    Part part_;
    Picture& out_;
    QString number_;
    QString name_;
    double numberWidth_;
    double textLeft_ = 0;
    double textRight_ = 0;
};

}  // namespace

void paintBlock(const PaintJob& job, const BlockBox& box, Picture& out) {
    BlockPainter(job, box, out).run();
}

}  // namespace rangeline
