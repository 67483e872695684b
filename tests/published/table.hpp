// What published sources say beside what the compiler works out, a row for each number.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace matchmark::published {

// Whether the value was read in the source, or in a text that quotes it, or is recalled.
enum class Reading : unsigned char { seen, memory };

struct Origin {
    std::string_view source;
    Reading reading = Reading::seen;
};

struct Row {
    std::string source;
    std::string what;
    std::string expected;
    std::string computed;
    std::string difference;
    std::string allowed;
    Reading reading = Reading::seen;
    bool holds = false;
};

struct Table {
    std::vector<Row> rows;
};

// How far the two may differ: a part of the published value in percent, or an amount.
struct Allowed {
    double percent = 0;
    double amount = 0;
};

constexpr Allowed percent(double value) { return {value, 0}; }
constexpr Allowed within(double amount) { return {0, amount}; }
// The same to the last figure that a double carries through the arithmetic.
constexpr Allowed exactly{1e-9, 0};

// Nothing computed fails the row: the library lacks the thing.
void expect(Table& table, const Origin& origin, std::string what, double published,
            std::optional<double> computed, Allowed allowed);
// The same words.
void expect_same(Table& table, const Origin& origin, std::string what, std::string published,
                 std::string computed);
// The published word stands in the library's text, case aside.
void expect_said(Table& table, const Origin& origin, std::string what, std::string published,
                 std::string computed);

std::string lower(std::string_view text);

struct Counts {
    std::size_t rows = 0;
    std::size_t sources = 0;
    std::size_t seen = 0;
    std::size_t memory = 0;
    std::size_t failed = 0;
};

Counts count(const Table& table);
// Grouped by source in the order in which the sources came; then the counts.
void print(const Table& table);

} // namespace matchmark::published
