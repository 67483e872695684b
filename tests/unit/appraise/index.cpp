// The index of repair: what is not declared makes a range, what is declared narrows it.
#include "appraise/eu_index.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <string>

using namespace matchmark;
using appraise::IndexFacts;
using appraise::IndexPart;
using appraise::PartFacts;

namespace {

PartFacts shallow(const char* title) {
    PartFacts facts;
    facts.title = title;
    facts.steps = 2;
    return facts;
}

std::vector<PartFacts>& battery(IndexFacts& facts) {
    return facts.parts[static_cast<std::size_t>(IndexPart::battery)];
}

bool any_has(const std::vector<std::string>& lines, const char* words) {
    return std::any_of(lines.begin(), lines.end(), [&](const std::string& line) {
        return line.find(words) != std::string::npos;
    });
}

} // namespace

TEST_CASE("a device that says nothing may lie anywhere") {
    IndexFacts facts;
    facts.parts_declared = false;
    const auto index = appraise::repair_index(facts);
    CHECK(index.lowest == 10000);
    CHECK(index.highest == 50000);
    CHECK(index.lowest_class == 'E');
    CHECK(index.highest_class == 'A');
    CHECK(index.undeclared.size() == 4);
}

TEST_CASE("each thing declared narrows the range by its weight") {
    IndexFacts facts;
    battery(facts).push_back(shallow("cell"));
    facts.information = "end-users";
    const auto index = appraise::repair_index(facts);
    // Spare parts and updates are open: 2 x 0.15 x (5 - 1).
    CHECK(index.highest - index.lowest == 12000);
    CHECK(index.undeclared.size() == 2);
    CHECK(any_has(index.notes, "No item counts as display assembly"));
}

TEST_CASE("a part that cannot be brought out scores lowest, one that is not known is open") {
    IndexFacts facts;
    battery(facts).push_back(shallow("cell"));
    battery(facts).front().reached = false;
    auto row = appraise::repair_index(facts).parts.front();
    CHECK(row.depth == guide::ScoreRange{100, 100});
    CHECK(row.tools == guide::ScoreRange{100, 100});
    CHECK(row.depth_because == "no way out");
    battery(facts).front().reached = true;
    battery(facts).front().known = false;
    row = appraise::repair_index(facts).parts.front();
    CHECK(row.depth == guide::ScoreRange{100, 500});
}

TEST_CASE("a tool without a class leaves the score open below what a basic tool gives") {
    IndexFacts facts;
    battery(facts).push_back(shallow("cell"));
    battery(facts).front().undeclared_tool = "wobble stick";
    auto index = appraise::repair_index(facts);
    CHECK(index.parts.front().tools == guide::ScoreRange{100, 400});
    CHECK(any_has(index.undeclared, "wobble stick"));
    battery(facts).front().tool = appraise::ToolSource::available;
    index = appraise::repair_index(facts);
    CHECK(index.parts.front().tools == guide::ScoreRange{100, 100});
}

TEST_CASE("of several instances each score takes the lowest, and says which it is") {
    IndexFacts facts;
    battery(facts) = {shallow("left cell"), shallow("right cell")};
    battery(facts).front().fastening = appraise::Fastening::removable;
    battery(facts).back().steps = 7;
    const auto row = appraise::repair_index(facts).parts.front();
    CHECK(row.items == "left cell and right cell");
    CHECK(row.fasteners == guide::ScoreRange{100, 100});
    CHECK(row.fasteners_because == "left cell: removable, not reusable");
    CHECK(row.depth == guide::ScoreRange{300, 300});
    CHECK(row.depth_because == "right cell: 7 steps");
}

TEST_CASE("five steps are added for an authorisation, and told") {
    IndexFacts facts;
    battery(facts).push_back(shallow("cell"));
    battery(facts).front().authorised_remotely = true;
    const auto row = appraise::repair_index(facts).parts.front();
    CHECK(row.depth == guide::ScoreRange{300, 300});
    CHECK(row.depth_because == "7 steps, 5 of them for the remote authorisation");
}

TEST_CASE("whole numbers are written as decimals") {
    CHECK(guide::ten_thousandths(33500) == "3.35");
    CHECK(guide::ten_thousandths(37350) == "3.735");
    CHECK(guide::ten_thousandths(50000) == "5.00");
    CHECK(guide::hundredths(305) == "3.05");
}
