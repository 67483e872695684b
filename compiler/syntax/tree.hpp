// A file as it is written: every physical line, in order, with its words. Nothing is lost, so the
// file can be written back from it, comments and blank lines included.
//
// The language is made of lines. A line knows its keyword, its depth and its terms; which lines
// belong to which declaration follows from the depth (0 a declaration, 1 a detail of it, 2 a detail
// of a detail).
#pragma once

#include "source/text.hpp"

#include <cstdint>
#include <string_view>
#include <vector>

namespace matchmark::syntax {

enum class LineShape : std::uint8_t {
    blank,
    comment,     // a comment alone on its line
    declaration, // starts in the first column
    detail,      // depth 1, or 2 under a photo
    prose,       // continues the prose above it, as written
    broken, // a syntax error was reported; holds its place so that what follows keeps its owner
};

// The word that opens a line. `verb` stands for any word that is not the language's own: an action
// in a step, or a verb's definition in a kind.
enum class Keyword : std::uint8_t {
    none,
    // declarations
    use,
    device,
    face,
    part,
    fastener,
    connector,
    bond,
    fluid,
    energy,
    function,
    caution_on,
    danger_on,
    warning_on,
    notice_on, // `caution NAME on ITEM`
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
    before_section,
    take_apart,
    work,
    put_back,
    step,
    test,
    // details of devices, items and functions
    revision,
    mass,
    sealed,
    variant,
    kind_of,
    count,
    quantity,
    in,
    only,
    covers,
    carries,
    blocks,
    behind,
    under,
    holds,
    joins,
    feeds,
    needs,
    torque,
    preload,
    depth,
    at,
    keep,
    limit,
    renewed_as,
    laid_first,
    lies_loose,
    parted_last,
    clamped,
    lets_out,
    bare,
    runs_out,
    rests_on_pressure,
    guards,
    protects,
    moves,
    passes_on,
    one_use,
    used_again_if,
    used_again,
    told_by,
    safe_when_live,
    lets_nothing_out,
    through,
    product,
    updates,
    information,
    spares,
    supplied,
    counts_as,
    comes_with,
    authorised_remotely,
    price,
    // details of kinds and their like
    states,
    also,
    binds_in,
    present_in,
    covers_in,
    blocks_in,
    live_in,
    may_end_in,
    asks_for_torque,
    asks_for_test,
    hazard_until,
    waste,
    licensed,
    good_for,
    driven_by,
    size,
    at_a_pinch,
    pitch_line,
    root,
    form_of,
    diameter,
    pitch,
    root_at_least,
    bears_on,
    breaks_at,
    tensile,
    yield,
    shear,
    usual,
    coefficient,
    tool_change,
    identify,
    handle,
    position,
    set_aside,
    turn,
    act,
    tool_class,
    sets_torque,
    on_dead_circuits,
    sign_of,
    number,
    warns,
    obliges,
    forbids,
    outline,
    wear,
    order,
    lit_by,
    // details of guides, steps and tests
    goal,
    for_reader,
    before,
    spare,
    supply,
    tool,
    author,
    date,
    derived,
    photo,
    mark_on_photo,
    when,
    proves,
    with,
    // prose
    text,
    note,
    why,
    danger,
    warning,
    caution,
    notice,
    verb,
};

enum class TermKind : std::uint8_t {
    word,   // a fixed word of the grammar inside a line: with, to, or, x, through
    name,   // a name, or a describing word such as `M2` or `countersunk`
    number, // 4, 0.20, 1.5
    unit,   // mm, N.m, EUR; always follows a number
    text,   // "quoted", the quotes included in the span
    comma,
    range, // ..
    arrow, // ->
    plus,
    minus,
};

// A large file has half a million: its place takes eight bytes, not sixteen.
struct Term {
    std::uint32_t begin = 0; // byte offset in its file
    std::uint32_t length : 28 = 0;
    TermKind kind : 4 = TermKind::word;

    [[nodiscard]] std::uint32_t end() const { return begin + length; }
};

struct Line {
    LineShape shape = LineShape::blank;
    Keyword keyword = Keyword::none;
    std::uint8_t depth = 0;
    Span whole; // from its first to its last character that is not space, line end excluded
    Span head;  // the keyword or verb; of `4 x screw` and of a bare quantity, the number
    std::uint32_t first_term =
        0; // terms after the head; of a count or quantity line, from the number on
    std::uint32_t term_count = 0;
    Span prose;   // the words of prose: after the colon, or of a `prose` line, from the column in
                  // which the least indented line of its block starts (Markdown nesting is kept)
    Span comment; // trailing comment with its `#`; empty if none
};

struct File {
    FileId id = 0;
    std::vector<Line> lines; // one for each physical line
    std::vector<Term> terms;

    [[nodiscard]] Span span_of(const Term& term) const { return {id, term.begin, term.end()}; }
};

// The keyword's spelling in the source ("take-apart"); empty for `none`, `verb`, and what opens
// with a number: `count` (`4 x screw`) and `quantity` (`1.2 l`).
std::string_view spelling(Keyword keyword);

// Keywords followed by a colon and prose.
bool is_prose(Keyword keyword);

} // namespace matchmark::syntax
