// The bytes of the files that are read, and how a place in them is told to people.
#include "source/text.hpp"

#include <algorithm>
#include <utility>

namespace matchmark {

namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

bool continues_a_character(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

std::uint32_t characters_in(std::string_view text) {
    return static_cast<std::uint32_t>(
        std::count_if(text.begin(), text.end(), [](char c) { return !continues_a_character(c); }));
}

// How many bytes the well-formed character at the start of `text` has (RFC 3629); 0 for none.
std::size_t well_formed_length(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char lead = byte(0);
    if (lead < 0x80) {
        return 1;
    }
    std::size_t length = 0;
    unsigned char lowest = 0x80;
    unsigned char highest = 0xBF;
    if (lead >= 0xC2 && lead <= 0xDF) {
        length = 2;
    } else if (lead >= 0xE0 && lead <= 0xEF) {
        length = 3;
        lowest = lead == 0xE0 ? 0xA0 : 0x80;  // else it would fit in two bytes
        highest = lead == 0xED ? 0x9F : 0xBF; // else it is half of a surrogate pair
    } else if (lead >= 0xF0 && lead <= 0xF4) {
        length = 4;
        lowest = lead == 0xF0 ? 0x90 : 0x80;  // else it would fit in three bytes
        highest = lead == 0xF4 ? 0x8F : 0xBF; // else it lies past U+10FFFF
    }
    if (length == 0 || text.size() < length || byte(1) < lowest || byte(1) > highest) {
        return 0;
    }
    for (std::size_t i = 2; i < length; ++i) {
        if (!continues_a_character(text[i])) {
            return 0;
        }
    }
    return length;
}

} // namespace

FileId SourceMap::add(std::string path, std::string text, bool built_in) {
    SourceFile file;
    file.line_starts.push_back(0);
    for (std::size_t at = text.find('\n'); at != std::string::npos; at = text.find('\n', at + 1)) {
        file.line_starts.push_back(static_cast<std::uint32_t>(at + 1));
    }
    file.path = std::move(path);
    file.text = std::move(text);
    file.built_in = built_in;
    files_.push_back(std::make_shared<const SourceFile>(std::move(file)));
    return static_cast<FileId>(files_.size() - 1);
}

std::string_view SourceMap::slice(Span span) const {
    if (span.file >= files_.size()) {
        return {};
    }
    const std::string_view text = files_[span.file]->text;
    const std::size_t end = std::min<std::size_t>(span.end, text.size());
    const std::size_t begin = std::min<std::size_t>(span.begin, end);
    return text.substr(begin, end - begin);
}

Place SourceMap::place(FileId id, std::uint32_t offset) const {
    if (id >= files_.size()) {
        return {};
    }
    const SourceFile& source = *files_[id];
    const auto at = std::min<std::uint32_t>(offset, static_cast<std::uint32_t>(source.text.size()));
    const auto after = std::upper_bound(source.line_starts.begin(), source.line_starts.end(), at);
    const auto number = static_cast<std::uint32_t>(after - source.line_starts.begin());
    const std::uint32_t start = source.line_starts[number - 1];
    std::string_view before = std::string_view(source.text).substr(start, at - start);
    // A byte order mark is no character of the text; nobody counts it.
    if (number == 1 && before.starts_with(byte_order_mark)) {
        before.remove_prefix(byte_order_mark.size());
    }
    return {number, characters_in(before) + 1};
}

std::string_view SourceMap::line(FileId id, std::uint32_t number) const {
    if (id >= files_.size() || number == 0 || number > files_[id]->line_starts.size()) {
        return {};
    }
    const std::uint32_t begin = line_start(id, number);
    const std::uint32_t end = line_start(id, number + 1);
    std::string_view text = std::string_view(files_[id]->text).substr(begin, end - begin);
    if (text.ends_with('\n')) {
        text.remove_suffix(1);
    }
    if (text.ends_with('\r')) {
        text.remove_suffix(1);
    }
    return text;
}

std::uint32_t SourceMap::line_start(FileId id, std::uint32_t number) const {
    if (id >= files_.size() || number == 0) {
        return 0;
    }
    const SourceFile& source = *files_[id];
    if (number > source.line_starts.size()) {
        return static_cast<std::uint32_t>(source.text.size());
    }
    return source.line_starts[number - 1];
}

std::size_t first_unreadable_byte(std::string_view text) {
    std::size_t at = 0;
    while (at < text.size()) {
        if (const auto byte = static_cast<unsigned char>(text[at]); byte != 0 && byte < 0x80) {
            ++at; // nearly every one
            continue;
        }
        const std::size_t length = well_formed_length(text.substr(at));
        if (length == 0 || text[at] == '\0') {
            return at;
        }
        at += length;
    }
    return std::string_view::npos;
}

} // namespace matchmark
