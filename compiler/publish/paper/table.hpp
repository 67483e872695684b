// Tables of text with a ruled head that stands again on each page.
#pragma once

#include "publish/paper/flow.hpp"

#include <vector>

namespace matchmark::publish {

struct TableColumn {
    double share = 1; // of the width, beside the other columns' shares
    Align align = Align::left;
};

struct Table {
    std::vector<TableColumn> columns;
    std::vector<Rich> head;              // empty: no head
    std::vector<std::vector<Rich>> rows; // as many cells as columns; the first names the row
    bool sum_below = false;              // the last row is the sum of those above
};

void add_table(Flow& flow, const Table& table, const Type& type);

} // namespace matchmark::publish
