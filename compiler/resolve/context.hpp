// What the resolving functions share: the files, the model that grows, the names found so far.
#pragma once

#include "diagnostics/diagnostic.hpp"
#include "model/model.hpp"
#include "syntax/reader.hpp"
#include "syntax/tree.hpp"

#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <tuple>
#include <unordered_map>
#include <utility>
#include <vector>

namespace matchmark::resolve {

// A declaration: its head line and the lines below it that are its details.
struct Declaration {
    const syntax::File* file = nullptr;
    std::size_t head = 0; // index of its line
    std::size_t end = 0;  // one past its last line

    [[nodiscard]] const syntax::Line& line() const { return file->lines[head]; }
};

// What is declared under one name: where, and its index in the model.
struct Named {
    std::uint32_t index = 0;
    Span span;
};

// So that a name can be looked up as it stands in the text.
struct TextHash {
    using is_transparent = void;
    std::size_t operator()(std::string_view text) const {
        return std::hash<std::string_view>{}(text);
    }
};

// One space of names, with equal spellings of a letter folded (Unicode NFC). It may stand above
// another, whose names it has too; that one has to last as long.
class Names {
public:
    Names() = default;
    explicit Names(const Names* below) : below_(below) {}

    // Nothing, or what already has the name.
    std::optional<Named> add(std::string_view name, Named named);
    [[nodiscard]] std::optional<Named> find(std::string_view name) const;
    [[nodiscard]] std::vector<std::string> all() const;
    [[nodiscard]] std::size_t size() const;

private:
    const Names* below_ = nullptr;
    std::unordered_map<std::string, Named, TextHash, std::equal_to<>> by_name_;
    std::vector<std::string> in_order_;
};

struct NameSpaces {
    Names kinds = {};
    Names drives = {};
    Names forms = {};
    Names threads = {};
    Names grades = {};
    Names frictions = {};
    Names timings = {};
    Names tool_kinds = {};
    Names gear = {};
    Names rating_parts = {};
    Names signs = {};
    Names hazards = {};
    Names faces = {};
    Names items = {};
    Names functions = {};
    Names guides = {};
    Names variants = {};
};

struct Context : NameSpaces {
    Context(const SourceMap& all_sources, model::Model& growing, std::vector<Diagnostic>& found,
            NameSpaces names)
        : NameSpaces(std::move(names)), sources(all_sources), model(growing), findings(found) {}

    const SourceMap& sources;
    model::Model& model;
    std::vector<Diagnostic>& findings;
    // By how they are written.
    std::map<std::string_view, std::shared_ptr<const model::SpecWords>> phrases;
    std::map<model::Bolt, model::Shared<model::Bolt>> bolts;
    std::size_t compared = 0; // names that unknown ones were compared with
    // What is not on a guide's list, by where that guide is declared: the number of its finding.
    std::map<std::tuple<FileId, std::uint32_t, std::string>, std::size_t> unlisted;
};

// --- findings ---
Diagnostic& report(Context& context, std::string rule, Span primary, std::string message);
// "no part is called `X`", with the nearest of `known` offered as an edit.
void report_unknown(Context& context, const std::string& rule, Span where, std::string_view what,
                    const std::vector<std::string>& known);
// The names to offer for an unknown one; none once most_names_compared were looked through.
std::vector<std::string> known_names(Context& context, const Names& names);
// "a part", "an energy".
std::string a_role(model::Role role);
// A second declaration of a name.
void report_duplicate(Context& context, Span where, Span first);

// --- names ---
// The text of a name span.
std::string text_of(const Context& context, Span span);
// The title in quotes that stands next, or else the name with spaces for hyphens.
std::string title_or_name(syntax::Reader& reader, const std::string& name);
// A new entry under the name that stands next, or nothing (and a finding) when it is taken.
template <class Entry>
Entry* declared(Names& names, model::SharedList<Entry>& entries, Context& context,
                syntax::Reader& reader) {
    const auto name = reader.take_name();
    if (!name)
        return nullptr;
    const std::string text = text_of(context, *name);
    const auto index = static_cast<std::uint32_t>(entries.size());
    if (const auto first = names.add(text, {index, *name})) {
        report_duplicate(context, *name, first->span);
        return nullptr;
    }
    Entry& entry = entries.edit().emplace_back();
    entry.name = text;
    entry.span = *name;
    return &entry;
}

// --- lines ---
// Calls `visit(line, reader)` for each detail of the declaration that is no prose; the reader
// stands at its first term.
template <class Visit>
void each_detail(const Context& context, const Declaration& declaration, Visit visit) {
    for (std::size_t i = declaration.head + 1; i < declaration.end; ++i) {
        const syntax::Line& line = declaration.file->lines[i];
        if (line.shape != syntax::LineShape::detail || syntax::is_prose(line.keyword))
            continue;
        syntax::Reader reader{context.sources, *declaration.file, line};
        visit(line, reader);
    }
}
// The prose that starts on line `at` of the declaration, or (for a caution's) the prose lines from
// `at` on; moves `at` past it.
model::Prose read_prose(const Context& context, const Declaration& declaration, std::size_t& at);
// Where a line with this span of text may be inserted after: an empty span at the start of the next
// line.
Span after_line(const Context& context, Span line);
// The whole line in which the span lies, from its first character to the line end included.
Span whole_line(const Context& context, Span span);

} // namespace matchmark::resolve
