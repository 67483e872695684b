// How much one compilation takes on: files, and findings told of them.
#pragma once

#include <cstddef>

namespace matchmark::drive {

constexpr std::size_t most_files = 10000; // that one compilation may use
constexpr std::size_t most_deep = 200;    // how long a chain of `use` may be
// Kept of one compilation, in order of place; one more finding says that there were more.
constexpr std::size_t most_findings = 5000;

} // namespace matchmark::drive
