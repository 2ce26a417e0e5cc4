#pragma once
// Checks of single values, shared by the parts of validate(). Not for use outside core/model.

#include <optional>
#include <string>
#include <string_view>
#include <unordered_set>
#include <vector>

#include "model/equipment_kinds.h"
#include "model/fault.h"
#include "model/lesson.h"
#include "model/place.h"

namespace rangeline {

/// No duration and no offset is longer than this.
inline constexpr Duration longestDuration = Duration::hours(7 * 24);

/// Ids of one sort that have been met, to find repeated ones. Refers to the lesson's own texts.
using MetIds = std::unordered_set<std::string_view>;

class ValueChecks {
  public:
    /// Figures are written in these units; at most `limit` faults are kept.
    ValueChecks(Units units, std::size_t limit) : units_(units), limit_(limit) {}

    bool full() const { return faults_.size() >= limit_; }
    bool none() const { return faults_.empty(); }
    /// Nothing was left out, and what is named is there, once, and within its range.
    bool namesAreSound() const;
    std::vector<Fault> take() { return std::move(faults_); }
    Units units() const { return units_; }

    void report(const Place& place, FaultCode code, std::vector<std::string> figures);

    void whole(const Place& place, std::int64_t value, std::int64_t lowest, std::int64_t highest);
    void duration(const Place& place, Duration value, Duration lowest, Duration highest);
    /// Not negative, and at most the longest.
    void duration(const Place& place, Duration value);
    void duration(const Place& place, const std::optional<Duration>& value);
    /// At most the longest to either side.
    void offset(const Place& place, Duration value);
    void temperature(const Place& place, Temperature value);
    /// A difference of at least a degree.
    void difference(const Place& place, TemperatureDelta value);
    void length(const Place& place, Length value);
    void fraction(const Place& place, const Rational& value);
    void text(const Place& place, std::string_view value);
    void texts(const Place& place, const std::vector<std::string>& values);
    void id(const Place& place, std::string_view value);
    void newId(const Place& place, std::string_view value, MetIds& met);
    void kind(const Place& place, const std::string& value, EquipmentRole role);

  private:
    Units units_;
    std::size_t limit_;
    std::vector<Fault> faults_;
};

}  // namespace rangeline
