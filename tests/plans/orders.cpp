// The fewest changes of tool, then of side, against clasp; and the number of orders, against
// published counts.
#include "plans/plans.hpp"
#include "plans/solver.hpp"
#include "support/random_model.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::plans {

namespace {

using model::ItemId;
using model::Model;

constexpr int instances = 200;
constexpr std::size_t tool_count = 4;
constexpr std::size_t face_count = 3;
constexpr long long tool_weighs = 100; // as orders.lp counts

// Parts that come off by hand, by a tool, or by either of two, from one side or from any; each
// behind some before it.
struct Job {
    Model model;
    plan::WayInGoal goal;
    std::string facts; // for orders.lp
};

void order_behind(Model& model, std::size_t item,
                  const std::vector<std::vector<std::size_t>>& ways) {
    model::ReachClause clause;
    for (const auto& way : ways) {
        auto& refs = clause.ways.emplace_back();
        for (const std::size_t other : way) {
            model::ItemRef ref;
            ref.item = ItemId{static_cast<std::uint32_t>(other)};
            refs.push_back(std::move(ref));
        }
    }
    model.items.edit(item).reach.push_back(std::move(clause));
}

model::Kind part_by(const std::vector<std::string>& tools) {
    auto off = verb("remove", 1, 1, 4);
    off.tools = tools;
    off.by_hand = tools.empty();
    auto made = kind(model::Role::part, {"in", "out"}, {off, verb("fit", 2, 0, 4)});
    return made;
}

Job random_job(Chance& chance) {
    Job job;
    const std::size_t count = 6 + chance.below(9);
    job.facts = fmt::format("#const last = {}.\n", count);
    for (std::size_t i = 0; i < count; ++i) {
        std::vector<std::string> tools;
        if (!chance.one_in(5))
            tools.push_back(fmt::format("tool-{}", chance.below(tool_count)));
        if (!tools.empty() && chance.one_in(6))
            tools.push_back(fmt::format("tool-{}", chance.below(tool_count)));
        job.model.kinds.edit().push_back(part_by(tools));
        job.goal.items.push_back(add_item(job.model, i));
        job.facts += fmt::format("act({}).\n", i);
        if (!chance.one_in(3)) {
            const std::size_t face = chance.below(face_count);
            job.model.items.edit().back().rare.edit().positions =
                model::Positions{fmt::format("side-{}", face), {}, {}};
            job.facts += fmt::format("face({},{}).\n", i, face);
        }
        for (const std::string& tool : tools)
            job.facts += fmt::format("fits({},{}).\n", i, tool.substr(5));
        const std::size_t clauses = i == 0 ? 0 : chance.below(3);
        for (std::size_t c = 0; c < clauses; ++c) {
            std::vector<std::vector<std::size_t>> ways;
            job.facts += fmt::format("clause({},{}).\n", i, c);
            for (std::size_t w = 0; w <= chance.below(2); ++w) {
                ways.push_back({chance.below(i)});
                job.facts += fmt::format("way({},{},{}).\n", i, c, ways.back().front());
            }
            order_behind(job.model, i, ways);
        }
    }
    return job;
}

// `behind[i]`: the elements below element i. All have to come off.
std::string orders_of(const std::vector<std::vector<std::size_t>>& behind) {
    Model model;
    model.kinds.edit().push_back(part_by({}));
    plan::WayInGoal goal;
    for (const auto& below : behind) {
        const ItemId item = add_item(model, 0);
        goal.items.push_back(item);
        for (const std::size_t other : below)
            order_behind(model, item.value, {{other}});
    }
    plan::WayInLimits limits;
    limits.count_orders = true;
    return plan::way_in({&model, 0}, goal, limits).orders;
}

using Poset = std::vector<std::vector<std::size_t>>;

Poset chain(std::size_t n) {
    Poset poset(n);
    for (std::size_t i = 1; i < n; ++i)
        poset[i] = {i - 1};
    return poset;
}

// Two rows of n: each element after the one on its left and the one above it.
Poset grid(std::size_t n) {
    Poset poset(2 * n);
    for (std::size_t i = 0; i < 2 * n; ++i) {
        if (i % n != 0)
            poset[i].push_back(i - 1);
        if (i >= n)
            poset[i].push_back(i - n);
    }
    return poset;
}

// a < b > c < d > ...
Poset zigzag(std::size_t n) {
    Poset poset(n);
    for (std::size_t i = 1; i < n; i += 2) {
        poset[i].push_back(i - 1);
        if (i + 1 < n)
            poset[i].push_back(i + 1);
    }
    return poset;
}

// The subsets of n things, each after those that it holds with one thing less.
Poset lattice(std::size_t n) {
    Poset poset(std::size_t{1} << n);
    for (std::size_t set = 0; set < poset.size(); ++set) {
        for (std::size_t thing = 0; thing < n; ++thing) {
            if (((set >> thing) & 1U) != 0)
                poset[set].push_back(set ^ (std::size_t{1} << thing));
        }
    }
    return poset;
}

struct Published {
    const char* name;
    Poset poset;
    const char* orders;
};

// Are the changes those of the acts in their order?
bool as_told(const plan::WayIn& way) {
    std::size_t changes = 0;
    std::size_t turnings = 0;
    std::string tool;
    std::string face;
    for (const plan::PlannedAct& planned : way.acts) {
        if (!planned.tool.empty() && planned.tool != tool) {
            ++changes;
            tool = planned.tool;
        }
        if (!planned.face.empty() && planned.face != face) {
            turnings += face.empty() ? 0 : 1;
            face = planned.face;
        }
    }
    return changes == way.tool_changes && turnings == way.turnings;
}

} // namespace

bool fewest_changes() {
    std::size_t agreed = 0;
    std::size_t most = 0;
    std::size_t turnings = 0;
    for (int seed = 0; seed < instances; ++seed) {
        Chance chance{std::mt19937(static_cast<std::uint32_t>(seed))};
        const Job job = random_job(chance);
        const plan::WayIn way = plan::way_in({&job.model, 0}, job.goal);
        const auto judged = solve("orders.lp", job.facts);
        const bool same = judged && judged->possible && way.acts.size() == job.goal.items.size() &&
                          way.tool_changes == way.tool_changes_at_least &&
                          way.turnings == way.turnings_at_least && as_told(way) &&
                          static_cast<long long>(way.tool_changes) * tool_weighs +
                                  static_cast<long long>(way.turnings) ==
                              judged->cost;
        agreed += same ? 1 : 0;
        most = std::max(most, way.acts.size());
        turnings += way.turnings;
        if (!same)
            fmt::print("  job {}: planner {} tools and {} turnings of {} acts, clasp {}\n", seed,
                       way.tool_changes, way.turnings, way.acts.size(), judged ? judged->cost : -1);
    }
    fmt::print("\nThe fewest changes of tool, then of side: planner and clasp\n{} jobs of up to {} "
               "acts, {} turnings in all: agreed {}\n",
               instances, most, turnings, agreed);
    return agreed == instances;
}

// Catalan numbers (2 x n grids): OEIS A000108; Euler numbers (zigzags): A000111; Boolean lattices:
// A046873 (all three numbers of the series from memory); n! for antichains.
bool counted_orders() {
    const std::vector<Published> all = {
        {"chain of 12", chain(12), "1"},
        {"antichain of 8", Poset(8), "40320"},
        {"antichain of 13", Poset(13), "6227020800"},
        {"2 x 2 grid", grid(2), "2"},
        {"2 x 3 grid", grid(3), "5"},
        {"2 x 4 grid", grid(4), "14"},
        {"2 x 5 grid", grid(5), "42"},
        {"2 x 6 grid", grid(6), "132"},
        {"2 x 15 grid", grid(15), "9694845"},
        {"zigzag of 4", zigzag(4), "5"},
        {"zigzag of 5", zigzag(5), "16"},
        {"zigzag of 6", zigzag(6), "61"},
        {"zigzag of 7", zigzag(7), "272"},
        {"zigzag of 12", zigzag(12), "2702765"},
        {"Boolean lattice of 2", lattice(2), "2"},
        {"Boolean lattice of 3", lattice(3), "48"},
        {"Boolean lattice of 4", lattice(4), "1680384"},
    };
    fmt::print("\n{:<24}{:>14}{:>14}\n", "orders of work", "counted", "published");
    bool well = true;
    for (const Published& one : all) {
        const std::string counted = orders_of(one.poset);
        fmt::print("{:<24}{:>14}{:>14}{}\n", one.name, counted, one.orders,
                   counted == one.orders ? "" : "  differs");
        well = well && counted == one.orders;
    }
    return well;
}

} // namespace matchmark::plans
