// Asks the bench, as the checker does.
#include "serve/editor/moment.hpp"

#include "bench/exposure.hpp"
#include "bench/work.hpp"
#include "model/describe.hpp"
#include "model/fitting.hpp"
#include "plan/unfold.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace matchmark::serve {

using bench::Act;
using bench::Bench;
using bench::State;
using model::ItemId;
using model::Model;
using model::Section;
using model::Step;

namespace {

unsigned first_variant(const Model& model, model::VariantMask mask) {
    for (unsigned variant = 0; variant < model::variant_count(model); ++variant) {
        if (((mask >> variant) & 1U) != 0)
            return variant;
    }
    return 0;
}

bool starts_at_or_after(Span line, FileId file, std::uint32_t begin) {
    return line.file == file && line.begin >= begin;
}

// The step in whose text the line stands: the last of the guide that is declared above it.
const Step* step_above(const model::Guide& guide, std::uint32_t begin) {
    const Step* found = nullptr;
    for (const Step& step : guide.steps) {
        if (step.declaration.begin < begin)
            found = &step;
    }
    return found;
}

// The first event at or after the line, as the work goes: among those of the line's own step, and
// after it those of the steps that follow.
std::size_t event_at(const check::Walk& walk, const Step& step, FileId file, std::uint32_t begin) {
    std::optional<std::size_t> home;
    for (std::size_t s = 0; s < walk.procedure.steps.size() && !home; ++s) {
        const Step& candidate = walk.procedure.steps[s];
        if (candidate.head == step.head ||
            (candidate.section == step.section && candidate.name == step.name))
            home = s;
    }
    for (std::size_t i = 0; i < walk.events.size(); ++i) {
        const check::Event& event = walk.events[i];
        if (!home || event.step < *home)
            continue;
        if (event.step > *home || !event.action)
            return i;
        const model::Action& action = *walk.action(event);
        if (action.derived || starts_at_or_after(action.line, file, begin))
            return i;
    }
    return walk.events.size();
}

// Before the event, and before anything that the walk did as if mended to make it possible.
State state_before(const check::Walk& walk, std::size_t event) {
    return event == 0 ? bench::assembled(walk.bench) : state_after(walk, event - 1);
}

std::string names(const Model& model, const std::vector<ItemId>& items) {
    std::vector<std::string> words;
    words.reserve(items.size());
    for (const ItemId item : items)
        words.push_back(model::with_kind(model, item));
    return model::list(words);
}

struct Wording {
    const Model& model;
    const Act& act;

    [[nodiscard]] std::string operator()(const bench::WrongState& why) const {
        return fmt::format("it is `{}`", model.kind_of(act.item).states[why.found]);
    }
    [[nodiscard]] std::string operator()(const bench::OutOfReach& why) const {
        return "behind " + names(model, why.by);
    }
    [[nodiscard]] std::string operator()(const bench::UnmetNeed& why) const {
        return fmt::format("needs {} {}", model::quoted(model, why.item),
                           model::states_in_words(model.kind_of(why.item), why.states));
    }
    [[nodiscard]] std::string operator()(const bench::StillLive& why) const {
        return fmt::format("`{}` is live from {}", model.item(why.fed).name,
                           model::quoted(model, why.source));
    }
    [[nodiscard]] std::string operator()(const bench::StillHeld& why) const {
        return "held by " + names(model, why.by);
    }
    [[nodiscard]] std::string operator()(const bench::StillBlocked& why) const {
        return "blocked by " + model::with_kind(model, why.by);
    }
    [[nodiscard]] std::string operator()(const bench::NotSeated& why) const {
        return names(model, why.parts) + " not in place";
    }
    [[nodiscard]] std::string operator()(const bench::UsedTwice& /*why*/) const {
        return "good for one use, and no new one is named";
    }
};

// Does some member stand where the verb starts?
bool starts_here(const Moment& moment, ItemId item, const model::Verb& verb) {
    const model::Item& what = moment.model().item(item);
    const model::Kind& kind = moment.model().kind(what.kind);
    const unsigned set = kind.set_of[verb.to];
    for (std::uint16_t member = 0; member < what.count; ++member) {
        const auto state = bench::state_of(moment.bench(), moment.state, item, member, set);
        if (model::contains(verb.from, state))
            return true;
    }
    return false;
}

std::string against(const Moment& moment, Act act) {
    const auto& resources = moment.resources();
    act.supplied = std::any_of(resources.begin(), resources.end(), [&](const auto& resource) {
        return model::serves(moment.model(), resource, act.item);
    });
    if (const auto refused = bench::refusal(moment.bench(), moment.state, act))
        return reason(moment.model(), act, *refused);
    State after = moment.state;
    bench::perform(moment.bench(), after, act);
    if (const auto met = bench::exposure(moment.bench(), moment.state, after, act)) {
        const auto& use = moment.model().kind_of(met->item).hazards[met->use];
        return fmt::format("{}: make {} {} first", moment.model().hazards[use.hazard.value].title,
                           model::quoted(moment.model(), met->item),
                           model::states_in_words(moment.model().kind_of(met->item), use.safe));
    }
    return {};
}

} // namespace

Course course_of(const Analysis& analysis) {
    Course course;
    course.analysis = &analysis;
    const Model& model = analysis.done.model;
    for (std::uint32_t i = 0; i < model.guides.size(); ++i) {
        if (model.guides[i].file == analysis.done.root)
            course.procedures.push_back(plan::unfold(model, model::GuideId{i}));
    }
    course.walks.reserve(course.procedures.size());
    for (const model::Procedure& procedure : course.procedures) {
        const auto mask = model.guide(procedure.guide).variants;
        course.walks.push_back(
            check::walk(analysis.done.sources, model, procedure, first_variant(model, mask)));
    }
    return course;
}

std::optional<Moment> moment_before(const Course& course, std::uint32_t line_begin) {
    const check::Walk* walk = nullptr;
    for (const check::Walk& candidate : course.walks) {
        if (candidate.guide().declaration.begin < line_begin)
            walk = &candidate;
    }
    if (walk == nullptr)
        return std::nullopt;
    Moment moment;
    moment.walk = walk;
    const Step* step = step_above(walk->guide(), line_begin);
    if (step == nullptr) {
        moment.section = Section::before;
        moment.state = bench::assembled(walk->bench);
        return moment;
    }
    moment.section = step->section;
    moment.state =
        state_before(*walk, event_at(*walk, *step, course.analysis->done.root, line_begin));
    return moment;
}

State state_after(const check::Walk& walk, std::size_t event) {
    State state = walk.state_at(event);
    if (walk.events[event].act) {
        bench::Act act = *walk.events[event].act;
        act.supplied = true;
        bench::perform(walk.bench, state, act);
    } else if (const model::Action* action = walk.action(walk.events[event])) {
        bench::note(walk.bench, state, *action);
    }
    return state;
}

std::string reason(const Model& model, const Act& act, const bench::Refusal& refusal) {
    return std::visit(Wording{model, act}, refusal);
}

std::vector<Choice> choices(const Moment& moment, std::string_view verb) {
    std::vector<Choice> found;
    const Model& model = moment.model();
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const ItemId item{i};
        if (!moment.bench().exists(item))
            continue;
        const model::Kind& kind = model.kind_of(item);
        for (std::size_t v = 0; v < kind.verbs.size(); ++v) {
            if ((!verb.empty() && kind.verbs[v].name != verb) ||
                !starts_here(moment, item, kind.verbs[v]))
                continue;
            Choice choice;
            choice.act = {item, static_cast<std::uint16_t>(v), {}, false};
            choice.against = against(moment, choice.act);
            found.push_back(std::move(choice));
        }
    }
    std::stable_partition(found.begin(), found.end(),
                          [](const Choice& choice) { return choice.against.empty(); });
    return found;
}

std::string state_words(const Bench& bench, const State& state, ItemId item) {
    const Model& model = *bench.model;
    const model::Item& what = model.item(item);
    const model::Kind& kind = model.kind(what.kind);
    std::string words;
    for (unsigned set = 0; set < kind.set_count(); ++set) {
        std::vector<std::pair<model::StateId, std::vector<std::uint16_t>>> groups;
        for (std::uint16_t member = 0; member < what.count; ++member) {
            const auto now = bench::state_of(bench, state, item, member, set);
            const auto known = std::find_if(groups.begin(), groups.end(),
                                            [&](const auto& group) { return group.first == now; });
            auto& group = known == groups.end()
                              ? groups.emplace_back(now, std::vector<std::uint16_t>{})
                              : *known;
            group.second.push_back(static_cast<std::uint16_t>(member + 1));
        }
        for (const auto& [now, members] : groups) {
            words += words.empty() ? "" : ", ";
            if (groups.size() > 1)
                words += fmt::format("{} ", fmt::join(members, " "));
            words += kind.states[now];
        }
    }
    return words;
}

} // namespace matchmark::serve
