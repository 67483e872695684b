// The repairability index of Regulation (EU) 2023/1669 as numbers: weights, limits, scores.
//
// Whole numbers alone. With doubles an index that is 3.35 exactly comes out below it, and falls
// into the next class.
#pragma once

#include "model/index_words.hpp"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace matchmark::appraise {

using model::IndexPart;

constexpr std::size_t index_part_count = 10;
constexpr int best_score = 500; // hundredths
constexpr int worst_score = 100;

// Annex IV, point 5, and Annex I: what a fastener leaves when it is undone.
enum class Fastening : unsigned char {
    reusable,   // wholly reusable, neither product nor fastener harmed
    resupplied, // removable, and new ones come with the spare part at no cost
    removable,  // not reusable, and what its removal leaves does not preclude reassembly
};

enum class ToolSource : unsigned char {
    none,
    basic, // on the list of Annex I, point 50
    supplied_with_spare,
    supplied_with_product,
    available, // to be bought
};

// All scores in hundredths.
int depth_score(unsigned steps);
int fastening_score(Fastening fastening);
int tool_score(ToolSource source);
int update_score(int years);
// `sold`: the parts that anyone can buy; `present`: those that the product has.
int spare_parts_score(const std::vector<IndexPart>& sold, const std::vector<IndexPart>& present,
                      bool folding);
// By the word behind `information`; nothing of another word.
std::optional<int> information_score(std::string_view word);

// Of a part in S_DD, S_F and S_T, in hundredths; 0: it does not count in such a product.
int part_weight(IndexPart part, bool folding);

// Weights of the six scores, in hundredths: S_DD, S_F, S_T, S_SP, S_SU, S_RI.
constexpr std::array<int, 6> score_weights{25, 15, 15, 15, 15, 15};
constexpr std::array<std::string_view, 6> score_symbols{"S_DD", "S_F",  "S_T",
                                                        "S_SP", "S_SU", "S_RI"};
constexpr std::array<std::string_view, 6> score_names{
    "Disassembly depth", "Fasteners",      "Tools",
    "Spare parts",       "System updates", "Repair information"};

// Steps added where a new part works only after a remote authorisation.
constexpr unsigned authorisation_steps = 5;

// R in ten-thousandths, of the six scores in hundredths.
int index_of(const std::array<int, 6>& scores);
// 'A' to 'E'.
char class_of(int index);

} // namespace matchmark::appraise
