// Lets the compiler's bench judge a guide, act by act.
#include "oracle/verdict.hpp"

#include "bench/lifted_after.hpp"
#include "bench/running.hpp"
#include "bench/work.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace matchmark::oracle {

using bench::Bench;
using bench::State;
using model::Action;
using model::ActionSort;
using model::ItemId;
using model::Target;

namespace {

struct Name {
    std::string operator()(const bench::WrongState&) const { return "state"; }
    std::string operator()(const bench::OutOfReach&) const { return "reach"; }
    std::string operator()(const bench::UnmetNeed&) const { return "needs"; }
    std::string operator()(const bench::StillLive&) const { return "live"; }
    std::string operator()(const bench::StillHeld&) const { return "held"; }
    std::string operator()(const bench::StillBlocked&) const { return "held"; }
    std::string operator()(const bench::NotSeated&) const { return "seated"; }
    std::string operator()(const bench::UsedTwice&) const { return "one use"; }
};

// An act, in the order and number in which the model's JSON lists them, or a test between them.
struct Deed {
    Action action;
    const model::Step* test = nullptr;
};

std::vector<Deed> deeds_of(const Bench& bench, const model::Procedure& procedure) {
    std::vector<Deed> deeds;
    for (const model::Step& step : procedure.steps) {
        if (((step.variants >> bench.variant) & 1U) == 0) {
            continue;
        }
        if (step.is_test) {
            deeds.push_back({{}, &step});
        }
        for (const Action& action : step.actions) {
            if (((action.variants >> bench.variant) & 1U) == 0) {
                continue;
            }
            for (const Target& target : action.targets) {
                if (!bench.exists(target.ref.item)) {
                    continue;
                }
                deeds.push_back({action, nullptr});
                deeds.back().action.targets = {target};
            }
        }
    }
    return deeds;
}

std::vector<ItemId> renewed_by(const std::vector<Deed>& deeds) {
    std::vector<ItemId> renewed;
    for (const Deed& deed : deeds) {
        if (deed.test == nullptr && deed.action.sort == ActionSort::replace) {
            renewed.push_back(deed.action.targets.front().ref.item);
        }
    }
    return renewed;
}

// The acts of the verbs among the deeds, in their order.
std::vector<bench::Act> acts_of(const Bench& bench, const model::Procedure& procedure,
                                const std::vector<Deed>& deeds) {
    std::vector<bench::Act> acts;
    std::vector<bench::Act*> in_order;
    for (const Deed& deed : deeds) {
        if (deed.test == nullptr && deed.action.sort == ActionSort::verb)
            acts.push_back(bench::act_of(*bench.model, procedure.resources, deed.action,
                                         deed.action.targets.front()));
    }
    for (bench::Act& act : acts)
        in_order.push_back(&act);
    bench::note_lifted_after(bench, in_order);
    return acts;
}

bool is_back(const Bench& bench, const State& state, ItemId id) {
    const model::Item& item = bench.model->item(id);
    const model::Kind& kind = bench.model->kind(item.kind);
    for (std::uint16_t member = 0; member < item.count; ++member) {
        if ((state.flags[item.first_member + member] & bench::given_up) != 0) {
            continue;
        }
        for (unsigned set = 0; set < kind.set_count(); ++set) {
            const auto found = bench::state_of(bench, state, id, member, set);
            if (found != kind.set_first[set] && !model::contains(kind.may_end, found)) {
                return false;
            }
        }
    }
    return true;
}

} // namespace

std::string to_text(const Verdict& verdict) {
    if (verdict.refused) {
        return fmt::format("act {} refused: {}", *verdict.refused, verdict.condition);
    }
    if (verdict.not_back.empty()) {
        return "all back";
    }
    return fmt::format("not back: {}", fmt::join(verdict.not_back, ", "));
}

Verdict by_bench(const model::Model& model, const model::Procedure& procedure, unsigned variant) {
    const Bench bench{&model, variant};
    State state = bench::assembled(bench);
    Verdict verdict;
    const std::vector<Deed> deeds = deeds_of(bench, procedure);
    const std::vector<ItemId> renewed = renewed_by(deeds);
    const std::vector<bench::Act> acts = acts_of(bench, procedure, deeds);
    auto act = acts.begin();
    std::size_t number = 0;
    for (const Deed& deed : deeds) {
        if (deed.test != nullptr) {
            bench::run(bench, state, *deed.test, renewed);
            continue;
        }
        if (deed.action.sort == ActionSort::verb) {
            if (const auto refusal = bench::refusal(bench, state, *act++)) {
                verdict.refused = number;
                verdict.condition = std::visit(Name{}, *refusal);
                return verdict;
            }
        }
        bench::carry_out(bench, state, procedure.resources, deed.action);
        ++number;
    }
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (bench.exists(ItemId{i}) && !is_back(bench, state, ItemId{i})) {
            verdict.not_back.insert(model.items[i].name);
        }
    }
    return verdict;
}

} // namespace matchmark::oracle
