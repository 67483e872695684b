// Every name that stands in a file, and what sort of thing it names: so that it can be followed,
// changed everywhere, and coloured.
#pragma once

#include "model/model.hpp"
#include "syntax/tree.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace matchmark::serve {

enum class NameSort : std::uint8_t {
    device,
    item,
    function,
    kind,
    verb,
    state,
    resource, // a tool, spare or supply of one guide
    guide,
    step, // or a test
    face,
    variant,
    caution,
    hazard,
    trade, // a drive, thread, grade, tool-kind, sign and the like
    other, // a word that names nothing declared
};

struct NameUse {
    Span span;
    NameSort sort = NameSort::other;
    bool declares = false;
    std::size_t line = 0; // index
    std::size_t home = 0; // head line of the guide, or of the kind, in which the name is known
    Span item = {};       // of a state or a verb: the item that it is about, if one is named
};

// In order of place. What a name stands for is read off its line; where that leaves a choice (a
// spare may stand where an item does), the model decides.
std::vector<NameUse> names_of(const SourceMap& sources, const syntax::File& file,
                              const model::Model& model);

// The name at a place, or just before it; null when none is there.
const NameUse* name_at(const std::vector<NameUse>& names, std::uint32_t offset);

// Do the two name the same thing? The texts have to be equal beforehand. Tools and steps are known
// in their own guide alone.
bool same_thing(const NameUse& a, const NameUse& b);

} // namespace matchmark::serve
