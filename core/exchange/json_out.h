#pragma once
// JSON text with the keys in the order they were added, laid out for people: whatever fits on a
// line is on one line.

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace rangeline {

class Json {
  public:
    using Array = std::vector<Json>;
    using Object = std::vector<std::pair<std::string, Json>>;

    explicit Json(std::string_view text);  ///< UTF-8
    explicit Json(const char* text) : Json(std::string_view(text)) {}
    explicit Json(bool value) : value_(std::string(value ? "true" : "false")) {}
    explicit Json(std::int64_t number) : value_(std::to_string(number)) {}
    explicit Json(int number) : Json(std::int64_t{number}) {}
    explicit Json(Array array) : value_(std::move(array)) {}
    explicit Json(Object object) : value_(std::move(object)) {}
    /// A number already written as JSON wants it: "1.25".
    static Json decimal(std::string digits);

    /// Ends with a line break.
    std::string document() const;
    /// Without line breaks.
    std::string onOneLine() const;

  private:
    Json() = default;
    bool scalar() const { return std::holds_alternative<std::string>(value_); }
    void print(std::string& out, std::size_t indent, std::size_t column) const;

    std::variant<std::string, Array, Object> value_;  ///< scalars as they are printed
};

}  // namespace rangeline
