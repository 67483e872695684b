// Does each job act by act, and says which declared fact stands against a noted line.
#include "capture/replay.hpp"

#include "model/describe.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::capture {

using model::ItemId;

namespace {

std::string listed(const model::Model& model, const std::vector<ItemId>& items) {
    std::vector<std::string> names;
    for (const ItemId item : items)
        names.push_back(model::quoted(model, item));
    return model::list(names);
}

// "because ...": what the device says.
struct RefusalWords {
    const model::Model& model;

    std::string operator()(const bench::WrongState&) const { return "it is off by then"; }
    std::string operator()(const bench::OutOfReach& by) const {
        return listed(model, by.by) + (by.by.size() == 1 ? " is" : " are") + " still over it";
    }
    std::string operator()(const bench::UnmetNeed& need) const {
        return fmt::format("it needs another state of {}", model::quoted(model, need.item));
    }
    std::string operator()(const bench::StillLive& live) const {
        return fmt::format("{} still feeds {}", model::quoted(model, live.source),
                           model::quoted(model, live.fed));
    }
    std::string operator()(const bench::StillHeld& held) const {
        return listed(model, held.by) + (held.by.size() == 1 ? " holds it" : " hold it");
    }
    std::string operator()(const bench::StillBlocked& blocked) const {
        return model::quoted(model, blocked.by) + " blocks it";
    }
    std::string operator()(const bench::NotSeated&) const { return "its parts are apart"; }
    std::string operator()(const bench::UsedTwice&) const { return "it is good for one use"; }
};

} // namespace

namespace {

// A supply whose parts are only assumed is cut before all else: its notes may have left that out.
bool is_cut_before(const Piece& piece) {
    return piece.role == model::Role::energy && piece.tie_assumed && !piece.declared;
}

void cut_supplies(const bench::Bench& on, const std::vector<Piece>& pieces,
                  const std::map<std::string, std::uint32_t>& numbers, bench::State& state) {
    for (const Piece& piece : pieces) {
        const auto number = numbers.find(piece.name);
        if (!is_cut_before(piece) || number == numbers.end())
            continue;
        const ItemId item{number->second};
        const auto& verbs = on.model->kind_of(item).verbs;
        // Each leads to a state that is declared later; what does not apply by then is refused.
        for (std::size_t verb = 0; verb < verbs.size(); ++verb) {
            const auto number_of_verb = static_cast<std::uint16_t>(verb);
            if (verbs[verb].to > 0)
                static_cast<void>(bench::apply(on, state, {item, number_of_verb, {}, true}));
        }
    }
}

} // namespace

void find_contradictions(const model::Model& device, const Description& all,
                         std::vector<Diagnostic>& findings) {
    std::map<std::string, std::uint32_t> numbers;
    for (std::uint32_t i = 0; i < device.items.size(); ++i)
        numbers[device.items[i].name] = i;
    for (const Job& job : all.jobs) {
        // A job may have been done on any of the models.
        std::optional<Diagnostic> first;
        bool possible = false;
        for (unsigned variant = 0; variant < model::variant_count(device); ++variant) {
            const bench::Bench on{&device, variant};
            bench::State state = bench::assembled(on);
            cut_supplies(on, all.pieces, numbers, state);
            std::optional<Diagnostic> found;
            for (const Done& act : job.acts) {
                const auto number = numbers.find(all.pieces[act.thing].name);
                if (number == numbers.end() || is_cut_before(all.pieces[act.thing]))
                    continue;
                const ItemId item{number->second};
                const auto refused = bench::apply(on, state, {item, act.verb, {}, true});
                if (!refused)
                    continue;
                const model::Verb& verb = device.kind_of(item).verbs[act.verb];
                found.emplace();
                found->rule = "note-against-device";
                found->message = fmt::format("the notes {} {}, but by the device {}", verb.name,
                                             model::quoted(device, item),
                                             std::visit(RefusalWords{device}, *refused));
                found->primary = act.span;
                found->label = "noted here";
                found->help = "note what was done before, or correct the device";
                break;
            }
            possible = possible || !found;
            if (!first)
                first = std::move(found);
        }
        if (!possible && first)
            findings.push_back(std::move(*first));
    }
}

} // namespace matchmark::capture
