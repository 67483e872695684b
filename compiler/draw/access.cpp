// What must come off before what.
#include "draw/views.hpp"

#include "draw/way.hpp"
#include "language/words.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <charconv>
#include <limits>
#include <numeric>

namespace matchmark::draw {

using language::fill_text;
using model::Item;
using model::Role;

namespace {

constexpr std::size_t most_lines = 5;

// An item in both forms, for a pattern to choose from.
std::vector<std::pair<std::string_view, std::string>> places(const Language& in, const Model& model,
                                                             ItemId item) {
    return {{"the item", language::said(in, model, item)},
            {"item", language::said(in, model, item, false)}};
}

std::vector<WayStep> way_seen(const Model& model, const Viewing& viewing) {
    std::vector<WayStep> way;
    if (viewing.procedure != nullptr) {
        way = way_in_guide(model, *viewing.procedure, *viewing.way_to, *viewing.language);
    }
    return way.empty() ? way_to(model, *viewing.way_to, *viewing.language) : way;
}

// Folds the items and collects the arrows into each box.
class Access {
public:
    Access(const Model& model, const Viewing& viewing) : model_(model) {
        if (viewing.way_to) {
            way_ = way_seen(model, viewing);
            shown_.push_back(*viewing.way_to);
        }
        for (const WayStep& step : way_) {
            shown_.push_back(step.item);
        }
        folding_ = fold(model, shown_);
        for (const WayStep& step : way_) {
            const Role role = model.item(step.item).role;
            if (role != Role::part && !model::is_tie(role)) {
                open_box(folding_, step.item);
            }
        }
        for (const Item& item : model.items) {
            open_ties_in_the_way(item);
        }
        for (std::uint32_t i = 0; i < model.items.size(); ++i) {
            add_item(ItemId{i});
        }
        // A fluid that something waits for waits itself: for a valve that is closed first.
        for (std::uint32_t i = 0; i < model.items.size(); ++i) {
            const Item& item = model.items[i];
            const std::size_t box = folding_.box_of[i];
            if (item.role != Role::part && !model::is_tie(item.role) && item.feeds.empty() &&
                box != Folding::no_box) {
                add_what_it_waits_for(item, box);
            }
        }
    }

    Graph graph(const Viewing& viewing) {
        Graph graph;
        graph.links = links_;
        const std::vector<unsigned> turns = turns_on_the_way();
        for (std::size_t box = 0; box < folding_.inside.size(); ++box) {
            graph.boxes.push_back(box_of(box, turns[box], viewing));
        }
        tidy_links(graph);
        for (Link& link : graph.links) {
            const bool both = turns[link.from] != 0 && turns[link.to] != 0;
            link.emphasis = !viewing.way_to ? Emphasis::plain
                            : both          ? Emphasis::strong
                                            : Emphasis::quiet;
        }
        reduce(graph);
        return graph;
    }

    [[nodiscard]] const std::vector<WayStep>& way() const { return way_; }

private:
    // Who lies under a ribbon waits for the ribbon, not for the parts that it joins.
    void open_ties_in_the_way(const Item& item) {
        const auto open = [&](ItemId id) {
            if (model::is_tie(model_.item(id).role)) {
                open_box(folding_, id);
            }
        };
        for (const model::ReachClause& clause : item.reach) {
            for (const auto& way : clause.ways) {
                for (const model::ItemRef& ref : way) {
                    open(ref.item);
                }
            }
        }
        for (const model::Need& need : item.needs) {
            open(need.condition.item.item);
        }
    }

    // A tie stands in the boxes of the parts that it holds, unless it has one of its own.
    [[nodiscard]] std::vector<std::size_t> boxes_of(ItemId id) const {
        const std::size_t own = folding_.box_of[id.value];
        return own == Folding::no_box && model::is_tie(model_.item(id).role)
                   ? boxes_held(model_, folding_, id)
                   : std::vector<std::size_t>{own};
    }

    void add_item(ItemId id) {
        const Item& item = model_.item(id);
        std::vector<std::size_t> boxes;
        if (item.role == Role::part || model::is_tie(item.role)) {
            boxes = boxes_of(id);
        } else if (!item.feeds.empty()) {
            boxes.push_back(open_box(folding_, id));
        }
        if (model::is_tie(item.role) && folding_.box_of[id.value] != Folding::no_box) {
            add_held(id);
        }
        for (const ItemId fed : item.feeds) {
            lead(id, folding_.box_of[fed.value], false);
        }
        for (const std::size_t box : boxes) {
            add_what_it_waits_for(item, box);
        }
    }

    // What is let off from outside waits for nothing that hides it.
    [[nodiscard]] bool waits_to_be_laid_open(const Item& item) const {
        const std::vector<model::Verb>& verbs = model_.kind(item.kind).verbs;
        return verbs.empty() || std::any_of(verbs.begin(), verbs.end(), [&](const auto& verb) {
                   return model::asks_reach(model_.kind(item.kind), verb);
               });
    }

    void add_what_it_waits_for(const Item& item, std::size_t box) {
        for (const model::ReachClause& clause : item.reach) {
            for (const auto& way : clause.ways) {
                for (const model::ItemRef& ref : way) {
                    if (waits_to_be_laid_open(item)) {
                        lead(ref.item, box, clause.ways.size() > 1);
                    }
                }
            }
        }
        for (const ItemId blocker : item.blocked_by) {
            lead(blocker, box, false);
        }
        for (const model::Need& need : item.needs) {
            lead(need.condition.item.item, box, false);
        }
    }

    // What a tie with a box of its own holds comes off after it; but not what hides the tie: a lid
    // opens, and comes off later.
    void add_held(ItemId tie) {
        const auto hides = [&](std::size_t box) {
            for (const model::ReachClause& clause : model_.item(tie).reach) {
                for (const auto& way : clause.ways) {
                    for (const model::ItemRef& ref : way) {
                        if (folding_.box_of[ref.item.value] == box) {
                            return true;
                        }
                    }
                }
            }
            return false;
        };
        for (const std::size_t box : boxes_held(model_, folding_, tie)) {
            if (!hides(box)) {
                lead(tie, box, false);
            }
        }
    }

    // From whatever box holds `before`.
    void lead(ItemId before, std::size_t box, bool one_of_ways) {
        const Role role = model_.item(before).role;
        if (role != Role::part && !model::is_tie(role)) {
            open_box(folding_, before);
        }
        for (const std::size_t one : boxes_of(before)) {
            if (box != Folding::no_box && one != Folding::no_box) {
                links_.push_back({one, box, Emphasis::plain, true, one_of_ways});
            }
        }
    }

    // For each box, its turn on the way, from 1; 0: not on it. A part's turn is when it comes off,
    // which may be long after the first of its screws.
    [[nodiscard]] std::vector<unsigned> turns_on_the_way() const {
        std::vector<std::size_t> last_act(folding_.inside.size(), 0);
        std::vector<bool> by_part(folding_.inside.size(), false);
        for (std::size_t act = 1; act <= way_.size(); ++act) {
            const ItemId item = way_[act - 1].item;
            const bool tie = model::is_tie(model_.item(item).role);
            const std::vector<std::size_t> boxes = boxes_of(item);
            for (const std::size_t box : boxes) {
                // Where a plug's two ends are two boxes, only one of them need come out.
                const bool comes_off = boxes.size() == 1 || is_handled(box);
                if (box != Folding::no_box && comes_off && (!tie || !by_part[box])) {
                    last_act[box] = act;
                    by_part[box] = !tie;
                }
            }
        }
        std::vector<std::size_t> order;
        for (std::size_t box = 0; box < last_act.size(); ++box) {
            if (last_act[box] != 0) {
                order.push_back(box);
            }
        }
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return last_act[a] < last_act[b]; });
        std::vector<unsigned> turns(folding_.inside.size(), 0);
        for (std::size_t i = 0; i < order.size(); ++i) {
            turns[order[i]] = static_cast<unsigned>(i + 1);
        }
        return turns;
    }

    [[nodiscard]] bool is_handled(std::size_t box) const {
        return std::any_of(way_.begin(), way_.end(), [&](const WayStep& step) {
            return !model::is_tie(model_.item(step.item).role) &&
                   folding_.box_of[step.item.value] == box;
        });
    }

    Box box_of(std::size_t box, unsigned turn, const Viewing& viewing) const {
        const Language& in = *viewing.language;
        Box made = part_box(in, model_, folding_, box);
        if (turn != 0) {
            made.title = fmt::format("{}. {}", turn, made.title);
        }
        std::vector<std::string> ties;
        for (std::uint32_t i = 0; i < model_.items.size(); ++i) {
            const bool inside =
                model::is_tie(model_.items[i].role) && folding_.box_of[i] == Folding::no_box;
            const auto held =
                inside ? boxes_held(model_, folding_, ItemId{i}) : std::vector<std::size_t>{};
            if (std::find(held.begin(), held.end(), box) != held.end()) {
                ties.push_back(tie_line(in, model_, ItemId{i}));
            }
        }
        for (std::string& line : shortened(in, std::move(ties), most_lines)) {
            made.lines.push_back(std::move(line));
        }
        if (viewing.way_to) {
            made.emphasis = turn != 0 ? Emphasis::strong : Emphasis::quiet;
        }
        return made;
    }

    const Model& model_;
    std::vector<WayStep> way_;
    std::vector<ItemId> shown_;
    Folding folding_;
    std::vector<Link> links_;
};

// What comes off before it, and what holds it.
std::string before_in_words(const Language& in, const Graph& graph, std::size_t box) {
    std::vector<std::string> first;
    std::vector<std::string> ways;
    for (const Link& link : graph.links) {
        if (link.to == box) {
            (link.one_of_ways ? ways : first).push_back(graph.boxes[link.from].title);
        }
    }
    std::string text = first.empty() ? ""
                                     : fill_text(language::text(in, "; after {parts}"),
                                                 {{"parts", language::said_list(in, first)}});
    text += ways.empty() ? ""
                         : fill_text(language::text(in, "; by way of {parts}"),
                                     {{"parts", language::said_list(in, ways, "or")}});
    for (const std::string& line : graph.boxes[box].lines) {
        text += "; " + line;
    }
    return text;
}

std::string in_words(const Model& model, const Graph& graph, const Viewing& viewing,
                     const std::vector<WayStep>& way) {
    const Language& in = *viewing.language;
    std::string text;
    // Of a way alone, the guide's own steps are these acts.
    if (viewing.way_to && !viewing.way_alone) {
        text += fill_text(way.empty() ? language::text(in, "No way to {the item} is known.")
                                      : language::text(in, "The way to {the item}:"),
                          places(in, model, *viewing.way_to)) +
                "\n\n";
        for (std::size_t i = 0; i < way.size(); ++i) {
            text += fmt::format("{}. {}\n", i + 1, way[i].words);
        }
        text += "\n";
    }
    for (std::size_t box = 0; box < graph.boxes.size(); ++box) {
        text += fmt::format("- {}{}\n", graph.boxes[box].title, before_in_words(in, graph, box));
    }
    return text;
}

// The turn that stands before a box's title; boxes without one come last.
unsigned turn_in(const Box& box) {
    unsigned turn = 0;
    const char* const end = box.title.data() + box.title.size();
    const auto read = std::from_chars(box.title.data(), end, turn);
    const bool numbered = box.emphasis == Emphasis::strong && read.ec == std::errc{};
    return numbered ? turn : std::numeric_limits<unsigned>::max();
}

// The boxes on the way, in its order, and those from which an arrow leads to one of them.
void keep_way(Graph& graph) {
    std::vector<bool> kept(graph.boxes.size(), false);
    for (std::size_t i = 0; i < graph.boxes.size(); ++i) {
        kept[i] = graph.boxes[i].emphasis == Emphasis::strong;
    }
    std::vector<bool> near = kept;
    for (const Link& link : graph.links) {
        near[link.from] = near[link.from] || kept[link.to];
    }
    std::erase_if(graph.links, [&](const Link& link) { return !kept[link.to]; });
    keep_boxes(graph, near);
    std::vector<std::size_t> order(graph.boxes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return turn_in(graph.boxes[a]) < turn_in(graph.boxes[b]);
    });
    std::vector<std::size_t> place(order.size());
    std::vector<Box> boxes;
    for (const std::size_t box : order) {
        place[box] = boxes.size();
        boxes.push_back(std::move(graph.boxes[box]));
    }
    graph.boxes = std::move(boxes);
    graph.numbered = true;
    for (Link& link : graph.links) {
        link.from = place[link.from];
        link.to = place[link.to];
    }
}

} // namespace

Graph access_graph(const Model& model, const Viewing& viewing) {
    Access access(model, viewing);
    Graph graph = access.graph(viewing);
    const Language& in = *viewing.language;
    const std::string device = device_title(in, model);
    graph.title =
        fill_text(language::text(in, "What comes off before what: {device}"), {{"device", device}});
    graph.legend = language::text(
        in, "An arrow leads from what comes off first. A broken arrow: one of several ways.");
    if (viewing.way_to) {
        auto filling = places(in, model, *viewing.way_to);
        filling.emplace_back("device", device);
        graph.title = fill_text(language::text(in, "The way to {the item}: {device}"), filling);
        graph.legend += " " + (access.way().empty()
                                   ? language::text(in, "No way to it is known.")
                                   : language::text(in, "Heavy and numbered: what is made safe, "
                                                        "opened or taken off, in that order."));
    }
    if (viewing.way_alone) {
        keep_way(graph);
        graph.legend +=
            " " + language::text(in, "Left out: what is neither on the way nor directly "
                                     "before it.");
        graph.alternative_text = in_words(model, graph, viewing, access.way());
        return graph;
    }
    graph.alternative_text = in_words(model, graph, viewing, access.way());
    std::vector<bool> kept(graph.boxes.size(), false);
    for (const Link& link : graph.links) {
        kept[link.from] = kept[link.to] = true;
    }
    std::vector<std::string> free;
    for (std::size_t i = 0; i < graph.boxes.size(); ++i) {
        const bool strong = graph.boxes[i].emphasis == Emphasis::strong;
        if (!kept[i] && !strong) {
            free.push_back(graph.boxes[i].title);
        }
        kept[i] = kept[i] || strong;
    }
    if (!free.empty()) {
        graph.apart.push_back(
            fill_text(language::text(in, "Comes off by itself, and nothing waits for it: {parts}."),
                      {{"parts", language::said_list(in, free)}}));
    }
    keep_boxes(graph, kept);
    return graph;
}

} // namespace matchmark::draw
