// Looks for the pictures beside the guide that shows them.
#include "drive/pictures.hpp"

#include "diagnostics/nearest.hpp"
#include "publish/markup_tree.hpp"
#include "publish/page/text.hpp"
#include "publish/picture_shape.hpp"

#include <fmt/core.h>

#include <cmath>
#include <optional>

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

constexpr double least_dots_per_inch = 150; // common practice, no source
constexpr double mm_per_inch = 25.4;

Diagnostic finding_at(const Span& at, const char* rule, Severity severity, std::string message) {
    Diagnostic finding;
    finding.rule = rule;
    finding.severity = severity;
    finding.primary = at;
    finding.message = std::move(message);
    finding.label = "shown here";
    return finding;
}

Diagnostic missing(Disk& disk, const Span& at, const std::string& path) {
    Diagnostic finding = finding_at(at, "missing-picture", Severity::warning,
                                    fmt::format("there is no picture `{}`", path));
    finding.why = "the reader would see its words alone";
    finding.help = "put it there, or write its path as seen from the folder of this file";
    if (const std::string near = nearest_picture(disk, path); !near.empty()) {
        finding.help = fmt::format("the nearest that is there is `{}`", near);
    }
    return finding;
}

Diagnostic outside(const Span& at, const std::string& path) {
    Diagnostic finding =
        finding_at(at, "outside-project", Severity::error,
                   fmt::format("the picture `{}` lies outside the project's folder", path));
    finding.why = "a guide of somebody else's could show any picture of this machine";
    finding.help = "copy it beside the guide, or widen the project with `--root FOLDER`";
    return finding;
}

// What is wrong with a picture that is there.
std::optional<Diagnostic> fault(const Span& at, const std::string& path, const std::string& bytes) {
    const std::string_view type = publish::picture_type(bytes);
    if (type.empty() || (type == "image/svg+xml" && publish::harmless_svg(bytes).empty())) {
        Diagnostic finding = finding_at(at, "not-a-picture", Severity::warning,
                                        fmt::format("`{}` is no picture that a page shows", path));
        finding.why = "the reader would see its words alone";
        finding.help = "save it as JPEG, PNG or SVG";
        return finding;
    }
    const double across = publish::picture_pixels(bytes);
    const double inches = publish::printed_width(publish::picture_shape(bytes)) / mm_per_inch;
    if (across > 0 && across < inches * least_dots_per_inch) {
        Diagnostic finding = finding_at(
            at, "coarse-picture", Severity::advice,
            fmt::format("`{}` is coarse in print: {:.0f} dots per inch", path, across / inches));
        finding.why = fmt::format("it is {:.0f} pixels wide, and printed {:.0f} mm wide", across,
                                  inches * mm_per_inch);
        finding.help = fmt::format("take one of {:.0f} pixels or more",
                                   std::ceil(inches * least_dots_per_inch));
        return finding;
    }
    return std::nullopt;
}

void look_for(Disk& disk, Compilation& done, const std::vector<model::Photo>& photos) {
    for (const model::Photo& photo : photos) {
        const Span at = photo.span;
        if (at.file >= done.sources.size()) {
            continue;
        }
        const std::string path = beside(done.sources.file(at.file).path, photo.path);
        if (!disk.lets_in(path, done.sources.file(done.root).path)) {
            done.findings.push_back(outside(at, path));
            continue;
        }
        if (!disk.exists(path) || disk.is_folder(path)) {
            done.findings.push_back(missing(disk, at, path));
            continue;
        }
        const auto read = disk.read(path);
        const auto* bytes = std::get_if<std::string>(&read);
        if (auto found = bytes == nullptr ? std::nullopt : fault(at, path, *bytes)) {
            done.findings.push_back(std::move(*found));
        }
    }
}

} // namespace

void report_pictures(Disk& disk, Compilation& done) {
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

guide::Assets read_pictures(Disk& disk, const guide::Document& document, const std::string& root) {
    guide::Assets assets;
    for (const std::string& path : guide::picture_paths(document)) {
        if (!disk.lets_in(path, root)) {
            continue;
        }
        auto read = disk.read(path);
        if (auto* bytes = std::get_if<std::string>(&read)) {
            assets.files.emplace(path, std::move(*bytes));
        }
    }
    return assets;
}

} // namespace matchmark::drive
