// The difference of two texts, line by line, as the unified diff that `patch` reads.
#include "diagnostics/mend.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <iterator>
#include <string_view>

namespace matchmark {

namespace {

constexpr std::size_t context = 3;         // lines shown round a change
constexpr std::size_t most_changes = 2000; // beyond it, the search for the least change is given up

using Lines = std::vector<std::string_view>; // each with its line end, if it has one

Lines whole_lines_of(std::string_view text) {
    Lines lines;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        const std::size_t length = end == std::string_view::npos ? text.size() : end + 1;
        lines.push_back(text.substr(0, length));
        text.remove_prefix(length);
    }
    return lines;
}

// What becomes of a line: kept, taken out or put in; `old_line` and `new_line` count from 0.
struct Step {
    char sign = ' ';
    std::size_t old_line = 0;
    std::size_t new_line = 0;
};

using Row = std::vector<std::ptrdiff_t>; // how far each diagonal reaches, from -changes to +changes

Row::difference_type index_of(std::ptrdiff_t diagonal, const Row& row) {
    return diagonal + (static_cast<std::ptrdiff_t>(row.size()) - 1) / 2;
}

std::ptrdiff_t reach(const Row& row, std::ptrdiff_t diagonal) {
    return row[static_cast<std::size_t>(index_of(diagonal, row))];
}

// Whether the way to `diagonal` comes from above (a line put in) and not from the left.
bool comes_from_above(const Row& last, std::ptrdiff_t diagonal, std::ptrdiff_t changes) {
    return diagonal == -changes ||
           (diagonal != changes && reach(last, diagonal - 1) < reach(last, diagonal + 1));
}

// The rows of Myers' search for the shortest edit script (Algorithmica 1, 1986); empty when it
// would take more than `most_changes`.
std::vector<Row> search(const Lines& a, const Lines& b) {
    const auto rows_of_a = static_cast<std::ptrdiff_t>(a.size());
    const auto rows_of_b = static_cast<std::ptrdiff_t>(b.size());
    std::vector<Row> rows{Row(3, 0)}; // before any change: diagonals -1 to 1, at the start
    for (std::ptrdiff_t changes = 0; changes <= static_cast<std::ptrdiff_t>(most_changes);
         ++changes) {
        const Row& last = rows.back();
        Row row(2 * static_cast<std::size_t>(changes + 1) + 1, 0);
        for (std::ptrdiff_t diagonal = -changes; diagonal <= changes; diagonal += 2) {
            std::ptrdiff_t x = comes_from_above(last, diagonal, changes)
                                   ? reach(last, diagonal + 1)
                                   : reach(last, diagonal - 1) + 1;
            while (x < rows_of_a && x - diagonal < rows_of_b && x - diagonal >= 0 &&
                   a[static_cast<std::size_t>(x)] == b[static_cast<std::size_t>(x - diagonal)]) {
                ++x;
            }
            row[static_cast<std::size_t>(index_of(diagonal, row))] = x;
            if (x >= rows_of_a && x - diagonal >= rows_of_b) {
                rows.push_back(std::move(row));
                return rows;
            }
        }
        rows.push_back(std::move(row));
    }
    return {};
}

// Walks the rows back from the end; the steps come out in order.
std::vector<Step> steps_between(const Lines& a, const Lines& b) {
    const std::vector<Row> rows = search(a, b);
    std::vector<Step> steps;
    if (rows.empty()) {
        for (std::size_t i = 0; i < a.size(); ++i) {
            steps.push_back({'-', i, 0});
        }
        for (std::size_t i = 0; i < b.size(); ++i) {
            steps.push_back({'+', a.size(), i});
        }
        return steps;
    }
    auto x = static_cast<std::ptrdiff_t>(a.size());
    auto y = static_cast<std::ptrdiff_t>(b.size());
    const auto step = [&](char sign) {
        steps.push_back({sign, static_cast<std::size_t>(x), static_cast<std::size_t>(y)});
    };
    for (auto changes = static_cast<std::ptrdiff_t>(rows.size()) - 2; changes >= 0; --changes) {
        const Row& last = rows[static_cast<std::size_t>(changes)];
        const std::ptrdiff_t diagonal = x - y;
        const bool above = comes_from_above(last, diagonal, changes);
        const std::ptrdiff_t before = above ? diagonal + 1 : diagonal - 1;
        const std::ptrdiff_t old_x = changes == 0 ? 0 : reach(last, before);
        const std::ptrdiff_t old_y = changes == 0 ? 0 : old_x - before;
        while (x > old_x && y > old_y) {
            --x;
            --y;
            step(' ');
        }
        if (changes > 0) {
            x = old_x;
            y = old_y;
            step(above ? '+' : '-');
        }
    }
    std::reverse(steps.begin(), steps.end());
    return steps;
}

// "12,3" as diff writes it: the first line from 1 (the line before, when there is none) and how
// many.
std::string range_of(std::size_t first, std::size_t count) {
    if (count == 1) {
        return fmt::format("{}", first + 1);
    }
    return fmt::format("{},{}", count == 0 ? first : first + 1, count);
}

void put_line(std::string& out, char sign, std::string_view line) {
    out += sign;
    out += line;
    if (!line.ends_with('\n')) {
        out += "\n\\ No newline at end of file\n";
    }
}

std::string hunk(const Lines& a, const Lines& b, const std::vector<Step>& steps, std::size_t from,
                 std::size_t to) {
    std::size_t taken = 0;
    std::size_t put = 0;
    std::string body;
    for (std::size_t i = from; i < to; ++i) {
        const Step& step = steps[i];
        taken += step.sign == '+' ? 0 : 1;
        put += step.sign == '-' ? 0 : 1;
        put_line(body, step.sign, step.sign == '+' ? b[step.new_line] : a[step.old_line]);
    }
    return fmt::format("@@ -{} +{} @@\n{}", range_of(steps[from].old_line, taken),
                       range_of(steps[from].new_line, put), body);
}

} // namespace

std::string unified_diff(const std::string& path, const std::string& before,
                         const std::string& after) {
    const Lines a = whole_lines_of(before);
    const Lines b = whole_lines_of(after);
    const std::vector<Step> steps = steps_between(a, b);
    const auto changed = [](const Step& step) { return step.sign != ' '; };
    std::string out;
    auto next = std::find_if(steps.begin(), steps.end(), changed);
    while (next != steps.end()) {
        const auto begin = static_cast<std::size_t>(next - steps.begin());
        // Changes whose context would touch share a hunk.
        auto last = next;
        for (auto step = next; step != steps.end() && step - last <= 2 * std::ptrdiff_t{context};
             ++step) {
            last = changed(*step) ? step : last;
        }
        const auto end = static_cast<std::size_t>(last - steps.begin()) + 1;
        out += hunk(a, b, steps, begin - std::min(begin, context),
                    std::min(end + context, steps.size()));
        next = std::find_if(last + 1, steps.end(), changed);
    }
    return out.empty() ? out : fmt::format("--- a/{}\n+++ b/{}\n{}", path, path, out);
}

} // namespace matchmark
