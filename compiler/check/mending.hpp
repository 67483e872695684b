// The edits that findings carry: missing lines written out where they belong.
#pragma once

#include "check/walk.hpp"

#include <string>
#include <vector>

namespace matchmark::check {

// The acts as source lines, each complete with tool, torque and supply.
std::vector<std::string> lines_for(const Walk& walk, const std::vector<bench::Act>& acts);

// Inserts lines into the step in which event `at` stands, just before it; where only a new step
// will do, writes one. Empty when the place is in what the compiler derives.
std::vector<Edit> insert_before(const Walk& walk, std::size_t at,
                                const std::vector<std::string>& lines);

// Inserts a whole test so that it comes just before event `at`, splitting a step where it must.
std::vector<Edit> insert_test(const Walk& walk, std::size_t at, const std::string& text);

// Removes the whole line.
Edit remove_line(const SourceMap& sources, Span line);

// Adds a detail line to the guide's head.
Edit add_to_head(const Walk& walk, const std::string& line);

// Where the finding about event `at` is marked: the verb, the test's name, or the `derived` line.
Span place_of(const Walk& walk, std::size_t at);

// A finding about event `at`, with the mark, the reversed line if it is derived, and the lines that
// mend it.
Diagnostic finding_at(const Walk& walk, std::size_t at, std::string message);
void mend_with(const Walk& walk, Diagnostic& finding, std::size_t at,
               const std::vector<bench::Act>& acts);

} // namespace matchmark::check
