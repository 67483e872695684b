// Which keywords declare an item of the device.
#pragma once

#include "syntax/tree.hpp"

#include <algorithm>
#include <array>

namespace matchmark::syntax {

// In the order in which the model counts the roles of items.
inline constexpr std::array item_keywords{Keyword::part, Keyword::fastener, Keyword::connector,
                                          Keyword::bond, Keyword::fluid,    Keyword::energy};

constexpr bool declares_item(Keyword keyword) {
    return std::find(item_keywords.begin(), item_keywords.end(), keyword) != item_keywords.end();
}

} // namespace matchmark::syntax
