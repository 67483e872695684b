// What the fuzz targets share: a demand that stops the run, and bytes taken as choices.
//
// Each file of this folder is a libFuzzer target: it defines LLVMFuzzerTestOneInput. The sanitizers
// stop at a wrong memory access or undefined behaviour; `demand` stops at a broken promise.
#pragma once

#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace matchmark::fuzz {

inline std::string_view text_of(const std::uint8_t* data, std::size_t size) {
    return {reinterpret_cast<const char*>(data), size};
}

// The promise in words, so that the report of a crash says what was broken.
inline void demand(bool kept, const char* promise) {
    if (kept)
        return;
    std::fprintf(stderr, "broken promise: %s\n", promise);
    std::abort();
}

// Choices decoded from the input; after its end, all are the first.
struct Choices {
    std::string_view bytes;

    std::size_t below(std::size_t count) {
        if (bytes.empty() || count == 0)
            return 0;
        const auto byte = static_cast<unsigned char>(bytes.front());
        bytes.remove_prefix(1);
        return byte % count;
    }
    bool one_in(std::size_t count) { return below(count) == count - 1; }
    [[nodiscard]] bool more() const { return !bytes.empty(); }
};

} // namespace matchmark::fuzz
