// What both forms of the bench sheet say in the same words.
#include "publish/sheet_lines.hpp"

#include "language/punctuation.hpp"
#include "publish/fixed_words.hpp"
#include "publish/markup_tree.hpp"

#include <algorithm>

namespace matchmark::publish {

namespace {

bool has_figure(const std::string& text) {
    return std::any_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

void add_entry(std::string& text, const Language& in, const char* pattern,
               const std::vector<std::string>& values) {
    if (!values.empty()) {
        text += (text.empty() ? "" : " ") +
                say_with(in, pattern, "things", language::said_list(in, values));
    }
}

} // namespace

Writing writing_for(const guide::Instruction& instruction) {
    if (!instruction.record.empty()) {
        return {true, instruction.record};
    }
    // A value of numbers is a torque, a limit or a time: what was reached is worth a note.
    const auto& words = instruction.words;
    return {std::any_of(words.begin(), words.end(),
                        [](const guide::Run& run) {
                            return run.kind == guide::RunKind::value && has_figure(run.text);
                        }),
            {}};
}

std::string message_text(const guide::Message& message, const Language& in) {
    if (message.full_in_step != 0) {
        return say_with(in, "See step {step}.", "step", std::to_string(message.full_in_step));
    }
    return plain_text(prose_tree(message.markdown));
}

std::string test_text(const guide::Test& test, const Language& in) {
    std::string text;
    add_entry(text, in, "With {things}.", test.when);
    add_entry(text, in, "Test equipment: {things}.", test.with);
    add_entry(text, in, "Proves: {things}.", test.proves);
    return text;
}

std::vector<std::string> notes_of(const guide::Step& step, const Language& in) {
    std::vector<std::string> notes;
    for (const guide::Passage& passage : step.passages) {
        if (passage.of_thing && passage.kind == guide::PassageKind::note) {
            notes.push_back(say(in, "Note") + language::colon(in) +
                            plain_text(prose_tree(passage.markdown)));
        }
    }
    return notes;
}

std::vector<const guide::Message*> whole_work(const guide::Document& document) {
    std::vector<const guide::Message*> messages;
    for (const guide::GatheredMessage& gathered : document.safety) {
        if (gathered.steps.empty()) {
            messages.push_back(&gathered.message);
        }
    }
    return messages;
}

std::string gear_line(const guide::Document& document) {
    std::string line;
    for (const guide::Provision& gear : document.protection) {
        line += (line.empty() ? "" : "; ") + gear.words;
    }
    return line.empty()
               ? line
               : say(document.language, "To wear") + language::colon(document.language) + line;
}

} // namespace matchmark::publish
