#include "exchange/json_out.h"

#include <array>

namespace rangeline {
namespace {

constexpr std::size_t lineWidth = 100;
constexpr std::size_t indentStep = 2;

std::string quoted(std::string_view text) {
    constexpr std::array hex{'0', '1', '2', '3', '4', '5', '6', '7',
                             '8', '9', 'a', 'b', 'c', 'd', 'e', 'f'};
    std::string out = "\"";
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\') {
            out += '\\';
            out += c;
        } else if (byte < 0x20) {
            out += "\\u00";
            out += hex[byte >> 4U];
            out += hex[byte & 0xFU];
        } else {
            out += c;
        }
    }
    return out + '"';
}

}  // namespace

Json::Json(std::string_view text) : value_(quoted(text)) {}

Json Json::decimal(std::string digits) {
    Json number;
    number.value_ = std::move(digits);
    return number;
}

std::string Json::document() const {
    std::string out;
    print(out, 0, lineWidth);
    return out + "\n";
}

std::string Json::onOneLine() const {
    if (scalar()) {
        return std::get<std::string>(value_);
    }
    std::string out;
    const char* gap = "";
    if (const auto* array = std::get_if<Array>(&value_)) {
        for (const Json& item : *array) {
            out += gap + item.onOneLine();
            gap = ", ";
        }
        return "[" + out + "]";
    }
    for (const auto& [key, item] : std::get<Object>(value_)) {
        out += gap + quoted(key) + ": " + item.onOneLine();
        gap = ", ";
    }
    return "{" + out + "}";
}

/// `column` is where the value begins on its line.
void Json::print(std::string& out, std::size_t indent, std::size_t column) const {
    const std::string line = onOneLine();
    if (scalar() || line.size() <= 2 || column + line.size() < lineWidth) {
        out += line;
        return;
    }
    const std::string margin = "\n" + std::string(indent + indentStep, ' ');
    const char* gap = "";
    if (const auto* array = std::get_if<Array>(&value_)) {
        out += "[";
        for (const Json& item : *array) {
            out += gap + margin;
            item.print(out, indent + indentStep, indent + indentStep);
            gap = ",";
        }
        out += "\n" + std::string(indent, ' ') + "]";
        return;
    }
    out += "{";
    for (const auto& [key, item] : std::get<Object>(value_)) {
        const std::string name = quoted(key) + ": ";
        out += gap + margin + name;
        item.print(out, indent + indentStep, indent + indentStep + name.size());
        gap = ",";
    }
    out += "\n" + std::string(indent, ' ') + "}";
}

}  // namespace rangeline
