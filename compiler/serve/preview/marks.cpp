// Finds the line to add to in the tree of the file, and makes the change as any other edit is made.
#include "serve/preview/marks.hpp"

#include "diagnostics/mend.hpp"
#include "model/quantity.hpp"
#include "parse/parse.hpp"
#include "serve/preview/content.hpp"
#include "syntax/items.hpp"
#include "syntax/reader.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace matchmark::serve {

using syntax::Keyword;
using syntax::Line;
using syntax::LineShape;
using syntax::TermKind;

namespace {

constexpr std::size_t column_of_values = 13; // where `tidy` lets what follows a keyword begin
constexpr double photo_steps = 1000;         // a photo is marked to a thousandth
constexpr double face_steps = 10;            // a face to 0.1 mm

std::string point_text(const model::Point& point, double steps) {
    const auto rounded = [&](double value) {
        const double result = std::round(value * steps) / steps;
        return model::number_text(result == 0 ? 0 : result);
    };
    return rounded(point.x) + "," + rounded(point.y);
}

std::string points_text(const MarkOrder& order) {
    std::string text;
    for (const model::Point& point : order.points) {
        text += (text.empty() ? "" : " ") +
                point_text(point, order.photo_line != 0 ? photo_steps : face_steps);
    }
    return text;
}

// One file read by itself, and the change to it that is being worked out.
class Source {
public:
    explicit Source(std::string_view text) {
        id_ = sources_.add("text", std::string(text));
        file_ = syntax::parse(sources_, id_, findings_);
    }

    [[nodiscard]] std::size_t slips() const { return findings_.size(); }
    [[nodiscard]] const std::vector<Line>& lines() const { return file_.lines; }

    [[nodiscard]] std::string_view term(const Line& line, std::uint32_t number) const {
        return number < line.term_count ? sources_.slice(file_.span_of(at(line, number))) : "";
    }

    // Of the terms of a line, the first of the first point: `5,5` has no space inside.
    [[nodiscard]] std::uint32_t first_point(const Line& line) const {
        for (std::uint32_t i = 0; i + 2 < line.term_count; ++i) {
            const syntax::Term& x = at(line, i);
            const syntax::Term& comma = at(line, i + 1);
            const syntax::Term& y = at(line, i + 2);
            if (x.kind == TermKind::number && comma.kind == TermKind::comma &&
                y.kind == TermKind::number && x.end() == comma.begin && comma.end() == y.begin) {
                return i;
            }
        }
        return line.term_count;
    }

    // Adds to the points at the end of a line, or puts others in their place.
    [[nodiscard]] Edit change(const Line& line, const std::string& points, bool instead) const {
        const std::uint32_t first = first_point(line);
        const std::uint32_t last_end =
            line.term_count == 0 ? line.head.end : at(line, line.term_count - 1).end();
        if (instead && first < line.term_count) {
            return {{id_, at(line, first).begin, last_end}, points};
        }
        return {{id_, last_end, last_end}, " " + points};
    }

    // A line of its own below the line of that number (from 0).
    [[nodiscard]] Edit line_below(std::size_t number, const std::string& text) const {
        const std::string_view all = sources_.file(id_).text;
        const std::uint32_t start =
            sources_.line_start(id_, static_cast<std::uint32_t>(number) + 2);
        const std::string ending = all.find("\r\n") != std::string_view::npos ? "\r\n" : "\n";
        const bool ended = start > 0 && start <= all.size() && all[start - 1] == '\n';
        return {{id_, start, start}, ended ? text + ending : ending + text};
    }

    [[nodiscard]] std::string with(const Edit& edit) const {
        Diagnostic change;
        change.edits = {edit};
        Mended mended = mend(sources_, {change}, true);
        const auto found = mended.texts.find(id_);
        return found == mended.texts.end() ? std::string() : found->second;
    }

    [[nodiscard]] std::uint32_t line_number(const Edit& edit) const {
        return sources_.place(id_, edit.span.begin).line;
    }

private:
    [[nodiscard]] const syntax::Term& at(const Line& line, std::uint32_t number) const {
        return file_.terms[line.first_term + number];
    }

    SourceMap sources_;
    FileId id_ = 0;
    syntax::File file_;
    std::vector<Diagnostic> findings_;
};

std::string new_line(std::size_t indent, const std::string& keyword, const std::string& rest) {
    std::string text = std::string(indent, ' ') + keyword;
    text.resize(std::max(text.size() + 1, column_of_values), ' ');
    return text + rest;
}

std::variant<Edit, Refusal> on_photo(const Source& source, const MarkOrder& order) {
    const std::size_t photo = order.photo_line - 1;
    const std::vector<Line>& lines = source.lines();
    if (photo >= lines.size() || lines[photo].keyword != Keyword::photo) {
        return Refusal{409, "the photo does not stand in that line any more"};
    }
    std::size_t last = photo;
    for (std::size_t i = photo + 1; i < lines.size(); ++i) {
        const Line& line = lines[i];
        if (line.shape == LineShape::blank || line.shape == LineShape::comment) {
            continue;
        }
        if (line.depth < 2 || line.keyword != Keyword::mark_on_photo) {
            break;
        }
        last = i;
        if (source.term(line, 0) == order.item && source.first_point(line) == 1) {
            return source.change(line, points_text(order), order.instead);
        }
    }
    return source.line_below(last, new_line(4, "mark", order.item + " " + points_text(order)));
}

std::variant<Edit, Refusal> on_face(const Source& source, const MarkOrder& order) {
    const std::vector<Line>& lines = source.lines();
    std::size_t head = 0;
    while (head < lines.size() &&
           !(lines[head].depth == 0 && syntax::declares_item(lines[head].keyword) &&
             source.term(lines[head], 0) == order.item)) {
        ++head;
    }
    if (head == lines.size()) {
        return Refusal{409, fmt::format("`{}` is not declared there any more", order.item)};
    }
    std::size_t last = head;
    for (std::size_t i = head + 1; i < lines.size(); ++i) {
        const Line& line = lines[i];
        if (line.shape == LineShape::blank || line.shape == LineShape::comment ||
            line.shape == LineShape::prose || syntax::is_prose(line.keyword)) {
            continue;
        }
        if (line.depth == 0) {
            break;
        }
        last = i;
        if (line.keyword != Keyword::at) {
            continue;
        }
        if (source.term(line, 0) != order.face) {
            return Refusal{409, fmt::format("`{}` has its places on the face {}", order.item,
                                            source.term(line, 0))};
        }
        const auto written = order.instead ? 0 : (line.term_count - source.first_point(line)) / 3;
        if (written + order.points.size() > order.most) {
            return Refusal{
                409, fmt::format("`{}` would have {} places, and there {} of it", order.item,
                                 written + order.points.size(),
                                 order.most == 1 ? "is one" : fmt::format("are {}", order.most))};
        }
        return source.change(line, points_text(order), order.instead);
    }
    return source.line_below(last, new_line(2, "at", order.face + " " + points_text(order)));
}

} // namespace

std::variant<Written, Refusal> with_marks(std::string_view text, const MarkOrder& order) {
    const Source source(text);
    const auto edit = order.photo_line != 0 ? on_photo(source, order) : on_face(source, order);
    if (const auto* refusal = std::get_if<Refusal>(&edit)) {
        return *refusal;
    }
    if (order.photo_line == 0 && order.points.size() > order.most) {
        return Refusal{409, fmt::format("`{}` has {} members, and these are {} places", order.item,
                                        order.most, order.points.size())};
    }
    const Edit& change = std::get<Edit>(edit);
    Written written{order.file, std::string(text), source.with(change), ""};
    if (written.after.empty() || Source(written.after).slips() > source.slips()) {
        return Refusal{409, "the line would not be read; write it by hand"};
    }
    written.words = fmt::format("{} {}{} in {}, line {}", order.item,
                                order.photo_line != 0 ? "" : order.face + " ", points_text(order),
                                order.file, source.line_number(change));
    return written;
}

std::variant<Written, Refusal> write_marks(Disk& disk, const MarkOrder& order) {
    const auto read = disk.read(order.file);
    const auto* text = std::get_if<std::string>(&read);
    if (text == nullptr) {
        return Refusal{409, fmt::format("`{}` cannot be read: {}", order.file,
                                        std::get<DiskProblem>(read).reason)};
    }
    if (fingerprint(*text) != order.print) {
        return Refusal{409, fmt::format("`{}` was changed since this page was made", order.file)};
    }
    auto made = with_marks(*text, order);
    if (const auto* written = std::get_if<Written>(&made)) {
        const auto result = disk.write(order.file, written->after);
        if (const auto* problem = std::get_if<DiskProblem>(&result)) {
            return Refusal{409,
                           fmt::format("`{}` cannot be written: {}", order.file, problem->reason)};
        }
    }
    return made;
}

std::variant<std::monostate, Refusal> take_back(Disk& disk, const Written& written) {
    const auto read = disk.read(written.path);
    const auto* text = std::get_if<std::string>(&read);
    if (text == nullptr || *text != written.after) {
        return Refusal{409,
                       fmt::format("`{}` was changed since; nothing is taken back", written.path)};
    }
    const auto result = disk.write(written.path, written.before);
    if (const auto* problem = std::get_if<DiskProblem>(&result)) {
        return Refusal{409,
                       fmt::format("`{}` cannot be written: {}", written.path, problem->reason)};
    }
    return std::monostate{};
}

} // namespace matchmark::serve
