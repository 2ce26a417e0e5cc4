#include "arrange/engine/clause_store.h"

#include <algorithm>
#include <numeric>

namespace rangeline::engine {

std::uint32_t ClauseStore::add(std::span<const Literal> literals, bool learned, int glue) {
    headers_.push_back({static_cast<std::uint32_t>(arena_.size()),
                        static_cast<std::uint32_t>(literals.size()), glue, learned});
    arena_.insert(arena_.end(), literals.begin(), literals.end());
    learned_ += learned ? 1 : 0;
    return static_cast<std::uint32_t>(headers_.size() - 1);
}

std::span<Literal> ClauseStore::literals(std::uint32_t clause) {
    return {arena_.data() + headers_[clause].first, headers_[clause].size};
}

std::span<const Literal> ClauseStore::literals(std::uint32_t clause) const {
    return {arena_.data() + headers_[clause].first, headers_[clause].size};
}

void ClauseStore::watch(Literal negated, std::uint32_t clause, Literal blocker) {
    watches(negated.view).push_back({negated.bound, clause, blocker});
}

void ClauseStore::keepBetterHalf() {
    constexpr int alwaysKept = 2;  // glue clauses stay for good
    std::vector<std::uint32_t> candidates;
    for (std::uint32_t c = 0; c < headers_.size(); ++c) {
        if (headers_[c].learned && headers_[c].glue > alwaysKept) {
            candidates.push_back(c);
        }
    }
    std::ranges::stable_sort(candidates, [this](std::uint32_t a, std::uint32_t b) {
        return std::pair(headers_[a].glue, headers_[a].size) <
               std::pair(headers_[b].glue, headers_[b].size);
    });
    std::vector<bool> dropped(headers_.size(), false);
    for (std::size_t i = candidates.size() / 2; i < candidates.size(); ++i) {
        dropped[candidates[i]] = true;
    }
    std::vector<Header> headers;
    std::vector<Literal> arena;
    learned_ = 0;
    for (std::uint32_t c = 0; c < headers_.size(); ++c) {
        if (!dropped[c]) {
            Header header = headers_[c];
            const auto kept = literals(c);
            header.first = static_cast<std::uint32_t>(arena.size());
            arena.insert(arena.end(), kept.begin(), kept.end());
            learned_ += header.learned ? 1 : 0;
            headers.push_back(header);
        }
    }
    headers_ = std::move(headers);
    arena_ = std::move(arena);
    for (auto& watches : watches_) {
        watches.clear();
    }
}

}  // namespace rangeline::engine
