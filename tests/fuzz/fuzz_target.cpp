// One reader under libFuzzer: RANGELINE_READER names it.

#include <cstddef>
#include <cstdint>

#include "fuzz/readers.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    for (const rangeline::test::Reader& reader : rangeline::test::readers()) {
        if (reader.name == RANGELINE_READER) {
            reader.read({reinterpret_cast<const char*>(data), size});
        }
    }
    return 0;
}
