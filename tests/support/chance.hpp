// Chance for tests: the same choices on every machine for the same seed.
#pragma once

#include <cstddef>
#include <random>

namespace matchmark::support {

struct Chance {
    std::mt19937 engine;
    std::size_t below(std::size_t n) { return n == 0 ? 0 : engine() % n; }
    bool one_in(std::size_t n) { return below(n) == 0; }
};

} // namespace matchmark::support
