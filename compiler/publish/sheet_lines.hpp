// What both forms of the bench sheet say in the same words.
#pragma once

#include "guide/document.hpp"

#include <string>
#include <vector>

namespace matchmark::publish {

// What is to be written beside an action; nothing to write: `wanted` is false.
struct Writing {
    bool wanted = false;
    std::string what; // "brush length, at least 5 mm"; empty: the value that the line names
};

Writing writing_for(const guide::Instruction& instruction);

// The message in one line, without its signal word and subject; markup laid flat.
std::string message_text(const guide::Message& message,
                         const language::Language& in = language::english());

// Of a test: "With the cell plug connected. Test equipment: ... Proves: the cell". May be empty.
std::string test_text(const guide::Test& test, const language::Language& in = language::english());

// What the things worked on have to be told by the way, a line each: "Note: Only the person who
// hung a lock takes it off." What the step's own author explains, the bench knows.
std::vector<std::string> notes_of(const guide::Step& step,
                                  const language::Language& in = language::english());

// Messages about the whole work, which stand before everything.
std::vector<const guide::Message*> whole_work(const guide::Document& document);

// "To wear: Eye protection; Heat-resistant gloves"; empty when nothing is.
std::string gear_line(const guide::Document& document);

// Who did it, on what, when: names of fields to fill in by hand.
inline constexpr const char* sheet_fields[] = {"Name", "Date", "Serial number"};

} // namespace matchmark::publish
