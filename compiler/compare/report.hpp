// The difference as it is read: by people at a terminal, on a page, and by programs.
#pragma once

#include "compare/change.hpp"

#include <string>
#include <vector>

namespace matchmark::compare {

struct Report {
    std::string before; // as the two were named
    std::string after;
    std::vector<std::string> remarks; // about the two files: "OLD has 2 errors; ..."
    std::vector<Difference> differences;

    [[nodiscard]] bool changed() const;
};

// What of two texts is not the same, with a few words of what stands round it.
struct Excerpt {
    std::string before;
    std::string after;
};
Excerpt excerpt(const std::string& before, const std::string& after);

// Does the sentence begin with the words of the heading? "Limit: limit for the cell" would say it
// twice.
bool says_heading(const Change& change);

// "3 changes, 1 of safety"
std::string tally(const Difference& difference);

std::string to_text(const Report& report);
std::string to_json(const Report& report);
// One page without scripts, for screen and print.
std::string to_html(const Report& report);

} // namespace matchmark::compare
