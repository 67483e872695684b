// Text in the forms that it takes on paper, before it has a place: words, what is bold in them,
// where they lead.
#pragma once

#include "guide/document.hpp"
#include "publish/markup_tree.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace matchmark::publish {

struct Look {
    bool bold = false;
    bool italic = false;
    bool fixed = false;    // every letter of one width, as for what is typed
    bool unbroken = false; // stays on one line: a value and its unit
    bool ringed = false;   // a number in a circle, as in the balloons on pictures
    bool boxed = false;    // a short word in a frame: TEST, "eu only"
};

struct Stretch {
    std::size_t begin = 0; // in bytes
    std::size_t end = 0;
    Look look;
};

// Leads to an address outside, or to a place in the document.
struct Leading {
    std::size_t begin = 0;
    std::size_t end = 0;
    std::string address; // safe to stand in a PDF; may be empty
    std::string place;   // the name of a target; may be empty
};

struct Rich {
    std::string text; // valid UTF-8 without control characters but line feeds
    std::vector<Stretch> stretches;
    std::vector<Leading> leadings;
};

// Text that may hold anything becomes text that can be set.
std::string settable(std::string_view text);

void add(Rich& rich, std::string_view text, Look look = {});
void add_leading(Rich& rich, std::string_view text, std::string place, Look look = {});
// "eu and us only" in a frame, with a space before it where words stand before it.
void add_variants(Rich& rich, const std::vector<std::string>& variants,
                  const language::Language& in = language::english());
// The runs of a sentence.
void add(Rich& rich, const guide::Words& words);
// The inline content of a paragraph.
void add(Rich& rich, const std::vector<Markup>& nodes, Look look = {});

// The address as it may stand in a PDF: only of the kinds that open a page or a letter. Empty for
// all others, `javascript:` among them.
std::string harmless_address(std::string_view address);

// The name of the place where a step begins.
std::string place_of_step(unsigned number);

} // namespace matchmark::publish
