// Tables of text with a ruled head that stands again on each page.
#include "publish/paper/table.hpp"

#include <algorithm>
#include <numeric>

namespace matchmark::publish {

namespace {

constexpr double gutter = 10; // between two columns
constexpr double above = 2.5;
constexpr double below = 3;

struct Place {
    double x = 0;
    double width = 0;
};

std::vector<Place> places_of(const Flow& flow, const std::vector<TableColumn>& columns) {
    double shares = 0;
    for (const TableColumn& column : columns) {
        shares += column.share;
    }
    const double room = flow.width - gutter * (static_cast<double>(columns.size()) - 1);
    std::vector<Place> places;
    double x = flow.left;
    for (const TableColumn& column : columns) {
        const double width = std::max(12.0, room * column.share / shares);
        places.push_back({x, width});
        x += width + gutter;
    }
    return places;
}

Box& add_row(Flow& flow, const Table& table, const std::vector<Place>& places,
             const std::vector<Rich>& cells, const Type& type, bool is_head) {
    double height = 0;
    std::vector<Letters> set;
    for (std::size_t i = 0; i < places.size() && i < cells.size(); ++i) {
        Type own = type;
        own.bold = type.bold || is_head;
        own.align = table.columns[i].align;
        set.push_back(letters(flow, cells[i], own, places[i].x, above, places[i].width,
                              is_head || i == 0 ? "TH" : "TD"));
        height = std::max(height, set.back().setting->height);
    }
    open(flow, "TR");
    Box& box = add_box(flow, above + height + below);
    close(flow);
    for (Letters& piece : set) {
        box.pieces.emplace_back(std::move(piece));
    }
    return box;
}

} // namespace

void add_table(Flow& flow, const Table& table, const Type& type) {
    if (table.columns.empty() || table.rows.empty()) {
        return;
    }
    const std::vector<Place> places = places_of(flow, table.columns);
    const double right = flow.left + flow.width;
    open(flow, "Table");
    int header = -1;
    if (!table.head.empty()) {
        header = static_cast<int>(flow.boxes.size());
        Box& box = add_row(flow, table, places, table.head, type, true);
        box.with_next = true;
        box.pieces.emplace_back(Stroke{flow.left, box.height, right, box.height, 1});
    }
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const bool sum = table.sum_below && i + 1 == table.rows.size();
        Type own = type;
        own.bold = type.bold || sum;
        Box& box = add_row(flow, table, places, table.rows[i], own, false);
        box.header = header;
        if (sum) {
            box.pieces.emplace_back(Stroke{flow.left, 0, right, 0, 1});
        }
        const bool before_sum = table.sum_below && i + 2 == table.rows.size();
        if (!sum && !before_sum) {
            box.pieces.emplace_back(
                Stroke{flow.left, box.height, right, box.height, 0.4, false, true});
        }
        box.with_next = before_sum;
    }
    close(flow);
}

} // namespace matchmark::publish
