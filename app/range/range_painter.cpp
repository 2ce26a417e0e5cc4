#include "range/range_painter.h"

#include <QCoreApplication>
#include <algorithm>

#include "timeline/place_text.h"

namespace rangeline {
namespace {

constexpr double gap = 8;
constexpr double inset = 4;
constexpr double thin = 1;
constexpr double heavy = 2;
constexpr double mostSpread = 2;

struct Text {
    Q_DECLARE_TR_FUNCTIONS(RangePicture)
};

class RangePainter {
  public:
    RangePainter(const RangeScene& scene, const TextMeasure& measure)
        : scene_(scene), measure_(measure) {}

    RangePicture run(const QRectF& frame) {
        QRectF rest = caption(frame);
        if (scene_.ovens.empty()) {
            range(rest);
        } else if (rest.width() > 1.8 * rest.height()) {
            const double split = rest.width() * 0.58;
            range({rest.left(), rest.top(), split - gap / 2, rest.height()});
            ovens({rest.left() + split + gap / 2, rest.top(), rest.width() - split - gap / 2,
                   rest.height()});
        } else {
            const double split = rest.height() * 0.6;
            range({rest.left(), rest.top(), rest.width(), split - gap / 2});
            ovens({rest.left(), rest.top() + split + gap / 2, rest.width(),
                   rest.height() - split - gap / 2});
        }
        return std::move(out_);
    }

  private:
    double line(FontRole font) const { return measure_.lineHeight(font); }

    void text(const QString& words, FontRole font, Colour colour, Align align, const QRectF& room) {
        addText(measure_, out_.picture, Part::Page, -1,
                {measure_.fitted(font, words, room.width()), {}, font, colour, align}, room);
    }
    void box(const BoxShape& shape) { out_.picture.push_back({shape, Part::Page, -1}); }

    /// The time, and beside it or below it how long that is from plating; what is left below. A
    /// scene without a time has none.
    QRectF caption(const QRectF& frame) {
        if (scene_.clock.isEmpty()) {
            return frame;
        }
        const double height = line(FontRole::Heading) + inset;
        QRectF row(frame.left(), frame.top(), frame.width(), height);
        text(scene_.clock, FontRole::Heading, Colour::Ink, Align::Left, row);
        const double used = measure_.width(FontRole::Heading, scene_.clock) + 2 * gap;
        const bool below = used + measure_.width(FontRole::Body, scene_.toPlating) > frame.width();
        if (below) {
            row = {frame.left(), row.bottom(), frame.width(), line(FontRole::Body)};
        }
        text(scene_.toPlating, FontRole::Body, Colour::InkSoft, below ? Align::Left : Align::Right,
             below ? row : row.adjusted(used, 0, 0, 0));
        return {frame.left(), row.bottom() + inset, frame.width(),
                std::max(frame.bottom() - row.bottom() - inset, 0.0)};
    }

    // ---- the range ----

    void range(const QRectF& room) {
        const double millimetres = std::max(scene_.width.inMillimetres(), 1.0);
        const double deep = std::max(scene_.depth.inMillimetres(), 1.0);
        scale_ = std::min(room.width() / millimetres, room.height() / deep);
        // A low panel spreads the burners sideways: their names need the width.
        across_ = std::min(room.width() / millimetres, mostSpread * scale_);
        const QSizeF size(millimetres * across_, deep * scale_);
        top_ =
            QRectF(room.center().x() - size.width() / 2, room.top(), size.width(), size.height());
        box({.rect = top_,
             .fill = Colour::HeadBand,
             .outline = Colour::Outline,
             .outlineWidth = thin});
        for (const BurnerScene& burner : scene_.burners) {
            paintBurner(burner);
        }
    }

    QPointF centreOf(const BurnerScene& burner) const {
        return {top_.left() + burner.fromLeft.inMillimetres() * across_,
                top_.bottom() - burner.fromFront.inMillimetres() * scale_};
    }

    /// The part of the range top that is nearer to this burner than to any other: its texts may
    /// take that width.
    QRectF cellOf(const BurnerScene& burner) const {
        const QPointF centre = centreOf(burner);
        double half = std::min(centre.x() - top_.left(), top_.right() - centre.x());
        double high = std::min(centre.y() - top_.top(), top_.bottom() - centre.y());
        for (const BurnerScene& other : scene_.burners) {
            const QPointF away = centreOf(other) - centre;
            if (&other == &burner) {
                continue;
            }
            if (std::abs(away.x()) >= std::abs(away.y())) {
                half = std::min(half, std::abs(away.x()) / 2);
            } else {
                high = std::min(high, std::abs(away.y()) / 2);
            }
        }
        return {centre.x() - half + 1, centre.y() - high + 1, 2 * half - 2, 2 * high - 2};
    }

    static QRectF around(const QPointF& centre, double width, double height) {
        return {centre.x() - width / 2, centre.y() - height / 2, width, height};
    }

    void round(const QRectF& rect, Colour fill, Colour outline, double width, Stroke stroke) {
        out_.picture.push_back({RoundShape{rect, fill, outline, width, stroke}, Part::Page, -1});
    }

    void paintBurner(const BurnerScene& burner) {
        const QPointF centre = centreOf(burner);
        const QRectF cell = cellOf(burner);
        const double ring =
            std::min({burner.widest.inMillimetres() * scale_, cell.width(), cell.height()});
        const bool free = burner.vessels.empty();
        round(around(centre, ring, ring), free ? Colour::Paper : Colour::BurnerFill,
              free ? Colour::GridStrong : Colour::Heavy, free ? thin : heavy,
              free ? Stroke::Dashed : Stroke::Solid);
        if (free) {
            paintFreeName(shortName(burner), cell, ring);
            return;
        }
        for (const StandingVessel& vessel : burner.vessels) {
            paintVessel(vessel, centre, ring);
            out_.targets.emplace_back(cell, vessel.key);
        }
        paintLabels(burner, cell);
    }

    /// Inside the ring if its words are short enough for that.
    void paintFreeName(const QString& name, const QRectF& cell, double ring) {
        const double high = line(FontRole::Small);
        constexpr double chord = 0.85;  // of the ring, at two lines' height
        const QStringList words = name.split(u' ');
        const bool inside = std::ranges::all_of(words, [&](const QString& word) {
            return measure_.width(FontRole::Small, word) <= chord * ring;
        });
        const std::vector<QString> lines =
            measure_.wrapped(FontRole::Small, name, inside ? chord * ring : cell.width());
        const double all = static_cast<double>(lines.size()) * high;
        if (all > cell.height()) {
            text(name, FontRole::Small, Colour::InkSoft, Align::Centre, cell);
            return;
        }
        QRectF row(cell.left(), cell.center().y() - all / 2, cell.width(), high);
        for (const QString& part : lines) {
            text(part, FontRole::Small, Colour::InkSoft, Align::Centre, row);
            row.translate(0, high);
        }
    }

    /// "front left" without the word that all of them share.
    static QString shortName(const BurnerScene& burner) {
        QString name = burner.name;
        return name.remove(Text::tr("burner"), Qt::CaseInsensitive).simplified();
    }

    void paintVessel(const StandingVessel& vessel, const QPointF& centre, double ring) {
        const double width = std::clamp(vessel.width.inMillimetres() * scale_, ring / 3, ring);
        const double depth = std::clamp(vessel.depth.inMillimetres() * scale_, ring / 4, width);
        const QRectF rect = around(centre, width, depth);
        const Stroke stroke = vessel.waiting ? Stroke::Dashed : Stroke::Solid;
        if (vessel.isRound()) {
            round(rect, Colour::WareFill, Colour::Outline, heavy, stroke);
        } else {
            box({.rect = rect,
                 .fill = Colour::WareFill,
                 .outline = Colour::Outline,
                 .outlineWidth = heavy,
                 .stroke = stroke});
        }
    }

    /// Step and vessel, as many lines as the cell has room for, on a ground of their own so that
    /// they can be read across any edge.
    void paintLabels(const BurnerScene& burner, const QRectF& cell) {
        const double high = line(FontRole::Small);
        const double wide = cell.width() - 2 * inset;
        const auto room = static_cast<std::size_t>(std::clamp(cell.height() / high, 1.0, 3.0));
        std::vector<QString> shown =
            measure_.wrapped(FontRole::Small, burner.vessels.front().step, wide);
        // The vessel is seen below: the step comes first where there is little room.
        const std::size_t forStep = std::min<std::size_t>(room, 2);
        if (shown.size() > forStep) {
            // What does not fit is told by the ellipsis.
            for (std::size_t more = forStep; more < shown.size(); ++more) {
                shown[forStep - 1] += u' ' + shown[more];
            }
            shown.resize(forStep);
        }
        const std::size_t stepLines = shown.size();
        if (stepLines < room) {
            shown.push_back(vesselNames(burner));
        }
        double widest = 0;
        for (QString& words : shown) {
            words = measure_.fitted(FontRole::Small, words, wide);
            widest = std::max(widest, measure_.width(FontRole::Small, words));
        }
        QRectF row(cell.left() + inset,
                   cell.center().y() - static_cast<double>(shown.size()) * high / 2, wide, high);
        const double all = static_cast<double>(shown.size()) * high;
        box({.rect = around(cell.center(), widest + 2 * inset, all),
             .fill = Colour::Paper,
             .outline = Colour::None,
             .outlineWidth = 0});
        for (std::size_t i = 0; i < shown.size(); ++i) {
            text(shown[i], FontRole::Small, i < stepLines ? Colour::Ink : Colour::InkSoft,
                 Align::Centre, row);
            row.translate(0, high);
        }
    }

    static QString vesselNames(const BurnerScene& burner) {
        QStringList names;
        for (const StandingVessel& vessel : burner.vessels) {
            names << vessel.name;
        }
        return listText(names);
    }

    // ---- the ovens ----

    void ovens(const QRectF& room) {
        const double each = room.height() / static_cast<double>(scene_.ovens.size());
        QRectF place(room.left(), room.top(), room.width(), each);
        for (const OvenScene& oven : scene_.ovens) {
            paintOven(oven, place.adjusted(0, 0, 0, -inset));
            place.translate(0, each);
        }
    }

    void paintOven(const OvenScene& oven, const QRectF& room) {
        const double head = line(FontRole::Small) + inset;
        const QRectF title(room.left(), room.top(), room.width(), head);
        text(Text::tr("%1: %2").arg(sentenceCase(oven.name), ovenStateText(oven)), FontRole::Small,
             oven.state == OvenState::Off ? Colour::InkSoft : Colour::Temperature, Align::Left,
             title);
        QRectF door = room.adjusted(0, head, 0, 0);
        const double most = oven.slots * 3.5 * line(FontRole::Small);
        door.setHeight(std::clamp(door.height(), 0.0, most));
        box({.rect = door,
             .fill = oven.state == OvenState::Off ? Colour::Paper : Colour::PaleFill,
             .pattern = patternOf(oven.state),
             .patternColour = Colour::GridStrong,
             .outline = Colour::Outline,
             .outlineWidth = heavy});
        paintRacks(oven, door.adjusted(heavy, heavy, -heavy, -heavy));
    }

    static Pattern patternOf(OvenState state) {
        const bool sloping = state == OvenState::Warming || state == OvenState::Changing;
        return sloping ? Pattern::Levels : Pattern::None;
    }

    void paintRacks(const OvenScene& oven, const QRectF& door) {
        const double each = door.height() / oven.slots;
        for (int slot = 1; slot < oven.slots; ++slot) {
            const double y = door.top() + slot * each;
            out_.picture.push_back(
                {LineShape{
                     {door.left(), y}, {door.right(), y}, Colour::GridStrong, thin, Stroke::Solid},
                 Part::Page, -1});
        }
        for (const auto& [slot, load] : oven.loads) {
            const QRectF rack(door.left(), door.top() + slot * each, door.width(),
                              each * load.slots);
            paintLoad(load, rack.adjusted(inset, 2, -inset, -2));
        }
    }

    void paintLoad(const OvenSlotScene& load, const QRectF& rack) {
        box({.rect = rack,
             .fill = Colour::OvenFill,
             .outline = Colour::Outline,
             .outlineWidth = thin});
        const bool two = rack.height() >= 2 * line(FontRole::Small) && !load.vessel.isEmpty();
        const QRectF room = rack.adjusted(inset, 0, -inset, 0);
        const double half = two ? room.height() / 2 : 0;
        text(load.step, FontRole::Small, Colour::Ink, Align::Left, room.adjusted(0, 0, 0, -half));
        if (two) {
            text(load.vessel, FontRole::Small, Colour::Ink, Align::Left,
                 room.adjusted(0, half, 0, 0));
        }
        out_.targets.emplace_back(rack, load.key);
    }

    const RangeScene& scene_;
    const TextMeasure& measure_;
    RangePicture out_;
    QRectF top_;
    double scale_ = 1;   ///< units in a millimetre
    double across_ = 1;  ///< the same from left to right, where places count more than sizes
};

}  // namespace

RangePicture paintRange(const RangeScene& scene, const QRectF& frame, const TextMeasure& measure) {
    return RangePainter(scene, measure).run(frame);
}

}  // namespace rangeline
