// Shows an edit as whole lines: a reader wants to see the line as it will be.
#include "diagnostics/edit_preview.hpp"

#include "diagnostics/screen_line.hpp"

#include <algorithm>
#include <string_view>
#include <tuple>
#include <utility>

namespace matchmark {

namespace {

constexpr std::size_t most_lines = 12; // of one run that are shown

// Edits whose lines touch, and the bytes of those lines.
struct Group {
    FileId file = 0;
    std::uint32_t first_line = 1;
    std::uint32_t last_line = 1;
    std::vector<const Edit*> edits;
};

std::vector<Group> groups_of(const SourceMap& sources, const std::vector<Edit>& edits) {
    std::vector<const Edit*> in_order;
    for (const Edit& edit : edits) {
        const Span& span = edit.span;
        if (span.file < sources.size() && span.begin <= span.end &&
            span.end <= sources.file(span.file).text.size()) {
            in_order.push_back(&edit);
        }
    }
    std::stable_sort(in_order.begin(), in_order.end(), [](const Edit* a, const Edit* b) {
        return std::tie(a->span.file, a->span.begin, a->span.end) <
               std::tie(b->span.file, b->span.begin, b->span.end);
    });
    std::vector<Group> groups;
    for (const Edit* edit : in_order) {
        const std::uint32_t first = sources.place(edit->span.file, edit->span.begin).line;
        const std::uint32_t last = sources.place(edit->span.file, edit->span.end).line;
        if (groups.empty() || groups.back().file != edit->span.file ||
            first > groups.back().last_line) {
            groups.push_back({edit->span.file, first, last, {}});
        }
        groups.back().last_line = std::max(groups.back().last_line, last);
        groups.back().edits.push_back(edit);
    }
    return groups;
}

std::vector<std::string_view> lines_of(std::string_view text) {
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        std::string_view line = text.substr(0, end);
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        if (line.ends_with('\r')) {
            line.remove_suffix(1);
        }
        lines.push_back(line);
    }
    return lines;
}

std::vector<std::string> shown(const std::vector<std::string_view>& lines, std::size_t from,
                               std::size_t to) {
    std::vector<std::string> result;
    for (std::size_t i = from; i < to; ++i) {
        if (i - from == most_lines) {
            result.emplace_back("...");
            break;
        }
        result.push_back(show_line(lines[i], 0, 0).text);
    }
    return result;
}

EditPreview preview(const SourceMap& sources, const Group& group) {
    const std::string& text = sources.file(group.file).text;
    const std::uint32_t begin = sources.line_start(group.file, group.first_line);
    const std::uint32_t end = sources.line_start(group.file, group.last_line + 1);
    std::string changed;
    std::size_t copied = begin;
    for (const Edit* edit : group.edits) {
        if (edit->span.begin < copied) {
            continue; // overlaps the one before: `mend` refuses it, too
        }
        changed.append(text, copied, edit->span.begin - copied);
        changed += edit->text;
        copied = edit->span.end;
    }
    changed.append(text, copied, end - copied);

    const auto before = lines_of(std::string_view(text).substr(begin, end - begin));
    const auto after = lines_of(changed);
    const auto [old_part, new_part] =
        std::mismatch(before.begin(), before.end(), after.begin(), after.end());
    const auto same_head = static_cast<std::size_t>(old_part - before.begin());
    std::size_t same_tail = 0;
    while (same_tail + same_head < std::min(before.size(), after.size()) &&
           before[before.size() - 1 - same_tail] == after[after.size() - 1 - same_tail]) {
        ++same_tail;
    }
    EditPreview result;
    result.file = group.file;
    result.line = group.first_line + static_cast<std::uint32_t>(same_head);
    result.removed = shown(before, same_head, before.size() - same_tail);
    result.added = shown(after, same_head, after.size() - same_tail);
    return result;
}

} // namespace

std::vector<EditPreview> preview_edits(const SourceMap& sources, const std::vector<Edit>& edits) {
    std::vector<EditPreview> previews;
    for (const Group& group : groups_of(sources, edits)) {
        EditPreview next = preview(sources, group);
        if (!next.removed.empty() || !next.added.empty()) {
            previews.push_back(std::move(next));
        }
    }
    return previews;
}

} // namespace matchmark
