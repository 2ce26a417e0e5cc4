#pragma once
// Where the figures of the safety tables come from. The citations are names of documents and stay
// as they are in every language.

#include <span>
#include <string_view>

namespace rangeline {

struct Source {
    std::string_view key;
    std::string_view citation;
};

std::span<const Source> sources();
/// Null if there is no such source.
const Source* findSource(std::string_view key);

}  // namespace rangeline
