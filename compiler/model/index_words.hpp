// The words by which a device tells a published index of repair what it is.
#pragma once

#include <string>
#include <vector>

namespace matchmark::model {

// The priority parts of Regulation (EU) 2023/1669, Annex IV, point 5, in its order; the last is
// found in products with a folding display alone.
enum class IndexPart : unsigned char {
    battery,
    display_assembly,
    back_cover,
    front_camera,
    rear_camera,
    charging_port,
    mechanical_button,
    main_microphone,
    speaker,
    folding_mechanism,
};

// Of each list, the words in the order in which a message offers them. After `counts as` and
// `spares`; the order is that of IndexPart.
const std::vector<std::string>& index_part_words();
// After `product`: the sorts of product, and `folding`, which goes with one of them.
const std::vector<std::string>& product_words();
// After `information`: to whom it is free, or `paid`.
const std::vector<std::string>& information_words();
// After `supplied TOOL with`.
const std::vector<std::string>& supplied_with_words();

} // namespace matchmark::model
