// Gives boxes of a known size their places. Graphviz enters here and nowhere else; it gives
// coordinates alone, and its drawing and its letters are not used.
#include "draw/layout.hpp"

#include <fmt/core.h>
#include <gvc.h>

#include <algorithm>
#include <memory>
#include <mutex>

namespace matchmark::draw {

namespace {

constexpr double points_per_mm = 72 / 25.4;
constexpr double points_per_inch = 72;

struct FreeContext {
    void operator()(GVC_t* context) const { gvFreeContext(context); }
};

// Graphviz takes its words as `char*` and keeps copies.
char* word(const char* text) { return const_cast<char*>(text); }

void set(void* object, const char* name, const std::string& value) {
    agsafeset(object, word(name), word(value.c_str()), word(""));
}

std::string inches(double mm) {
    return fmt::format("{:.4f}", mm * points_per_mm / points_per_inch);
}

struct Built {
    Agraph_t* graph = nullptr;
    std::vector<Agnode_t*> nodes;
    std::vector<Agedge_t*> edges;
};

Built build(const std::vector<Size>& boxes,
            const std::vector<std::pair<std::size_t, std::size_t>>& pairs, Run run) {
    Built built;
    built.graph = agopen(word("g"), Agdirected, nullptr);
    const bool down = run == Run::downwards;
    set(built.graph, "rankdir", down ? "TB" : "LR");
    set(built.graph, "splines", "polyline"); // `ortho` may abort the process
    set(built.graph, "nodesep", inches(2.5));
    set(built.graph, "ranksep", inches(down ? 7 : 11));
    set(built.graph, "mclimit", "2");
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        Agnode_t* node = agnode(built.graph, word(std::to_string(i).c_str()), 1);
        set(node, "shape", "box");
        set(node, "label", "");
        set(node, "fixedsize", "true");
        set(node, "width", inches(boxes[i].width));
        set(node, "height", inches(boxes[i].height));
        built.nodes.push_back(node);
    }
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        Agedge_t* edge = agedge(built.graph, built.nodes[pairs[i].first],
                                built.nodes[pairs[i].second], word(std::to_string(i).c_str()), 1);
        set(edge, "arrowhead", "none");
        built.edges.push_back(edge);
    }
    return built;
}

Placement read(const Built& built) {
    const boxf bounds = GD_bb(built.graph);
    const auto from = [&](const pointf& p) {
        return Point{(p.x - bounds.LL.x) / points_per_mm, (bounds.UR.y - p.y) / points_per_mm};
    };
    Placement placed;
    placed.size = {(bounds.UR.x - bounds.LL.x) / points_per_mm,
                   (bounds.UR.y - bounds.LL.y) / points_per_mm};
    for (Agnode_t* node : built.nodes) {
        placed.centres.push_back(from(ND_coord(node)));
    }
    for (Agedge_t* edge : built.edges) {
        Route route;
        const splines* lines = ED_spl(edge);
        if (lines != nullptr && lines->size > 0) {
            const bezier& curve = lines->list[0];
            for (int i = 0; i < static_cast<int>(curve.size); ++i) {
                route.curve.push_back(from(curve.list[i]));
            }
        }
        placed.routes.push_back(std::move(route));
    }
    return placed;
}

} // namespace

Placement lay_out(const std::vector<Size>& boxes,
                  const std::vector<std::pair<std::size_t, std::size_t>>& pairs, Run run) {
    static std::mutex one_at_a_time; // contexts of their own do not keep threads apart
    const std::lock_guard<std::mutex> alone(one_at_a_time);
    const std::unique_ptr<GVC_t, FreeContext> context{gvContext()};
    const Built built = build(boxes, pairs, run);
    Placement placed;
    if (gvLayout(context.get(), built.graph, "dot") == 0) {
        placed = read(built);
        gvFreeLayout(context.get(), built.graph);
    }
    agclose(built.graph);
    return placed;
}

} // namespace matchmark::draw
