#pragma once
// Which literal stands for which requirement.

#include <map>
#include <vector>

#include "arrange/engine/engine.h"
#include "arrange/requirement.h"

namespace rangeline::rules {

/// With `Held` every requirement simply holds. With `Switched` each has a literal of its own and
/// holds where that is true, so that they can be assumed one by one; costs propagation.
enum class Requirements : std::uint8_t { Held, Switched };

class RequirementLiterals {
  public:
    RequirementLiterals(engine::Engine& engine, Requirements how) : engine_(engine), how_(how) {}

    /// The same requirement gives the same literal.
    engine::Literal of(Requirement requirement);
    bool switched() const { return how_ == Requirements::Switched; }
    /// Nothing can be done about this one: the lesson is not possible whatever the others.
    void lack(Requirement requirement) { lacking_.push_back(requirement); }

    const std::vector<Requirement>& lacking() const { return lacking_; }
    /// In the order in which they were first asked for.
    const std::vector<Requirement>& all() const { return all_; }

  private:
    engine::Engine& engine_;
    Requirements how_;
    std::map<Requirement, engine::Literal> literals_;
    std::vector<Requirement> all_;
    std::vector<Requirement> lacking_;
};

}  // namespace rangeline::rules
