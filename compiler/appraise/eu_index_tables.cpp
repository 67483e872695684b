// Tables of Commission Delegated Regulation (EU) 2023/1669, Annex II, table 4, and Annex IV,
// point 5 (OJ L 214, 31.8.2023, p. 9).
//
// Read in texts that restate it: the formula, the classes, the weights, the scores of depth,
// fasteners, tools and updates. The weights with a folding display were found in one such text
// alone; another recollection has 8 and 18 for the cover and the folding mechanism. The scores of
// spare parts and of information are from memory. Look into the Official Journal before relying on
// these.
#include "appraise/eu_index_tables.hpp"

#include <algorithm>
#include <initializer_list>

namespace matchmark::appraise {

namespace {

struct StepsScore {
    unsigned most;
    int score;
};

// Beyond the last: worst_score.
constexpr std::array<StepsScore, 4> depths{{{2, 500}, {5, 400}, {10, 300}, {15, 200}}};

struct PartWeight {
    IndexPart part;
    int rigid;
    int folding;
};

constexpr std::array<PartWeight, index_part_count> weights{{
    {IndexPart::battery, 30, 25},
    {IndexPart::display_assembly, 30, 25},
    {IndexPart::back_cover, 10, 9},
    {IndexPart::front_camera, 5, 4},
    {IndexPart::rear_camera, 5, 4},
    {IndexPart::charging_port, 5, 4},
    {IndexPart::mechanical_button, 5, 4},
    {IndexPart::main_microphone, 5, 4},
    {IndexPart::speaker, 5, 4},
    {IndexPart::folding_mechanism, 0, 17},
}};

struct ClassLimit {
    int least; // ten-thousandths
    char name;
};

// Annex II, table 4; what is lower is E.
constexpr std::array<ClassLimit, 4> classes{
    {{40000, 'A'}, {33500, 'B'}, {25500, 'C'}, {17500, 'D'}}};

bool has_all(const std::vector<IndexPart>& sold, const std::vector<IndexPart>& present,
             std::initializer_list<IndexPart> parts) {
    const auto among = [](const std::vector<IndexPart>& list, IndexPart part) {
        return std::find(list.begin(), list.end(), part) != list.end();
    };
    return std::all_of(parts.begin(), parts.end(),
                       [&](IndexPart part) { return among(sold, part) || !among(present, part); });
}

} // namespace

int depth_score(unsigned steps) {
    for (const StepsScore& step : depths) {
        if (steps <= step.most)
            return step.score;
    }
    return worst_score;
}

int fastening_score(Fastening fastening) {
    constexpr std::array<int, 3> scores{500, 300, 100};
    return scores[static_cast<std::size_t>(fastening)];
}

int tool_score(ToolSource source) {
    constexpr std::array<int, 5> scores{500, 400, 300, 200, 100};
    return scores[static_cast<std::size_t>(source)];
}

// Under 5 years is less than Regulation (EU) 2023/1670 asks for, and has no score of its own.
int update_score(int years) {
    if (years >= 7)
        return 500;
    return years == 6 ? 300 : 100;
}

int spare_parts_score(const std::vector<IndexPart>& sold, const std::vector<IndexPart>& present,
                      bool folding) {
    using P = IndexPart;
    const bool all = std::all_of(weights.begin(), weights.end(), [&](const PartWeight& one) {
        return part_weight(one.part, folding) == 0 || has_all(sold, present, {one.part});
    });
    if (all)
        return 500;
    const bool shell = has_all(sold, present, {P::display_assembly, P::battery, P::back_cover});
    if (shell && has_all(sold, present, {P::front_camera, P::rear_camera}))
        return 400;
    if (shell)
        return 300;
    return has_all(sold, present, {P::display_assembly, P::battery}) ? 200 : 100;
}

std::optional<int> information_score(std::string_view word) {
    const auto& words = model::information_words(); // end users, repairers, paid
    constexpr std::array<int, 3> scores{500, 300, 100};
    for (std::size_t i = 0; i < scores.size(); ++i) {
        if (words[i] == word)
            return scores[i];
    }
    return std::nullopt;
}

int part_weight(IndexPart part, bool folding) {
    for (const PartWeight& one : weights) {
        if (one.part == part)
            return folding ? one.folding : one.rigid;
    }
    return 0;
}

int index_of(const std::array<int, 6>& scores) {
    int sum = 0;
    for (std::size_t i = 0; i < scores.size(); ++i)
        sum += score_weights[i] * scores[i];
    return sum;
}

char class_of(int index) {
    for (const ClassLimit& one : classes) {
        if (index >= one.least)
            return one.name;
    }
    return 'E';
}

} // namespace matchmark::appraise
