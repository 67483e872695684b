// Questions counted while acts change the state, on random devices: after every act each list says
// what asking all of it anew says.
#include "properties/properties.hpp"

#include "bench/dangerous.hpp"
#include "bench/proof.hpp"
#include "bench/recharge.hpp"
#include "bench/tally.hpp"
#include "bench/trial_power.hpp"
#include "support/random_model.hpp"

#include <fmt/core.h>

using namespace matchmark;
using model::ItemId;
using model::Model;
using support::Chance;

namespace {

constexpr int tallied_devices = 2000;
constexpr std::size_t most_items = 30;
constexpr int most_acts = 60;

// A list for each item: is it back, can it be reached, is it restored, is its danger kept off?
bool agrees(const bench::Bench& device, const bench::State& start, const bench::State& state,
            const bench::Tally& tally) {
    for (std::uint32_t i = 0; i < device.model->items.size(); ++i) {
        const ItemId item{i};
        const std::size_t first = std::size_t{4} * i; // of its four lists
        const bool kept_off = !bench::is_dangerous(device, state, item) ||
                              !bench::open_in_trial(device, start, state, item);
        if (tally.all_so(first) != bench::is_back(device, state, item) ||
            tally.all_so(first + 1) != bench::reachable(device, state, item) ||
            tally.all_so(first + 2) != bench::is_restored(device, state, item) ||
            tally.all_so(first + 3) != kept_off)
            return false;
    }
    return true;
}

bool counts_right(Chance& chance, const Model& model, std::size_t& turned) {
    const bench::Bench device{&model, 0};
    const bench::State start = bench::assembled(device);
    bench::State state = start;
    bench::Tally tally(model);
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const ItemId item{i};
        tally.add(tally.add_list(), bench::asks_back(device, item));
        tally.add(tally.add_list(), bench::asks_reachable(device, item));
        tally.add(tally.add_list(), bench::asks_restored(device, item));
        tally.add(tally.add_list(), bench::asks_kept_off(device, start, item));
    }
    tally.start(state);
    for (int n = 0; n < most_acts && agrees(device, start, state, tally); ++n) {
        const ItemId item{static_cast<std::uint32_t>(chance.below(model.items.size()))};
        const auto& verbs = model.kind_of(item).verbs;
        if (verbs.empty())
            continue;
        bench::perform(device, state,
                       {item, static_cast<std::uint16_t>(chance.below(verbs.size())), {}, true});
        std::vector<ItemId> changed = bench::charged_by(device, item);
        changed.push_back(item);
        turned += tally.changed(state, changed).size();
    }
    return agrees(device, start, state, tally);
}

} // namespace

namespace matchmark::properties {

bool tallies_agree() {
    std::size_t turned = 0;
    int failed = 0;
    for (int seed = 0; seed < tallied_devices; ++seed) {
        Chance chance{std::mt19937(static_cast<std::uint32_t>(seed))};
        const Model model = random_model::random_device(chance, most_items);
        if (counts_right(chance, model, turned))
            continue;
        fmt::print("device {}: a tally differs from asking anew\n", seed);
        ++failed;
    }
    fmt::print("{} random devices, {} answers turned by acts, {} devices failed\n", tallied_devices,
               turned, failed);
    return failed == 0 && turned > 50000;
}

} // namespace matchmark::properties
