// Lets what a supply feeds reach beyond the parts that only pass it on.
#include "model/passing_on.hpp"

#include "model/sources.hpp"

#include <algorithm>
#include <map>

namespace matchmark::model {

namespace {

bool is_always_beside(const Item& item, const Item& other) {
    return (other.variants & ~item.variants) == 0;
}

// May it pass on at all? What it feeds would be fed where it is missing, too.
bool may_pass_on(const Model& model, const Item& item) {
    return item.role == Role::part && model.kind(item.kind).passes_on &&
           std::all_of(item.feeds.begin(), item.feeds.end(),
                       [&](ItemId fed) { return is_always_beside(item, model.item(fed)); });
}

void keep_shared(std::vector<ItemId>& connectors, const std::vector<ItemId>& others) {
    std::erase_if(connectors, [&](ItemId connector) { return !among(others, connector); });
}

void add_up_lines(Item& source) {
    std::map<ItemId, std::size_t> known;
    std::vector<FedThrough> lines;
    for (FedThrough& line : source.feeding.edit().feeds_through.edit()) {
        const auto [place, is_new] = known.try_emplace(line.part, lines.size());
        if (is_new) {
            source.feeds.push_back(line.part);
            lines.push_back(std::move(line));
        } else {
            keep_shared(lines[place->second].connectors, line.connectors);
        }
    }
    source.through = lines.front().connectors;
    for (const FedThrough& line : lines)
        keep_shared(source.through.edit(), line.connectors);
    for (FedThrough& line : lines) {
        std::erase_if(line.connectors,
                      [&](ItemId connector) { return among(source.through, connector); });
    }
    std::erase_if(lines, [](const FedThrough& line) { return line.connectors.empty(); });
    source.feeding = {};
    if (lines.empty())
        return;
    source.feeding.edit().lines_through = lines;
    source.feeding.edit().feeds_through = std::move(lines);
}

// The parts that may pass on, and which of them a source feeds wherever they are.
struct Passing {
    std::vector<bool> may;    // for each item
    std::vector<bool> is_fed; // likewise
};

// The parts that pass on what comes to the item: itself, and what goes with it.
std::vector<ItemId> passing_in(const Model& model, ItemId item, const Passing& passing) {
    std::vector<ItemId> parts;
    std::vector<ItemId> open{item};
    while (!open.empty()) {
        const ItemId at = open.back();
        open.pop_back();
        if (passing.may[at.value])
            parts.push_back(at);
        const auto& carried = model.item(at).carried;
        open.insert(open.end(), carried.all().rbegin(), carried.all().rend());
    }
    return parts;
}

// What the source feeds, and the connectors of passing parts behind which each lies on every way.
class Reached {
public:
    Reached(const Model& model, ItemId source, Passing& passing)
        : model_(model), source_(source), passing_(passing), place_of_(model.items.size(), none) {
        for (const ItemId fed : model.item(source).feeds)
            come_to(fed, connectors_to(model.item(source), fed));
        // A part that is come to by another way once more may lie behind fewer of them.
        for (std::size_t next = 0; next < open_.size(); ++next)
            pass_on(open_[next]);
    }

    // Those that its lines name, then the others in the order in which they are come to.
    [[nodiscard]] const std::vector<FedThrough>& all() const { return all_; }

private:
    static constexpr std::size_t none = static_cast<std::size_t>(-1);

    void come_to(ItemId part, const std::vector<ItemId>& behind) {
        std::size_t& place = place_of_[part.value];
        if (place == none) {
            place = all_.size();
            all_.push_back({part, behind});
            open_.push_back(place);
            return;
        }
        auto& known = all_[place].connectors;
        const std::size_t before = known.size();
        keep_shared(known, behind);
        if (known.size() < before)
            open_.push_back(place);
    }

    void pass_on(std::size_t place) {
        for (const ItemId id : passing_in(model_, all_[place].part, passing_)) {
            const Item& part = model_.item(id);
            if (is_always_beside(model_.item(source_), part))
                passing_.is_fed[id.value] = true;
            std::vector<ItemId> through = all_[place].connectors;
            through.insert(through.end(), part.through.begin(), part.through.end());
            for (const ItemId fed : part.feeds) {
                if (fed == source_)
                    continue;
                std::vector<ItemId> behind = connectors_to(part, fed);
                behind.insert(behind.end(), through.begin(), through.end());
                come_to(fed, behind);
            }
        }
    }

    const Model& model_;
    ItemId source_;
    Passing& passing_;
    std::vector<std::size_t> place_of_; // in `all`, for each item
    std::vector<std::size_t> open_;     // places whose part passes on, or passes on more
    std::vector<FedThrough> all_;
};

} // namespace

void settle_feeds_lines(Model& model) {
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (!model.items[i].feeding->feeds_through.empty())
            add_up_lines(model.items.edit(i));
    }
    // What works in a part that passes it on, a ram in its cylinder, feeds that.
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const Item& item = model.items[i];
        if (item.role == Role::energy && item.feeds.empty() && item.carrier.known() &&
            model.kind(item.kind).moves && model.kind_of(item.carrier).passes_on &&
            !model.item(item.carrier).feeds.empty())
            model.items.edit(i).feeds = {item.carrier};
    }
}

void settle_passing_on(Model& model) {
    Passing passing{std::vector<bool>(model.items.size()), std::vector<bool>(model.items.size())};
    bool any = false;
    for (const ItemId id : model.sources) {
        passing.may[id.value] = may_pass_on(model, model.item(id));
        any = any || passing.may[id.value];
    }
    if (!any)
        return;
    for (const ItemId id : model.sources) {
        if (passing.may[id.value])
            continue;
        const Reached reached(model, id, passing);
        Item& source = model.items.edit(id.value);
        if (!source.feeding->feeds_through.empty())
            source.feeding.edit().feeds_through.clear();
        const std::size_t named = source.feeds.size();
        for (std::size_t i = 0; i < reached.all().size(); ++i) {
            const FedThrough& fed = reached.all()[i];
            if (i >= named) {
                source.feeds.push_back(fed.part);
                source.feeding.edit().feeds_beyond.push_back(fed.part);
            }
            if (!fed.connectors.empty())
                source.feeding.edit().feeds_through.push_back(fed);
        }
    }
    for (const ItemId id : model.sources) {
        if (passing.is_fed[id.value]) {
            Item& part = model.items.edit(id.value);
            std::swap(part.feeding.edit().passes_to, part.feeds);
        }
    }
    settle_sources(model);
}

std::vector<ItemId> connectors_to(const Item& source, ItemId part) {
    const auto& ways = source.feeding->feeds_through;
    const auto found =
        std::find_if(ways.begin(), ways.end(), [&](const auto& fed) { return fed.part == part; });
    return found == ways.end() ? std::vector<ItemId>{} : found->connectors;
}

bool is_on_its_line(const Item& source, ItemId connector, ItemId part) {
    const auto& lines = source.feeding->lines_through;
    return among(connectors_to(source, part), connector) &&
           std::any_of(lines.begin(), lines.end(),
                       [&](const FedThrough& line) { return among(line.connectors, connector); });
}

std::vector<ItemId> fed_directly(const Item& source) {
    if (!source.feeding->passes_to.empty())
        return source.feeding->passes_to;
    return {source.feeds.begin(), source.feeds.end() - std::ssize(source.feeding->feeds_beyond) -
                                      std::ssize(source.feeding->drives)};
}

} // namespace matchmark::model
