// Which items stand in one box: members of a group, and what a part carries.
#pragma once

#include "draw/graph.hpp"
#include "language/spoken.hpp"
#include "model/model.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::draw {

using language::Language;
using model::ItemId;
using model::Model;

// What a drawing of a device looks at.
struct Viewing {
    std::optional<ItemId> way_to; // emphasised; all else is quiet
    bool way_alone = false;       // and all else is left out
    // Whose way it is, and whose order the numbers follow; none: the shortest that the bench knows.
    const model::Procedure* procedure = nullptr;
    const language::Language* language = &language::english();
};

struct Folding {
    std::vector<std::size_t> box_of;         // for each item; no_box when it has none
    std::vector<std::vector<ItemId>> inside; // for each box: the part that names it, then the rest
    static constexpr std::size_t no_box = static_cast<std::size_t>(-1);
};

// Parts with a box of their own; a carried part is inside its carrier's box where nothing ties,
// covers or blocks it, and in devices of more than `many_parts` parts. `shown`: always alone.
Folding fold(const Model& model, const std::vector<ItemId>& shown);
constexpr std::size_t many_parts = 40;

// Gives a fluid, a source or a tie a box of its own.
std::size_t open_box(Folding& folding, ItemId item);

// The boxes that cannot come off while the tie binds: those of the parts that it holds. Of a plug
// these are both ends; what a screw holds another part `to` comes off without it.
std::vector<std::size_t> boxes_held(const Model& model, const Folding& folding, ItemId tie);

// The equipment's name.
std::string device_title(const Language& in, const Model& model);
// "4 lid screws", first letter large.
std::string item_title(const Language& in, const Model& model, ItemId item);
// "4 lid screws, M2 x 6": with what is said of a tie first.
std::string tie_line(const Language& in, const Model& model, ItemId tie);
// "Print head", "with 3 more inside"; of a tie with a box of its own, what it is
Box part_box(const Language& in, const Model& model, const Folding& folding, std::size_t box);
// The first few, then "and 4 more".
std::vector<std::string> shortened(const Language& in, std::vector<std::string> lines,
                                   std::size_t most);

} // namespace matchmark::draw
