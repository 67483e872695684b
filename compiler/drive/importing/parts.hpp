// The rows of a parts table by what their columns are called.
#pragma once

#include "drive/importing/table.hpp"
#include "model/item.hpp"

#include <string>
#include <vector>

namespace matchmark::drive {

enum class Column : unsigned char {
    name,
    title,
    kind,
    count,
    size,
    drive,
    torque,
    holds,
    to,
    covers,
    joins,
    carrier,
    face,
    x,
    y,
    at,
    note,
    none,
};

// By the head of a column, loosely: letters large or small, units and signs left out, a slip
// forgiven.
Column column_named(const std::string& head);

// One thing that the table lists; rows of one name are one thing, with a place for each row.
struct PartRow {
    std::uint32_t line = 1; // of the table
    std::string name;       // as the language writes names
    std::string title;
    std::string kind;
    unsigned count = 1;
    std::string size;
    std::string drive;
    std::string torque; // with the unit of the column's head where the cell has none
    std::string holds;
    std::string to;
    std::string covers;
    std::string joins;
    std::string carrier;
    std::string face;
    std::vector<model::Point> places;
    std::string note;
    std::vector<std::string> to_decide; // what the row leaves open
};

struct PartsTable {
    std::vector<PartRow> parts;        // in the order of the table
    std::vector<std::string> left_out; // heads of columns that say nothing to us
    std::string problem;               // why nothing can be made of it; empty when something can
};

PartsTable read_parts(const Table& table);

// "0,5" and "0.5"; nothing when it is no number.
bool read_number(const std::string& text, double& number);

} // namespace matchmark::drive
