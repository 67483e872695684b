// Tries on the bench whether the deeds of a guide could also be done in another order.
#include "compare/trial.hpp"

#include "bench/exposure.hpp"
#include "bench/work.hpp"
#include "model/describe.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::compare {

using model::ActionSort;
using model::ItemId;
using model::Model;

namespace {

std::string condition_names(const Model& model, const std::vector<ItemId>& items) {
    std::vector<std::string> words;
    for (const ItemId item : items) {
        words.push_back(model::for_reader(model, item));
    }
    return words.empty() ? "something" : model::list(words);
}

// Why an act is refused, of the item that it is about.
struct Reason {
    const Model& model;
    ItemId item;

    [[nodiscard]] std::string subject() const { return model::for_reader(model, item); }
    std::string operator()(const bench::WrongState& why) const {
        return fmt::format("{}: {} already", subject(), model.kind_of(item).states[why.found]);
    }
    std::string operator()(const bench::OutOfReach& why) const {
        return fmt::format("{} in the way of {}", condition_names(model, why.by), subject());
    }
    std::string operator()(const bench::UnmetNeed& why) const {
        const model::Kind& kind = model.kind_of(why.item);
        std::vector<std::string> states;
        for (std::size_t i = 0; i < kind.states.size(); ++i) {
            if (model::contains(why.states, static_cast<model::StateId>(i))) {
                states.push_back(kind.states[i]);
            }
        }
        return fmt::format("{} must be {} first", model::for_reader(model, why.item),
                           model::list(states, "or"));
    }
    std::string operator()(const bench::StillLive& why) const {
        return fmt::format("{} still live from {}", model::for_reader(model, why.fed),
                           model::for_reader(model, why.source));
    }
    std::string operator()(const bench::StillHeld& why) const {
        return fmt::format("{} still held by {}", subject(), condition_names(model, why.by));
    }
    std::string operator()(const bench::StillBlocked& why) const {
        return fmt::format("{} still blocked by {}", subject(), model::for_reader(model, why.by));
    }
    std::string operator()(const bench::NotSeated& why) const {
        return fmt::format("{} not in place for {}", condition_names(model, why.parts), subject());
    }
    std::string operator()(const bench::UsedTwice& /*why*/) const {
        return fmt::format("{} spent, and not renewed", subject());
    }
};

// What stood against each deed, and how the device was left.
struct Run {
    std::map<std::size_t, Obstacle> obstacles; // by deed
    std::vector<bench::State> ends;
};

class Runner {
public:
    Runner(const Half& half, Run& run, unsigned variant)
        : half_(half), model_(half.side.model), run_(run), bench_{&model_, variant},
          state_(bench::assembled(bench_)) {}

    void go(const std::vector<std::size_t>& order) {
        for (const std::size_t i : order) {
            const Deed& deed = half_.deeds[i];
            const bool here = deed.action != nullptr &&
                              ((deed.action->variants >> bench_.variant) & 1U) != 0 &&
                              (deed.target == nullptr || bench_.exists(deed.target->ref.item));
            if (here) {
                do_deed(i, deed);
            }
        }
        run_.ends.push_back(std::move(state_));
    }

private:
    void do_deed(std::size_t i, const Deed& deed) {
        const auto& resources = half_.side.procedure.resources;
        if (deed.action->sort != ActionSort::verb || deed.target == nullptr) {
            look_at_own(i, deed);
            bench::note(bench_, state_, *deed.action);
            return;
        }
        const bench::Act act = bench::act_of(model_, resources, *deed.action, *deed.target);
        if (const auto why = bench::refusal(bench_, state_, act)) {
            against(i, {std::visit(Reason{model_, act.item}, *why), false});
        }
        const bench::State before = state_;
        bench::perform(bench_, state_, act);
        if (const auto met = bench::exposure(bench_, before, state_, act)) {
            const auto& use = model_.kind_of(met->item).hazards[met->use];
            const model::Hazard& hazard = model_.hazards[use.hazard.value];
            against(i, {fmt::format("{}: {} not made safe yet",
                                    hazard.title.empty() ? hazard.name : hazard.title,
                                    model::for_reader(model_, met->item)),
                        true});
        }
    }

    // The compiler's own actions ask little: to renew a part it must be off, to mark it, on.
    void look_at_own(std::size_t i, const Deed& deed) {
        if (deed.target == nullptr) {
            return;
        }
        const ItemId item = deed.target->ref.item;
        if (deed.action->sort == ActionSort::replace && bench::present(bench_, state_, item)) {
            against(i, {model::for_reader(model_, item) + " still in place", false});
        }
        if (deed.action->sort == ActionSort::mark && !bench::in_first_state(bench_, state_, item)) {
            against(i, {model::for_reader(model_, item) + " no longer as it was", false});
        }
        if (deed.action->sort == ActionSort::measure && !measurable(deed)) {
            against(i, {model::for_reader(model_, item) + " not ready to be measured", false});
        }
    }

    [[nodiscard]] bool measurable(const Deed& deed) const {
        const ItemId item = deed.target->ref.item;
        for (const model::WearLimit& limit : model_.item(item).rare->limits) {
            if (limit.name == *deed.action->aspect && !limit.when.empty()) {
                return std::all_of(limit.when.begin(), limit.when.end(),
                                   [&](const model::Condition& condition) {
                                       return bench::holds(bench_, state_, condition);
                                   });
            }
        }
        return !bench::present(bench_, state_, item);
    }

    void against(std::size_t i, Obstacle obstacle) {
        run_.obstacles.emplace(i, std::move(obstacle));
    }

    const Half& half_;
    const Model& model_;
    Run& run_;
    bench::Bench bench_;
    bench::State state_;
};

Run run_through(const Half& half, const std::vector<std::size_t>& order) {
    Run run;
    const auto wanted = half.side.model.guide(half.side.procedure.guide).variants;
    for (unsigned variant = 0; variant < model::variant_count(half.side.model); ++variant) {
        if (((wanted >> variant) & 1U) != 0) {
            Runner(half, run, variant).go(order);
        }
    }
    return run;
}

// Puts the moved deeds back behind what stood before them.
std::vector<std::size_t> as_before(const Pairing& pairing, const std::vector<std::size_t>& order,
                                   const std::vector<std::size_t>& moved) {
    const auto is_moved = [&](std::size_t now) {
        return std::find(moved.begin(), moved.end(), now) != moved.end();
    };
    std::vector<std::size_t> result;
    for (const std::size_t now : order) {
        if (!is_moved(now)) {
            result.push_back(now);
        }
    }
    std::vector<std::pair<std::size_t, std::size_t>> by_old;
    for (const std::size_t now : moved) {
        by_old.emplace_back(*pairing.deeds.before_of[now], now);
    }
    std::sort(by_old.begin(), by_old.end());
    for (const auto& [old, now] : by_old) {
        auto where = result.begin();
        for (std::size_t k = old; k-- > 0;) {
            const auto partner = pairing.deeds.after_of[k];
            const auto found =
                partner ? std::find(result.begin(), result.end(), *partner) : result.end();
            const bool stayed = partner && (!pairing.moved[k] || is_moved(*partner));
            if (stayed && found != result.end()) {
                where = found + 1;
                break;
            }
        }
        result.insert(where, now);
    }
    return result;
}

std::optional<Obstacle> first_new(const std::vector<std::size_t>& order, const Run& run,
                                  const Run& other) {
    for (const std::size_t i : order) {
        const auto found = run.obstacles.find(i);
        if (found != run.obstacles.end() && !other.obstacles.contains(i)) {
            return found->second;
        }
    }
    return std::nullopt;
}

} // namespace

Trial try_orders(const Pairing& pairing, const std::vector<std::size_t>& moved,
                 bool opening_alone) {
    std::vector<std::size_t> now;
    for (std::size_t i = 0; i < pairing.after.deeds.size(); ++i) {
        const Deed& deed = pairing.after.deeds[i];
        const bool back = pairing.after.step_of(deed).section == model::Section::put_back;
        if (!opening_alone || !back) {
            now.push_back(i);
        }
    }
    const std::vector<std::size_t> before = as_before(pairing, now, moved);
    const Run as_now = run_through(pairing.after, now);
    const Run as_was = run_through(pairing.after, before);
    Trial trial;
    trial.against_new = first_new(now, as_now, as_was);
    trial.against_old = first_new(before, as_was, as_now);
    trial.same_result = as_now.ends == as_was.ends;
    return trial;
}

} // namespace matchmark::compare
