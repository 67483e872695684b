// Devices made at random, and rows of acts on them of which mostly the last is refused.
#pragma once

#include "model/model.hpp"
#include "support/chance.hpp"

#include <vector>

namespace matchmark::oracle {

struct RandomRows {
    model::Model model;
    std::vector<model::Procedure> rows;
    std::size_t acts = 0; // in all rows
};

// Each row: acts that the bench allows one after the other, then one more, as it comes.
RandomRows random_rows(support::Chance& chance, std::size_t rows);

} // namespace matchmark::oracle
