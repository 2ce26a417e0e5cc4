#include "recipe/web_page.h"

#include <libxml/HTMLparser.h>

#include <algorithm>
#include <memory>

#include "recipe/plain_words.h"

namespace rangeline {
namespace {

struct FreeDocument {
    void operator()(xmlDoc* document) const { xmlFreeDoc(document); }
};
using Document = std::unique_ptr<xmlDoc, FreeDocument>;

/// Broken pages are mended as browsers do; deep nesting ends the reading (libxml2's own limit).
Document parse(std::string_view html) {
    constexpr int options = HTML_PARSE_RECOVER | HTML_PARSE_NONET | HTML_PARSE_NOERROR |
                            HTML_PARSE_NOWARNING | HTML_PARSE_COMPACT;
    return Document(
        htmlReadMemory(html.data(), static_cast<int>(html.size()), nullptr, "UTF-8", options));
}

std::string_view nameOf(const xmlNode& node) {
    return node.name == nullptr ? std::string_view()
                                : std::string_view(reinterpret_cast<const char*>(node.name));
}

std::string_view contentOf(const xmlNode& node) {
    return node.content == nullptr ? std::string_view()
                                   : std::string_view(reinterpret_cast<const char*>(node.content));
}

/// The node after this one in the order of the page, within `root`; null at the end.
const xmlNode* following(const xmlNode* node, const xmlNode* root) {
    if (node->children != nullptr && node->type != XML_ENTITY_REF_NODE) {
        return node->children;
    }
    while (node != nullptr && node != root && node->next == nullptr) {
        node = node->parent;
    }
    return node == nullptr || node == root ? nullptr : node->next;
}

std::string attribute(const xmlNode& node, const char* name) {
    xmlChar* value = xmlGetProp(&node, reinterpret_cast<const xmlChar*>(name));
    std::string text = value == nullptr ? std::string() : reinterpret_cast<const char*>(value);
    xmlFree(value);
    return text;
}

std::string contentOfAll(const xmlNode& node) {
    std::string text;
    for (const xmlNode* child = node.children; child != nullptr; child = child->next) {
        text += contentOf(*child);
    }
    return text;
}

/// Whether lines of the source mean nothing: it has elements, not only entities.
bool hasElements(std::string_view html) {
    for (std::size_t i = 0; i + 1 < html.size(); ++i) {
        const char next = html[i + 1];
        if (html[i] == '<' && ((next >= 'a' && next <= 'z') || (next >= 'A' && next <= 'Z'))) {
            return true;
        }
    }
    return false;
}

bool endsALine(std::string_view element) {
    return isOneOf(element, "p br li div h1 h2 h3 h4 tr");
}

}  // namespace

std::vector<std::string> linkedDataIn(std::string_view html) {
    std::vector<std::string> blocks;
    const Document document = parse(html);
    if (!document) {
        return blocks;
    }
    const xmlNode* root = xmlDocGetRootElement(document.get());
    for (const xmlNode* node = root; node != nullptr; node = following(node, root)) {
        const std::string type = lowered(attribute(*node, "type"));
        if (node->type == XML_ELEMENT_NODE && nameOf(*node) == "script" &&
            type.starts_with("application/ld+json")) {
            blocks.push_back(contentOfAll(*node));
        }
    }
    return blocks;
}

std::string textOfHtml(std::string_view html) {
    if (html.find_first_of("<&") == std::string_view::npos) {
        return std::string(html);
    }
    std::string text;
    const bool folded = hasElements(html);
    const Document document = parse(html);
    const xmlNode* root = document ? xmlDocGetRootElement(document.get()) : nullptr;
    for (const xmlNode* node = root; node != nullptr; node = following(node, root)) {
        if (node->type == XML_TEXT_NODE) {
            std::string content(contentOf(*node));
            if (folded) {
                std::ranges::replace(content, '\n', ' ');
            }
            text += content;
        } else if (node->type == XML_ELEMENT_NODE && endsALine(nameOf(*node)) && !text.empty()) {
            text += '\n';
        }
    }
    return text;
}

}  // namespace rangeline
