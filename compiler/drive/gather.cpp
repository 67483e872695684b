// Follows `use` from file to file, so that a guide finds its device wherever it is kept.
#include "drive/gather.hpp"

#include "diagnostics/nearest.hpp"
#include "parse/parse.hpp"
#include "source/embedded.hpp"
#include "syntax/reader.hpp"

#include <fmt/core.h>

#include <map>
#include <optional>

namespace matchmark::drive {

namespace {

struct ParsedLibrary {
    SourceMap sources;
    syntax::Files files; // with the ids that they have in every compilation: 0, 1, ...
    std::vector<Diagnostic> findings;
};

// Parsed once for the whole run of the program.
const ParsedLibrary& library() {
    static const ParsedLibrary parsed = [] {
        ParsedLibrary result;
        for (const EmbeddedText& part : parts_library()) {
            result.sources.add(std::string(part.name), std::string(part.text), true);
        }
        for (FileId id = 0; id < result.sources.size(); ++id) {
            result.files.push_back(std::make_shared<const syntax::File>(
                syntax::parse(result.sources, id, result.findings)));
        }
        return result;
    }();
    return parsed;
}

// A `use` line: where it stands and the file that it names.
struct Use {
    Span span; // the quoted path
    std::string path;
};

std::vector<Use> uses_of(const SourceMap& sources, const syntax::File& file) {
    std::vector<Use> uses;
    for (const syntax::Line& line : file.lines) {
        if (line.keyword != syntax::Keyword::use || line.shape != syntax::LineShape::declaration) {
            continue;
        }
        syntax::Reader reader{sources, file, line};
        Use use;
        if (auto written = reader.take_text(&use.span)) {
            use.path = beside(sources.file(file.id).path, *written);
            uses.push_back(std::move(use));
        }
    }
    return uses;
}

// Byte columns are those of the text as read; what cannot be shown becomes `?`.
void make_printable(std::string& text, std::size_t at) {
    while (at != std::string::npos && at < text.size()) {
        text[at] = '?';
        const std::size_t next = first_unreadable_byte(std::string_view(text).substr(at + 1));
        at = next == std::string::npos ? next : at + 1 + next;
    }
}

class Gatherer {
public:
    Gatherer(Disk& disk, Gathered& into, Memory* memory)
        : disk_(disk), into_(into), memory_(memory) {}

    void add_root(const std::string& path, const std::string* text) {
        std::string bytes;
        if (text != nullptr) {
            bytes = *text;
        } else {
            auto read = disk_.read(path);
            if (const auto* problem = std::get_if<DiskProblem>(&read)) {
                into_.root = into_.sources.add(path, "");
                add_empty(into_.root);
                report_unreadable({into_.root, 0, 0}, path, *problem);
                return;
            }
            bytes = std::get<std::string>(std::move(read));
        }
        into_.root = add_file(path, std::move(bytes));
    }

private:
    // Parses a text, then what it uses, then stores it: so used files come before their users.
    FileId add_file(const std::string& path, std::string text) {
        const FileId id = into_.sources.size();
        ids_.emplace(beside("", path), id);
        if (!add_source(into_.sources, path, std::move(text), into_.findings)) {
            into_.unreadable = true;
            add_empty(id);
            return id;
        }
        syntax::FilePointer file = parsed(path, id);
        chain_.push_back({id, {}});
        for (const Use& use : uses_of(into_.sources, *file)) {
            chain_.back().via = use.span;
            follow(use);
        }
        chain_.pop_back();
        into_.files.push_back(std::move(file));
        return id;
    }

    void add_empty(FileId id) {
        into_.files.push_back(std::make_shared<const syntax::File>(syntax::File{id, {}, {}}));
    }

    syntax::FilePointer parsed(const std::string& path, FileId id) {
        const auto parse = [&](std::vector<Diagnostic>& findings) {
            return std::make_shared<const syntax::File>(syntax::parse(into_.sources, id, findings));
        };
        if (memory_ == nullptr)
            return parse(into_.findings);
        const std::string& text = into_.sources.file(id).text;
        Parsed& kept = memory_->parsed[path];
        if (kept.file == nullptr || kept.file->id != id || kept.text != text) {
            kept.text = text;
            kept.findings.clear();
            kept.file = parse(kept.findings);
        }
        into_.findings.insert(into_.findings.end(), kept.findings.begin(), kept.findings.end());
        return kept.file;
    }

    void follow(const Use& use) {
        if (const auto known = ids_.find(use.path); known != ids_.end()) {
            for (std::size_t i = 0; i < chain_.size(); ++i) {
                if (chain_[i].file == known->second) {
                    report_cycle(i);
                }
            }
            return;
        }
        if (chain_.size() >= most_deep || ids_.size() >= most_files) {
            report_too_many(use);
            return;
        }
        if (!disk_.lets_in(use.path, into_.sources.file(chain_.front().file).path)) {
            ids_.emplace(use.path, Span::no_file);
            report_outside(use);
            return;
        }
        auto read = disk_.read(use.path);
        if (const auto* problem = std::get_if<DiskProblem>(&read)) {
            ids_.emplace(use.path, Span::no_file); // reported once
            report_unreadable(use.span, use.path, *problem);
            return;
        }
        add_file(use.path, std::get<std::string>(std::move(read)));
    }

    // Nothing is said of what is there, not even whether something is.
    void report_outside(const Use& use) {
        Diagnostic finding;
        finding.rule = "outside-project";
        finding.primary = use.span;
        finding.label = "not read";
        finding.message = fmt::format("`{}` lies outside the project's folder", use.path);
        finding.why = "a guide of somebody else's could name any file of this machine";
        finding.help = "bring it into the project, or widen that with `--root FOLDER`";
        into_.findings.push_back(std::move(finding));
    }

    void report_unreadable(Span span, const std::string& path, const DiskProblem& problem) {
        into_.unreadable = true;
        Diagnostic finding;
        finding.primary = span;
        if (disk_.exists(path)) {
            finding.rule = "unreadable-file";
            finding.message = fmt::format("`{}` cannot be read: {}", path, problem.reason);
            finding.label = "named here";
            finding.help = "see that it is a file, and that you may read it";
        } else {
            finding.rule = "missing-file";
            finding.message = fmt::format("there is no file `{}`", path);
            finding.label = "named here";
            offer_nearest(finding, path);
        }
        if (span.empty()) {
            finding.label.clear();
        }
        into_.findings.push_back(std::move(finding));
    }

    void offer_nearest(Diagnostic& finding, const std::string& path) {
        const std::string near = nearest_file(disk_, path);
        if (near.empty()) {
            if (!finding.primary.empty()) {
                finding.help = "write its path as seen from the folder of this file";
            }
            return;
        }
        finding.help = fmt::format("name the file that is there, `{}`", near);
        const std::string written = syntax::unquoted(into_.sources.slice(finding.primary));
        const std::size_t slash = written.rfind('/');
        const std::string folder = slash == std::string::npos ? "" : written.substr(0, slash + 1);
        const std::size_t near_slash = near.rfind('/');
        const std::string name =
            near_slash == std::string::npos ? near : near.substr(near_slash + 1);
        if (!finding.primary.empty() && name.find_first_of("\"\\") == std::string::npos) {
            finding.edits.push_back({finding.primary, "\"" + folder + name + "\""});
            finding.safe = false; // the author may have meant a file still to be written
        }
    }

    // The ring runs from chain_[first] to the last of the chain and back to chain_[first].
    void report_cycle(std::size_t first) {
        const auto name = [&](std::size_t i) { return into_.sources.file(chain_[i].file).path; };
        Diagnostic finding;
        finding.rule = "use-cycle";
        finding.primary = chain_.back().via;
        finding.label = first + 1 == chain_.size() ? "this file itself" : "closes the ring";
        finding.message = fmt::format("`{}` uses itself", name(first));
        std::string ring = name(first);
        for (std::size_t i = first + 1; i < chain_.size(); ++i) {
            ring += " -> " + name(i);
            finding.related.push_back(
                {chain_[i - 1].via, fmt::format("`{}` uses `{}`", name(i - 1), name(i))});
        }
        finding.why = fmt::format("each file waits for the next: {} -> {}", ring, name(first));
        finding.help = "move what both need into a file of its own, and let each use that one";
        into_.findings.push_back(std::move(finding));
    }

    void report_too_many(const Use& use) {
        if (too_many_) {
            return; // one such finding says it all
        }
        too_many_ = true;
        Diagnostic finding;
        finding.rule = "too-many-files";
        finding.primary = use.span;
        finding.message =
            chain_.size() >= most_deep
                ? fmt::format("`{}` is used by a chain of more than {} files", use.path, most_deep)
                : fmt::format("more than {} files are used, from `{}` on", most_files, use.path);
        finding.label = "not followed";
        finding.help = "name the device's file in the guide itself";
        into_.findings.push_back(std::move(finding));
    }

    struct Link {
        FileId file = Span::no_file;
        Span via; // the `use` of this file that is followed just now
    };

    Disk& disk_;
    Gathered& into_;
    Memory* memory_;
    std::map<std::string, FileId> ids_; // by folded path; no_file: could not be read
    std::vector<Link> chain_;           // from the root to the file that is read just now
    bool too_many_ = false;
};

} // namespace

bool add_source(SourceMap& sources, const std::string& path, std::string text,
                std::vector<Diagnostic>& findings) {
    const std::size_t bad = first_unreadable_byte(text);
    if (bad == std::string::npos) {
        sources.add(path, std::move(text));
        return true;
    }
    const auto byte = static_cast<unsigned char>(text[bad]);
    make_printable(text, bad);
    const FileId id = sources.add(path, std::move(text));
    const auto at = static_cast<std::uint32_t>(bad);
    Diagnostic finding;
    finding.rule = "not-text";
    finding.primary = {id, at, at + 1};
    finding.message = byte == 0 ? fmt::format("`{}` is not text: it holds a NUL byte", path)
                                : fmt::format("`{}` is not text in UTF-8", path);
    finding.label = fmt::format("byte {:02X} (hexadecimal), shown as `?`", byte);
    finding.help = "save the file as UTF-8 from a text editor";
    findings.push_back(std::move(finding));
    return false;
}

std::string nearest_file(Disk& disk, const std::string& path) {
    const std::string folder = beside(path, ".");
    const auto slash = path.rfind('/');
    const std::string name = slash == std::string::npos ? path : path.substr(slash + 1);
    const auto listed = disk.list(folder, ".mmk");
    const auto* below = std::get_if<std::vector<std::string>>(&listed);
    if (below == nullptr) {
        return {};
    }
    std::vector<std::string> names;
    for (const std::string& entry : *below) {
        if (entry.find('/') == std::string::npos) {
            names.push_back(entry);
        }
    }
    std::string near = nearest(name, names);
    if (near.empty()) { // the ending left out is the commonest slip of all
        for (const std::string& entry : names) {
            if (entry == name + ".mmk") {
                near = entry;
            }
        }
    }
    return near.empty() || slash == std::string::npos ? near : path.substr(0, slash + 1) + near;
}

Gathered gather(Disk& disk, const std::string& path, const std::string* text, Memory* memory) {
    Gathered gathered;
    gathered.sources = library().sources;
    gathered.files = library().files;
    gathered.findings = library().findings;
    Gatherer(disk, gathered, memory).add_root(path, text);
    return gathered;
}

} // namespace matchmark::drive
