#pragma once
// A value of a JSON file that knows its place in it. The first fault found is kept; reading goes on
// with default values, so that the code that reads needs no branches for faults.

#include <QJsonObject>
#include <QJsonValue>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/fault.h"
#include "model/place.h"

namespace rangeline {

struct FirstFault {
    std::optional<Fault> fault;
};

/// Refers to its place and the fault, which must outlive it.
class Node {
  public:
    Node(QJsonValue value, const Place& place, FirstFault& faults)
        : value_(std::move(value)), place_(place), faults_(faults) {}

    bool isText() const { return value_.isString(); }
    bool isNumber() const { return value_.isDouble(); }
    bool failed() const { return faults_.fault.has_value(); }
    const Place& place() const { return place_; }

    /// These report WrongType, or BadText for control characters, and then give something empty.
    std::string text() const;
    bool boolean() const;
    std::int64_t whole() const;
    /// A number with at most two decimals, in hundredths.
    std::int64_t hundredths() const;
    QJsonArray array() const;
    QJsonObject object() const;

    Node with(QJsonValue value, const Place& place) const {
        return Node(std::move(value), place, faults_);
    }
    void report(FaultCode code, std::vector<std::string> figures) const;
    /// Gives a fault without a place this one's.
    void report(Fault fault) const;

  private:
    void wrongType(const char* wanted) const { report(FaultCode::WrongType, {wanted}); }

    QJsonValue value_;
    const Place& place_;
    FirstFault& faults_;
};

/// The keys of an object; those that nobody asked for are faults.
class Keys {
  public:
    /// The node is looked into at the first call of find or need.
    explicit Keys(const Node& node) : node_(node) {}

    /// Undefined if it is missing. Requires a literal.
    QJsonValue find(const char* key);
    /// Reports MissingKey where it is missing.
    QJsonValue need(const char* key);
    /// Reports the first key that was never asked for.
    void finish() const;

  private:
    std::string nearestTo(const std::string& key) const;

    const Node& node_;
    std::optional<QJsonObject> object_;
    std::vector<const char*> asked_;
};

}  // namespace rangeline
