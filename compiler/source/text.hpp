// The bytes of the files that are read, and places in them.
//
// Every phase points into the source with a Span: a file and two byte offsets. Line and column
// are worked out only when a person is to see them.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace matchmark {

using FileId = std::uint32_t;

constexpr bool is_digit(char byte) { return byte >= '0' && byte <= '9'; }

// Bytes [begin, end) of one file. A default Span points nowhere (file == no_file).
struct Span {
    static constexpr FileId no_file = 0xffffffffU;

    FileId file = no_file;
    std::uint32_t begin = 0;
    std::uint32_t end = 0;

    [[nodiscard]] bool known() const { return file != no_file; }
    [[nodiscard]] bool empty() const { return begin == end; }
    friend bool operator==(const Span&, const Span&) = default;
};

// A place as people count: lines and columns from 1; a column is a Unicode code point.
struct Place {
    std::uint32_t line = 1;
    std::uint32_t column = 1;
};

struct SourceFile {
    std::string path; // as it was named on the command line or in `use`
    std::string text;
    std::vector<std::uint32_t> line_starts; // byte offset of the first byte of each line
    bool built_in = false;                  // from the parts library inside the program
};

// All files of one compilation; ids are indices and stay valid as files are added. A copy shares
// the files themselves: they never change.
class SourceMap {
public:
    FileId add(std::string path, std::string text, bool built_in = false);

    [[nodiscard]] const SourceFile& file(FileId id) const { return *files_[id]; }
    [[nodiscard]] FileId size() const { return static_cast<FileId>(files_.size()); }
    [[nodiscard]] std::string_view slice(Span span) const;
    [[nodiscard]] Place place(FileId file, std::uint32_t offset) const;
    // The text of a line (from 1), without its line end; empty past the end of the file.
    [[nodiscard]] std::string_view line(FileId file, std::uint32_t number) const;
    // Byte offset at which a line (from 1) starts; the file's size past its last line.
    [[nodiscard]] std::uint32_t line_start(FileId file, std::uint32_t number) const;

private:
    std::vector<std::shared_ptr<const SourceFile>> files_;
};

// Byte offset of the first byte that is not UTF-8 or is NUL; npos when all is well.
std::size_t first_unreadable_byte(std::string_view text);

} // namespace matchmark
