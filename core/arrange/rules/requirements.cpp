#include "arrange/rules/requirements.h"

namespace rangeline::rules {

engine::Literal RequirementLiterals::of(Requirement requirement) {
    if (!switched()) {
        return engine_.trueLiteral();
    }
    const auto found = literals_.find(requirement);
    if (found != literals_.end()) {
        return found->second;
    }
    all_.push_back(requirement);
    return literals_.emplace(requirement, engine_.newBoolean()).first->second;
}

}  // namespace rangeline::rules
