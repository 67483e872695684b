// Names, findings and prose, as every resolving function needs them.
#include "resolve/context.hpp"

#include "diagnostics/nearest.hpp"
#include "model/describe.hpp"
#include "model/role_words.hpp"
#include "model/spelling.hpp"
#include "resolve/limits.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <fmt/core.h>
#include <iterator>
#include <memory>
#include <utf8proc.h>

namespace matchmark::resolve {

namespace {

bool is_ascii(std::string_view text) {
    return std::all_of(text.begin(), text.end(), [](char c) { return (c & 0x80) == 0; });
}

// So that a letter with its accent as a sign of its own is the same letter.
std::string folded(std::string_view name) {
    if (is_ascii(name))
        return std::string(name);
    utf8proc_uint8_t* mapped = nullptr;
    const auto size =
        utf8proc_map(reinterpret_cast<const utf8proc_uint8_t*>(name.data()), // NOLINT
                     static_cast<utf8proc_ssize_t>(name.size()), &mapped,
                     static_cast<utf8proc_option_t>(UTF8PROC_STABLE | UTF8PROC_COMPOSE));
    const std::unique_ptr<utf8proc_uint8_t, void (*)(void*)> owner(mapped, std::free);
    if (size < 0)
        return std::string(name);
    return {reinterpret_cast<const char*>(mapped), static_cast<std::size_t>(size)}; // NOLINT
}

// Is any word of a name of several another one than its like: `ball-joint` for `banjo-joint`?
bool has_another_word(std::string_view word, std::string_view near) {
    while (true) {
        const std::size_t word_end = word.find('-');
        const std::size_t near_end = near.find('-');
        const std::string_view own = word.substr(0, word_end);
        const std::string_view other = near.substr(0, near_end);
        if (own != other && nearest_among(own, {other}).empty())
            return true;
        if (word_end == std::string_view::npos || near_end == std::string_view::npos)
            return false;
        word.remove_prefix(word_end + 1);
        near.remove_prefix(near_end + 1);
    }
}

// A guess that a person should look at: it changes a number (`driver-11` is no slip for
// `driver-10`), most of a short word, or a whole word.
bool is_bold(std::string_view word, std::string_view near) {
    const auto digits = [](std::string_view text) {
        std::string found;
        std::copy_if(text.begin(), text.end(), std::back_inserter(found),
                     [](char c) { return c >= '0' && c <= '9'; });
        return found;
    };
    const bool as_many =
        std::count(word.begin(), word.end(), '-') == std::count(near.begin(), near.end(), '-');
    return word.size() < 3 || digits(word) != digits(near) ||
           (as_many && has_another_word(word, near));
}

// What to do about a name that nothing known is spelled like. `{}` is that name.
struct WayOut {
    std::string_view rule;
    const char* help;
};
constexpr auto ways_out = std::to_array<WayOut>({
    {"unknown-item", "declare it in the device's file: `part {} \"...\"`"},
    {"unknown-guide", "name the file of guide `{}` with `use` at the top of this file"},
    {"unknown-kind", "`matchmark kinds` lists them"},
    {"unknown-hazard", "`matchmark kinds hazards` lists them"},
    {"unknown-sign", "`matchmark kinds signs` lists them"},
    {"unknown-thread", "`matchmark kinds threads` lists them"},
    {"unknown-grade", "`matchmark kinds grades` lists them"},
    {"unknown-form", "`matchmark kinds forms` lists them"},
    {"unknown-tool", "`matchmark kinds tool-kinds` lists them"},
    {"unknown-gear", "declare it: `gear {} \"...\"`"},
    {"unknown-face", "declare it in the device's file: `face {} 74 x 128 mm`"},
    {"unknown-variant", "name it under the device: `variant {}`"},
    {"unknown-unit", "units are written as in `0.5 N.m`, `40 mm`, `1.2 l`, `60 V`, `65 degC`"},
});

// A few known names are all told; else where they are found, or how one more is declared.
std::string way_out(std::string_view rule, const std::string& word,
                    const std::vector<std::string>& known) {
    constexpr std::size_t most_told = 6;
    // A few of these would be known by chance alone.
    const bool items = rule == "unknown-item" || rule == "unknown-unit" || rule == "unknown-guide";
    if (!known.empty() && known.size() <= most_told && !items) {
        std::vector<std::string> quoted;
        for (const std::string& name : known)
            quoted.push_back("`" + name + "`");
        return "write " + model::list(quoted, "or");
    }
    const auto* const found =
        std::find_if(ways_out.begin(), ways_out.end(),
                     [&](const WayOut& candidate) { return candidate.rule == rule; });
    return found == ways_out.end() ? std::string() : fmt::format(fmt::runtime(found->help), word);
}

} // namespace

std::optional<Named> Names::add(std::string_view name, Named named) {
    if (below_ != nullptr) {
        if (const auto known = below_->find(name))
            return known;
    }
    const auto [found, added] = by_name_.emplace(folded(name), named);
    if (!added)
        return found->second;
    in_order_.emplace_back(name);
    return std::nullopt;
}

std::optional<Named> Names::find(std::string_view name) const {
    const std::string kept = is_ascii(name) ? std::string() : folded(name);
    const std::string_view key = is_ascii(name) ? name : std::string_view(kept);
    for (const Names* names = this; names != nullptr; names = names->below_) {
        const auto found = names->by_name_.find(key);
        if (found != names->by_name_.end())
            return found->second;
    }
    return std::nullopt;
}

std::vector<std::string> Names::all() const {
    std::vector<std::string> names = below_ != nullptr ? below_->all() : std::vector<std::string>{};
    names.insert(names.end(), in_order_.begin(), in_order_.end());
    return names;
}

std::size_t Names::size() const {
    return in_order_.size() + (below_ != nullptr ? below_->size() : 0);
}

std::vector<std::string> known_names(Context& context, const Names& names) {
    context.compared += names.size();
    return context.compared > most_names_compared ? std::vector<std::string>{} : names.all();
}

Diagnostic& report(Context& context, std::string rule, Span primary, std::string message) {
    Diagnostic finding;
    finding.rule = std::move(rule);
    finding.message = std::move(message);
    finding.primary = primary;
    context.findings.push_back(std::move(finding));
    return context.findings.back();
}

void report_unknown(Context& context, const std::string& rule, Span where, std::string_view what,
                    const std::vector<std::string>& known) {
    const std::string word = text_of(context, where);
    Diagnostic& finding =
        report(context, rule, where, fmt::format("there is no {} `{}`", what, word));
    const std::string near = nearest(word, known);
    if (near.empty()) {
        finding.help = way_out(rule, word, known);
        return;
    }
    finding.help = fmt::format("write `{}`", near);
    finding.edits.push_back({where, near});
    finding.safe = !is_bold(word, near);
}

std::string a_role(model::Role role) {
    return (role == model::Role::energy ? "an " : "a ") + std::string(model::role_word(role));
}

void report_duplicate(Context& context, Span where, Span first) {
    Diagnostic& finding = report(context, "duplicate-name", where,
                                 fmt::format("`{}` is declared twice", text_of(context, where)));
    finding.related.push_back({first, "first declared here"});
    finding.help = "give one of them another name";
}

std::string title_or_name(syntax::Reader& reader, const std::string& name) {
    if (auto title = reader.take_text())
        return *title;
    return model::spaced(name);
}

std::string text_of(const Context& context, Span span) {
    return std::string(context.sources.slice(span));
}

Span whole_line(const Context& context, Span span) {
    const std::uint32_t line = context.sources.place(span.file, span.begin).line;
    return {span.file, context.sources.line_start(span.file, line),
            context.sources.line_start(span.file, line + 1)};
}

Span after_line(const Context& context, Span line) {
    const std::uint32_t end = whole_line(context, {line.file, line.end, line.end}).end;
    return {line.file, end, end};
}

namespace {

using syntax::Keyword;

model::ProseKind prose_kind(Keyword keyword) {
    switch (keyword) {
    case Keyword::note:
        return model::ProseKind::note;
    case Keyword::why:
        return model::ProseKind::why;
    case Keyword::notice:
    case Keyword::notice_on:
        return model::ProseKind::notice;
    case Keyword::caution:
    case Keyword::caution_on:
        return model::ProseKind::caution;
    case Keyword::warning:
    case Keyword::warning_on:
        return model::ProseKind::warning;
    case Keyword::danger:
    case Keyword::danger_on:
        return model::ProseKind::danger;
    default:
        return model::ProseKind::text;
    }
}

std::size_t indentation(std::string_view line) {
    std::size_t column = 0;
    for (const char c : line) {
        if (c == '\t') {
            column += 8 - column % 8;
        } else if (c == ' ') {
            ++column;
        } else {
            break;
        }
    }
    return column;
}

std::string_view without_line_end(std::string_view line) {
    while (!line.empty() && (line.back() == '\r' || line.back() == '\n'))
        line.remove_suffix(1);
    return line;
}

} // namespace

model::Prose read_prose(const Context& context, const Declaration& declaration, std::size_t& at) {
    const auto& lines = declaration.file->lines;
    model::Prose prose;
    const syntax::Line& first = lines[at];
    if (first.shape == syntax::LineShape::prose) {
        prose.kind = prose_kind(declaration.line().keyword);
        prose.span = first.whole;
    } else {
        prose.kind = prose_kind(first.keyword);
        prose.span = {first.head.file, first.head.begin, first.whole.end};
        prose.markdown = text_of(context, first.prose);
        ++at;
    }
    // The shallowest line of the continuation sets the left edge; what is deeper is Markdown's
    // business.
    const std::size_t start = at;
    std::size_t edge = std::string::npos;
    std::size_t end = at;
    for (std::size_t i = start; i < declaration.end; ++i) {
        if (lines[i].shape == syntax::LineShape::prose) {
            const auto number = static_cast<std::uint32_t>(i + 1);
            edge = std::min(edge, indentation(context.sources.line(declaration.file->id, number)));
            prose.span.end = lines[i].whole.end;
            end = i + 1;
        } else if (lines[i].shape != syntax::LineShape::blank) {
            break;
        }
    }
    for (; at < end; ++at) {
        const auto number = static_cast<std::uint32_t>(at + 1);
        std::string_view line =
            without_line_end(context.sources.line(declaration.file->id, number));
        const std::size_t spaces = std::min(indentation(line), edge);
        if (at != start || !prose.markdown.empty())
            prose.markdown += '\n';
        if (lines[at].shape == syntax::LineShape::blank)
            continue;
        if (line.find('\t') >= indentation(line))
            line.remove_prefix(std::min(spaces, line.size()));
        prose.markdown += line;
    }
    return prose;
}

} // namespace matchmark::resolve
