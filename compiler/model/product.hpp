// What a published index of repair asks of a product beside how it comes apart.
#pragma once

#include "source/text.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::model {

// A tool that comes with the product, or with the spare part.
struct SuppliedTool {
    std::string tool; // hyphenated words, as after `by`
    std::string size; // may be empty
    std::string with; // as written: product, spare
    Span span;
};

struct Product {
    std::vector<std::string> classes; // "smartphone", "folding"; empty: in no index's scope
    std::optional<int> update_years;  // for which updates are given
    std::string information;          // to whom, as written; empty: not said
    std::vector<std::string> spares;  // what is sold, by the names that the index has for parts
    std::vector<SuppliedTool> tools;
    Span span; // the line `product`
};

} // namespace matchmark::model
