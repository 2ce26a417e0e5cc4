#pragma once
// Turns an object into JSON by its description. What equals the default is left out.

#include <algorithm>
#include <optional>
#include <variant>

#include "exchange/of.h"
#include "exchange/write_values.h"

namespace rangeline {

template <class T>
class FieldWriter {
  public:
    FieldWriter(const T& object, const Style& style) : object_(object), style_(style) {}

    template <class C, class M>
    void must(const char* key, M C::*member) {
        add(key, write(object_.*member, style_));
    }

    template <class C, class M>
    void may(const char* key, M C::*member) {
        if (object_.*member != usual_.*member) {
            must(key, member);
        }
    }

    template <class C>
    void ordinal(const char* key, int C::*member) {
        if (object_.*member != 0) {
            add(key, Json(object_.*member + 1));
        }
    }

    void percent(const char* key, int T::*member) {
        if (object_.*member != usual_.*member) {
            add(key, writePercent(object_.*member));
        }
    }

    void volume(const char* key, std::optional<std::int64_t> T::*member) {
        if (object_.*member) {
            add(key, writeVolume(*(object_.*member)));
        }
    }

    void range(Temperature T::*lowest, Temperature T::*highest) {
        if (object_.*lowest != object_.*highest) {
            must("from", lowest);
            must("to", highest);
            return;
        }
        T only;
        only.*lowest = only.*highest = object_.*lowest;
        if (object_ == only) {
            just_ = write(object_.*lowest, style_);
        } else {
            must("at", lowest);
        }
    }

    template <class M>
    void orJust(M T::*member) {
        T only;
        only.*member = object_.*member;
        if (object_ == only && object_ != usual_) {
            just_ = write(object_.*member, style_);
        }
    }

    template <class A, class V>
    void alternative(const char* key, V T::*member) {
        if (const A* held = std::get_if<A>(&(object_.*member))) {
            add(key, write(*held, style_));
        }
    }

    void point(const char* key, LinkPoint T::*member) {
        add(key, writePoint(object_.*member, (usual_.*member).end));
    }

    Json finish() { return just_ ? std::move(*just_) : Json(std::move(members_)); }

  private:
    void add(const char* key, Json value) { members_.emplace_back(key, std::move(value)); }

    const T& object_;
    const Style& style_;
    const T usual_{};
    Json::Object members_;
    std::optional<Json> just_;  ///< a text that stands for the whole object
};

template <class T>
requires std::is_class_v<T> Json write(const T& object, const Style& style) {
    FieldWriter<T> writer(object, style);
    describe(writer, Of<T>{});
    return writer.finish();
}

}  // namespace rangeline
