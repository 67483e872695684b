// A table as spreadsheets write it: rows of cells, read by RFC 4180 and by what programs do beside
// it.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace matchmark::drive {

struct TableRow {
    std::uint32_t line = 1; // on which it starts, from 1
    std::vector<std::string> cells;
};

struct Table {
    char separator = ',';           // or `;`, or a tab
    std::vector<TableRow> rows;     // without those that hold nothing
    std::string problem;            // why it cannot be read; empty when it can
    std::uint32_t problem_line = 0; // 0: the whole of it
};

constexpr std::size_t most_rows = 20000;
constexpr std::size_t most_cells = 500; // in a row

// Lines end in LF, CRLF or CR; a byte order mark and a first line `sep=;` are passed over. A cell
// in quotes may hold anything, a quote as two. Spaces at the ends of a cell are taken off, and
// control characters in it become spaces.
Table read_table(std::string_view text);

} // namespace matchmark::drive
