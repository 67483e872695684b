// A kind put into words, for the listing of the parts library.
#pragma once

#include "model/model.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace matchmark::drive {

// The names of the states of a set, as declared.
std::vector<std::string> state_names(const model::Kind& kind, model::StateSet set);
// "by hand or pick"; empty when nothing is asked.
std::string tool_words(const model::Verb& verb);

// What is known of a thing: what it is, then line by line.
struct Row {
    std::string name;
    std::string value; // may hold line ends
};
struct Page {
    std::string head;
    std::vector<Row> rows;
};
// For the terminal; ends in a newline.
std::string to_text(const Page& page);

Page describe_kind(const model::Model& model, const model::Kind& kind);

// A JSON object, as text.
std::string kind_as_json(const model::Model& model, const model::Kind& kind);

// Words with this between them.
std::string joined(const std::vector<std::string>& words, std::string_view with);
// Adds a line; nothing when there is no value.
void row(Page& page, std::string_view name, const std::string& value);
// Adds a line for each message, under its signal word.
void append_messages(Page& page, const std::vector<model::Prose>& messages);

} // namespace matchmark::drive
