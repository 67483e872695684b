// Finds the place of each test in the put-back.
#include "plan/trials.hpp"

#include "bench/proof.hpp"

#include <algorithm>

namespace matchmark::plan {

using model::Step;

namespace {

struct Gap {
    std::size_t step = 0;
    std::size_t action = 0; // before this one; its step's action count: after the last
};

// What a gap is good for: the test can be done there, with or without something hiding what it
// proves; hidden, with the plugs of what was renewed in or not.
enum class Fit : unsigned char { no, hidden, plugged, open };

// The parts that the steps renew: what a test proves that does not say.
std::vector<model::ItemId> renewed_in(const std::vector<Step>& steps) {
    std::vector<model::ItemId> items;
    for (const Step& step : steps) {
        for (const auto& action : step.actions) {
            if (action.sort != model::ActionSort::replace)
                continue;
            for (const auto& target : action.targets)
                items.push_back(target.ref.item);
        }
    }
    return items;
}

// Each gap of the procedure, in order, with how well the test fits there in one variant.
std::vector<std::pair<Gap, Fit>> gaps_in(const bench::Bench& bench,
                                         const std::vector<model::Resource>& resources,
                                         const std::vector<Step>& steps, const Step& test) {
    auto proven = bench::proven_items(bench, test);
    const auto renewed = renewed_in(steps);
    if (test.proves.empty())
        proven = renewed;
    std::vector<model::ItemId> plugs;
    for (const model::ItemId item : renewed) {
        for (const model::ItemId plug : bench::plugs_of(bench, item))
            plugs.push_back(plug);
    }
    std::vector<std::pair<Gap, Fit>> gaps;
    bench::State state = bench::assembled(bench);
    const auto may_be_hidden = bench::hidden_in_whole(bench, state, proven);
    const auto consider = [&](Gap gap, model::Section section) {
        const bool can = section == model::Section::put_back &&
                         bench::conditions_hold(bench, state, test) &&
                         bench::all_back(bench, state, proven);
        if (!can) {
            gaps.emplace_back(gap, Fit::no);
        } else if (!bench::any_hidden(bench, state, may_be_hidden)) {
            gaps.emplace_back(gap, Fit::open);
        } else {
            gaps.emplace_back(gap,
                              bench::all_back(bench, state, plugs) ? Fit::plugged : Fit::hidden);
        }
    };
    for (std::size_t s = 0; s < steps.size(); ++s) {
        for (std::size_t a = 0; a < steps[s].actions.size(); ++a) {
            consider({s, a}, steps[s].section);
            bench::carry_out(bench, state, resources, steps[s].actions[a]);
        }
        consider({s, steps[s].actions.size()}, steps[s].section);
    }
    return gaps;
}

// The last gap where the test can be done in every variant with nothing hiding what it proves;
// failing that, the first where it can be done, best with all plugs in.
std::optional<Gap> place_of(const model::Model& model,
                            const std::vector<model::Resource>& resources,
                            model::VariantMask variants, const std::vector<Step>& steps,
                            const Step& test) {
    std::vector<std::pair<Gap, Fit>> gaps;
    for (unsigned v = 0; v < model::variant_count(model); ++v) {
        if (((variants >> v) & 1U) == 0)
            continue;
        const auto here = gaps_in({&model, v}, resources, steps, test);
        if (gaps.empty())
            gaps = here;
        for (std::size_t i = 0; i < gaps.size(); ++i)
            gaps[i].second = std::min(gaps[i].second, here[i].second);
    }
    const auto is = [](Fit wanted) {
        return [wanted](const auto& gap) { return gap.second == wanted; };
    };
    const auto open = std::find_if(gaps.rbegin(), gaps.rend(), is(Fit::open));
    if (open != gaps.rend())
        return open->first;
    for (const Fit next_best : {Fit::plugged, Fit::hidden}) {
        const auto first = std::find_if(gaps.begin(), gaps.end(), is(next_best));
        if (first != gaps.end())
            return first->first;
    }
    return std::nullopt;
}

void insert_at(std::vector<Step>& steps, const Gap& gap, const Step& test) {
    const auto at = [&](std::size_t index) {
        return steps.begin() + static_cast<std::ptrdiff_t>(index);
    };
    const std::size_t count = steps[gap.step].actions.size();
    if (gap.action == 0) {
        steps.insert(at(gap.step), test);
    } else if (gap.action == count) {
        // After the tests that already stand there, so that tests keep the order written.
        std::size_t after = gap.step + 1;
        while (after < steps.size() && steps[after].is_test)
            ++after;
        steps.insert(at(after), test);
    } else {
        Step rest = steps[gap.step];
        const auto middle = static_cast<std::ptrdiff_t>(gap.action);
        rest.actions.erase(rest.actions.begin(), rest.actions.begin() + middle);
        steps[gap.step].actions.resize(gap.action);
        const auto taken = [&](const Step& step) {
            return step.section == rest.section && step.name == rest.name;
        };
        while (std::any_of(steps.begin(), steps.end(), taken))
            rest.name += "-then";
        rest.prose.clear();
        rest.photos.clear();
        steps.insert(at(gap.step + 1), {test, rest});
    }
}

} // namespace

void place_trials(const model::Model& model, const std::vector<model::Resource>& resources,
                  model::VariantMask variants, std::vector<Step>& steps,
                  const std::vector<Step>& tests) {
    for (const Step& test : tests) {
        if (const auto gap = place_of(model, resources, variants & test.variants, steps, test)) {
            insert_at(steps, *gap, test);
        } else {
            steps.push_back(test); // nowhere right: the checker says why
        }
    }
}

} // namespace matchmark::plan
