// From the files of a guide to its findings, in one go.
#include "drive/compilation.hpp"

#include "check/check.hpp"
#include "drive/gather.hpp"
#include "plan/unfold.hpp"
#include "resolve/resolve.hpp"

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
};

void add_words(LostWords& lost, std::string_view line) {
    constexpr std::string_view between = " \t,\"";
    for (std::size_t at = line.find_first_not_of(between); at != std::string_view::npos;) {
        const std::size_t end = line.find_first_of(between, at);
        lost.words.emplace(line.substr(at, end == std::string_view::npos ? end : end - at));
        at = line.find_first_not_of(between, end);
    }
}

LostWords lost_words(const SourceMap& sources, const std::vector<syntax::File>& files) {
    LostWords lost;
    for (const syntax::File& file : files) {
        for (std::size_t i = 0; i < file.lines.size(); ++i) {
            if (file.lines[i].shape == syntax::LineShape::broken && file.lines[i].depth == 0) {
                add_words(lost, sources.line(file.id, static_cast<std::uint32_t>(i + 1)));
                lost.device = lost.device || file.lines[i].keyword == syntax::Keyword::device;
            }
        }
    }
    return lost;
}

// Takes away the findings, from `first` on, that only repeat that a line could not be read.
void drop_echoes(const Compilation& done, std::vector<Diagnostic>& findings, std::size_t first) {
    const LostWords lost = lost_words(done.sources, done.files);
    const auto is_echo = [&](const Diagnostic& finding) {
        return finding.rule == "no-device"
                   ? lost.device
                   : finding.rule.starts_with("unknown-") &&
                         lost.words.contains(done.sources.slice(finding.primary));
    };
    const auto from = findings.begin() + static_cast<std::ptrdiff_t>(first);
    findings.erase(std::remove_if(from, findings.end(), is_echo), findings.end());
}

} // namespace

Compilation compile(Disk& disk, const std::string& path, const std::string* text) {
    Gathered gathered = gather(disk, path, text);
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
        whole = whole && finding.rule != "use-cycle" && finding.rule != "too-many-files";
    }
    if (whole) {
        const std::size_t first = done.findings.size();
        done.model = resolve::resolve(done.sources, done.files, done.findings);
        drop_echoes(done, done.findings, first);
    }
    if (whole && !any_error(done.findings)) {
        for (std::uint32_t i = 0; i < done.model.guides.size(); ++i) {
            if (done.model.guides[i].file == done.root) {
                done.procedures.push_back(plan::unfold(done.model, model::GuideId{i}));
            }
        }
        check::check(done.sources, done.files, done.model, done.procedures, done.findings);
    }
    sort_findings(done.findings);
    return done;
}

} // namespace matchmark::drive
