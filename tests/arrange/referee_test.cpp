// MiniZinc with Gecode as an outside referee: on small random kitchens both must say the same
// latest start, or both that there is no plan. The kitchens hold only what a page of MiniZinc says
// exactly: alike burners, pans and cooks, pools, uses, keeping, waits, and an opening time.

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <random>
#include <sstream>

#include "arrange/explain.h"
#include "arrange/verified.h"
#include "base/random.h"
#include "support/lesson_builder.h"
#include "support/random_lesson.h"
#include "support/run_program.h"

namespace rangeline::test {
namespace {

constexpr std::int64_t horizon = 150;  // minutes before serving

/// A lesson and the same in MiniZinc, made together line by line.
class SmallKitchen {
  public:
    explicit SmallKitchen(Random& random) : random_(random) {
        burners_ = random.between(1, 2);
        pans_ = random.between(1, 2);
        cooks_ = random.between(1, 2);
        shelf_ = random.between(2, 3);
        for (std::int64_t b = 0; b < burners_; ++b) {
            builder_.burner("burner" + std::to_string(b));
        }
        builder_.ware("pan", "saute-pan", static_cast<int>(pans_));
        builder_.pool("shelf", "fridge-shelf", static_cast<int>(shelf_));
        if (cooks_ == 2) {
            builder_.cook("ben");
        }
        const auto count = static_cast<int>(random.between(4, 7));
        for (int i = 0; i < count; ++i) {
            addStep(i, i + 1 == count);
        }
        addOpening();
        addResources();
    }

    const Lesson& lesson() const { return builder_.lesson; }

    std::string model() const {
        std::ostringstream out;
        out << "include \"cumulative.mzn\";\n"
            << "array[0.." << length_.size() - 1 << "] of var -" << horizon << "..0: s;\n"
            << "array[0.." << length_.size() - 1 << "] of int: d = array1d(0.."
            << length_.size() - 1 << ", " << list(length_) << ");\n"
            << "var -" << horizon << "..0: first;\n"
            << "constraint forall(i in index_set(s))(s[i] + d[i] <= 0 /\\ first <= s[i]);\n"
            << rules_.str() << "solve :: int_search(s, first_fail, indomain_max) maximize first;\n"
            << "output [\"first \\(first)\\n\"];\n";
        return out.str();
    }

  private:
    static std::string name(int i) { return "step" + std::to_string(i); }
    static std::string list(const std::vector<std::int64_t>& values) {
        std::string text = "[";
        for (const std::int64_t value : values) {
            text += std::to_string(value) + ',';
        }
        return text + ']';
    }
    std::string start(int i) const { return "s[" + std::to_string(i) + ']'; }
    std::string end(int i) const {
        return start(i) + " + " + std::to_string(length_[static_cast<std::size_t>(i)]);
    }

    void addStep(int i, bool last) {
        length_.push_back(random_.between(2, 12));
        const Duration length = Duration::minutes(length_.back());
        const bool hand = last || random_.chance(0.5);
        Step& step = builder_.step(name(i), {hand ? hands(length) : away(length)});
        onBurner_.push_back(!last && random_.chance(0.5));
        onShelf_.push_back(random_.chance(0.3) ? random_.between(1, 2) : 0);
        byHand_.push_back(hand);
        users_.emplace_back();
        if (onBurner_.back()) {
            step.heat = rangeline::test::onBurner();
            step.wares = {fresh("saute-pan")};
        }
        if (onShelf_.back() > 0) {
            step.pools = {{{"shelf"}, static_cast<int>(onShelf_.back())}};
        }
        if (last) {
            step.plates = true;
            const std::int64_t hold = random_.between(0, 4);
            builder_.lesson.servings.front().dish.platesHold = Duration::minutes(hold);
            rules_ << "constraint " << end(i) << " >= " << -hold << ";\n";
        }
        for (int before = 0; before < i; ++before) {
            tie(before, i, last);
        }
    }

    void tie(int before, int i, bool last) {
        if (random_.chance(last ? 0.6 : 0.3)) {
            builder_.uses(name(i), name(before));
            users_[static_cast<std::size_t>(before)].push_back(i);
            rules_ << "constraint " << start(i) << " >= " << end(before) << ";\n";
            if (keeps_.contains(before) || random_.chance(0.4)) {
                keep(before);
            }
        } else if (random_.chance(0.15)) {
            const std::int64_t least = random_.between(0, 8);
            Link& link = builder_.link(name(before), name(i), Duration::minutes(least));
            rules_ << "constraint " << start(i) << " >= " << end(before) << " + " << least << ";\n";
            if (random_.chance(0.5)) {
                const std::int64_t most = least + random_.between(0, 8);
                link.most = Duration::minutes(most);
                rules_ << "constraint " << start(i) << " <= " << end(before) << " + " << most
                       << ";\n";
            }
        }
    }

    /// Limits what is kept; its rules follow when all users are known.
    void keep(int made) {
        if (!keeps_.contains(made)) {
            keeps_[made] = random_.between(0, 15);
            builder_.get(name(made)).after.atRoom = Duration::minutes(keeps_[made]);
        }
    }

    void addOpening() {
        if (random_.chance(0.5)) {
            const std::int64_t opens = random_.between(15, 60);
            builder_.lesson.head.kitchenOpens = minute(-opens);
            rules_ << "constraint first >= " << -opens << ";\n";
        }
    }

    void addResources() {
        for (const auto& [made, limit] : keeps_) {
            for (const int user : users_[static_cast<std::size_t>(made)]) {
                rules_ << "constraint " << start(user) << " <= " << end(made) << " + " << limit
                       << ";\n";
            }
        }
        std::string hand;
        std::string burner;
        std::string held;
        for (std::size_t i = 0; i < length_.size(); ++i) {
            const int step = static_cast<int>(i);
            hand += std::to_string(byHand_[i]) + ',';
            burner += std::to_string(onBurner_[i]) + ',';
            // The pan is taken until all that its food goes into has begun.
            std::string until = "[" + end(step) + ',';
            for (const int user : users_[i]) {
                until += start(user) + ',';
            }
            held += "max(" + until + "]) - " + start(step) + ',';
        }
        rules_ << "array[index_set(s)] of var 0.." << horizon << ": held = array1d(index_set(s), ["
               << held << "]);\n"
               << "array[index_set(s)] of int: hand = array1d(index_set(s), [" << hand << "]);\n"
               << "array[index_set(s)] of int: burner = array1d(index_set(s), [" << burner
               << "]);\n"
               << "array[index_set(s)] of int: shelf = array1d(index_set(s), " << list(onShelf_)
               << ");\n"
               << "constraint cumulative(s, d, hand, " << cooks_ << ");\n"
               << "constraint cumulative(s, d, burner, " << burners_ << ");\n"
               << "constraint cumulative(s, held, burner, " << pans_ << ");\n"
               << "constraint cumulative(s, d, shelf, " << shelf_ << ");\n";
    }

    Random& random_;
    LessonBuilder builder_;
    std::int64_t burners_ = 0, pans_ = 0, cooks_ = 0, shelf_ = 0;
    std::vector<std::int64_t> length_;  ///< by step, and so on
    std::vector<std::int64_t> onShelf_;
    std::vector<bool> onBurner_;
    std::vector<bool> byHand_;
    std::vector<std::vector<int>> users_;
    std::map<int, std::int64_t> keeps_;  ///< limit, by step
    std::ostringstream rules_;
};

/// The latest start that MiniZinc proves; nothing if it proves that there is none.
std::optional<Instant> latestByMiniZinc(const std::string& model) {
    const auto file = std::filesystem::temp_directory_path() /
                      ("rangeline-referee-" + std::to_string(std::random_device{}()) + ".mzn");
    std::ofstream(file) << model;
    const std::string output =
        outputOf("minizinc --solver gecode --time-limit 20000 " + file.string() + " 2>/dev/null");
    std::filesystem::remove(file);
    if (output.find("UNSATISFIABLE") != std::string::npos) {
        return std::nullopt;
    }
    EXPECT_NE(output.find("=========="), std::string::npos) << "no proof: " << output << model;
    const std::size_t at = output.rfind("first ");
    return minute(at == std::string::npos ? 1 : std::atoll(output.c_str() + at + 6));
}

TEST(ArrangeReferee, SmallKitchensStartAsMiniZincSays) {
    if (std::system("minizinc --version > /dev/null 2>&1") != 0) {
        GTEST_SKIP() << "minizinc is not installed";
    }
    const std::uint64_t seed = seedOr(20267);
    int possible = 0;
    int impossible = 0;
    for (int i = 0; i < 60; ++i) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed << " kitchen " << i);
        Random random(seed * 1000 + static_cast<std::uint64_t>(i));
        const SmallKitchen kitchen(random);
        const ArrangeResult result = arrangeVerified(kitchen.lesson());
        const auto latest = latestByMiniZinc(kitchen.model());
        if (latest) {
            ++possible;
            ASSERT_EQ(result.status, ArrangeStatus::Proved) << kitchen.model();
            ASSERT_EQ(*result.last.best, *latest) << kitchen.model();
        } else {
            ++impossible;
            ASSERT_EQ(result.status, ArrangeStatus::NotPossible) << kitchen.model();
            EXPECT_EQ(explainNotPossible(kitchen.lesson()).status, ExplainStatus::Smallest);
        }
    }
    EXPECT_GT(possible, 20);
    EXPECT_GT(impossible, 10);
}

}  // namespace
}  // namespace rangeline::test
