#include "exchange/json_scan.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <algorithm>
#include <unordered_set>
#include <vector>

#include "model/characters.h"

namespace rangeline {
namespace {

/// An array or object that is open at the current byte.
struct Level {
    bool object = false;
    bool awaitsKey = false;
    std::size_t index = 0;
    std::string key;
    std::unordered_set<std::string> keys;
};

std::string placeOf(const std::vector<Level>& levels) {
    std::string place;
    for (const Level& level : levels) {
        if (!level.object) {
            place += "[" + std::to_string(level.index) + "]";
        } else if (!level.key.empty()) {
            place += (place.empty() ? "" : ".") + excerpt(level.key);
        }
    }
    return place;
}

/// The text of a key from its quoted spelling; "\u0061" and "a" are the same key.
std::string decoded(std::string_view quoted) {
    const std::string_view inside = quoted.substr(1, quoted.size() - 2);
    if (inside.find('\\') == std::string_view::npos) {
        return std::string(inside);
    }
    const QByteArray array = "[" + QByteArray(quoted.data(), static_cast<int>(quoted.size())) + "]";
    const QJsonValue value = QJsonDocument::fromJson(array).array().at(0);
    return value.toString().toStdString();
}

/// One past the closing quote of the string that opens at `begin`.
std::size_t endOfString(std::string_view bytes, std::size_t begin) {
    std::size_t i = begin + 1;
    while (i < bytes.size() && bytes[i] != '"') {
        i += bytes[i] == '\\' ? 2 : 1;
    }
    return std::min(i + 1, bytes.size());
}

class Scan {
  public:
    Scan(std::string_view bytes, std::size_t deepest) : bytes_(bytes), deepest_(deepest) {}

    std::optional<Fault> run() {
        for (std::size_t i = 0; i < bytes_.size() && !fault_;) {
            if (bytes_[i] == '"') {
                const std::size_t end = endOfString(bytes_, i);
                text(bytes_.substr(i, end - i));
                i = end;
            } else {
                mark(bytes_[i]);
                ++i;
            }
        }
        return fault_;
    }

  private:
    void text(std::string_view quoted) {
        if (levels_.empty() || !levels_.back().awaitsKey) {
            return;
        }
        Level& level = levels_.back();
        level.awaitsKey = false;
        level.key.clear();
        std::string key = decoded(quoted);
        if (!level.keys.insert(key).second) {
            fault_ = Fault{FaultCode::DuplicateKey, placeOf(levels_), {excerpt(key)}};
        }
        level.key = std::move(key);
    }

    void mark(char c) {
        if (c == '{' || c == '[') {
            if (levels_.size() == deepest_) {
                fault_ = Fault{FaultCode::TooDeep, {}, {std::to_string(deepest_)}};
                return;
            }
            Level& level = levels_.emplace_back();
            level.object = level.awaitsKey = c == '{';
        } else if (c == '}' || c == ']') {
            levels_.pop_back();
        } else if (c == ',') {
            levels_.back().awaitsKey = levels_.back().object;
            ++levels_.back().index;
        }
    }

    std::string_view bytes_;
    std::size_t deepest_;
    std::vector<Level> levels_;
    std::optional<Fault> fault_;
};

}  // namespace

std::optional<Fault> scanJson(std::string_view bytes, std::size_t deepest) {
    return Scan(bytes, deepest).run();
}

std::vector<std::string> lineAndColumn(std::string_view bytes, std::size_t offset) {
    const std::string_view before = bytes.substr(0, offset);
    const auto line = std::ranges::count(before, '\n') + 1;
    const std::size_t lineBegin = before.rfind('\n') + 1;  // npos + 1 is 0
    const auto column = std::ranges::count_if(before.substr(lineBegin), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    });
    return {std::to_string(line), std::to_string(column + 1)};
}

}  // namespace rangeline
