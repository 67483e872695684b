// Where the reader of a file stands: what came above, and so what a line may be.
#pragma once

#include "parse/first_word.hpp"
#include "parse/lines.hpp"
#include "parse/parse.hpp"
#include "parse/slips.hpp"

#include <string>
#include <vector>

namespace matchmark::syntax {

inline constexpr std::uint32_t nowhere = 0xffffffffU;

// A run of prose: where its keyword stands, and which lines may belong to it.
struct Prose {
    bool open = false;
    std::uint32_t indent = 0;
    std::size_t first = 0; // the line after its keyword's
    bool kept = true;      // false below a line that was not understood
};

struct Parser {
    const SourceMap& sources;
    FileId id;
    std::vector<Diagnostic>& findings;
    std::string_view text = sources.file(id).text;
    std::vector<RawLine> raws = cut_lines(text);
    File file = {};

    Body body = Body::first_column;
    std::string_view owner = {};          // the spelling of the declaration above
    std::uint32_t body_indent = nowhere;  // of the details of this body, once one was seen
    std::uint32_t photo_indent = nowhere; // of the photo whose details may follow
    Prose prose = {};
    Keyword above = Keyword::none; // the last detail's keyword
    std::size_t slips = 0;         // lines that were told to make no sense

    [[nodiscard]] Scene scene(const RawLine& raw) const { return {text, id, raw.end}; }
    [[nodiscard]] Span span(std::uint32_t begin, std::uint32_t end) const {
        return {id, begin, end};
    }

    File run();
    void read(std::size_t number);
    void too_long(const RawLine& raw, Line& line);
    bool given_up(std::size_t number);
    bool goes_on_as_prose(std::size_t number);
    void end_prose(std::size_t number);
    void start_prose(std::size_t number, std::uint32_t indent, bool kept);

    void declaration(std::size_t number);
    void open_body(Keyword keyword);
    bool list_or_sentence(std::size_t number, Diagnostic& finding);
    void unknown_declaration(std::size_t number, Span word);

    void detail(std::size_t number);
    bool fits_indentation(std::size_t number, Line& line);
    void mend_indentation(std::size_t number);
    void colon(std::size_t number, Body here, Span word, std::uint32_t colon_at);
    void keyed(std::size_t number, Body here, const Row& found, std::uint32_t length);
    void unkeyed(std::size_t number, Body here, Span word);
    void verb_is_taken(std::size_t number, Span word);
    void numbered(std::size_t number, Body here);
    void action(std::size_t number, Span word);
    bool mend_bullet(std::size_t number, Span word);
    void not_a_detail(std::size_t number, Body here, Span word);
    bool half_a_keyword(std::size_t number, Body here, Span word);

    bool too_long_a_term(std::size_t number);
    bool match(std::size_t number, LineShape shape, std::uint32_t begin, Matcher rest);
    void broken(std::size_t number, Diagnostic finding);
};

} // namespace matchmark::syntax
