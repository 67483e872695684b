// From the files of a guide to its findings, in one go.
#include "drive/compilation.hpp"

#include "check/check.hpp"
#include "drive/gather.hpp"
#include "plan/unfold.hpp"
#include "resolve/resolve.hpp"

#include <utility>

namespace matchmark::drive {

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
        done.model = resolve::resolve(done.sources, done.files, done.findings);
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
