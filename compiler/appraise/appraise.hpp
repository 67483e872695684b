// How easy a device is to repair: from the least way to each part to what a reader is told.
//
// The ways in are given; nothing here looks for one. Depth is counted after Commission Decision
// (EU) 2016/1371 (steps.hpp); the index of phones and tablets is that of Regulation (EU) 2023/1669
// (eu_index.hpp).
#pragma once

#include "appraise/steps.hpp"
#include "guide/appraisal.hpp"

#include <string>
#include <vector>

namespace matchmark::appraise {

// The least way that brings one part out.
struct PartWay {
    model::ItemId part;
    guide::WayFound found = guide::WayFound::unknown;
    std::vector<OrderedAct> acts; // in an order that the bench allows
    std::vector<std::string> why_not;
    std::vector<model::ItemId> always_moved; // items that every way in moves
    double seconds_apart = 0;
    double seconds_back = 0;
    double waiting_apart = 0;
    double waiting_back = 0;
    double at_least_seconds = 0;
    bool shown = true; // false: counted in the index alone
};

// `ways` in order of declaration.
guide::Appraisal appraise(const bench::Bench& bench, const std::vector<PartWay>& ways);

} // namespace matchmark::appraise
