// Judges and prints the rows.
#include "published/table.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/core.h>
#include <utility>

namespace matchmark::published {

namespace {

std::string figures(double value) { return fmt::format("{:.5g}", value); }

std::string shown(const Allowed& allowed) {
    if (allowed.amount > 0)
        return fmt::format("{:.3g}", allowed.amount);
    return allowed.percent < 1e-6 ? std::string("0") : fmt::format("{:.3g} %", allowed.percent);
}

// The difference in percent where that is how it is judged.
std::string difference(double published, double computed, const Allowed& allowed) {
    const double gap = computed - published;
    if (allowed.amount > 0 || published == 0)
        return fmt::format("{:+.2g}", gap);
    const double part = 100 * gap / published;
    return std::abs(part) < 1e-6 ? std::string("0") : fmt::format("{:+.2f} %", part);
}

std::vector<std::string> sources(const Table& table) {
    std::vector<std::string> found;
    for (const Row& row : table.rows) {
        if (std::find(found.begin(), found.end(), row.source) == found.end())
            found.push_back(row.source);
    }
    return found;
}

void expect_text(Table& table, const Origin& origin, std::string what, std::string published,
                 std::string computed, bool holds) {
    Row row;
    row.source = origin.source;
    row.reading = origin.reading;
    row.what = std::move(what);
    row.expected = std::move(published);
    row.computed = computed.empty() ? "nothing" : std::move(computed);
    row.difference = holds ? "0" : "differs";
    row.allowed = "0";
    row.holds = holds;
    table.rows.push_back(std::move(row));
}

} // namespace

void expect(Table& table, const Origin& origin, std::string what, double published,
            std::optional<double> computed, Allowed allowed) {
    Row row;
    row.source = origin.source;
    row.reading = origin.reading;
    row.what = std::move(what);
    row.expected = figures(published);
    row.allowed = shown(allowed);
    row.computed = computed ? figures(*computed) : "nothing";
    row.difference = computed ? difference(published, *computed, allowed) : "missing";
    // The last bits of a sum must not decide at the bound.
    const double bound =
        (allowed.amount + std::abs(published) * allowed.percent / 100) * (1 + 1e-9) + 1e-15;
    row.holds = computed && std::abs(*computed - published) <= bound;
    table.rows.push_back(std::move(row));
}

void expect_same(Table& table, const Origin& origin, std::string what, std::string published,
                 std::string computed) {
    const bool holds = published == computed;
    expect_text(table, origin, std::move(what), std::move(published), std::move(computed), holds);
}

void expect_said(Table& table, const Origin& origin, std::string what, std::string published,
                 std::string computed) {
    const bool holds = lower(computed).find(lower(published)) != std::string::npos;
    // What was found says enough; the whole text is of use when it was not.
    std::string found = holds ? published : std::move(computed);
    expect_text(table, origin, std::move(what), std::move(published), std::move(found), holds);
}

std::string lower(std::string_view text) {
    std::string result(text);
    std::transform(result.begin(), result.end(), result.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return result;
}

Counts count(const Table& table) {
    Counts counts;
    counts.rows = table.rows.size();
    counts.sources = sources(table).size();
    for (const Row& row : table.rows) {
        counts.seen += row.reading == Reading::seen ? 1 : 0;
        counts.memory += row.reading == Reading::memory ? 1 : 0;
        counts.failed += row.holds ? 0 : 1;
    }
    return counts;
}

void print(const Table& table) {
    for (const std::string& source : sources(table)) {
        fmt::print("\n{}\n", source);
        fmt::print("  {:<46} {:>12} {:>12} {:>10} {:>8}\n", "what", "published", "computed",
                   "differs by", "allowed");
        for (const Row& row : table.rows) {
            if (row.source != source)
                continue;
            fmt::print("  {:<46} {:>12} {:>12} {:>10} {:>8}{}{}\n", row.what, row.expected,
                       row.computed, row.difference, row.allowed,
                       row.reading == Reading::memory ? "  from memory" : "",
                       row.holds ? "" : "  FAILED");
        }
    }
    const Counts counts = count(table);
    fmt::print("\n{} rows, {} sources, {} seen, {} from memory, {} failed\n", counts.rows,
               counts.sources, counts.seen, counts.memory, counts.failed);
}

} // namespace matchmark::published
