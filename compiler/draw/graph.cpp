// Boxes and what leads from one to another: fewer lines that say the same.
#include "draw/graph.hpp"

#include <algorithm>
#include <numeric>

namespace matchmark::draw {

namespace {

// A set of boxes, a bit for each.
class BoxSet {
public:
    explicit BoxSet(std::size_t size) : words_((size + 63) / 64) {}
    void put(std::size_t box) { words_[box / 64] |= std::uint64_t{1} << (box % 64); }
    [[nodiscard]] bool has(std::size_t box) const {
        return ((words_[box / 64] >> (box % 64)) & 1U) != 0;
    }
    void join(const BoxSet& other) {
        for (std::size_t i = 0; i < words_.size(); ++i) {
            words_[i] |= other.words_[i];
        }
    }
    friend bool operator==(const BoxSet&, const BoxSet&) = default;

private:
    std::vector<std::uint64_t> words_;
};

bool is_reducible(const Link& link) { return link.arrow && !link.one_of_ways; }

// For each box, those to which arrows lead from it, over one arrow or many. Sweeps until nothing
// changes: two or three sweeps for orders of work, at most as many as there are boxes.
std::vector<BoxSet> reached_from(const Graph& graph) {
    std::vector<BoxSet> reached(graph.boxes.size(), BoxSet(graph.boxes.size()));
    bool changed = true;
    while (changed) {
        changed = false;
        for (std::size_t i = graph.links.size(); i-- > 0;) {
            const Link& link = graph.links[i];
            if (!is_reducible(link)) {
                continue;
            }
            const BoxSet before = reached[link.from];
            reached[link.from].put(link.to);
            reached[link.from].join(reached[link.to]);
            changed = changed || !(before == reached[link.from]);
        }
    }
    return reached;
}

} // namespace

void keep_boxes(Graph& graph, const std::vector<bool>& kept) {
    std::vector<std::size_t> place(graph.boxes.size());
    std::vector<Box> boxes;
    for (std::size_t i = 0; i < graph.boxes.size(); ++i) {
        place[i] = boxes.size();
        if (kept[i]) {
            boxes.push_back(std::move(graph.boxes[i]));
        }
    }
    std::vector<Link> links;
    for (Link link : graph.links) {
        if (kept[link.from] && kept[link.to]) {
            link.from = place[link.from];
            link.to = place[link.to];
            links.push_back(link);
        }
    }
    graph.boxes = std::move(boxes);
    graph.links = std::move(links);
}

void tidy_links(Graph& graph) {
    std::vector<Link> kept;
    for (const Link& link : graph.links) {
        const auto same = std::find_if(kept.begin(), kept.end(), [&](const Link& other) {
            return other.from == link.from && other.to == link.to;
        });
        if (link.from == link.to) {
            continue;
        }
        if (same == kept.end()) {
            kept.push_back(link);
        } else {
            same->one_of_ways = same->one_of_ways && link.one_of_ways;
            same->emphasis = std::max(same->emphasis, link.emphasis);
        }
    }
    graph.links = std::move(kept);
}

void reduce(Graph& graph) {
    const std::vector<BoxSet> reached = reached_from(graph);
    const auto is_longer_way = [&](const Link& link) {
        return std::any_of(graph.links.begin(), graph.links.end(), [&](const Link& first) {
            const bool leaves = is_reducible(first) && first.from == link.from &&
                                first.to != link.to && reached[first.to].has(link.to);
            // In a ring everything is reached from everything: no arrow of it says less.
            return leaves && !reached[link.to].has(first.to) && !reached[first.to].has(link.from);
        });
    };
    std::vector<Link> kept;
    for (const Link& link : graph.links) {
        const bool ring = is_reducible(link) && reached[link.to].has(link.from);
        if (!is_reducible(link) || ring || !is_longer_way(link)) {
            kept.push_back(link);
        }
    }
    graph.links = std::move(kept);
}

std::vector<std::vector<std::size_t>> pieces(const Graph& graph) {
    std::vector<std::size_t> lowest(graph.boxes.size());
    std::iota(lowest.begin(), lowest.end(), std::size_t{0});
    bool changed = true;
    while (changed) {
        changed = false;
        for (const Link& link : graph.links) {
            const std::size_t least = std::min(lowest[link.from], lowest[link.to]);
            changed = changed || lowest[link.from] != least || lowest[link.to] != least;
            lowest[link.from] = lowest[link.to] = least;
        }
    }
    std::vector<std::vector<std::size_t>> found;
    std::vector<std::size_t> place(graph.boxes.size());
    for (std::size_t box = 0; box < graph.boxes.size(); ++box) {
        if (lowest[box] == box) {
            place[box] = found.size();
            found.emplace_back();
        }
        found[place[lowest[box]]].push_back(box);
    }
    return found;
}

} // namespace matchmark::draw
