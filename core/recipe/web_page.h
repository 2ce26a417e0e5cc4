#pragma once
// Pages of the web, read for the data in them. Nothing is fetched and no script is run.

#include <string>
#include <string_view>
#include <vector>

namespace rangeline {

/// The contents of the page's script blocks of type application/ld+json, in order.
std::vector<std::string> linkedDataIn(std::string_view html);

/// The text of a piece of HTML or of plain text: without tags, entities as their characters, and
/// a line for each paragraph, list item or line break. Line ends of a text without tags stay.
std::string textOfHtml(std::string_view html);

}  // namespace rangeline
