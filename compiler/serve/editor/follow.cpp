// Looks for a name in every file that can see it.
#include "serve/editor/follow.hpp"

#include "diagnostics/mend.hpp"
#include "parse/parse.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace matchmark::serve {

namespace {

// A use, and the compilation's file in which it stands.
struct Place {
    std::string path;
    NameUse use;
};

bool is_local(NameSort sort) { return sort == NameSort::resource || sort == NameSort::step; }

// The names of one file of a compilation that are spelt so and mean the same.
void collect(const Analysis& analysis, const syntax::File& file, const Followed& name,
             std::vector<Place>& places) {
    const SourceMap& sources = analysis.done.sources;
    const std::string path = beside("", sources.file(file.id).path);
    for (const NameUse& use : names_of(sources, file, analysis.done.model)) {
        if (sources.slice(use.span) == name.text && use.sort == name.use.sort)
            places.push_back({path, use});
    }
}

// The roots whose compilations hold every file that may use what this file declares.
std::vector<std::string> roots_for(Workspace& workspace, const std::string& declaring) {
    std::vector<std::string> roots = workspace.users_of(declaring);
    roots.push_back(declaring);
    return roots;
}

bool compare_places(const Place& a, const Place& b) {
    return std::pair(a.path, a.use.span.begin) < std::pair(b.path, b.use.span.begin);
}

std::vector<Place> places_in_file(Workspace& workspace, const std::string& path,
                                  const Followed& name) {
    std::vector<Place> places;
    const Analysis& analysis = workspace.analysis(path);
    collect(analysis, analysis.root(), name, places);
    std::erase_if(places, [&](const Place& place) { return place.use.home != name.use.home; });
    return places;
}

// The files that declare it, among those that this file sees.
std::set<std::string> declaring_files(Workspace& workspace, const std::string& path,
                                      const Followed& name) {
    std::set<std::string> files;
    const Analysis& analysis = workspace.analysis(path);
    for (const syntax::FilePointer& file : analysis.done.files) {
        if (analysis.done.sources.file(file->id).built_in)
            continue;
        std::vector<Place> places;
        collect(analysis, *file, name, places);
        for (const Place& place : places) {
            if (place.use.declares)
                files.insert(place.path);
        }
    }
    return files;
}

std::vector<Place> all_places(Workspace& workspace, const std::string& path, const Followed& name) {
    if (is_local(name.use.sort))
        return places_in_file(workspace, path, name);
    std::vector<Place> places;
    std::set<std::string> seen;
    std::set<std::string> declaring = declaring_files(workspace, path, name);
    if (declaring.empty())
        declaring.insert(path);
    for (const std::string& file : declaring) {
        for (const std::string& root : roots_for(workspace, file)) {
            if (!seen.insert(root).second)
                continue;
            const Analysis& analysis = workspace.analysis(root);
            collect(analysis, analysis.root(), name, places);
        }
    }
    std::sort(places.begin(), places.end(), compare_places);
    return places;
}

std::vector<Location> locations(Workspace& workspace, const std::vector<Place>& places) {
    std::vector<Location> found;
    for (const Place& place : places) {
        const Analysis& analysis = workspace.analysis(place.path);
        const LineTable table = workspace.lines(analysis.source().text);
        found.push_back({workspace.uri(place.path), table.range(place.use.span)});
    }
    return found;
}

std::string_view word_for(NameSort sort) {
    switch (sort) {
    case NameSort::verb:
        return "verb";
    case NameSort::state:
        return "state";
    case NameSort::trade:
    case NameSort::hazard:
        return "word of the trade";
    default:
        return "word";
    }
}

Problem refused(std::string words) { return {ErrorCode::request_failed, std::move(words)}; }

// Read as a declaration, is it a name and nothing else?
bool is_name(const std::string& text) {
    SourceMap sources;
    const std::string line = "part " + text + "\n";
    if (first_unreadable_byte(line) != std::string::npos ||
        text.find_first_of(" \t\r\n\"#") != std::string::npos)
        return false;
    const FileId id = sources.add("name", line);
    std::vector<Diagnostic> findings;
    const syntax::File file = syntax::parse(sources, id, findings);
    return findings.empty() && file.lines.size() == 1 && file.lines.front().term_count == 1;
}

std::size_t errors_in(const std::vector<Diagnostic>& findings) {
    return static_cast<std::size_t>(
        std::count_if(findings.begin(), findings.end(), [](const Diagnostic& finding) {
            return finding.severity == Severity::error;
        }));
}

// The whole texts after the change.
std::map<std::string, std::string>
texts_with(Workspace& workspace, const std::vector<Place>& places, const std::string& new_name) {
    std::map<std::string, std::string> texts;
    for (auto place = places.rbegin(); place != places.rend(); ++place) {
        const auto [entry, added] =
            texts.emplace(place->path, workspace.analysis(place->path).source().text);
        static_cast<void>(added);
        const Span span = place->use.span;
        entry->second.replace(span.begin, span.end - span.begin, new_name);
    }
    return texts;
}

// Names of the sort that are known already where the name is used.
bool is_taken(const Analysis& analysis, const Followed& name, const std::string& new_name) {
    const SourceMap& sources = analysis.done.sources;
    for (const syntax::FilePointer& file : analysis.done.files) {
        for (const NameUse& use : names_of(sources, *file, analysis.done.model)) {
            const bool same_space =
                use.sort == name.use.sort ||
                (use.sort == NameSort::resource && name.use.sort == NameSort::item) ||
                (use.sort == NameSort::item && name.use.sort == NameSort::resource);
            const bool near = !is_local(name.use.sort) || use.sort != name.use.sort ||
                              (use.home == name.use.home && file->id == analysis.done.root);
            if (same_space && near && use.declares && sources.slice(use.span) == new_name)
                return true;
        }
    }
    return false;
}

} // namespace

std::optional<Followed> followed(Workspace& workspace, const std::string& path, Position position) {
    const Analysis& analysis = workspace.analysis(path);
    const std::uint32_t offset = workspace.lines(analysis.source().text).offset(position);
    const auto names = names_of(analysis.done.sources, analysis.root(), analysis.done.model);
    const NameUse* use = name_at(names, offset);
    if (use == nullptr)
        return std::nullopt;
    return Followed{*use, std::string(analysis.done.sources.slice(use->span))};
}

std::vector<Location> declarations(Workspace& workspace, const std::string& path,
                                   const Followed& name) {
    std::vector<Place> places;
    if (is_local(name.use.sort)) {
        places = places_in_file(workspace, path, name);
    } else {
        for (const std::string& file : declaring_files(workspace, path, name)) {
            const Analysis& analysis = workspace.analysis(file);
            collect(analysis, analysis.root(), name, places);
        }
    }
    std::erase_if(places, [](const Place& place) { return !place.use.declares; });
    return locations(workspace, places);
}

std::vector<Location> uses(Workspace& workspace, const std::string& path, const Followed& name,
                           bool with_declaration) {
    auto places = all_places(workspace, path, name);
    if (!with_declaration)
        std::erase_if(places, [](const Place& place) { return place.use.declares; });
    return locations(workspace, places);
}

std::optional<Problem> why_not_renamed(Workspace& workspace, const std::string& path,
                                       const Followed& name) {
    static constexpr std::array fixed = {NameSort::verb, NameSort::state, NameSort::trade,
                                         NameSort::hazard, NameSort::other};
    if (std::find(fixed.begin(), fixed.end(), name.use.sort) != fixed.end())
        return refused(
            fmt::format("`{}` is a {}, which keeps its name", name.text, word_for(name.use.sort)));
    if (declarations(workspace, path, name).empty())
        return refused(fmt::format("`{}` is declared in no file that can be changed", name.text));
    return std::nullopt;
}

std::variant<WorkspaceEdit, Problem> renamed(Workspace& workspace, const std::string& path,
                                             const Followed& name, const std::string& new_name) {
    if (auto problem = why_not_renamed(workspace, path, name))
        return *problem;
    if (!is_name(new_name))
        return Problem{
            ErrorCode::invalid_params,
            fmt::format("`{}` is no name: a letter, then letters, digits and hyphens", new_name)};
    const auto places = all_places(workspace, path, name);
    const auto texts = texts_with(workspace, places, new_name);
    for (const auto& [file, text] : texts) {
        const Analysis& before = workspace.analysis(file);
        if (new_name != name.text && is_taken(before, name, new_name))
            return refused(fmt::format("`{}` is taken already in `{}`", new_name, file));
        if (errors_in(workspace.findings_with(file, texts)) > errors_in(before.done.findings))
            return refused(fmt::format("with the name `{}` there would be more errors in `{}`",
                                       new_name, file));
    }
    WorkspaceEdit edit;
    for (const Place& place : places) {
        const LineTable table = workspace.lines(workspace.analysis(place.path).source().text);
        edit[workspace.uri(place.path)].push_back({table.range(place.use.span), new_name});
    }
    return edit;
}

} // namespace matchmark::serve
