// Finds out what each column is, then brings the rows of one thing together.
#include "drive/importing/parts.hpp"

#include "diagnostics/nearest.hpp"
#include "model/quantity.hpp"
#include "model/spelling.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <map>
#include <string_view>

namespace matchmark::drive {

namespace {

struct Spelling {
    Column column;
    std::string_view head; // small letters alone
};

constexpr auto spellings = std::to_array<Spelling>({
    {Column::name, "name"},
    {Column::name, "id"},
    {Column::name, "item"},
    {Column::name, "itemname"},
    {Column::name, "part"},
    {Column::name, "partname"},
    {Column::name, "ref"},
    {Column::name, "reference"},
    {Column::name, "designator"},
    {Column::title, "title"},
    {Column::title, "description"},
    {Column::title, "desc"},
    {Column::title, "label"},
    {Column::title, "text"},
    {Column::kind, "kind"},
    {Column::kind, "type"},
    {Column::kind, "sort"},
    {Column::kind, "category"},
    {Column::kind, "class"},
    {Column::count, "count"},
    {Column::count, "qty"},
    {Column::count, "quantity"},
    {Column::count, "pcs"},
    {Column::count, "pieces"},
    {Column::count, "number"},
    {Column::count, "amount"},
    {Column::size, "size"},
    {Column::size, "dimension"},
    {Column::size, "dimensions"},
    {Column::size, "thread"},
    {Column::size, "spec"},
    {Column::size, "specification"},
    {Column::drive, "drive"},
    {Column::drive, "drivetype"},
    {Column::drive, "recess"},
    {Column::drive, "bit"},
    {Column::torque, "torque"},
    {Column::torque, "tighteningtorque"},
    {Column::torque, "tightento"},
    {Column::holds, "holds"},
    {Column::holds, "fastens"},
    {Column::holds, "fixes"},
    {Column::holds, "secures"},
    {Column::to, "to"},
    {Column::to, "into"},
    {Column::to, "fixedto"},
    {Column::to, "holdsto"},
    {Column::covers, "covers"},
    {Column::covers, "hides"},
    {Column::joins, "joins"},
    {Column::joins, "connects"},
    {Column::carrier, "in"},
    {Column::carrier, "inside"},
    {Column::carrier, "carrier"},
    {Column::carrier, "parent"},
    {Column::carrier, "assembly"},
    {Column::face, "face"},
    {Column::face, "side"},
    {Column::face, "view"},
    {Column::x, "x"},
    {Column::x, "xmm"},
    {Column::x, "posx"},
    {Column::y, "y"},
    {Column::y, "ymm"},
    {Column::y, "posy"},
    {Column::at, "at"},
    {Column::at, "xy"},
    {Column::at, "facexy"},
    {Column::at, "position"},
    {Column::at, "positions"},
    {Column::at, "place"},
    {Column::at, "places"},
    {Column::at, "coordinates"},
    {Column::note, "note"},
    {Column::note, "notes"},
    {Column::note, "remark"},
    {Column::note, "remarks"},
    {Column::note, "comment"},
});

// Without what stands in brackets: "Torque (Nm)" is a torque.
std::string letters_of(const std::string& head) {
    std::string letters;
    for (const char c : head.substr(0, head.find_first_of("([/"))) {
        const bool large = c >= 'A' && c <= 'Z';
        if (large || (c >= 'a' && c <= 'z')) {
            letters += large ? static_cast<char>(c - 'A' + 'a') : c;
        }
    }
    return letters;
}

// "Torque (Nm)" -> "Nm"
std::string unit_in(const std::string& head) {
    const auto open = head.find_first_of("([");
    const auto close = head.find_first_of(")]");
    return open == std::string::npos || close == std::string::npos || close < open
               ? ""
               : head.substr(open + 1, close - open - 1);
}

struct Columns {
    std::map<Column, std::size_t> at;
    std::string torque_unit;
    std::string face; // "Face top x,y": of the column of places
};

std::string cell(const TableRow& row, const Columns& columns, Column column) {
    const auto found = columns.at.find(column);
    return found == columns.at.end() || found->second >= row.cells.size()
               ? ""
               : row.cells[found->second];
}

// How well a head calls its column: its place in the list, behind all of them for a slip.
std::size_t rank_of(const std::string& head) {
    const std::string letters = letters_of(head);
    const auto* found = std::find_if(spellings.begin(), spellings.end(),
                                     [&](const Spelling& one) { return one.head == letters; });
    return static_cast<std::size_t>(found - spellings.begin());
}

Columns read_heads(const TableRow& heads, std::vector<std::string>& left_out) {
    Columns columns;
    for (std::size_t i = 0; i < heads.cells.size(); ++i) {
        const Column column = column_named(heads.cells[i]);
        const auto [known, is_new] = columns.at.emplace(column, i);
        if (!is_new && rank_of(heads.cells[i]) < rank_of(heads.cells[known->second])) {
            known->second = i;
        }
    }
    for (std::size_t i = 0; i < heads.cells.size(); ++i) {
        const std::string& head = heads.cells[i];
        const Column column = column_named(head);
        if (head.empty()) {
            continue;
        }
        if (column == Column::none || columns.at.at(column) != i) {
            left_out.push_back(head);
        } else if (column == Column::torque) {
            columns.torque_unit = unit_in(head);
        }
    }
    return columns;
}

// "5,5 69.5,5" and "5;5": pairs of numbers with one sign between them.
bool read_places(const std::string& text, std::vector<model::Point>& places) {
    std::size_t at = 0;
    while ((at = text.find_first_not_of(' ', at)) != std::string::npos) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        const std::string pair = text.substr(at, end - at);
        const std::size_t sign = pair.find_first_of(",;/");
        model::Point point;
        if (sign == std::string::npos || !read_number(pair.substr(0, sign), point.x) ||
            !read_number(pair.substr(sign + 1), point.y)) {
            return false;
        }
        places.push_back(point);
        at = end;
    }
    return true;
}

void read_place(const TableRow& row, const Columns& columns, PartRow& part) {
    const std::string x = cell(row, columns, Column::x);
    const std::string y = cell(row, columns, Column::y);
    model::Point point;
    if (!x.empty() || !y.empty()) {
        if (read_number(x, point.x) && read_number(y, point.y)) {
            part.places.push_back(point);
        } else {
            part.to_decide.push_back(fmt::format("the place \"{}, {}\" is no pair of mm", x, y));
        }
    }
    const std::string at = cell(row, columns, Column::at);
    std::vector<model::Point> places;
    if (at.empty()) {
        return;
    }
    if (read_places(at, places)) {
        part.places.insert(part.places.end(), places.begin(), places.end());
        return;
    }
    // `top 5,5 69,5`: the face first
    const std::size_t space = at.find(' ');
    if (space != std::string::npos && read_places(at.substr(space + 1), places)) {
        part.face = at.substr(0, space);
        part.places.insert(part.places.end(), places.begin(), places.end());
    } else {
        part.to_decide.push_back(fmt::format("the places \"{}\" are no pairs of mm", at));
    }
}

void read_count(const TableRow& row, const Columns& columns, PartRow& part) {
    const std::string text = cell(row, columns, Column::count);
    double number = 1;
    if (text.empty()) {
        return;
    }
    if (read_number(text, number) && number >= 1 && number <= 999 && number == std::floor(number)) {
        part.count = static_cast<unsigned>(number);
    } else {
        part.to_decide.push_back(fmt::format("how many there are: the table says \"{}\"", text));
    }
}

PartRow read_row(const TableRow& row, const Columns& columns) {
    PartRow part;
    part.line = row.line;
    part.title = cell(row, columns, Column::title);
    const std::string named = cell(row, columns, Column::name);
    part.name = model::name_from(named.empty() ? part.title : named);
    part.title = part.title.empty() && model::name_from(named) != named ? named : part.title;
    part.kind = cell(row, columns, Column::kind);
    part.size = cell(row, columns, Column::size);
    part.drive = cell(row, columns, Column::drive);
    part.torque = cell(row, columns, Column::torque);
    double bare = 0;
    if (read_number(part.torque, bare)) {
        part.torque += " " + columns.torque_unit;
    }
    part.holds = cell(row, columns, Column::holds);
    part.to = cell(row, columns, Column::to);
    part.covers = cell(row, columns, Column::covers);
    part.joins = cell(row, columns, Column::joins);
    part.carrier = cell(row, columns, Column::carrier);
    part.face = cell(row, columns, Column::face);
    part.note = cell(row, columns, Column::note);
    read_count(row, columns, part);
    read_place(row, columns, part);
    return part;
}

// The later row adds to the earlier one; where they differ, the earlier one holds.
void merge(PartRow& into, PartRow& more) {
    into.count += more.count;
    into.places.insert(into.places.end(), more.places.begin(), more.places.end());
    into.to_decide.insert(into.to_decide.end(), more.to_decide.begin(), more.to_decide.end());
    const auto take = [&](std::string PartRow::*field, const char* what) {
        std::string& kept = into.*field;
        const std::string& other = more.*field;
        if (kept.empty()) {
            kept = other;
        } else if (!other.empty() && kept != other) {
            into.to_decide.push_back(
                fmt::format("row {} has another {}: \"{}\"", more.line, what, other));
        }
    };
    take(&PartRow::title, "title");
    take(&PartRow::kind, "kind");
    take(&PartRow::size, "size");
    take(&PartRow::drive, "drive");
    take(&PartRow::torque, "torque");
    take(&PartRow::holds, "part that is held");
    take(&PartRow::to, "part that is held to");
    take(&PartRow::covers, "part that is covered");
    take(&PartRow::joins, "part that is joined");
    take(&PartRow::carrier, "carrier");
    take(&PartRow::face, "face");
    take(&PartRow::note, "note");
}

} // namespace

Column column_named(const std::string& head) {
    const std::string letters = letters_of(head);
    if (letters.empty()) {
        return Column::none;
    }
    std::vector<std::string> known;
    for (const Spelling& spelling : spellings) {
        if (spelling.head == letters) {
            return spelling.column;
        }
        if (spelling.head.size() >= 4) { // a slip in a shorter word makes another word
            known.emplace_back(spelling.head);
        }
    }
    const std::string near = letters.size() < 4 ? "" : nearest(letters, known);
    for (const Spelling& spelling : spellings) {
        if (!near.empty() && spelling.head == near) {
            return spelling.column;
        }
    }
    return Column::none;
}

bool read_number(const std::string& text, double& number) {
    std::string dotted = text;
    std::replace(dotted.begin(), dotted.end(), ',', '.');
    const auto first = dotted.find_first_not_of(' ');
    const auto last = dotted.find_last_not_of(' ');
    if (first == std::string::npos) {
        return false;
    }
    const char* begin = dotted.data() + first;
    const char* end = dotted.data() + last + 1;
    const auto read = std::from_chars(begin, end, number, std::chars_format::fixed);
    return read.ec == std::errc{} && read.ptr == end && std::isfinite(number) &&
           std::abs(number) < 1e9;
}

PartsTable read_parts(const Table& table) {
    PartsTable result;
    if (table.rows.size() < 2) {
        result.problem = "a first row with the names of the columns is needed, and a row below it";
        return result;
    }
    const Columns columns = read_heads(table.rows.front(), result.left_out);
    if (!columns.at.contains(Column::name) && !columns.at.contains(Column::title)) {
        result.problem = "no column says what each row is; call one `name` or `title`";
        return result;
    }
    std::map<std::string, std::size_t> known;
    for (std::size_t i = 1; i < table.rows.size(); ++i) {
        PartRow part = read_row(table.rows[i], columns);
        if (part.name.empty()) {
            part.name = fmt::format("row-{}", part.line);
            part.to_decide.push_back(fmt::format("what row {} is called", part.line));
        }
        const auto [place, is_new] = known.emplace(part.name, result.parts.size());
        if (is_new) {
            result.parts.push_back(std::move(part));
        } else {
            merge(result.parts[place->second], part);
        }
    }
    return result;
}

} // namespace matchmark::drive
