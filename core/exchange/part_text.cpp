#include "exchange/part_text.h"

#include "exchange/describe_lesson.h"
#include "exchange/field_reader.h"
#include "exchange/field_writer.h"
#include "exchange/parse_json.h"

namespace rangeline {

/// A change of a placement: the placement it is to be, or just the key of the one that goes.
struct ChangeEntry : PlacementEntry {
    bool gone = false;

    friend bool operator==(const ChangeEntry&, const ChangeEntry&) = default;
};

template <class F>
void describe(F& f, Of<ChangeEntry>) {
    describe(f, Of<PlacementEntry>{});
    f.may("gone", &ChangeEntry::gone);
}

/// An edit as text has it: exactly one of these is there.
struct EditEntry {
    std::optional<std::vector<ChangeEntry>> placements = std::nullopt;
    std::optional<Head> head = std::nullopt;
    std::optional<Kitchen> kitchen = std::nullopt;
    std::optional<std::vector<Serving>> servings = std::nullopt;
    std::optional<Choices> choices = std::nullopt;

    friend bool operator==(const EditEntry&, const EditEntry&) = default;
};

template <class F>
void describe(F& f, Of<EditEntry>) {
    f.may("placements", &EditEntry::placements);
    f.may("head", &EditEntry::head);
    f.may("kitchen", &EditEntry::kitchen);
    f.may("servings", &EditEntry::servings);
    f.may("choices", &EditEntry::choices);
}

namespace {

// ---- between the model and what the text describes ---------------------------------------------

template <class Part>
const Part& toText(const Part& part) {
    return part;
}

PlacementEntry toText(const PlacementPart& part) {
    return entryOf(part.first, part.second);
}

struct ToEntry {
    EditEntry operator()(const SetPlacements& edit) const {
        EditEntry entry;
        entry.placements.emplace();
        for (const auto& [key, placement] : edit.changes) {
            ChangeEntry& change = entry.placements->emplace_back();
            static_cast<PlacementEntry&>(change) = entryOf(key, placement.value_or(Placement()));
            change.gone = !placement;
        }
        return entry;
    }
    EditEntry operator()(const SetHead& edit) const { return {.head = edit.head}; }
    EditEntry operator()(const SetKitchen& edit) const { return {.kitchen = edit.kitchen}; }
    EditEntry operator()(const SetServings& edit) const { return {.servings = edit.servings}; }
    EditEntry operator()(const SetChoices& edit) const { return {.choices = edit.choices}; }
};

std::vector<EditEntry> toText(const EditsPart& edits) {
    std::vector<EditEntry> entries;
    for (const Edit& edit : edits) {
        entries.push_back(std::visit(ToEntry(), edit));
    }
    return entries;
}

SetPlacements changesOf(const std::vector<ChangeEntry>& entries, const Node& node) {
    SetPlacements edit;
    for (const ChangeEntry& entry : entries) {
        if (const auto key = keyOf(entry, node)) {
            edit.changes.push_back(
                {*key, entry.gone ? std::nullopt : std::optional<Placement>(entry)});
        }
    }
    return edit;
}

Edit editOf(EditEntry entry, const Node& node) {
    const int named = (entry.placements ? 1 : 0) + (entry.head ? 1 : 0) + (entry.kitchen ? 1 : 0) +
                      (entry.servings ? 1 : 0) + (entry.choices ? 1 : 0);
    if (named != 1) {
        node.report(FaultCode::Contradiction, {"placements", "head"});
    }
    if (entry.head) {
        return SetHead{*std::move(entry.head)};
    }
    if (entry.kitchen) {
        return SetKitchen{*std::move(entry.kitchen)};
    }
    if (entry.servings) {
        return SetServings{*std::move(entry.servings)};
    }
    if (entry.choices) {
        return SetChoices{*std::move(entry.choices)};
    }
    return entry.placements ? changesOf(*entry.placements, node) : SetPlacements();
}

template <class Part>
void take(const Node& node, Part& part) {
    read(node, part);
}

void take(const Node& node, PlacementPart& part) {
    PlacementEntry entry;
    read(node, entry);
    if (const auto key = keyOf(entry, node)) {
        part = {*key, entry};
    }
}

void take(const Node& node, EditsPart& part) {
    std::vector<EditEntry> entries;
    read(node, entries);
    for (EditEntry& entry : entries) {
        part.push_back(editOf(std::move(entry), node));
    }
}

}  // namespace

template <class Part>
std::string writePart(const Part& part) {
    return write(toText(part), Style()).onOneLine();
}

template <class Part>
Result<Part, Fault> readPart(std::string_view bytes) {
    const auto document = parseJson(bytes);
    if (!document.ok()) {
        return document.error();
    }
    const QJsonDocument& json = document.value();
    FirstFault faults;
    const Place place;
    Part part;
    take(Node(json.isArray() ? QJsonValue(json.array()) : QJsonValue(json.object()), place, faults),
         part);
    if (faults.fault) {
        return *std::move(faults.fault);
    }
    return part;
}

template std::string writePart(const Head&);
template std::string writePart(const Kitchen&);
template std::string writePart(const Dish&);
template std::string writePart(const Choices&);
template std::string writePart(const PlacementPart&);
template std::string writePart(const EditsPart&);
template Result<Head, Fault> readPart(std::string_view);
template Result<Kitchen, Fault> readPart(std::string_view);
template Result<Dish, Fault> readPart(std::string_view);
template Result<Choices, Fault> readPart(std::string_view);
template Result<PlacementPart, Fault> readPart(std::string_view);
template Result<EditsPart, Fault> readPart(std::string_view);

}  // namespace rangeline
