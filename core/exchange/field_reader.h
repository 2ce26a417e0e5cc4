#pragma once
// Fills an object from JSON by its description.

#include <algorithm>
#include <limits>
#include <variant>

#include "exchange/of.h"
#include "exchange/read_values.h"

namespace rangeline {

template <class T>
class FieldReader {
  public:
    FieldReader(const Node& node, T& object) : node_(node), keys_(node), object_(object) {}

    template <class C, class M>
    void must(const char* key, M C::*member) {
        if (!just_) {
            take(key, keys_.need(key), [&](const Node& node) { read(node, object_.*member); });
        }
    }

    template <class C, class M>
    void may(const char* key, M C::*member) {
        take(key, find(key), [&](const Node& node) { read(node, object_.*member); });
    }

    /// Counted from 1 in the file and from 0 in memory.
    template <class C>
    void ordinal(const char* key, int C::*member) {
        take(key, find(key), [&](const Node& node) {
            int number = 1;
            read(node, number);
            if (number < 1) {
                node.report(FaultCode::BadNumber, {std::to_string(number), "1 or more"});
            }
            object_.*member = std::max(number, 1) - 1;
        });
    }

    /// 1 in the file is 100 in memory.
    void percent(const char* key, int T::*member) {
        take(key, find(key), [&](const Node& node) {
            constexpr std::int64_t most = std::numeric_limits<int>::max();
            object_.*member = static_cast<int>(std::clamp(node.hundredths(), -most, most));
        });
    }

    void volume(const char* key, std::optional<std::int64_t> T::*member) {
        take(key, find(key), [&](const Node& node) { readVolume(node, object_.*member); });
    }

    /// "at", or "from" and "to"; or a text alone, which is both.
    void range(Temperature T::*lowest, Temperature T::*highest) {
        orJust(lowest);
        if (just_) {
            object_.*highest = object_.*lowest;
            return;
        }
        const QJsonValue at = find("at");
        if (at.isUndefined()) {
            must("from", lowest);
            must("to", highest);
            return;
        }
        take("at", at, [&](const Node& node) { read(node, object_.*lowest); });
        object_.*highest = object_.*lowest;
        for (const char* other : {"from", "to"}) {
            if (!find(other).isUndefined()) {
                node_.report(FaultCode::Contradiction, {"at", other});
            }
        }
    }

    /// A text alone instead of the object is this member.
    template <class M>
    void orJust(M T::*member) {
        just_ = node_.isText();
        if (just_) {
            read(node_, object_.*member);
        }
    }

    /// The alternative of the variant that goes by this key; at most one of them may be there.
    template <class A, class V>
    void alternative(const char* key, V T::*member) {
        take(key, find(key), [&](const Node& node) {
            if ((object_.*member).index() != 0) {
                node.report(FaultCode::Contradiction, {key, alternative_});
                return;
            }
            alternative_ = key;
            read(node, (object_.*member).template emplace<A>());
        });
    }

    /// "roast" is the end of that step or, for the later point, its start; an object says which.
    void point(const char* key, LinkPoint T::*member) {
        if (const QJsonValue value = keys_.need(key); !value.isUndefined()) {
            take(key, value, [&](const Node& node) { readPoint(node, object_.*member); });
        }
    }

    void finish() {
        if (!just_) {
            keys_.finish();
        }
    }

  private:
    QJsonValue find(const char* key) {
        return just_ ? QJsonValue(QJsonValue::Undefined) : keys_.find(key);
    }

    template <class Read>
    void take(const char* key, const QJsonValue& value, Read read) {
        if (!value.isUndefined() && !node_.failed()) {
            const Place place = node_.place().key(key);
            read(node_.with(value, place));
        }
    }

    const Node& node_;
    Keys keys_;
    T& object_;
    const char* alternative_ = "";
    bool just_ = false;  ///< a text alone was read
};

template <class T>
void readObject(const Node& node, T& object) {
    FieldReader<T> reader(node, object);
    describe(reader, Of<T>{});
    reader.finish();
}

template <class T>
requires std::is_class_v<T>
void read(const Node& node, T& object) {
    readObject(node, object);
}

}  // namespace rangeline
