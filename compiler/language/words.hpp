// Sentences in runs, and patterns with places that each language orders as it needs.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace matchmark::language {

enum class RunKind : unsigned char {
    words,
    value,       // a torque, a limit, a time: what must not be overlooked
    item_number, // the number in a balloon on a picture
};

struct Run {
    RunKind kind = RunKind::words;
    std::string text;
    friend bool operator==(const Run&, const Run&) = default;
};

// One sentence or phrase, in runs that join without spaces of their own.
using Words = std::vector<Run>;

// What stands in a pattern's place: {"the items", ...}.
using Place = std::pair<std::string_view, Words>;

// Adds runs; words that meet words become one run, and an empty run is left out.
void append(Words& to, const Words& more);
Words words_of(std::string text, RunKind kind = RunKind::words);

// The words of the runs in a row, without item numbers.
std::string plain(const Words& words);

// "Undo {the items}{how}" with its places filled. A place that nobody fills stays as it is written.
Words fill(std::string_view pattern, const std::vector<Place>& places);
std::string fill_text(std::string_view pattern,
                      const std::vector<std::pair<std::string_view, std::string>>& places);

// The names of the places of a pattern, sorted, "the " left out: {the items} and {items} are two
// forms of one thing.
std::vector<std::string> places_of(std::string_view pattern);

} // namespace matchmark::language
