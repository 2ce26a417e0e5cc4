#pragma once
// The readers of what comes from outside, as one table for fuzzing: each takes any bytes, reads
// them and checks what must hold of whatever it understood. A broken promise aborts.

#include <span>
#include <string_view>

namespace rangeline::test {

struct Reader {
    std::string_view name;  ///< also that of the folder of its corpus
    void (*read)(std::string_view bytes);
};

std::span<const Reader> readers();

}  // namespace rangeline::test
