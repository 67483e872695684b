// Counts code units of UTF-16, as the protocol does unless editor and server agree on bytes.
#include "serve/editor/places.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::serve {

namespace {

bool continues_a_character(char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; }

// Of the character that starts with this byte: past the basic plane it takes two.
std::uint32_t utf16_units(char first) { return static_cast<unsigned char>(first) >= 0xF0U ? 2 : 1; }

int digit_of(char c) {
    if (c >= '0' && c <= '9')
        return c - '0';
    if (c >= 'a' && c <= 'f')
        return c - 'a' + 10;
    if (c >= 'A' && c <= 'F')
        return c - 'A' + 10;
    return -1;
}

std::string decoded(std::string_view text) {
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool coded = text[i] == '%' && i + 2 < text.size() && digit_of(text[i + 1]) >= 0 &&
                           digit_of(text[i + 2]) >= 0;
        if (!coded) {
            plain.push_back(text[i]);
            continue;
        }
        plain.push_back(static_cast<char>(digit_of(text[i + 1]) * 16 + digit_of(text[i + 2])));
        i += 2;
    }
    return plain;
}

// What may stand in the path of a URI as it is (RFC 3986, section 3.3).
bool stands_plain(char c) {
    const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    return letter || (c >= '0' && c <= '9') ||
           std::string_view("-._~/!$&'()*+,;=:@").find(c) != std::string_view::npos;
}

} // namespace

LineTable::LineTable(std::string_view text, Encoding encoding) : text_(text), encoding_(encoding) {
    starts_.push_back(0);
    for (std::size_t at = text.find_first_of("\r\n"); at != std::string_view::npos;
         at = text.find_first_of("\r\n", at + 1)) {
        if (text[at] == '\r' && at + 1 < text.size() && text[at + 1] == '\n')
            ++at;
        starts_.push_back(static_cast<std::uint32_t>(at + 1));
    }
}

std::uint32_t LineTable::line_start(std::uint32_t line) const {
    return line < starts_.size() ? starts_[line] : static_cast<std::uint32_t>(text_.size());
}

std::uint32_t LineTable::width(std::string_view bytes) const {
    if (encoding_ == Encoding::utf8)
        return static_cast<std::uint32_t>(bytes.size());
    std::uint32_t units = 0;
    for (const char c : bytes)
        units += continues_a_character(c) ? 0 : utf16_units(c);
    return units;
}

std::uint32_t LineTable::offset(Position position) const {
    if (position.line >= starts_.size())
        return static_cast<std::uint32_t>(text_.size());
    std::uint32_t at = starts_[position.line];
    std::uint32_t end = line_start(position.line + 1);
    while (end > at && (text_[end - 1] == '\n' || text_[end - 1] == '\r'))
        --end;
    std::uint32_t left = position.character;
    while (at < end && left > 0) {
        const std::uint32_t first = at;
        for (++at; at < end && continues_a_character(text_[at]);)
            ++at;
        const std::uint32_t units =
            encoding_ == Encoding::utf8 ? at - first : utf16_units(text_[first]);
        if (units > left)
            return first;
        left -= units;
    }
    return at;
}

Position LineTable::position(std::uint32_t offset) const {
    const auto at = std::min(offset, static_cast<std::uint32_t>(text_.size()));
    const auto after = std::upper_bound(starts_.begin(), starts_.end(), at);
    const auto line = static_cast<std::uint32_t>(after - starts_.begin() - 1);
    return {line, width(text_.substr(starts_[line], at - starts_[line]))};
}

std::string path_of(const std::string& uri) {
    constexpr std::string_view scheme = "file://";
    if (!uri.starts_with(scheme))
        return uri;
    const std::size_t slash = uri.find('/', scheme.size()); // a host may stand before it
    return slash == std::string::npos ? uri : decoded(std::string_view(uri).substr(slash));
}

std::string uri_of(const std::string& path) {
    if (!path.starts_with('/'))
        return path;
    std::string uri = "file://";
    for (const char c : path)
        uri += stands_plain(c) ? std::string(1, c)
                               : fmt::format("%{:02X}", static_cast<unsigned char>(c));
    return uri;
}

} // namespace matchmark::serve
