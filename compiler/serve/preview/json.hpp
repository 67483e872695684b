// What the page's script is told, and what it asks for. JSON enters the preview here alone.
#pragma once

#include "serve/preview/content.hpp"
#include "serve/preview/marks.hpp"

#include <optional>
#include <string>

namespace matchmark::serve {

// One object, fit to stand in a page between the tags of a script. `content`: null when nothing
// can be marked just now.
std::string page_data(const std::string& page, const std::string& token, const Content* content);

// What the script asks for. Its marks are as it sends them, and are still to be looked at.
struct AskedMark {
    std::string page;
    std::string token;
    MarkOrder order;
};
std::optional<AskedMark> read_asked(const std::string& body);

std::string as_json(const char* key, const std::string& words);

} // namespace matchmark::serve
