// All that this room draws, as bytes and as figures of a page.
#include "draw/drawings.hpp"

#include "draw/graph_scene.hpp"
#include "draw/lettering.hpp"
#include "draw/order.hpp"
#include "draw/views.hpp"
#include "language/words.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cctype>

namespace matchmark::draw {

namespace {

// Signs that Markdown would act on, made harmless; the list marks that this room itself puts at the
// start of a line stay.
std::string as_markdown(const std::string& text) {
    std::string safe;
    std::size_t at = 0;
    while (at < text.size()) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        std::string line = text.substr(at, end - at);
        const std::size_t digits = line.find_first_not_of("0123456789");
        std::size_t mark = 0;
        if (line.starts_with("- ")) {
            mark = 2;
        } else if (digits != 0 && digits != std::string::npos && line.substr(digits, 2) == ". ") {
            mark = digits + 2;
        }
        safe += line.substr(0, mark);
        for (std::size_t i = mark; i < line.size(); ++i) {
            const bool acts =
                std::string_view("\\`*_{}[]<>#|~&!").find(line[i]) != std::string_view::npos;
            const bool starts =
                i == mark && std::string_view("-+.=").find(line[i]) != std::string_view::npos;
            // "3. Lid" after a list mark would open a list of its own.
            const bool numbers = mark > 0 && i > mark && line[i] == '.' &&
                                 line.find_first_not_of("0123456789", mark) == i;
            safe += (acts || starts || numbers ? "\\" : "") + std::string(1, line[i]);
        }
        safe += '\n';
        at = end + 1;
    }
    return safe;
}

// What the guide is there to reach: the first item of its goal.
std::optional<ItemId> goal_of(const model::Model& model, const model::Procedure& procedure) {
    for (const model::Action& goal : model.guide(procedure.guide).goals) {
        for (const model::Target& target : goal.targets) {
            return target.ref.item;
        }
    }
    return std::nullopt;
}

void add_drawing(PageDrawings& drawings, const std::string& anchor, Scene scene) {
    guide::Figure figure;
    figure.anchor = "drawing-" + anchor;
    figure.title = scene.title;
    figure.alternative_text = as_markdown(scene.alternative_text);
    figure.width_mm = scene.width;
    figure.height_mm = scene.height;
    scene.alternative_text.clear(); // the page says in words what the drawing says, once
    figure.svg = paint_svg(scene);
    drawings.figures.push_back(std::move(figure));
    drawings.scenes.push_back(std::move(scene));
}

void add_graph(PageDrawings& drawings, const char* anchor, const Graph& graph) {
    if (graph.boxes.size() > 1) {
        add_drawing(drawings, anchor, scene_for_page(graph));
    }
}

} // namespace

const std::vector<std::string>& what_names() {
    static const std::vector<std::string> names{"access", "held", "wiring", "order"};
    return names;
}

std::optional<What> what_named(std::string_view word) {
    const auto& names = what_names();
    const auto place = std::find(names.begin(), names.end(), word);
    if (place == names.end()) {
        return std::nullopt;
    }
    return static_cast<What>(place - names.begin());
}

std::vector<Scene> drawing(What what, const model::Model& model, const model::Procedure* procedure,
                           const Viewing& viewing) {
    Viewing seen = viewing;
    if (procedure != nullptr && !seen.way_to && what == What::access) {
        seen.way_to = goal_of(model, *procedure);
        seen.procedure = procedure;
    }
    switch (what) {
    case What::access:
        return {scene_of(access_graph(model, seen))};
    case What::held:
        return {scene_of(held_graph(model, seen))};
    case What::wiring: {
        const Graph graph = wiring_graph(model, seen);
        return graph.boxes.empty() ? std::vector<Scene>{} : std::vector<Scene>{scene_of(graph)};
    }
    case What::order:
        return procedure == nullptr ? std::vector<Scene>{}
                                    : order_of_steps(model, *procedure, false);
    }
    return {};
}

PageDrawings page_drawings(const model::Model& model, const model::Procedure& procedure,
                           const Language& in) {
    PageDrawings drawings;
    std::size_t number = 0;
    for (Scene& part : order_of_steps(model, procedure, true, in)) {
        add_drawing(drawings, fmt::format("order-{}", ++number), std::move(part));
    }
    if (const auto goal = goal_of(model, procedure)) {
        const Viewing near{goal, true, &procedure, &in};
        add_graph(drawings, "access", access_graph(model, near));
        add_graph(drawings, "held", held_graph(model, near));
        add_graph(drawings, "wiring", wiring_graph(model, near));
    }
    return drawings;
}

MapFiles map_files(const model::Model& model, const model::Procedure& procedure, Paper paper,
                   const std::string& created, const Language& in) {
    MapFiles files;
    const std::vector<Scene> sheets = fastener_map(model, procedure, paper, in);
    if (sheets.empty()) {
        return files;
    }
    const model::Guide& guide = model.guide(procedure.guide);
    const std::string title = language::fill_text(
        language::text(in, "Fastener map: {guide}"),
        {{"guide", language::own(in, "guide " + guide.name,
                                 guide.title.empty() ? guide.name : guide.title)}});
    files.pdf = paint_pdf(sheets, {title, guide.author, created});
    for (const Scene& sheet : sheets) {
        files.svg.push_back(paint_svg(sheet));
    }
    return files;
}

std::string in_markdown(const std::vector<Scene>& scenes) {
    std::string text;
    for (const Scene& scene : scenes) {
        std::string title = as_markdown(printable(scene.title));
        text += (text.empty() ? "# " : "\n# ") + title + "\n" + as_markdown(scene.alternative_text);
    }
    return text;
}

} // namespace matchmark::draw
