// Looks for the pictures beside the guide that shows them.
#include "drive/pictures.hpp"

#include "diagnostics/nearest.hpp"

#include <fmt/format.h>

namespace matchmark::drive {

namespace {

// Pictures that stand in the folder where this one was looked for.
std::string nearest_picture(Disk& disk, const std::string& path) {
    const std::size_t slash = path.rfind('/');
    if (slash == std::string::npos || slash == 0) {
        return {}; // listing goes into every folder below; here that may be much
    }
    const auto listed = disk.list(path.substr(0, slash), "");
    const auto* names = std::get_if<std::vector<std::string>>(&listed);
    return names == nullptr ? std::string() : nearest(path.substr(slash + 1), *names);
}

void look_for(Disk& disk, Compilation& done, const std::vector<model::Photo>& photos) {
    for (const model::Photo& photo : photos) {
        const Span at = photo.span;
        if (at.file >= done.sources.size()) {
            continue;
        }
        const std::string path = beside(done.sources.file(at.file).path, photo.path);
        if (disk.exists(path) && !disk.is_folder(path)) {
            continue;
        }
        Diagnostic finding;
        finding.rule = "missing-picture";
        finding.severity = Severity::warning;
        finding.primary = at;
        finding.message = fmt::format("there is no picture `{}`", path);
        finding.label = "shown here";
        finding.why = "the reader would see its words alone";
        if (const std::string near = nearest_picture(disk, path); !near.empty()) {
            finding.help = fmt::format("the nearest that is there is `{}`", near);
        }
        done.findings.push_back(std::move(finding));
    }
}

} // namespace

void report_missing_pictures(Disk& disk, Compilation& done) {
    for (const model::Guide& guide : done.model.guides) {
        if (guide.file != done.root) {
            continue;
        }
        look_for(disk, done, guide.photos);
        for (const model::Step& step : guide.steps) {
            look_for(disk, done, step.photos);
        }
    }
    sort_findings(done.findings);
}

guide::Assets read_pictures(Disk& disk, const guide::Document& document) {
    guide::Assets assets;
    for (const std::string& path : guide::picture_paths(document)) {
        auto read = disk.read(path);
        if (auto* bytes = std::get_if<std::string>(&read)) {
            assets.files.emplace(path, std::move(*bytes));
        }
    }
    return assets;
}

} // namespace matchmark::drive
