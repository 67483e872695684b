// A finding as a framed message: what is so, the lines it is about, why it matters, what to write.
//
//     error: `lid-screws` come off and are never put back                     [not-put-back]
//        --> hinge.mmk:42:10
//         |
//      42 |   undo lid-screws with driver-6
//         |        ^^^^^^^^^^ come off here
//         |
//       why: the lid is held by 4 screws; the reader would finish with 3
//      help: add before line 58
//         |
//         + |   fasten lid-screws with driver-6 to 0.20 N.m
//         |
//      more: matchmark explain not-put-back
#include "diagnostics/edit_preview.hpp"
#include "diagnostics/render.hpp"
#include "diagnostics/screen_line.hpp"
#include "diagnostics/severity.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>

namespace matchmark {

namespace {

constexpr std::size_t rule_column = 80;     // where the rule's name stands after a short message
constexpr std::size_t narrowest_gutter = 4; // cells before the bar: up to two digits

// A mark with its place worked out, and put right if it points past its file.
struct PlacedMark {
    FileId file = 0;
    std::uint32_t line = 1;
    std::size_t begin = 0; // bytes in the line
    std::size_t end = 0;
    Place place;
    bool primary = false;
    std::string label;
};

PlacedMark placed(const SourceMap& sources, const Span& span, bool primary,
                  const std::string& label) {
    const auto size = static_cast<std::uint32_t>(sources.file(span.file).text.size());
    const std::uint32_t begin = std::min(span.begin, size);
    const std::uint32_t end = std::clamp(span.end, begin, size);
    PlacedMark mark;
    mark.file = span.file;
    mark.place = sources.place(span.file, begin);
    mark.line = mark.place.line;
    mark.begin = begin - sources.line_start(span.file, mark.line);
    // Of a mark over several lines the first is shown.
    const std::size_t length = sources.line(span.file, mark.line).size();
    mark.end = std::max(mark.begin, std::min<std::size_t>(mark.begin + (end - begin), length));
    mark.primary = primary;
    mark.label = one_line(label);
    return mark;
}

// All marks that point into a file: the primary's file first, then in the order they are told; by
// line in each.
std::vector<PlacedMark> marks_of(const SourceMap& sources, const Diagnostic& finding) {
    std::vector<PlacedMark> marks;
    std::vector<FileId> files;
    const auto add = [&](const Span& span, bool primary, const std::string& label) {
        if (span.file < sources.size()) {
            marks.push_back(placed(sources, span, primary, label));
            files.push_back(span.file);
        }
    };
    add(finding.primary, true, finding.label);
    for (const Mark& mark : finding.related) {
        add(mark.span, false, mark.label);
    }
    const auto rank = [&](FileId file) { return std::find(files.begin(), files.end(), file); };
    std::stable_sort(marks.begin(), marks.end(), [&](const PlacedMark& a, const PlacedMark& b) {
        return a.file != b.file ? rank(a.file) < rank(b.file) : a.line < b.line;
    });
    return marks;
}

// Writes the lines of one message, whose bars stand under one another.
class Frame {
public:
    explicit Frame(std::size_t gutter) : gutter_(gutter) {}

    void title(const Diagnostic& finding) {
        const std::string head =
            fmt::format("{}: {}", severity_word(finding.severity), one_line(finding.message));
        const std::size_t width = screen_width(head);
        const std::size_t gap = width + 2 <= rule_column ? rule_column - width : 2;
        line(head + (finding.rule.empty() ? "" : std::string(gap, ' ') + "[" + finding.rule + "]"));
    }

    void place(const std::string& path, const Place& at) {
        line(fmt::format("{}--> {}:{}:{}", std::string(gutter_ - 1, ' '), one_line(path), at.line,
                         at.column));
    }

    void bar(const std::string& rest = "") {
        line(std::string(gutter_, ' ') + "|" + (rest.empty() ? "" : " " + rest));
    }

    void source(std::uint32_t number, const std::string& text) {
        const std::string rest = text.empty() ? "" : " " + text;
        line(fmt::format("{:>{}} |{}", number, gutter_ - 1, rest));
    }

    void changed(char sign, const std::string& text) {
        const std::string rest = text.empty() ? "" : " " + text;
        line(fmt::format("{}{} |{}", std::string(gutter_, ' '), sign, rest));
    }

    // "  why: ..."; the colons stand under one another.
    void note(std::string_view name, const std::string& text) {
        line(fmt::format("{:>{}}: {}", name, gutter_ + 1, one_line(text)));
    }

    std::string written;

private:
    void line(std::string_view content) {
        const std::size_t last = content.find_last_not_of(' ');
        written += content.substr(0, last == std::string_view::npos ? 0 : last + 1);
        written += '\n';
    }

    std::size_t gutter_;
};

std::size_t gutter_for(const std::vector<PlacedMark>& marks) {
    std::uint32_t last = 0;
    for (const PlacedMark& mark : marks) {
        last = std::max(last, mark.line);
    }
    return std::max(narrowest_gutter, fmt::formatted_size("{}", last) + 2);
}

void put_excerpts(Frame& frame, const SourceMap& sources, const std::vector<PlacedMark>& marks) {
    const PlacedMark* above = nullptr;
    std::string shown; // the line as it was last printed
    for (const PlacedMark& mark : marks) {
        const std::string_view source = sources.line(mark.file, mark.line);
        const ScreenLine line = show_line(source, mark.begin, mark.end);
        if (above == nullptr || above->file != mark.file) {
            // The place beside the path is the primary mark's, wherever its line stands in order.
            const auto primary = std::find_if(marks.begin(), marks.end(), [&](const PlacedMark& m) {
                return m.primary && m.file == mark.file;
            });
            frame.place(sources.file(mark.file).path,
                        primary == marks.end() ? mark.place : primary->place);
            frame.bar();
            frame.source(mark.line, line.text);
        } else if (above->line != mark.line || shown != line.text) {
            frame.bar();
            frame.source(mark.line, line.text);
        }
        const std::string carets(std::max<std::size_t>(1, line.width), mark.primary ? '^' : '-');
        const std::string label = mark.label.empty() ? "" : " " + mark.label;
        frame.bar(fmt::format("{:{}}{}{}", "", line.mark, carets, label));
        shown = line.text;
        above = &mark;
    }
    if (!marks.empty()) {
        frame.bar();
    }
}

void put_help(Frame& frame, const SourceMap& sources, const Diagnostic& finding) {
    const std::vector<EditPreview> previews = preview_edits(sources, finding.edits);
    if (finding.help.empty() && previews.empty()) {
        return;
    }
    frame.note("help", finding.help.empty() ? fmt::format("change line {}", previews.front().line)
                                            : finding.help);
    for (const EditPreview& preview : previews) {
        const bool elsewhere = preview.file != finding.primary.file;
        if (elsewhere) {
            frame.place(sources.file(preview.file).path, {preview.line, 1});
        }
        frame.bar();
        for (const std::string& taken : preview.removed) {
            frame.changed('-', taken);
        }
        for (const std::string& put : preview.added) {
            frame.changed('+', put);
        }
    }
    if (!previews.empty()) {
        frame.bar();
    }
}

// Which findings are shown when there are too many: errors first, each sort in the order given.
std::vector<const Diagnostic*> chosen(const std::vector<Diagnostic>& findings, std::size_t most) {
    std::vector<const Diagnostic*> all;
    all.reserve(findings.size());
    for (const Diagnostic& finding : findings) {
        all.push_back(&finding);
    }
    if (all.size() > most) {
        std::stable_sort(all.begin(), all.end(), [](const Diagnostic* a, const Diagnostic* b) {
            return a->severity < b->severity;
        });
        all.resize(most);
        std::sort(all.begin(), all.end()); // back in the order given: they stand in one array
    }
    return all;
}

std::string tally(const std::vector<Diagnostic>& findings) {
    std::array<std::size_t, 3> counts{};
    for (const Diagnostic& finding : findings) {
        ++counts[static_cast<std::size_t>(finding.severity)];
    }
    std::string text;
    const auto add = [&](std::size_t count, std::string_view one, std::string_view several) {
        if (count > 0) {
            text +=
                fmt::format("{}{} {}", text.empty() ? "" : ", ", count, count == 1 ? one : several);
        }
    };
    add(counts[0], "error", "errors");
    add(counts[1], "warning", "warnings");
    add(counts[2], "piece of advice", "pieces of advice");
    return text + "\n";
}

} // namespace

std::string render_text(const SourceMap& sources, const Diagnostic& finding, bool more) {
    const std::vector<PlacedMark> marks = marks_of(sources, finding);
    Frame frame(gutter_for(marks));
    frame.title(finding);
    put_excerpts(frame, sources, marks);
    if (!finding.why.empty()) {
        frame.note("why", finding.why);
    }
    if (!finding.variants.empty()) {
        frame.note("in", fmt::format("variants {}", fmt::join(finding.variants, ", ")));
    }
    put_help(frame, sources, finding);
    if (more && !finding.rule.empty()) {
        frame.note("more", "matchmark explain " + finding.rule);
    }
    return std::move(frame.written);
}

std::string render_text(const SourceMap& sources, const std::vector<Diagnostic>& findings,
                        std::size_t most) {
    if (findings.empty()) {
        return {};
    }
    std::string text;
    std::set<std::string> told; // one pointer to a rule's page is enough
    const std::vector<const Diagnostic*> shown = chosen(findings, most);
    for (const Diagnostic* finding : shown) {
        text += render_text(sources, *finding, told.insert(finding->rule).second);
        text += '\n';
    }
    if (shown.size() < findings.size()) {
        const std::size_t hidden = findings.size() - shown.size();
        text += fmt::format("... and {} more {}\n", hidden, hidden == 1 ? "finding" : "findings");
    }
    return text + tally(findings);
}

} // namespace matchmark
