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

std::string address_escaped(std::string_view path) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    std::string result;
    for (const char c : path) {
        const auto byte = static_cast<unsigned char>(c);
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                           (c >= '0' && c <= '9') || c == '-' || c == '.' || c == '_' || c == '~' ||
                           c == '/';
        if (plain) {
            result += c;
        } else {
            result += '%';
            result += digits[byte >> 4U];
            result += digits[byte & 15U];
        }
    }
    return result;
}

} // namespace matchmark
