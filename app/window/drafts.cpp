#include "window/drafts.h"

#include <algorithm>
#include <charconv>

#include "book/library.h"
#include "exchange/part_text.h"

namespace rangeline {
namespace {

constexpr const char* beingWritten = "draft being written";

/// "draft dish" of the first new one, "draft dish new 2", "draft dish 12" of an item
std::string nameOf(const DraftKey& key) {
    std::string name = key.sort == DraftSort::Dish ? "draft dish" : "draft kitchen";
    if (key.item) {
        return name + ' ' + std::to_string(key.item->number);
    }
    return key.number == 1 ? name : name + " new " + std::to_string(key.number);
}

std::optional<DraftKey> keyOf(const std::string& name) {
    for (const DraftSort sort : {DraftSort::Dish, DraftSort::Kitchen}) {
        DraftKey key{sort, {}};
        const std::string stem = nameOf(key);
        if (name == stem) {
            return key;
        }
        for (key.number = 2; key.number <= mostNewDrafts; ++key.number) {
            if (name == nameOf(key)) {
                return key;
            }
        }
        key.number = 1;
        if (name.starts_with(stem + ' ')) {
            ItemId item;
            const char* end = name.data() + name.size();
            const auto read = std::from_chars(name.data() + stem.size() + 1, end, item.number);
            key.item = item;
            return read.ptr == end ? std::optional(key) : std::nullopt;
        }
    }
    return std::nullopt;
}

}  // namespace

template <class Part>
std::optional<BookFault> keepDraft(Book& book, const DraftKey& key, const Part& part) {
    if (auto fault = setSetting(book, beingWritten, nameOf(key))) {
        return fault;
    }
    return setSetting(book, nameOf(key), writePart(part));
}

template <class Part>
std::optional<Part> readDraft(Book& book, const DraftKey& key) {
    const auto text = setting(book, nameOf(key));
    if (!text.ok() || text.value().empty()) {
        return std::nullopt;
    }
    auto part = readPart<Part>(text.value());
    return part.ok() ? std::optional(std::move(part.value())) : std::nullopt;
}

template <class Part>
std::vector<NewDraft> newDrafts(Book& book, DraftSort sort) {
    std::vector<NewDraft> drafts;
    for (int number = 1; number <= mostNewDrafts; ++number) {
        const DraftKey key{sort, {}, number};
        if (const auto part = readDraft<Part>(book, key)) {
            drafts.push_back({key, part->name});
        }
    }
    return drafts;
}

std::optional<DraftKey> freeDraft(const std::vector<NewDraft>& drafts, DraftSort sort) {
    DraftKey key{sort, {}};
    while (std::ranges::find(drafts, key, &NewDraft::key) != drafts.end()) {
        ++key.number;
    }
    return key.number <= mostNewDrafts ? std::optional(key) : std::nullopt;
}

std::optional<BookFault> forgetDraft(Book& book, const DraftKey& key) {
    const auto text = setting(book, nameOf(key));
    const bool any = text.ok() && !text.value().empty();
    return any ? setSetting(book, nameOf(key), {}) : std::nullopt;
}

std::optional<DraftKey> interruptedDraft(Book& book) {
    const auto name = setting(book, beingWritten);
    return name.ok() ? keyOf(name.value()) : std::nullopt;
}

std::optional<BookFault> endDraft(Book& book) {
    return interruptedDraft(book) ? setSetting(book, beingWritten, {}) : std::nullopt;
}

template std::optional<BookFault> keepDraft(Book&, const DraftKey&, const Dish&);
template std::optional<BookFault> keepDraft(Book&, const DraftKey&, const Kitchen&);
template std::optional<Dish> readDraft(Book&, const DraftKey&);
template std::optional<Kitchen> readDraft(Book&, const DraftKey&);
template std::vector<NewDraft> newDrafts<Dish>(Book&, DraftSort);
template std::vector<NewDraft> newDrafts<Kitchen>(Book&, DraftSort);

}  // namespace rangeline
