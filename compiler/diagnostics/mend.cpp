// Applies the edits that findings carry: all edits of a finding, or none.
#include "diagnostics/mend.hpp"

#include <algorithm>
#include <tuple>

namespace matchmark {

namespace {

bool lies_in_source(const SourceMap& sources, const Span& span) {
    return span.file < sources.size() && !sources.file(span.file).built_in &&
           span.begin <= span.end && span.end <= sources.file(span.file).text.size();
}

// Insertions may share a point, with each other and with the edge of what is replaced.
bool overlap(const Edit& a, const Edit& b) {
    if (a.span.file != b.span.file || (a.span.empty() && b.span.empty())) {
        return false;
    }
    return a.span.begin < b.span.end && b.span.begin < a.span.end;
}

// How far whole lines that are put in are indented; -1 for what is put into a line.
int indentation(const Edit& edit) {
    if (!edit.span.empty() || !edit.text.ends_with('\n')) {
        return -1;
    }
    const std::size_t first = std::min(edit.text.find_first_not_of('\n'), edit.text.size() - 1);
    const std::size_t word = std::min(edit.text.find_first_not_of(' ', first), edit.text.size());
    return static_cast<int>(word - first);
}

// Does the removal take away the step to whose end the line is added?
bool takes_its_head(const SourceMap& sources, const Edit& removal, const Edit& added) {
    if (!removal.text.empty() || removal.span.file != added.span.file ||
        added.span.begin != removal.span.end || indentation(added) <= 0) {
        return false;
    }
    const std::string& text = sources.file(removal.span.file).text;
    for (std::size_t at = removal.span.begin; at < removal.span.end; ++at) {
        const bool starts_line = at == 0 || text[at - 1] == '\n';
        if (starts_line && text[at] != ' ' && text[at] != '\n') {
            return true;
        }
    }
    return false;
}

// Accepts the edits of a finding; an edit that an earlier finding asked for too is made once.
bool accept(const SourceMap& sources, const Diagnostic& finding,
            std::map<FileId, std::vector<Edit>>& accepted) {
    std::vector<Edit> fresh;
    for (const Edit& edit : finding.edits) {
        if (!lies_in_source(sources, edit.span)) {
            return false;
        }
        const std::vector<Edit>& earlier = accepted[edit.span.file];
        const auto repeats = [&](const Edit& other) { return other == edit; };
        if (std::any_of(earlier.begin(), earlier.end(), repeats)) {
            continue;
        }
        const auto overlaps = [&](const Edit& other) { return overlap(other, edit); };
        const auto clashes = [&](const Edit& other) {
            return overlap(other, edit) || takes_its_head(sources, other, edit) ||
                   takes_its_head(sources, edit, other);
        };
        if (std::any_of(earlier.begin(), earlier.end(), clashes) ||
            std::any_of(fresh.begin(), fresh.end(), overlaps)) {
            return false;
        }
        fresh.push_back(edit);
    }
    for (const Edit& edit : fresh) {
        accepted[edit.span.file].push_back(edit);
    }
    return true;
}

std::string apply(const std::string& text, std::vector<Edit> edits) {
    // At one place, what goes on with the step above stands before what begins anew, what is put
    // into a line next to it, and an insertion before what is replaced there.
    std::stable_sort(edits.begin(), edits.end(), [](const Edit& a, const Edit& b) {
        return std::make_tuple(a.span.begin, a.span.end, -indentation(a)) <
               std::make_tuple(b.span.begin, b.span.end, -indentation(b));
    });
    std::string result;
    std::size_t copied = 0;
    for (const Edit& edit : edits) {
        result.append(text, copied, edit.span.begin - copied);
        result += edit.text;
        copied = edit.span.end;
    }
    result.append(text, copied);
    return result;
}

} // namespace

Mended mend(const SourceMap& sources, const std::vector<Diagnostic>& findings, bool all) {
    std::vector<const Diagnostic*> in_order;
    in_order.reserve(findings.size());
    for (const Diagnostic& finding : findings) {
        in_order.push_back(&finding);
    }
    std::stable_sort(
        in_order.begin(), in_order.end(), [](const Diagnostic* a, const Diagnostic* b) {
            return a->primary.file != b->primary.file ? a->primary.file < b->primary.file
                                                      : a->primary.begin < b->primary.begin;
        });
    Mended mended;
    std::map<FileId, std::vector<Edit>> accepted;
    for (const Diagnostic* finding : in_order) {
        const bool wanted = !finding->edits.empty() && (finding->safe || all);
        if (wanted && accept(sources, *finding, accepted)) {
            ++mended.applied;
        } else {
            ++mended.left;
        }
    }
    for (const auto& [file, edits] : accepted) {
        const std::string& before = sources.file(file).text;
        std::string after = apply(before, edits);
        if (after != before) {
            mended.texts.emplace(file, std::move(after));
        }
    }
    return mended;
}

} // namespace matchmark
