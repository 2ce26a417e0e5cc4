#include "model/dish.h"

#include <algorithm>
#include <cassert>

namespace rangeline {

const std::optional<Duration>& Keeping::limit() const {
    switch (storage) {
        case Storage::Room:
            return atRoom;
        case Storage::Cold:
            return cold;
        case Storage::HotOnBurner:
        case Storage::HotInOven:
            return hot;
    }
    return atRoom;
}

std::size_t Step::stretchingSegment() const {
    assert(!segments.empty());
    const auto index = [this](auto found) {
        return static_cast<std::size_t>(found - segments.begin());
    };
    if (auto stated = std::ranges::find(segments, true, &Segment::stretches);
        stated != segments.end()) {
        return index(stated);
    }
    for (const Attention preferred : {Attention::Away, Attention::Watch}) {
        if (auto found = std::ranges::find(segments, preferred, &Segment::attention);
            found != segments.end()) {
            return index(found);
        }
    }
    return index(std::ranges::max_element(segments, {}, &Segment::length));
}

}  // namespace rangeline
