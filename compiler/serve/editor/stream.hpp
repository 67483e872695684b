// Cuts what an editor sends into messages, and writes messages to it.
#pragma once

#include <cstddef>
#include <iosfwd>
#include <optional>
#include <string>

namespace matchmark::serve {

// The longest message that is read, in bytes; a longer one is skipped.
inline constexpr std::size_t longest_message = std::size_t{64} << 20U;

struct MessageBody {
    std::string text;
    std::string problem; // why there is no text; empty when all is well
};

// The next message, or nothing at the end of the stream. After a header that makes no sense it goes
// on at the next `Content-Length`, so a slip in one message costs no more than its neighbours.
std::optional<MessageBody> read_body(std::istream& in);

// With its header, and sent at once.
void write_body(std::ostream& out, const std::string& text);

} // namespace matchmark::serve
