// A message is a header, an empty line, and as many bytes as the header says ("Base Protocol" of
// LSP 3.17).
#include "serve/editor/stream.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <charconv>
#include <istream>
#include <ostream>
#include <string_view>

namespace matchmark::serve {

namespace {

constexpr std::size_t longest_line = 8192; // of a header; of a longer one the end is kept

// False at the end of the stream.
bool read_line(std::istream& in, std::string& line) {
    line.clear();
    for (int c = in.get(); c != std::char_traits<char>::eof(); c = in.get()) {
        if (c == '\n') {
            if (line.ends_with('\r'))
                line.pop_back();
            return true;
        }
        line.push_back(static_cast<char>(c));
        if (line.size() > longest_line)
            line.erase(0, longest_line / 2);
    }
    return false;
}

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

// The number after `Content-Length:`, wherever in the line that stands: what is left of a message
// that was longer than it said runs into the next header.
std::optional<std::string> length_in(const std::string& line) {
    constexpr std::string_view name = "content-length:";
    const auto found = std::search(line.begin(), line.end(), name.begin(), name.end(),
                                   [](char a, char b) { return lower(a) == b; });
    if (found == line.end())
        return std::nullopt;
    std::string number(found + static_cast<std::ptrdiff_t>(name.size()), line.end());
    number.erase(0, number.find_first_not_of(" \t"));
    number.erase(number.find_last_not_of(" \t") + 1);
    return number;
}

std::optional<std::size_t> number_in(const std::string& text) {
    std::size_t number = 0;
    const char* const end = text.data() + text.size();
    const auto [stopped, error] = std::from_chars(text.data(), end, number);
    if (error != std::errc() || stopped != end)
        return std::nullopt;
    return number;
}

void skip(std::istream& in, std::size_t count) {
    while (count != 0 && in) {
        const std::size_t step = std::min<std::size_t>(count, longest_message);
        in.ignore(static_cast<std::streamsize>(step));
        count -= step;
    }
}

} // namespace

std::optional<MessageBody> read_body(std::istream& in) {
    std::string line;
    std::optional<std::string> length;
    while (read_line(in, line)) {
        if (auto found = length_in(line)) {
            length = std::move(found);
        } else if (line.empty() && length) {
            break;
        }
    }
    if (!in || !length)
        return std::nullopt;
    const auto count = number_in(*length);
    if (!count)
        return MessageBody{"", fmt::format("`Content-Length: {}` is no number of bytes", *length)};
    if (*count > longest_message) {
        skip(in, *count);
        return MessageBody{
            "", fmt::format("a message of {} bytes is longer than {}", *count, longest_message)};
    }
    MessageBody body;
    body.text.resize(*count);
    in.read(body.text.data(), static_cast<std::streamsize>(*count));
    if (in.gcount() != static_cast<std::streamsize>(*count))
        return std::nullopt;
    return body;
}

void write_body(std::ostream& out, const std::string& text) {
    out << "Content-Length: " << text.size() << "\r\n\r\n" << text;
    out.flush();
}

} // namespace matchmark::serve
