// Puts references in place of the characters that markup keeps for itself.
#include "source/markup.hpp"

namespace matchmark {

namespace {

constexpr std::string_view replacement = "\uFFFD";

// U+FFFE and U+FFFF are no characters.
bool no_character(std::string_view text) {
    return text.starts_with("\xEF\xBF\xBE") || text.starts_with("\xEF\xBF\xBF");
}

} // namespace

std::string markup_escaped(std::string_view text) {
    std::string safe;
    safe.reserve(text.size());
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        switch (c) {
        case '&':
            safe += "&amp;";
            break;
        case '<':
            safe += "&lt;";
            break;
        case '>':
            safe += "&gt;";
            break;
        case '"':
            safe += "&quot;";
            break;
        case '\'':
            safe += "&#39;";
            break;
        default:
            if (static_cast<unsigned char>(c) < 0x20 && c != '\n' && c != '\t' && c != '\r') {
                safe += replacement;
            } else if (no_character(text.substr(i, 3))) {
                safe += replacement;
                i += 2;
            } else {
                safe += c;
            }
        }
    }
    return safe;
}

} // namespace matchmark
