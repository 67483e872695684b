// Places as an editor counts them, and the bytes that they stand for; addresses of files as URIs.
#pragma once

#include "serve/editor/protocol.hpp"
#include "source/text.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace matchmark::serve {

// Where the lines of a text start. To an editor a line may also end in a carriage return alone.
class LineTable {
public:
    LineTable(std::string_view text, Encoding encoding);

    // Past the end of a line: its end; past the last line: the end of the text. Never inside a
    // character.
    [[nodiscard]] std::uint32_t offset(Position position) const;
    [[nodiscard]] Position position(std::uint32_t offset) const;
    [[nodiscard]] Range range(std::uint32_t begin, std::uint32_t end) const {
        return {position(begin), position(end)};
    }
    [[nodiscard]] Range range(Span span) const { return range(span.begin, span.end); }
    [[nodiscard]] std::uint32_t line_start(std::uint32_t line) const;
    // Units of the encoding in these bytes.
    [[nodiscard]] std::uint32_t width(std::string_view bytes) const;

private:
    std::string_view text_;
    Encoding encoding_;
    std::vector<std::uint32_t> starts_;
};

// "file:///a/b%20c.mmk" -> "/a/b c.mmk"; the URI itself when it names no file of this machine.
std::string path_of(const std::string& uri);
// The other way round; a path that is not absolute stays as it is.
std::string uri_of(const std::string& path);

} // namespace matchmark::serve
