#include "exchange/node.h"

#include <QJsonArray>
#include <QString>
#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include "model/characters.h"

namespace rangeline {
namespace {

/// Half of a character that is written in two.
bool hasLoneSurrogate(const QString& text) {
    for (qsizetype i = 0; i < text.size(); ++i) {
        if (text[i].isHighSurrogate() && i + 1 < text.size() && text[i + 1].isLowSurrogate()) {
            ++i;
        } else if (text[i].isSurrogate()) {
            return true;
        }
    }
    return false;
}

std::string numberText(double value) {
    return QByteArray::number(value, 'g', 15).toStdString();
}

/// Levenshtein's distance, letters of either case alike.
std::size_t distance(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (const char c : a) {
        std::size_t diagonal = row[0]++;
        for (std::size_t j = 1; j < row.size(); ++j) {
            const bool same = std::tolower(static_cast<unsigned char>(c)) ==
                              std::tolower(static_cast<unsigned char>(b[j - 1]));
            const std::size_t changed = diagonal + (same ? 0 : 1);
            diagonal = row[j];
            row[j] = std::min({row[j] + 1, row[j - 1] + 1, changed});
        }
    }
    return row.back();
}

}  // namespace

std::string Node::text() const {
    if (!isText()) {
        wrongType("text");
        return {};
    }
    const QString text = value_.toString();
    if (hasLoneSurrogate(text)) {
        report(FaultCode::BadText, {"bad-character", {}});
        return {};
    }
    return text.toStdString();
}

bool Node::boolean() const {
    if (!value_.isBool()) {
        wrongType("true or false");
    }
    return value_.toBool();
}

std::int64_t Node::whole() const {
    if (!isNumber()) {
        wrongType("a number");
        return 0;
    }
    constexpr std::int64_t none = std::numeric_limits<std::int64_t>::min();
    const std::int64_t number = value_.toInteger(none);
    if (number == none) {
        report(FaultCode::BadNumber, {numberText(value_.toDouble()), "a whole number"});
        return 0;
    }
    return number;
}

std::int64_t Node::hundredths() const {
    if (!isNumber()) {
        wrongType("a number");
        return 0;
    }
    const double value = value_.toDouble();
    const double scaled = std::round(value * 100);
    // Beyond a billion doubles no longer hold hundredths; nothing we read is that large.
    if (std::abs(value) > 1e9 || std::abs(value * 100 - scaled) > 1e-6) {
        report(FaultCode::BadNumber, {numberText(value), "a number with at most two decimals"});
        return 0;
    }
    return static_cast<std::int64_t>(scaled);
}

QJsonArray Node::array() const {
    constexpr qsizetype longest = 50'000;
    if (!value_.isArray()) {
        wrongType("a list");
        return {};
    }
    QJsonArray array = value_.toArray();
    if (array.size() > longest) {
        report(FaultCode::TooMany, {std::to_string(array.size()), std::to_string(longest)});
        return {};
    }
    return array;
}

QJsonObject Node::object() const {
    if (!value_.isObject()) {
        wrongType("an object");
    }
    return value_.toObject();
}

void Node::report(FaultCode code, std::vector<std::string> figures) const {
    report(Fault{code, {}, std::move(figures)});
}

void Node::report(Fault fault) const {
    if (!failed()) {
        fault.place = place_.text();
        fault.figures = presentable(std::move(fault.figures));
        faults_.fault = std::move(fault);
    }
}

QJsonValue Keys::find(const char* key) {
    if (!object_) {
        object_ = node_.object();
    }
    asked_.push_back(key);
    return object_->value(QLatin1String(key));
}

QJsonValue Keys::need(const char* key) {
    QJsonValue value = find(key);
    if (value.isUndefined()) {
        node_.report(FaultCode::MissingKey, {key});
    }
    return value;
}

void Keys::finish() const {
    if (node_.failed() || !object_) {
        return;
    }
    for (const QString& name : object_->keys()) {
        const std::string key = name.toStdString();
        if (std::ranges::find(asked_, key) == asked_.end()) {
            node_.report(FaultCode::UnknownKey, {excerpt(key), nearestTo(key)});
            return;
        }
    }
}

std::string Keys::nearestTo(const std::string& key) const {
    std::string nearest;
    std::size_t least = key.size() / 2 + 1;  // more than half of it wrong: not the same word
    for (const char* asked : asked_) {
        if (key.size() < 64 && distance(key, asked) < least) {
            least = distance(key, asked);
            nearest = asked;
        }
    }
    return nearest;
}

}  // namespace rangeline
