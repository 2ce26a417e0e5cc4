#include "log/dish_log.h"

#include <algorithm>
#include <array>
#include <memory>

#include "book/library.h"
#include "book/versions.h"
#include "model/expand.h"

namespace rangeline {
namespace {

/// A lesson that was cooked, as it is now.
struct Cooked {
    Lesson lesson;
    std::vector<std::optional<ItemId>> origins;
};

class Reader {
  public:
    Reader(Book& book, ItemId item, Dish dish) : book_(book), item_(item), dish_(std::move(dish)) {}

    std::optional<BookFault> take(const LogEntry& entry) {
        if (auto fault = read(entry.lesson)) {
            return fault;
        }
        const Cooked* cooked = entry.lesson ? lessons_.at(*entry.lesson).get() : nullptr;
        const auto ending = endingIn(cooked, entry.dish);
        if (!ending || !entry.step.ends_with(*ending)) {
            return std::nullopt;
        }
        const StepId id{entry.step.substr(0, entry.step.size() - ending->size())};
        const Step* step = stepOf(id);
        const Duration took = step == nullptr ? Duration() : onTheCard(*step, entry, cooked);
        if (took > Duration()) {
            const std::string lesson =
                entry.lesson ? std::to_string(entry.lesson->number) : std::string();
            log_[id].push_back({entry.day + '/' + lesson, cookName(entry, cooked), took});
        }
        return std::nullopt;
    }

    DishLog log() { return std::move(log_); }

  private:
    std::optional<BookFault> read(const std::optional<ItemId>& lesson) {
        if (!lesson || lessons_.contains(*lesson)) {
            return std::nullopt;
        }
        auto read = book_.lesson(*lesson);
        auto origins = dishOrigins(book_, *lesson);
        if (!read.ok() || !origins.ok()) {
            return read.ok() ? origins.error() : read.error();
        }
        lessons_[*lesson] =
            std::make_unique<Cooked>(Cooked{std::move(read.value()), std::move(origins.value())});
        return std::nullopt;
    }

    /// What the ids of the dish end in where it is served; nothing: it is not this dish.
    std::optional<std::string> endingIn(const Cooked* cooked, const std::string& logged) {
        for (std::size_t i = 0; cooked != nullptr && i < cooked->lesson.servings.size(); ++i) {
            const std::string& id = cooked->lesson.servings[i].dish.id.text;
            if (id == logged && i < cooked->origins.size() && cooked->origins[i]) {
                const bool copied = cooked->origins[i] == item_ && id.starts_with(dish_.id.text);
                return copied ? std::optional(id.substr(dish_.id.text.size())) : std::nullopt;
            }
        }
        return logged == dish_.id.text && isOnlyOne() ? std::optional(std::string()) : std::nullopt;
    }

    /// Whether no other dish of the book has that id.
    bool isOnlyOne() {
        if (!onlyOne_) {
            onlyOne_ = true;
            const auto items = book_.items();
            for (const Item& item : items.ok() ? items.value() : std::vector<Item>()) {
                if (item.kind == ItemKind::Dish && item.id != item_ &&
                    item.state != ItemState::Deleted) {
                    const auto other = book_.dish(item.id);
                    *onlyOne_ = *onlyOne_ && !(other.ok() && other.value().id == dish_.id);
                }
            }
        }
        return *onlyOne_;
    }

    const Step* stepOf(const StepId& id) const {
        for (const Component& component : dish_.components) {
            const auto found = std::ranges::find(component.steps, id, &Step::id);
            if (found != component.steps.end()) {
                return &*found;
            }
        }
        return nullptr;
    }

    static const Cook* cookOf(const LogEntry& entry, const Cooked* cooked) {
        if (cooked == nullptr) {
            return nullptr;
        }
        const auto& cooks = cooked->lesson.kitchen.cooks;
        const auto found = std::ranges::find(cooks, CookId{entry.cook}, &Cook::id);
        return found == cooks.end() ? nullptr : &*found;
    }

    static std::string cookName(const LogEntry& entry, const Cooked* cooked) {
        const Cook* cook = cookOf(entry, cooked);
        return cook == nullptr ? entry.cook : cook->name;
    }

    /// None where it cannot be told.
    static Duration onTheCard(const Step& step, const LogEntry& entry, const Cooked* cooked) {
        double seconds = static_cast<double>(entry.took.inSeconds());
        if (step.timePer == TimePer::Piece) {
            const std::int64_t pieces = (step.piecesPerCover * Rational(entry.covers)).ceil();
            const std::int64_t most = step.piecesPerBatch.value_or(static_cast<int>(pieces));
            const std::int64_t loads = most > 0 ? (pieces + most - 1) / most : 1;
            seconds *= pieces > 0 ? static_cast<double>(loads) / static_cast<double>(pieces) : 0;
        }
        return Duration::seconds(
            static_cast<std::int64_t>(seconds * paceFactor(entry, cooked) + 0.5));
    }

    /// How much of the time a cook at pace 1 would have taken.
    static double paceFactor(const LogEntry& entry, const Cooked* cooked) {
        constexpr int usual = 100;
        const Cook* cook = cookOf(entry, cooked);
        if (cook == nullptr || cook->pacePercent == usual) {
            return 1;
        }
        const Expanded expanded = expand(cooked->lesson);
        const int task = expanded.taskOf({StepId{entry.step}, 0, 0});
        if (task < 0) {
            return 1;
        }
        const auto length = [&](int pacePercent) {
            const std::array share{HandShare{pacePercent, 0}};
            return static_cast<double>(
                timingOf(expanded.tasks[static_cast<std::size_t>(task)], share).length.inSeconds());
        };
        return length(cook->pacePercent) > 0 ? length(usual) / length(cook->pacePercent) : 1;
    }

    Book& book_;
    ItemId item_;
    Dish dish_;
    std::map<ItemId, std::unique_ptr<Cooked>> lessons_;
    std::optional<bool> onlyOne_;
    DishLog log_;
};

}  // namespace

Result<DishLog, BookFault> dishLog(Book& book, ItemId item) {
    auto dish = book.dish(item);
    if (!dish.ok()) {
        return dish.error();
    }
    const auto entries = cookingLog(book);
    if (!entries.ok()) {
        return entries.error();
    }
    Reader reader(book, item, std::move(dish.value()));
    for (const LogEntry& entry : entries.value()) {
        if (auto fault = reader.take(entry)) {
            return *std::move(fault);
        }
    }
    return reader.log();
}

}  // namespace rangeline
