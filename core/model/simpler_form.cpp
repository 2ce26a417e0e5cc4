#include "model/simpler_form.h"

namespace rangeline {

const char* keptFor(const Step& step) {
    if (step.plates) {
        return "plates";
    }
    if (step.afterServing) {
        return "afterServing";
    }
    if (step.hazards.target) {
        return "target";
    }
    return step.hazards.raw ? "raw" : nullptr;
}

}  // namespace rangeline
