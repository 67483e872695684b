// The one canonical layout of a file: which lines join, where blank lines stand, where comments go.
#include "tidy/tidy.hpp"

#include "syntax/items.hpp"
#include "tidy/wording.hpp"

#include <algorithm>

namespace matchmark {

namespace {

using syntax::Keyword;
using syntax::Line;
using syntax::LineShape;

constexpr std::size_t widest_joined_line = 80; // columns
constexpr std::size_t comment_offset = 44; // columns before a trailing comment, if there is room
constexpr std::size_t least_gap = 2;

// One line of the new text; the comment is put in its column at the end.
struct Row {
    std::string content;
    std::string comment;
};

bool wants_blank_before(const Line& line) {
    if (line.shape != LineShape::declaration) {
        return false;
    }
    switch (line.keyword) {
    case Keyword::guide:
    case Keyword::before_section:
    case Keyword::take_apart:
    case Keyword::work:
    case Keyword::put_back:
    case Keyword::step:
    case Keyword::kind:
        return true;
    default:
        return false;
    }
}

struct Tidier {
    const SourceMap& sources;
    const syntax::File& file;
    std::string text = {};

    [[nodiscard]] std::string run();
    [[nodiscard]] Row row(std::size_t number) const;
    [[nodiscard]] std::size_t comment_indent(std::size_t number) const;
    std::size_t join_details(std::size_t number, Row& head) const;
    [[nodiscard]] bool starts_group(std::size_t number) const;
    void write(const Row& row);
};

std::string Tidier::run() {
    bool blank = false;
    for (std::size_t number = 0; number < file.lines.size(); ++number) {
        if (file.lines[number].shape == LineShape::blank) {
            blank = true;
            continue;
        }
        if (!text.empty() && (blank || starts_group(number))) {
            text += '\n';
        }
        blank = false;
        Row written = row(number);
        number += join_details(number, written);
        write(written);
    }
    return std::move(text);
}

// The line opens a section, step, guide or kind, or is the first of the comments that stand on it.
bool Tidier::starts_group(std::size_t number) const {
    if (number > 0 && file.lines[number - 1].shape == LineShape::comment) {
        return false;
    }
    while (number < file.lines.size() && file.lines[number].shape == LineShape::comment) {
        ++number;
    }
    return number < file.lines.size() && wants_blank_before(file.lines[number]);
}

void Tidier::write(const Row& row) {
    text += row.content;
    if (!row.comment.empty()) {
        if (!row.content.empty() && row.content.find_first_not_of(' ') != std::string::npos) {
            const std::size_t width = width_of(row.content);
            text.append(std::max(comment_offset, width + least_gap) - width, ' ');
        }
        text += row.comment;
    }
    text += '\n';
}

// A comment alone on its line stands as far in as the line that it is about, the next one; before a
// blank line it is about what stands above.
std::size_t Tidier::comment_indent(std::size_t number) const {
    for (std::size_t next = number + 1; next < file.lines.size(); ++next) {
        const Line& line = file.lines[next];
        switch (line.shape) {
        case LineShape::declaration:
            return 0;
        case LineShape::detail:
            return line.depth == 2 ? deep_indent : detail_indent;
        case LineShape::prose: // deeper, it would be read as prose
            return line.depth == 2 ? detail_indent : 0;
        case LineShape::blank:
            if (file.lines[number].depth != 0)
                return detail_indent;
            break;
        default:
            break;
        }
    }
    return file.lines[number].depth == 0 ? 0 : detail_indent;
}

Row Tidier::row(std::size_t number) const {
    const Line& line = file.lines[number];
    Row made;
    if (line.comment.known()) {
        made.comment = sources.slice(line.comment);
    }
    switch (line.shape) {
    case LineShape::comment:
        made.content = std::string(comment_indent(number), ' ');
        break;
    case LineShape::declaration:
        made.content = declaration_wording(sources, file, line);
        break;
    case LineShape::detail:
        made.content = detail_wording(sources, file, line);
        break;
    case LineShape::prose:
        made.content = prose_wording(sources, file, number);
        break;
    default:
        break;
    }
    return made;
}

// Moves what says where an item is and what it is up to its head, as long as that fits. Returns how
// many lines did.
std::size_t Tidier::join_details(std::size_t number, Row& head) const {
    const Line& item = file.lines[number];
    if (item.shape != LineShape::declaration || !syntax::declares_item(item.keyword) ||
        item.comment.known()) {
        return 0;
    }
    HeadParts has = head_parts(sources, file, item);
    std::size_t joined = 0;
    while (number + joined + 1 < file.lines.size()) {
        const Line& detail = file.lines[number + joined + 1];
        if (detail.shape != LineShape::detail || detail.comment.known() ||
            !has.may_add(detail.keyword)) {
            break;
        }
        const std::string longer = head.content + " " + joined_wording(sources, file, detail);
        if (width_of(longer) > widest_joined_line) {
            break;
        }
        head.content = longer;
        has.add(detail.keyword);
        ++joined;
    }
    return joined;
}

} // namespace

std::string tidy(const SourceMap& sources, const syntax::File& file) {
    const bool broken = std::any_of(file.lines.begin(), file.lines.end(), [](const Line& line) {
        return line.shape == LineShape::broken;
    });
    if (broken) {
        return sources.file(file.id).text;
    }
    return Tidier{.sources = sources, .file = file}.run();
}

} // namespace matchmark
