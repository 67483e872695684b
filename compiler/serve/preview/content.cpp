// The page that `publish` would make, with the pictures beside it instead of in it.
#include "serve/preview/content.hpp"

#include "draw/drawings.hpp"
#include "drive/pictures.hpp"
#include "model/describe.hpp"
#include "plan/reader/guide.hpp"
#include "publish/digest.hpp"
#include "publish/page/drawing.hpp"
#include "publish/page/parts.hpp"
#include "publish/page/text.hpp"
#include "serve/preview/faces.hpp"
#include "source/markup.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <utility>

namespace matchmark::serve {

namespace {

// Steps of the procedure and of the document, one by one: the document leaves out what no variant
// of the guide has.
std::vector<std::pair<const model::Step*, const guide::Step*>>
pairs(const drive::Compilation& done, const model::Procedure& procedure,
      const guide::Document& document) {
    std::vector<const guide::Step*> told;
    for (const guide::Section& section : document.sections) {
        for (const guide::Step& step : section.steps) {
            told.push_back(&step);
        }
    }
    const model::VariantMask existing = static_cast<model::VariantMask>(
        (1ULL << std::min<std::size_t>(model::variant_count(done.model), 63)) - 1);
    const model::VariantMask covered = done.model.guide(procedure.guide).variants & existing;
    std::vector<std::pair<const model::Step*, const guide::Step*>> both;
    for (const model::Step& step : procedure.steps) {
        if ((step.variants & covered) != 0 && both.size() < told.size()) {
            both.emplace_back(&step, told[both.size()]);
        }
    }
    return both;
}

void add_photos(Content& content, const SourceMap& sources, const std::vector<model::Photo>& photos,
                const std::string& anchor) {
    unsigned index = 0;
    for (const model::Photo& photo : photos) {
        if (photo.span.file < sources.size() && !sources.file(photo.span.file).built_in) {
            content.photos.push_back({anchor, index, sources.file(photo.span.file).path,
                                      sources.place(photo.span.file, photo.span.begin).line});
        }
        ++index;
    }
}

void add_items(Content& content, const drive::Compilation& done) {
    for (std::uint32_t i = 0; i < done.model.items.size(); ++i) {
        const model::Item& item = done.model.items[i];
        if (item.span.file >= done.sources.size()) {
            continue;
        }
        const bool placed = static_cast<bool>(item.rare->positions);
        content.items.push_back(
            {item.name, model::for_reader(done.model, model::ItemId{i}, false), item.count,
             placed ? item.rare->positions->face : "",
             placed ? static_cast<unsigned>(item.rare->positions->points.size()) : 0,
             done.sources.file(item.span.file).path});
    }
}

void add_prints(Content& content, const SourceMap& sources) {
    for (FileId id = 0; id < sources.size(); ++id) {
        if (!sources.file(id).built_in) {
            content.prints[sources.file(id).path] = fingerprint(sources.file(id).text);
        }
    }
}

// The list of all guides, the others of this file, and the device's own page.
std::string ways(const drive::Compilation& done, const std::string& shown) {
    const std::string path = done.sources.file(done.root).path;
    std::string links = "<li><a href=\"/\">All guides</a></li>\n";
    const FileId device = done.model.device.span.file;
    if (device < done.sources.size() && !done.sources.file(device).built_in && !shown.empty()) {
        links += fmt::format("<li><a href=\"/device/{}\">The device and its faces</a></li>\n",
                             address_escaped(done.sources.file(device).path));
    }
    for (const model::Guide& guide : done.model.guides) {
        if (guide.file == done.root && guide.name != shown) {
            links += fmt::format("<li><a href=\"/guide/{}?guide={}\">{}</a></li>\n",
                                 address_escaped(path), address_escaped(guide.name),
                                 markup_escaped(guide.title.empty() ? guide.name : guide.title));
        }
    }
    return "<nav class=\"others\" aria-label=\"Other pages\">\n<ul>\n" + links + "</ul>\n</nav>\n";
}

publish::ShownPictures pictures_beside(const guide::Assets& assets) {
    publish::ShownPictures pictures = publish::shown_pictures(assets);
    for (auto& [path, picture] : pictures) {
        picture.source =
            "/picture/" + address_escaped(path) + "?print=" + fingerprint(picture.bytes);
        picture.bytes.clear();
    }
    return pictures;
}

Content guide_content(FolderDisk& disk, const drive::Compilation& done,
                      const model::Procedure& procedure) {
    guide::Document document = plan::reader_guide(done.sources, done.model, procedure);
    document.figures = draw::page_drawings(done.model, procedure).figures;
    const guide::Assets assets =
        drive::read_pictures(disk, document, done.sources.file(done.root).path);
    const publish::ShownPictures pictures = pictures_beside(assets);
    const auto source = [&](std::size_t i) {
        return "data:image/svg+xml;base64," + publish::base64(document.figures[i].svg);
    };
    Content content;
    content.title = document.title;
    content.body = publish::without_controls(
        ways(done, document.name) +
        publish::page_body({document, pictures}, publish::drawings(document, source)));
    add_photos(content, done.sources, done.model.guide(procedure.guide).photos, "");
    for (const auto& [step, told] : pairs(done, procedure, document)) {
        content.steps.push_back({step->section, step->name, told->anchor});
        add_photos(content, done.sources, step->photos, told->anchor);
    }
    add_items(content, done);
    add_prints(content, done.sources);
    return content;
}

Content device_content(const drive::Compilation& done) {
    const model::Device& device = done.model.device;
    Content content;
    content.title = device.title.empty() ? device.name : device.title;
    content.body = publish::without_controls(
        ways(done, "") + "<header class=\"block\">\n<h1>" + markup_escaped(content.title) +
        "</h1>\n</header>\n<main>\n" + faces(done.model) + places(done.model) + "</main>\n");
    for (const model::Face& face : device.faces) {
        content.faces.push_back({face.name, face.width_mm, face.height_mm});
    }
    add_items(content, done);
    add_prints(content, done.sources);
    return content;
}

} // namespace

std::string fingerprint(std::string_view text) {
    return publish::hexadecimal(publish::sha256(text), 12);
}

Shown show(FolderDisk& disk, const std::string& path, const std::string& guide) {
    drive::Compilation done = drive::compile(disk, path);
    drive::report_pictures(disk, done);
    Shown shown;
    shown.wrong = any_error(done.findings) || done.unreadable;
    shown.findings = shown_findings(done);
    bool has_guide = false;
    for (const model::Guide& declared : done.model.guides) {
        has_guide = has_guide || declared.file == done.root;
    }
    for (const model::Procedure& procedure : done.procedures) {
        const std::string& name = done.model.guide(procedure.guide).name;
        if (shown.guide.empty() && (guide.empty() || name == guide)) {
            shown.guide = name;
            shown.content = guide_content(disk, done, procedure);
        }
    }
    if (!has_guide && !shown.wrong && guide.empty() && done.model.device.span.known()) {
        shown.content = device_content(done);
    }
    return shown;
}

} // namespace matchmark::serve
