// Draws a face by the means of the fastener map, with all that has a place there, undone by a
// guide or not.
#include "serve/preview/faces.hpp"

#include "draw/map_shapes.hpp"
#include "draw/paint.hpp"
#include "model/describe.hpp"
#include "publish/page/text.hpp"
#include "source/markup.hpp"

#include <fmt/core.h>

namespace matchmark::serve {

namespace {

draw::MapGroup numbered_group(const model::Model& model, model::ItemId id, unsigned number) {
    draw::MapGroup group = draw::group_of(model, id);
    group.number = number;
    unsigned member = 0;
    for (const model::Point& at : model.item(id).rare->positions->points) {
        group.places.push_back({at, ++member, true});
    }
    return group;
}

draw::FaceMap map_of(const model::Model& model, const model::Face& face) {
    draw::FaceMap map;
    map.face = &face;
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const auto& positions = model.items[i].rare->positions;
        if (positions && positions->face == face.name && !positions->points.empty()) {
            map.groups.push_back(numbered_group(model, model::ItemId{i},
                                                static_cast<unsigned>(map.groups.size() + 1)));
        }
    }
    return map;
}

std::string key(const model::Model& model, const draw::FaceMap& map) {
    std::string rows;
    for (const draw::MapGroup& group : map.groups) {
        rows += fmt::format("<li><span class=\"number\">{}</span> {}</li>\n", group.number,
                            markup_escaped(model::for_reader(model, group.item, false)));
    }
    return rows.empty() ? rows : "<ul class=\"key\">\n" + rows + "</ul>\n";
}

// The frame keeps the face's own place in it, so that a click can be read in mm.
std::string face_section(const model::Model& model, const model::Face& face) {
    const draw::FaceMap map = map_of(model, face);
    draw::Scene scene;
    scene.width = face.width_mm + 2 * face_margin;
    scene.height = face.height_mm + 2 * face_margin;
    scene.title = face.name;
    scene.shapes = draw::face_shapes(map, draw::balloons_of(map), {face_margin, face_margin});
    const std::string id = "face-" + markup_escaped(face.name);
    const auto percent = [](double part, double whole) { return 100 * part / whole; };
    return fmt::format(
        "<section aria-labelledby=\"{0}\">\n<h2 id=\"{0}\">Face {1}, {2} x {3} mm</h2>\n"
        "<figure>\n<div class=\"face\" style=\"aspect-ratio:{4}/{5};--across:{4}mm\"><img "
        "src=\"data:image/svg+xml;base64,{6}\" alt=\"The face {1}, with what has a place there\" "
        "/><div class=\"surface\" data-face=\"{1}\" style=\"left:{7:.4f}%;top:{8:.4f}%;"
        "width:{9:.4f}%;height:{10:.4f}%\"></div></div>\n<figcaption>\n{11}</figcaption>\n"
        "</figure>\n</section>\n",
        id, markup_escaped(face.name), model::number_text(face.width_mm),
        model::number_text(face.height_mm), model::number_text(scene.width),
        model::number_text(scene.height), publish::base64(draw::paint_svg(scene)),
        percent(face_margin, scene.width), percent(face_margin, scene.height),
        percent(face.width_mm, scene.width), percent(face.height_mm, scene.height),
        key(model, map));
}

} // namespace

std::string faces(const model::Model& model) {
    std::string text;
    for (const model::Face& face : model.device.faces) {
        if (face.width_mm > 0 && face.height_mm > 0) {
            text += face_section(model, face);
        }
    }
    return text.empty() ? "<p>The device declares no face on which places could be given.</p>\n"
                        : text;
}

std::string places(const model::Model& model) {
    std::string rows;
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const model::Item& item = model.items[i];
        if (item.span.file == Span::no_file) {
            continue;
        }
        const std::string where =
            item.rare->positions
                ? fmt::format("{} of {} on {}", item.rare->positions->points.size(), item.count,
                              markup_escaped(item.rare->positions->face))
                : std::string();
        rows += fmt::format("<tr><th scope=\"row\">{}</th><td>{}</td><td>{}</td></tr>\n",
                            markup_escaped(model::for_reader(model, model::ItemId{i}, false)),
                            markup_escaped(item.name), where);
    }
    return rows.empty() ? rows
                        : "<section aria-labelledby=\"items\">\n<h2 id=\"items\">Items</h2>\n"
                          "<table>\n<thead><tr><th scope=\"col\">What</th><th scope=\"col\">Name"
                          "</th><th scope=\"col\">Places</th></tr></thead>\n<tbody>\n" +
                              rows + "</tbody>\n</table>\n</section>\n";
}

} // namespace matchmark::serve
