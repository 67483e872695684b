// The relations of a device one by one, and the device without one of them.
#pragma once

#include "bench/bench.hpp"

#include <map>
#include <optional>
#include <tuple>
#include <vector>

namespace matchmark::plan {

using RelationIndex = std::uint32_t;

enum class RelationSort : unsigned char {
    in_the_way, // of a line `covers`, `behind` or `under`: one item
    holds,      // one part that a tie holds
    blocks,
    needs,
    one_use // a bond that is good for one use, instead of a fastener that is used again
};

struct Relation {
    RelationSort sort = RelationSort::in_the_way;
    model::ItemId item;     // what is hidden, held or blocked, whose verb needs; the bond
    model::ItemId other;    // what is in the way, holds, blocks, is needed; the fastener
    std::uint32_t line = 0; // of the item's reach or needs
    Span because;           // the declaration that says so
};

// All of them, in order of declaration. A tie that holds several parts to one holds each of these,
// and that one only if there is no other.
std::vector<Relation> relations_of(const bench::Bench& bench);

// Takes the relation away. What is in the way no more leaves its way open: without A, `behind A or
// B` asks for nothing. A bond becomes as the fastener is: parted in one act of the fastener's time
// by its tools, used again, and no danger of its kind.
void leave_out(model::Model& model, const Relation& relation);

// Does taking it away take conditions away and nothing else? Not when a danger depends on how far
// something lies open or is touched, or when members would move apart no more.
bool only_loosens(const bench::Bench& bench, const Relation& relation);

// Finds a relation by what it says.
class Relations {
public:
    explicit Relations(const std::vector<Relation>& relations);
    [[nodiscard]] std::optional<RelationIndex> find(const Relation& relation) const;

private:
    using Key = std::tuple<RelationSort, model::ItemId, model::ItemId, std::uint32_t>;
    static Key key(const Relation& relation) {
        return {relation.sort, relation.item, relation.other, relation.line};
    }
    std::map<Key, RelationIndex> known_;
};

} // namespace matchmark::plan
