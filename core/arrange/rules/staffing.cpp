#include "arrange/rules/staffing.h"

#include <algorithm>

namespace rangeline::rules {
namespace {

/// More make a formulation that is too large to be searched.
constexpr std::size_t mostWays = 128;

class Sets {
  public:
    Sets(const std::vector<int>& cooks, std::vector<Sharing>& ways) : cooks_(cooks), ways_(ways) {}

    /// False once there are too many.
    bool addFrom(std::size_t from, int count) {
        if (count == 0) {
            if (ways_.size() == mostWays) {
                return false;
            }
            ways_.push_back({set_, std::vector<int>(set_.size(), 0)});
            return true;
        }
        for (std::size_t i = from; i + static_cast<std::size_t>(count) <= cooks_.size(); ++i) {
            set_.push_back(cooks_[i]);
            const bool room = addFrom(i + 1, count - 1);
            set_.pop_back();
            if (!room) {
                return false;
            }
        }
        return true;
    }

  private:
    const std::vector<int>& cooks_;
    std::vector<Sharing>& ways_;
    std::vector<int> set_;
};

/// In how many ways so many portions can be given to so many cooks; more than mostWays are not
/// counted on.
std::size_t distributions(std::size_t cooks, std::size_t portions) {
    std::size_t ways = 1;
    for (std::size_t i = 1; i <= portions && ways <= mostWays; ++i) {
        ways = ways * (cooks + i - 1) / i;
    }
    return ways;
}

/// Gives the pieces out in portions; the last cook who gets any gets the rest.
class Splits {
  public:
    Splits(const std::vector<int>& cooks, int pieces, int portions, std::vector<Sharing>& ways)
        : cooks_(cooks),
          pieces_(pieces),
          portion_((pieces + portions - 1) / portions),
          portions_((pieces + portion_ - 1) / portion_),
          ways_(ways) {}

    void add() { addFrom(0, portions_, {}); }

  private:
    void addFrom(std::size_t cook, int left, const Sharing& given) {
        if (cook == cooks_.size()) {
            return;
        }
        addFrom(cook + 1, left, given);
        Sharing more = given;
        more.cooks.push_back(cooks_[cook]);
        more.pieces.push_back(0);
        for (int portions = 1; portions < left; ++portions) {
            more.pieces.back() = portions * portion_;
            addFrom(cook + 1, left - portions, more);
        }
        if (!given.cooks.empty()) {
            more.pieces.back() = pieces_ - (portions_ - left) * portion_;
            ways_.push_back(more);
        }
    }

    const std::vector<int>& cooks_;
    int pieces_;
    int portion_;
    int portions_;
    std::vector<Sharing>& ways_;
};

}  // namespace

Sharings setsOfCooks(const std::vector<int>& cooks, int together) {
    Sharings sharings;
    sharings.all = Sets(cooks, sharings.ways).addFrom(0, together);
    return sharings;
}

Sharings splitsOfPieces(const std::vector<int>& cooks, int pieces) {
    Sharings sharings = setsOfCooks(cooks, 1);
    if (cooks.size() < 2 || pieces < 2) {
        return sharings;
    }
    int portions = 1;
    while (portions < pieces &&
           distributions(cooks.size(), static_cast<std::size_t>(portions) + 1) <= mostWays) {
        ++portions;
    }
    Splits(cooks, pieces, portions, sharings.ways).add();
    sharings.all = sharings.all && portions == pieces;
    return sharings;
}

}  // namespace rangeline::rules
