// Plans the least way to many parts of a device, and what it takes to put each back.
#pragma once

#include "appraise/appraise.hpp"
#include "bench/bench.hpp"

#include <optional>
#include <vector>

namespace matchmark::drive {

struct WantedPart {
    model::ItemId item;
    bool shown = true; // as in appraise::PartWay
};

// In the order of `parts`, whatever the number of threads (0: as many as the machine has).
// `seconds`: for each part; none: as long as it takes.
std::vector<appraise::PartWay> part_ways(const bench::Bench& bench,
                                         const std::vector<WantedPart>& parts,
                                         std::optional<double> seconds, unsigned threads = 0);

} // namespace matchmark::drive
