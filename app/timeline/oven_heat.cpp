#include "timeline/oven_heat.h"

#include <optional>

#include "analysis/at.h"
#include "text/words.h"
#include "timeline/blocks.h"

namespace rangeline {
namespace {

/// What an oven is set to; the label says the mode only where it is not plain baking.
struct Setting {
    Temperature setTo;
    OvenMode mode = OvenMode::Bake;

    friend bool operator==(const Setting&, const Setting&) = default;
};

class HeatMaker {
  public:
    HeatMaker(const UseIndex& index, const Lanes& lanes, const TextContext& text, int unit)
        : index_(index), text_(text), unit_(unit), lane_(lanes.heatOf(unit)) {}

    OvenHeatLine run() {
        turnOn();
        for (const OvenUse& use : index_.ovenUses(unit_)) {
            load(use);
        }
        holdUntil(lastOut_);
        return std::move(line_);
    }

  private:
    void turnOn() {
        const Placed& placed = index_.placed(index_.turnOnNode(unit_));
        if (!placed || !placed.placement->oven) {
            return;
        }
        setting_ = {placed.placement->oven->setTo, placed.placement->oven->mode};
        since_ = turnOnInterval(index_, unit_).end;
        lastOut_ = since_;
        // From colder than any setting: the line starts at the foot of the lane.
        slope({placed.interval.end, since_}, Temperature::ofUnits(INT64_MIN / 4), setting_->setTo);
    }

    void load(const OvenUse& use) {
        const Setting wanted{use.setTo, use.mode};
        if (!setting_) {
            since_ = use.interval.begin;
        } else if (*setting_ != wanted) {
            changeOver(wanted, use);
        }
        setting_ = wanted;
        lastOut_ = std::max(lastOut_, use.interval.end);
    }

    /// From when the last load leaves; where there is too little time, until the next one enters.
    void changeOver(const Setting& wanted, const OvenUse& use) {
        const Instant begin = std::min(lastOut_, use.interval.begin);
        const Duration needed = index_.ovenOf(unit_).changeOver(setting_->setTo, setting_->mode,
                                                                wanted.setTo, wanted.mode);
        const Interval change{begin, std::min(begin + needed, use.interval.begin)};
        holdUntil(begin);
        slope(change, setting_->setTo, wanted.setTo);
        if (!change.empty()) {
            line_.changeOvers.push_back({at(index_.expanded().ovenLoads, use.load).owner,
                                         lane_,
                                         BlockKind::ChangeOver,
                                         false,
                                         change,
                                         {}});
        }
        since_ = std::max(change.begin, change.end);
    }

    void slope(const Interval& interval, Temperature from, Temperature to) {
        if (!interval.empty()) {
            line_.pieces.push_back({lane_, interval, from, to, {}});
        }
    }

    void holdUntil(Instant end) {
        if (!setting_ || end <= since_) {
            return;
        }
        QString label = temperatureText(setting_->setTo, text_.units, text_.locale);
        if (setting_->mode != OvenMode::Bake) {
            label += u' ' + modeText(setting_->mode);
        }
        line_.pieces.push_back({lane_, {since_, end}, setting_->setTo, setting_->setTo, label});
    }

    const UseIndex& index_;
    const TextContext& text_;
    int unit_;
    int lane_;
    OvenHeatLine line_;
    std::optional<Setting> setting_;
    Instant since_ = longBefore;    ///< since when the setting is held
    Instant lastOut_ = longBefore;  ///< when the last load so far leaves
};

}  // namespace

OvenHeatLine makeHeatLine(const UseIndex& index, const Lanes& lanes, const TextContext& text,
                          int ovenUnit) {
    return HeatMaker(index, lanes, text, ovenUnit).run();
}

}  // namespace rangeline
