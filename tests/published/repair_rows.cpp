// How easy to repair: the index of Regulation (EU) 2023/1669, its limits, and three indices worked
// out by hand; steps as Commission Decision (EU) 2016/1371 counts them.
#include "published/subjects.hpp"

#include "appraise/eu_index.hpp"

#include <fmt/core.h>

#include <array>
#include <string>

namespace matchmark::published {

namespace {

using appraise::Fastening;
using appraise::IndexFacts;
using appraise::IndexPart;
using appraise::PartFacts;
using appraise::ToolSource;

constexpr Origin annex{"Regulation (EU) 2023/1669, Annex IV, point 5, as restated"};
constexpr Origin classes{"Regulation (EU) 2023/1669, Annex II, table 4, as restated"};
constexpr Origin recalled{
    "Regulation (EU) 2023/1669, Annex IV, point 5, spare parts and information", Reading::memory};
// Found once, in a library that restates the Journal; another recollection has 8 and 18.
constexpr Origin folding_weights{
    "Regulation (EU) 2023/1669, Annex IV, weights with a folding display", Reading::memory};
constexpr Origin by_hand{"Three indices worked out by hand from the annex"};

using P = IndexPart;
constexpr std::array all_parts{P::battery,           P::display_assembly, P::back_cover,
                               P::front_camera,      P::rear_camera,      P::charging_port,
                               P::mechanical_button, P::main_microphone,  P::speaker,
                               P::folding_mechanism};

PartFacts part(unsigned steps, Fastening fastening, ToolSource tool) {
    PartFacts facts;
    facts.title = "part";
    facts.steps = steps;
    facts.fastening = fastening;
    facts.tool = tool;
    return facts;
}

std::vector<PartFacts>& of(IndexFacts& facts, IndexPart index) {
    return facts.parts[static_cast<std::size_t>(index)];
}

double value(int whole, int scale) { return static_cast<double>(whole) / scale; }

void add_depths(Table& table) {
    constexpr std::array<std::array<unsigned, 2>, 12> rows{{{0, 5},
                                                            {1, 5},
                                                            {2, 5},
                                                            {3, 4},
                                                            {5, 4},
                                                            {6, 3},
                                                            {10, 3},
                                                            {11, 2},
                                                            {15, 2},
                                                            {16, 1},
                                                            {17, 1},
                                                            {400, 1}}};
    for (const auto& [steps, score] : rows)
        expect(table, annex, fmt::format("depth of {} steps scores", steps), score,
               value(appraise::depth_score(steps), 100), exactly);
}

void add_other_scores(Table& table) {
    const auto row = [&](const char* what, int score, int computed) {
        expect(table, annex, what, score, value(computed, 100), exactly);
    };
    row("reusable fasteners", 5, appraise::fastening_score(Fastening::reusable));
    row("resupplied fasteners", 3, appraise::fastening_score(Fastening::resupplied));
    row("removable fasteners", 1, appraise::fastening_score(Fastening::removable));
    row("no tools", 5, appraise::tool_score(ToolSource::none));
    row("basic tools", 4, appraise::tool_score(ToolSource::basic));
    row("tools with the spare part", 3, appraise::tool_score(ToolSource::supplied_with_spare));
    row("tools with the product", 2, appraise::tool_score(ToolSource::supplied_with_product));
    row("tools to be bought", 1, appraise::tool_score(ToolSource::available));
    row("updates for 8 years", 5, appraise::update_score(8));
    row("updates for 7 years", 5, appraise::update_score(7));
    row("updates for 6 years", 3, appraise::update_score(6));
    row("updates for 5 years", 1, appraise::update_score(5));
}

void add_spares(Table& table) {
    const std::vector<P> has(all_parts.begin(), all_parts.begin() + 9);
    const auto row = [&](const char* what, int score, const std::vector<P>& sold) {
        expect(table, recalled, what, score,
               value(appraise::spare_parts_score(sold, has, false), 100), exactly);
    };
    row("spare parts: all listed", 5, has);
    row("spare parts: display, battery, cover, cameras", 4,
        {P::display_assembly, P::battery, P::back_cover, P::front_camera, P::rear_camera});
    row("spare parts: display, battery, cover, one camera", 3,
        {P::display_assembly, P::battery, P::back_cover, P::front_camera});
    row("spare parts: display, battery, cover", 3,
        {P::display_assembly, P::battery, P::back_cover});
    row("spare parts: display and battery", 2, {P::display_assembly, P::battery});
    row("spare parts: display", 1, {P::display_assembly});
    const auto information = [&](const char* word, int score) {
        const auto computed = appraise::information_score(word);
        expect(table, recalled, fmt::format("information: {}", word), score,
               computed ? std::optional(value(*computed, 100)) : std::nullopt, exactly);
    };
    information("end-users", 5);
    information("repairers", 3);
    information("paid", 1);
}

void add_weights(Table& table) {
    const std::array<int, 10> rigid{30, 30, 10, 5, 5, 5, 5, 5, 5, 0};
    const std::array<int, 10> folding{25, 25, 9, 4, 4, 4, 4, 4, 4, 17};
    int rigid_sum = 0;
    int folding_sum = 0;
    for (std::size_t i = 0; i < all_parts.size(); ++i) {
        const int of_rigid = appraise::part_weight(all_parts[i], false);
        const int of_folding = appraise::part_weight(all_parts[i], true);
        expect(table, annex, fmt::format("weight of part {}", i + 1), rigid[i], of_rigid, exactly);
        expect(table, folding_weights, fmt::format("weight of part {}, folding", i + 1), folding[i],
               of_folding, exactly);
        rigid_sum += of_rigid;
        folding_sum += of_folding;
    }
    expect(table, annex, "weights of the parts together", 100, rigid_sum, exactly);
    expect(table, folding_weights, "weights of the parts together, folding", 100, folding_sum,
           exactly);
    int scores = 0;
    for (const int weight : appraise::score_weights)
        scores += weight;
    expect(table, annex, "weights of the scores together", 100, scores, exactly);
}

void add_index_classes(Table& table) {
    constexpr std::array<std::pair<int, char>, 10> rows{{{50000, 'A'},
                                                         {40000, 'A'},
                                                         {39999, 'B'},
                                                         {33500, 'B'},
                                                         {33499, 'C'},
                                                         {25500, 'C'},
                                                         {25499, 'D'},
                                                         {17500, 'D'},
                                                         {17499, 'E'},
                                                         {10000, 'E'}}};
    for (const auto& [index, name] : rows)
        expect_same(table, classes, fmt::format("class of R = {:.4f}", value(index, 10000)),
                    std::string(1, name), std::string(1, appraise::class_of(index)));
    // 0.25 x 2 + 0.15 x (5 + 5 + 1 + 3 + 5) = 0.50 + 2.85 = 3.35; in doubles it is 3.3499...
    const int first = appraise::index_of({200, 500, 500, 100, 300, 500});
    expect(table, classes, "R of scores 2, 5, 5, 1, 3, 5", 3.35, value(first, 10000), exactly);
    expect_same(table, classes, "its class", "B", std::string(1, appraise::class_of(first)));
    // 0.25 x 1 + 0.15 x (3 + 4 + 1 + 1 + 1) = 0.25 + 1.50 = 1.75
    const int second = appraise::index_of({100, 300, 400, 100, 100, 100});
    expect(table, classes, "R of scores 1, 3, 4, 1, 1, 1", 1.75, value(second, 10000), exactly);
    expect_same(table, classes, "its class", "D", std::string(1, appraise::class_of(second)));
}

// Steps: battery 8, display 4, cover 2, front camera 11, rear camera 11, port 16, button 12,
// microphone 16, speaker 9. Scores of depth 3, 4, 5, 2, 2, 1, 2, 1, 3:
//   0.30 x 3 + 0.30 x 4 + 0.10 x 5 + 0.05 x (2 + 2 + 1 + 2 + 1 + 3) = 0.9 + 1.2 + 0.5 + 0.55 = 3.15
// Fasteners: battery, display and cover resupplied, the others reusable:
//   0.70 x 3 + 0.30 x 5 = 3.60
// Tools: port, button and microphone to be bought, the others basic: 0.15 x 1 + 0.85 x 4 = 3.55
IndexFacts rigid_facts() {
    IndexFacts facts;
    const std::array<unsigned, 9> steps{8, 4, 2, 11, 11, 16, 12, 16, 9};
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const bool bought = i == 5 || i == 6 || i == 7;
        of(facts,
           all_parts[i]) = {part(steps[i], i < 3 ? Fastening::resupplied : Fastening::reusable,
                                 bought ? ToolSource::available : ToolSource::basic)};
    }
    facts.update_years = 7;
    facts.spares.emplace(all_parts.begin(), all_parts.begin() + 9);
    facts.information = "repairers";
    return facts;
}

void expect_index(Table& table, const std::string& what, const IndexFacts& facts,
                  const std::array<double, 3>& scores, double index, char name) {
    const guide::RepairIndex result = appraise::repair_index(facts);
    for (std::size_t i = 0; i < scores.size(); ++i)
        expect(table, by_hand, what + ", " + result.scores[i].symbol, scores[i],
               value(result.scores[i].score.lowest, 100), exactly);
    expect(table, by_hand, what + ", R", index, value(result.lowest, 10000), exactly);
    expect(table, by_hand, what + ", R at most", index, value(result.highest, 10000), exactly);
    expect_same(table, by_hand, what + ", class", std::string(1, name),
                std::string(1, result.lowest_class));
}

// Steps: battery 3, display 6, cover 1, front camera 7, rear camera 5, port 10, button 15,
// microphone 9, speaker 4, folding mechanism 17. Scores of depth 4, 3, 5, 3, 4, 3, 2, 3, 4, 1:
//   0.25 x 4 + 0.25 x 3 + 0.09 x 5 + 0.04 x (3 + 4 + 3 + 2 + 3 + 4) + 0.17 x 1
//   = 1.00 + 0.75 + 0.45 + 0.76 + 0.17 = 3.13
// Fasteners: display removable, cover and folding mechanism resupplied, the others reusable:
//   0.25 x 5 + 0.25 x 1 + 0.09 x 3 + 0.24 x 5 + 0.17 x 3 = 1.25 + 0.25 + 0.27 + 1.20 + 0.51 = 3.48
// Tools: cover none, folding mechanism to be bought, display with the spare part, the others basic:
//   0.25 x 4 + 0.25 x 3 + 0.09 x 5 + 0.24 x 4 + 0.17 x 1 = 1.00 + 0.75 + 0.45 + 0.96 + 0.17 = 3.33
// Spare parts display, battery, cover: 3. Updates 6 years: 3. Information to end users: 5.
//   R = 0.25 x 3.13 + 0.15 x (3.48 + 3.33 + 3 + 3 + 5) = 0.7825 + 2.6715 = 3.454, class B
IndexFacts folding_facts() {
    IndexFacts facts;
    facts.folding = true;
    const std::array<unsigned, 10> steps{3, 6, 1, 7, 5, 10, 15, 9, 4, 17};
    for (std::size_t i = 0; i < steps.size(); ++i)
        of(facts, all_parts[i]) = {part(steps[i], Fastening::reusable, ToolSource::basic)};
    of(facts, P::display_assembly).front().fastening = Fastening::removable;
    of(facts, P::back_cover).front().fastening = Fastening::resupplied;
    of(facts, P::folding_mechanism).front().fastening = Fastening::resupplied;
    of(facts, P::display_assembly).front().tool = ToolSource::supplied_with_spare;
    of(facts, P::back_cover).front().tool = ToolSource::none;
    of(facts, P::folding_mechanism).front().tool = ToolSource::available;
    facts.update_years = 6;
    facts.spares = std::vector{P::battery, P::display_assembly, P::back_cover};
    facts.information = "end-users";
    return facts;
}

void add_indices(Table& table) {
    // 0.25 x 3.15 + 0.15 x (3.60 + 3.55 + 5 + 5 + 3) = 0.7875 + 3.0225 = 3.81
    expect_index(table, "rigid", rigid_facts(), {3.15, 3.60, 3.55}, 3.81, 'B');
    // 13 steps to the battery score 2: S_DD = 3.15 - 0.30 = 2.85, R = 3.81 - 0.075 = 3.735
    IndexFacts authorised = rigid_facts();
    of(authorised, P::battery).front().authorised_remotely = true;
    expect_index(table, "rigid, battery authorised remotely", authorised, {2.85, 3.60, 3.55}, 3.735,
                 'B');
    expect_index(table, "folding", folding_facts(), {3.13, 3.48, 3.33}, 3.454, 'B');
}

void add_rules(Table& table) {
    // A second button, deeper and bought a tool for: 16 steps, 1 instead of 2, weight 0.05.
    IndexFacts several = rigid_facts();
    of(several, P::mechanical_button)
        .push_back(part(16, Fastening::removable, ToolSource::available));
    expect_index(table, "the lower of two buttons", several, {3.10, 3.40, 3.55}, 3.7675, 'B');
    // No speaker: 5 instead of 3, 5 and 4, weight 0.05.
    IndexFacts missing = rigid_facts();
    of(missing, P::speaker).clear();
    expect_index(table, "without a speaker", missing, {3.25, 3.60, 3.60}, 3.8425, 'B');
    IndexFacts best;
    best.update_years = 7;
    best.spares.emplace();
    best.information = "end-users";
    expect_index(table, "all scores 5", best, {5, 5, 5}, 5.00, 'A');
    IndexFacts worst = rigid_facts();
    for (std::size_t i = 0; i < 9; ++i)
        worst.parts[i] = {part(16, Fastening::removable, ToolSource::available)};
    worst.update_years = 5;
    worst.spares = std::vector{P::display_assembly};
    worst.information = "paid";
    expect_index(table, "all scores 1", worst, {1, 1, 1}, 1.00, 'E');
}

} // namespace

void add_repair(Table& table) {
    add_depths(table);
    add_other_scores(table);
    add_spares(table);
    add_weights(table);
    add_index_classes(table);
    add_indices(table);
    add_rules(table);
}

} // namespace matchmark::published
