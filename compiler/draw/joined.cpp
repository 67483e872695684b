// How parts are held together, and what feeds them: parts, and between them what ties them.
#include "draw/views.hpp"

#include "language/punctuation.hpp"
#include "language/words.hpp"
#include "model/passing_on.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace matchmark::draw {

using language::fill_text;
using language::text;
using model::Item;
using model::Role;

namespace {

constexpr std::size_t most_joined_lines = 6;

std::vector<ItemId> shown_of(const Viewing& viewing) {
    return viewing.way_to ? std::vector<ItemId>{*viewing.way_to} : std::vector<ItemId>{};
}

// The boxes of the parts that a tie touches, the one that it is tied `to` last; each once.
std::vector<std::size_t> boxes_touched(const Model& model, const Folding& folding, ItemId tie) {
    std::vector<std::size_t> boxes;
    for (const ItemId part : model.item(tie).touches) {
        const std::size_t box = folding.box_of[part.value];
        if (box == Folding::no_box) {
            continue;
        }
        std::erase(boxes, box);
        boxes.push_back(box);
    }
    return boxes;
}

// Ties between the same parts, in one box of their own.
struct Bundle {
    std::vector<std::size_t> boxes;
    std::vector<ItemId> ties;
};

std::vector<Bundle> bundles_of(const Model& model, const Folding& folding, bool connectors_alone) {
    std::vector<Bundle> bundles;
    std::map<std::vector<std::size_t>, std::size_t> known;
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const Role role = model.items[i].role;
        if (!model::is_tie(role) || (connectors_alone && role != Role::connector)) {
            continue;
        }
        const std::vector<std::size_t> boxes = boxes_touched(model, folding, ItemId{i});
        const auto [place, is_new] = known.emplace(boxes, bundles.size());
        if (is_new) {
            bundles.push_back({boxes, {}});
        }
        bundles[place->second].ties.push_back(ItemId{i});
    }
    return bundles;
}

std::string said_of(const Language& in, const Model& model, const Graph& graph,
                    const Bundle& bundle) {
    std::vector<std::string> ties;
    for (const ItemId tie : bundle.ties) {
        ties.push_back(tie_line(in, model, tie));
    }
    std::vector<std::string> parts;
    for (const std::size_t box : bundle.boxes) {
        parts.push_back(graph.boxes[box].title);
    }
    return fmt::format("- {}{}{}\n", language::said_list(in, parts), language::colon(in),
                       language::said_list(in, ties));
}

bool touches(const Bundle& bundle, std::size_t box) {
    return std::find(bundle.boxes.begin(), bundle.boxes.end(), box) != bundle.boxes.end();
}

// Parts to which so much is tied that lines to them would be one black bundle. What is tied to them
// says so in words.
std::vector<bool> crowded(const std::vector<Bundle>& bundles, std::size_t boxes,
                          std::size_t chosen) {
    constexpr std::size_t most_lines_to_one = 12;
    std::vector<std::size_t> lines(boxes, 0);
    for (const Bundle& bundle : bundles) {
        for (const std::size_t box : bundle.boxes) {
            lines[box] += bundle.boxes.size() > 1 ? 1 : 0;
        }
    }
    std::vector<bool> found(boxes, false);
    for (std::size_t box = 0; box < boxes; ++box) {
        found[box] = lines[box] > most_lines_to_one && box != chosen;
    }
    return found;
}

// The tie's box between those of its parts; a tie inside one box is a line of that box.
void add_bundle(const Language& in, const Model& model, Graph& graph, const Bundle& bundle,
                const std::vector<bool>& is_crowded, Emphasis emphasis) {
    std::vector<std::string> lines;
    for (const ItemId tie : bundle.ties) {
        lines.push_back(tie_line(in, model, tie));
    }
    lines = shortened(in, std::move(lines), most_joined_lines);
    if (bundle.boxes.size() < 2) {
        for (const std::size_t box : bundle.boxes) {
            const std::string inside = fill_text(
                text(in, "inside: {ties}"), {{"ties", fmt::format("{}", fmt::join(lines, ", "))}});
            graph.boxes[box].lines.push_back(inside);
        }
        return;
    }
    Box tie;
    tie.title = lines.front();
    tie.lines.assign(lines.begin() + 1, lines.end());
    tie.form = BoxForm::tie;
    tie.emphasis = emphasis;
    const std::size_t place = graph.boxes.size();
    const bool all_crowded = std::all_of(bundle.boxes.begin(), bundle.boxes.end(),
                                         [&](std::size_t box) { return is_crowded[box]; });
    for (const std::size_t box : bundle.boxes) {
        if (is_crowded[box] && !all_crowded) {
            tie.lines.push_back(
                fill_text(text(in, "to: {part}"), {{"part", graph.boxes[box].title}}));
        }
    }
    graph.boxes.push_back(std::move(tie));
    for (std::size_t i = 0; i < bundle.boxes.size(); ++i) {
        if (is_crowded[bundle.boxes[i]] && !all_crowded) {
            continue;
        }
        const bool last = i + 1 == bundle.boxes.size();
        const std::size_t from = last ? place : bundle.boxes[i];
        const std::size_t to = last ? bundle.boxes[i] : place;
        graph.links.push_back({from, to, emphasis, false, false});
    }
}

// The box of each tie that has one.
using TieBoxes = std::map<ItemId, std::size_t>;

Graph joined(const Model& model, const Folding& folding, const std::vector<Bundle>& bundles,
             const Viewing& viewing, TieBoxes* tie_boxes = nullptr) {
    const Language& in = *viewing.language;
    Graph graph;
    const std::size_t chosen =
        viewing.way_to ? folding.box_of[viewing.way_to->value] : Folding::no_box;
    // A tie that is chosen has no box: near it is what it ties.
    const auto is_near = [&](const Bundle& bundle) {
        const auto& ties = bundle.ties;
        return touches(bundle, chosen) ||
               (viewing.way_to &&
                std::find(ties.begin(), ties.end(), *viewing.way_to) != ties.end());
    };
    const bool choosing = std::any_of(bundles.begin(), bundles.end(), is_near);
    std::vector<bool> beside(folding.inside.size(), false);
    for (const Bundle& bundle : bundles) {
        for (const std::size_t box : bundle.boxes) {
            beside[box] = beside[box] || is_near(bundle);
        }
    }
    for (std::size_t box = 0; box < folding.inside.size(); ++box) {
        Box made = part_box(in, model, folding, box);
        made.emphasis = !choosing       ? Emphasis::plain
                        : box == chosen ? Emphasis::strong
                        : beside[box]   ? Emphasis::plain
                                        : Emphasis::quiet;
        graph.boxes.push_back(std::move(made));
    }
    const std::vector<bool> is_crowded = crowded(bundles, folding.inside.size(), chosen);
    for (std::size_t box = 0; box < is_crowded.size(); ++box) {
        if (is_crowded[box]) {
            graph.apart.push_back(
                fill_text(text(in, "What is tied to {part} names it; no line leads there."),
                          {{"part", graph.boxes[box].title}}));
        }
    }
    for (const Bundle& bundle : bundles) {
        const Emphasis emphasis = !choosing         ? Emphasis::plain
                                  : is_near(bundle) ? Emphasis::strong
                                                    : Emphasis::quiet;
        // What is left out of the drawing is left out of its words.
        const bool left_out = viewing.way_alone && choosing && !is_near(bundle);
        if (!left_out && !bundle.boxes.empty()) {
            graph.alternative_text += said_of(in, model, graph, bundle);
        }
        const std::size_t next = graph.boxes.size();
        add_bundle(in, model, graph, bundle, is_crowded, emphasis);
        for (const ItemId tie : bundle.ties) {
            if (tie_boxes != nullptr && graph.boxes.size() > next) {
                (*tie_boxes)[tie] = next;
            }
        }
    }
    return graph;
}

// Keeps what has a link (or, of one part alone, what is near it).
void keep_linked(Graph& graph, const Viewing& viewing, const std::vector<bool>& is_tied,
                 const char* rest) {
    const Language& in = *viewing.language;
    std::vector<bool> kept(graph.boxes.size(), false);
    for (const Link& link : graph.links) {
        kept[link.from] = kept[link.to] = true;
    }
    std::vector<std::string> free;
    for (std::size_t i = 0; i < graph.boxes.size(); ++i) {
        if (!kept[i] && (i >= is_tied.size() || !is_tied[i])) {
            free.push_back(graph.boxes[i].title);
        }
        kept[i] = kept[i] && (!viewing.way_alone || graph.boxes[i].emphasis != Emphasis::quiet);
    }
    if (!free.empty() && *rest != '\0' && !viewing.way_alone) {
        graph.apart.push_back(
            fill_text(text(in, rest), {{"parts", language::said_list(in, free)}}));
        graph.alternative_text += "- " + graph.apart.back() + "\n";
    }
    keep_boxes(graph, kept);
}

// Makes the line between two boxes a heavy arrow; false when there is none.
bool make_live(Graph& graph, std::size_t from, std::size_t to) {
    for (Link& link : graph.links) {
        const bool between =
            (link.from == from && link.to == to) || (link.from == to && link.to == from);
        if (between) {
            link = {from, to, Emphasis::strong, true, false};
            return true;
        }
    }
    return false;
}

// What feeds through a plug does so on the drawing too: the plug is where it is parted.
bool feeds_through(Graph& graph, const Item& source, std::size_t from, std::size_t to,
                   const TieBoxes& tie_boxes) {
    if (source.through.size() != 1) {
        return false;
    }
    const auto plug = tie_boxes.find(source.through.front());
    return plug != tie_boxes.end() && make_live(graph, from, plug->second) &&
           make_live(graph, plug->second, to);
}

void add_feeds(const Language& in, const Model& model, const Folding& folding,
               const TieBoxes& tie_boxes, Graph& graph) {
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const Item& source = model.items[i];
        for (const ItemId fed : model::fed_directly(source)) {
            const std::size_t from = folding.box_of[i];
            const std::size_t to = folding.box_of[fed.value];
            if (!feeds_through(graph, source, from, to, tie_boxes)) {
                graph.links.push_back({from, to, Emphasis::strong, true, false});
            }
            std::vector<std::string> plugs;
            std::vector<std::string> bare;
            for (const ItemId plug : source.through) {
                plugs.push_back(language::said(in, model, plug));
                bare.push_back(language::said(in, model, plug, false));
            }
            graph.alternative_text +=
                "- " +
                fill_text(plugs.empty() ? text(in, "{source} feeds {the item}")
                                        : text(in, "{source} feeds {the item} through {the plugs}"),
                          {{"source", item_title(in, model, ItemId{i})},
                           {"the item", language::said(in, model, fed)},
                           {"item", language::said(in, model, fed, false)},
                           {"the plugs", language::said_list(in, plugs)},
                           {"plugs", language::said_list(in, bare)}}) +
                "\n";
        }
    }
}

// A fluid stands as a line in the box of what it is in.
void add_fluids(const Language& in, const Model& model, const Folding& folding, Graph& graph) {
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const Item& item = model.items[i];
        if (item.role != Role::fluid || !item.carrier.known() ||
            folding.box_of[item.carrier.value] == Folding::no_box) {
            continue;
        }
        std::string line = fill_text(text(in, "holds {fluid}"),
                                     {{"fluid", language::said(in, model, ItemId{i}, false)}});
        if (item.amount) {
            line += ", " + language::said(in, *item.amount);
        }
        Box& box = graph.boxes[folding.box_of[item.carrier.value]];
        box.lines.push_back(line);
        graph.alternative_text += fmt::format("- {} {}\n", box.title, line);
    }
}

} // namespace

Graph held_graph(const Model& model, const Viewing& viewing) {
    const Folding folding = fold(model, shown_of(viewing));
    const std::vector<Bundle> bundles = bundles_of(model, folding, false);
    Graph graph = joined(model, folding, bundles, viewing);
    const Language& in = *viewing.language;
    graph.title =
        fill_text(text(in, "What holds what: {device}"), {{"device", device_title(in, model)}});
    graph.legend =
        text(in, "Square boxes are parts. Round ones are what ties them, with how many.");
    if (viewing.way_to) {
        graph.legend +=
            " " + fill_text(text(in, "Heavy: what holds {the item}."),
                            {{"the item", language::said(in, model, *viewing.way_to)},
                             {"item", language::said(in, model, *viewing.way_to, false)}});
    }
    std::vector<bool> is_tied(folding.inside.size(), false);
    for (const Bundle& bundle : bundles) {
        for (const std::size_t box : bundle.boxes) {
            is_tied[box] = true;
        }
    }
    keep_linked(graph, viewing, is_tied, "Nothing ties: {parts}.");
    return graph;
}

Graph wiring_graph(const Model& model, const Viewing& viewing) {
    const Language& in = *viewing.language;
    Folding folding = fold(model, shown_of(viewing));
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (!model.items[i].feeds.empty()) {
            open_box(folding, ItemId{i});
        }
    }
    TieBoxes tie_boxes;
    Graph graph = joined(model, folding, bundles_of(model, folding, true), viewing, &tie_boxes);
    add_fluids(in, model, folding, graph);
    add_feeds(in, model, folding, tie_boxes, graph);
    graph.title =
        fill_text(text(in, "Wiring and hoses: {device}"), {{"device", device_title(in, model)}});
    graph.legend =
        text(in, "A double frame is a supply; a heavy arrow leads to what it makes live. "
                 "Round boxes are plugs, leads and hoses.");
    keep_linked(graph, viewing, {}, "");
    return graph;
}

} // namespace matchmark::draw
