// From the files of a guide to its findings, in one go.
#include "drive/compilation.hpp"

#include "check/check.hpp"
#include "drive/gather.hpp"
#include "drive/limits.hpp"
#include "plan/unfold.hpp"
#include "resolve/resolve.hpp"
#include "source/embedded.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <functional>
#include <set>
#include <string_view>
#include <utility>

namespace matchmark::drive {

namespace {

// The words of the lines that could not be read: what they declare is not known, which is no news
// any more.
struct LostWords {
    std::set<std::string, std::less<>> words;
    bool device = false;
    bool whole_files = false; // a `use` that could not be read
};

bool lists_something(syntax::Keyword keyword) {
    return keyword == syntax::Keyword::tool || keyword == syntax::Keyword::spare ||
           keyword == syntax::Keyword::supply;
}

void add_words(LostWords& lost, std::string_view line) {
    constexpr std::string_view between = " \t,\"";
    for (std::size_t at = line.find_first_not_of(between); at != std::string_view::npos;) {
        const std::size_t end = line.find_first_of(between, at);
        std::string word(line.substr(at, end == std::string_view::npos ? end : end - at));
        lost.words.insert(word);
        std::replace(word.begin(), word.end(), '_', '-'); // the usual slip in a name
        lost.words.insert(std::move(word));
        at = line.find_first_not_of(between, end);
    }
}

LostWords lost_words(const SourceMap& sources, const syntax::Files& files) {
    LostWords lost;
    for (std::size_t at = parts_library().size(); at < files.size(); ++at) {
        const syntax::FilePointer& file = files[at];
        for (std::size_t i = 0; i < file->lines.size(); ++i) {
            const syntax::Line& line = file->lines[i];
            if (line.shape == syntax::LineShape::broken &&
                (line.depth == 0 || lists_something(line.keyword))) {
                add_words(lost, sources.line(file->id, static_cast<std::uint32_t>(i + 1)));
                lost.device = lost.device || line.keyword == syntax::Keyword::device;
                lost.whole_files = lost.whole_files || line.keyword == syntax::Keyword::use;
            }
        }
    }
    return lost;
}

// Takes away the findings, from `first` on, that only repeat that a line could not be read.
void drop_echoes(const Compilation& done, std::vector<Diagnostic>& findings, std::size_t first) {
    if (first == findings.size())
        return;
    const LostWords lost = lost_words(done.sources, done.files);
    const auto is_echo = [&](const Diagnostic& finding) {
        if (finding.rule == "no-device")
            return lost.device || lost.whole_files;
        const bool names_something =
            finding.rule.starts_with("unknown-") || finding.rule == "unlisted-tool";
        return names_something &&
               (lost.whole_files || lost.words.contains(done.sources.slice(finding.primary)));
    };
    const auto from = findings.begin() + static_cast<std::ptrdiff_t>(first);
    findings.erase(std::remove_if(from, findings.end(), is_echo), findings.end());
}

// The parts library, resolved once for the whole run of the program.
const resolve::BasePointer& library_base(const Compilation& done) {
    static const resolve::BasePointer base =
        resolve::resolve_base(done.sources, done.files, parts_library().size());
    return base;
}

// What the used files declare, once they have stayed as they are from one compilation to the next;
// until then nothing.
resolve::BasePointer used_base(const Compilation& done, Memory& memory) {
    const std::size_t first = parts_library().size();
    const std::size_t last = done.files.size() - 1;
    bool same = memory.used.size() == last - first;
    for (std::size_t i = first; i < last && same; ++i) {
        const SourceFile& file = done.sources.file(done.files[i]->id);
        same =
            memory.used[i - first].first == file.path && memory.used[i - first].second == file.text;
    }
    // A device, or a guide with its device in it: what was used before may come again.
    if (first == last)
        return nullptr;
    if (!same) {
        std::erase_if(memory.parsed, [&](const auto& entry) {
            return std::none_of(done.files.begin(), done.files.end(), [&](const auto& file) {
                return done.sources.file(file->id).path == entry.first;
            });
        });
        memory.used.clear();
        for (std::size_t i = first; i < last; ++i) {
            const SourceFile& file = done.sources.file(done.files[i]->id);
            memory.used.emplace_back(file.path, file.text);
        }
        memory.base = nullptr;
        memory.tried = false;
        return nullptr;
    }
    if (!memory.tried)
        memory.base = resolve::resolve_base(done.sources, done.files, last, library_base(done));
    memory.tried = true;
    return memory.base;
}

model::Model resolved(Compilation& done, Memory* memory) {
    resolve::BasePointer base = library_base(done);
    if (base == nullptr)
        return resolve::resolve(done.sources, done.files, done.findings);
    if (memory != nullptr) {
        resolve::BasePointer used = used_base(done, *memory);
        if (used != nullptr && resolve::may_follow(*used, done.files))
            base = std::move(used);
    }
    return resolve::resolve(done.sources, done.files, done.findings, *base);
}

// In a few thousand findings nobody reads, and each of them is put into words.
void keep_readable(std::vector<Diagnostic>& findings) {
    if (findings.size() <= most_findings)
        return;
    // An error that is left out must not make the rest a clean guide.
    Diagnostic rest;
    rest.rule = "too-many-findings";
    rest.primary = findings[most_findings].primary;
    rest.message =
        fmt::format("there are {} findings; those from here on are not told", findings.size());
    rest.help = "mend those above, then check again";
    findings.resize(most_findings);
    findings.push_back(std::move(rest));
}

} // namespace

Compilation compile(Disk& disk, const std::string& path, const std::string* text, Memory* memory,
                    Lines lines) {
    Gathered gathered = gather(disk, path, text, memory);
    Compilation done;
    done.sources = std::move(gathered.sources);
    done.files = std::move(gathered.files);
    done.root = gathered.root;
    done.findings = std::move(gathered.findings);
    done.unreadable = gathered.unreadable;
    // A file that is not there would make every name in it unknown; a slip in a line, every use of
    // what it declares.
    bool whole = !done.unreadable;
    for (const Diagnostic& finding : done.findings) {
        whole = whole && finding.rule != "use-cycle" && finding.rule != "too-many-files" &&
                finding.rule != "outside-project";
    }
    if (whole) {
        const std::size_t first = done.findings.size();
        done.model = resolved(done, memory);
        drop_echoes(done, done.findings, first);
    }
    const auto allowances = check::allowances_of(done.sources, *done.files.back());
    if (lines == Lines::let_go)
        done.files = {};
    if (whole && !any_error(done.findings)) {
        for (std::uint32_t i = 0; i < done.model.guides.size(); ++i) {
            if (done.model.guides[i].file == done.root) {
                done.procedures.push_back(plan::unfold(done.model, model::GuideId{i}));
            }
        }
        check::check(done.sources, done.root, allowances, done.model, done.procedures,
                     done.findings);
    }
    sort_findings(done.findings);
    keep_readable(done.findings);
    return done;
}

} // namespace matchmark::drive
