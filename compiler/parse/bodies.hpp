// Which words may open a line, under which declaration, and which rule of the grammar reads the
// rest.
#pragma once

#include "parse/matching.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace matchmark::syntax {

// What sort of lines stand here: the first column, or below a declaration of some sort.
enum class Body : std::uint8_t {
    first_column,
    device,
    part,
    fastener,
    connector,
    bond,
    fluid,
    energy,
    function,
    kind,
    drive,
    form,
    thread,
    grade,
    friction,
    timing,
    tool_kind,
    gear,
    rating,
    sign,
    hazard,
    guide,
    section,
    put_back,
    step,
    test,
    photo,   // the deeper lines below a photo
    message, // below `caution NAME on ITEM`: prose alone
    bare,    // below `use` and `face`, which have no details
    unknown, // below a declaration that was not understood
};

struct Row {
    std::string_view spelling;
    Keyword keyword = Keyword::none;
    Matcher rest = nullptr; // of what follows the keyword
};

// Every word that may open a line here, prose apart.
const std::vector<Row>& rows(Body body);

// What the lines below a declaration are.
Body opened_by(Keyword declaration);

// `text:`, `note:` and so on may stand here.
bool takes_prose(Body body);

// "a part", "a guide", "the first column".
std::string_view body_name(Body body);

// "a fastener or a bond": the bodies in which a word may open a line; empty if there are none.
std::string homes(std::string_view spelling);

// The prose keyword spelled so, or `none`.
Keyword prose_keyword(std::string_view word);

// Rules for lines that open with a number or with a verb, which have no keyword.
Slip match_count(Matching& matching, std::uint32_t begin, std::uint32_t end);
Slip match_amount(Matching& matching, std::uint32_t begin, std::uint32_t end);
Slip match_verb_definition(Matching& matching, std::uint32_t begin, std::uint32_t end);
// An action in a step, by its verb: `measure` and `do` are the compiler's own, and shaped
// differently.
Matcher action_matcher(std::string_view verb);

} // namespace matchmark::syntax
