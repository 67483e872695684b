// Writes a way in out as a guide: what frees a thing and the thing itself make one step.
#include "plan/draft.hpp"

#include "bench/missing.hpp"
#include "bench/work.hpp"
#include "model/describe.hpp"
#include "model/fitting.hpp"
#include "model/spelling.hpp"
#include "plan/made_safe.hpp"
#include "plan/way_in/tasks.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <map>
#include <set>

namespace matchmark::plan {

using model::contains;
using model::Item;
using model::ItemId;
using model::Kind;
using model::Model;
using model::Role;

namespace {

// ", 58.00 EUR" for all members; empty when the device gives no price.
std::string price_of_all(const Item& item) {
    if (!item.rare->price)
        return {};
    return fmt::format(", {:.2f} {}", item.rare->price->value * item.count, item.rare->price->unit);
}

std::string named(const Model& model, const bench::Act& act) {
    std::string text = model.item(act.item).name;
    for (std::size_t i = 0; i < act.members.size(); ++i)
        text += (i == 0 ? " " : ", ") + std::to_string(act.members[i]);
    return text;
}

bool sets_off(const Model& model, const PlannedAct& planned) {
    const Kind& kind = model.kind_of(planned.act.item);
    return kind.set_of[kind.verbs[planned.act.verb].to] == 0;
}

class Writer {
public:
    Writer(const bench::Bench& on, WayIn way, const DraftGoal& goal)
        : on_(on), model_(*on.model), way_(std::move(way)), goal_(goal) {}

    std::string text(const std::string& use);

private:
    void write_acts();
    void write_act(const PlannedAct& planned, std::string& lines);
    void close_step(const PlannedAct& last);
    void write_work();
    void write_replacement(ItemId id, const bench::State& stands, std::string& lines);
    void write_needs_of_the_way_back(std::string& lines) const;
    void write_measurements(std::string& lines) const;
    [[nodiscard]] bool comes_new_with_carrier(ItemId id) const;
    [[nodiscard]] std::string back_again(const model::Function& function) const;
    void write_tests_of_ties(const std::vector<ItemId>& proved);
    void write_tests();
    void list_renewed(ItemId id);
    std::string tool_named(const std::string& description);
    void tools_for_the_way_back(const PlannedAct& planned);
    [[nodiscard]] std::string reader() const;
    [[nodiscard]] bool replaces() const { return goal_.verb == "replace"; }
    [[nodiscard]] bool moved(ItemId id) const;

    const bench::Bench& on_;
    const Model& model_;
    WayIn way_;
    const DraftGoal& goal_;
    std::string before_;
    std::string spares_;
    std::string tools_;
    std::string steps_;
    std::string open_step_; // lines of the step under way
    std::string work_;
    std::string tests_;
    std::set<std::string> step_names_;
    std::vector<std::string> tool_list_;
    std::vector<ItemId> renewed_;
    std::vector<ItemId> marked_;
};

std::string Writer::tool_named(const std::string& description) {
    std::string name = model::name_from(description);
    if (std::find(tool_list_.begin(), tool_list_.end(), description) == tool_list_.end()) {
        tool_list_.push_back(description);
        tools_ += fmt::format("  tool {} {}\n", name, model::in_quotes(description));
    }
    return name;
}

// What puts it back may need a tool of its own.
void Writer::tools_for_the_way_back(const PlannedAct& planned) {
    const Item& item = model_.item(planned.act.item);
    const Kind& kind = model_.kind(item.kind);
    const model::Verb* back = model::inverse(kind, kind.verbs[planned.act.verb], planned.from);
    if (back == nullptr)
        return;
    const auto fitting = tools_for(model_, item, *back);
    const bool there = std::any_of(fitting.begin(), fitting.end(), [&](const std::string& tool) {
        return std::find(tool_list_.begin(), tool_list_.end(), tool) != tool_list_.end();
    });
    const bool stays = contains(kind.may_end, kind.verbs[planned.act.verb].to);
    if (!fitting.empty() && !there && !stays)
        tool_named(fitting.front());
}

// A new one for what is good for one use.
void Writer::list_renewed(ItemId id) {
    if (std::find(renewed_.begin(), renewed_.end(), id) != renewed_.end())
        return;
    renewed_.push_back(id);
    const Item& item = model_.item(id);
    spares_ += fmt::format(
        "  {} {}-new {}, {}{} for {}\n", item.role == Role::part ? "spare" : "supply", item.name,
        model::in_quotes(item.title.empty() ? model::spaced(item.name) : item.title),
        item.amount ? model::to_text(*item.amount) : std::to_string(item.count), price_of_all(item),
        item.name);
}

void Writer::write_act(const PlannedAct& planned, std::string& lines) {
    const Item& item = model_.item(planned.act.item);
    const model::Verb& verb = model_.kind(item.kind).verbs[planned.act.verb];
    const bool first = std::find(marked_.begin(), marked_.end(), planned.act.item) == marked_.end();
    if (!item.rare->keep.empty() && sets_off(model_, planned) && first) {
        lines += fmt::format("  mark {}\n", item.name);
        marked_.push_back(planned.act.item);
    }
    lines += fmt::format("  {} {}{}\n", verb.name, named(model_, planned.act),
                         planned.tool.empty() ? "" : " with " + tool_named(planned.tool));
    if (item.one_use && sets_off(model_, planned))
        list_renewed(planned.act.item);
}

// The step is about its last act, the one for whose sake the others were done.
void Writer::close_step(const PlannedAct& last) {
    const Item& item = model_.item(last.act.item);
    const model::Verb& verb = model_.kind(item.kind).verbs[last.act.verb];
    std::string name = verb.name + "-" + item.name;
    for (int n = 2; !step_names_.insert(name).second; ++n)
        name = fmt::format("{}-{}-{}", verb.name, item.name, n);
    steps_ += fmt::format("\nstep {} {}\n{}", name,
                          model::in_quotes(model::capitalised(model::spaced(verb.name)) + " " +
                                           model::for_reader(model_, last.act.item)),
                          open_step_);
    open_step_.clear();
}

void Writer::write_acts() {
    std::size_t i = 0;
    for (; i < way_.acts.size(); ++i) {
        const PlannedAct& planned = way_.acts[i];
        const Item& item = model_.item(planned.act.item);
        if (!model_.kind(item.kind).verbs[planned.act.verb].from_outside)
            break;
        std::string line;
        write_act(planned, line);
        before_ += "  before" + line.substr(1);
    }
    for (; i < way_.acts.size(); ++i) {
        const PlannedAct& planned = way_.acts[i];
        write_act(planned, open_step_);
        const bool ends =
            i + 1 == way_.acts.size() || (model_.item(planned.act.item).role == Role::part);
        if (ends)
            close_step(planned);
    }
    for (const PlannedAct& planned : way_.acts)
        tools_for_the_way_back(planned);
}

// What the way back asks of the thing itself: a cock shut before the oil is filled.
void Writer::write_needs_of_the_way_back(std::string& lines) const {
    std::map<std::pair<ItemId, std::uint8_t>, model::StateId> stands;
    for (const PlannedAct& planned : way_.acts) {
        const Kind& kind = model_.kind_of(planned.act.item);
        const model::StateId to = kind.verbs[planned.act.verb].to;
        stands[{planned.act.item, kind.set_of[to]}] = to;
    }
    std::set<std::string> told;
    for (const PlannedAct& planned : way_.acts) {
        const Kind& kind = model_.kind_of(planned.act.item);
        const model::Verb* back = model::inverse(kind, kind.verbs[planned.act.verb], planned.from);
        for (const model::OwnNeed& need : kind.needs) {
            if (back == nullptr || need.verb != back->name)
                continue;
            for (const model::Verb& verb : kind.verbs) {
                const std::uint8_t set = kind.set_of[verb.to];
                const auto moved_to = stands.find({planned.act.item, set});
                const model::StateId now =
                    moved_to == stands.end() ? kind.set_first[set] : moved_to->second;
                const std::string line =
                    fmt::format("  {} {}\n", verb.name, model_.item(planned.act.item).name);
                if (contains(need.states, verb.to) && !contains(need.states, now) &&
                    contains(verb.from, now) && told.insert(line).second)
                    lines += line;
            }
        }
    }
}

// The book's limits that can be measured now, and could not before.
void Writer::write_measurements(std::string& lines) const {
    const bench::State start = bench::assembled(on_);
    bench::State now = start;
    for (const PlannedAct& planned : way_.acts)
        bench::perform(on_, now, planned.act);
    for (std::uint32_t i = 0; i < model_.items.size(); ++i) {
        const ItemId id{i};
        const bool new_one = replaces() && std::find(goal_.items.begin(), goal_.items.end(), id) !=
                                               goal_.items.end();
        if (!on_.exists(id) || new_one)
            continue;
        for (const model::WearLimit& limit : model_.item(id).rare->limits) {
            const auto can = [&](const bench::State& state) {
                return limit.when.empty()
                           ? !bench::in_first_state(on_, state, id)
                           : std::all_of(limit.when.begin(), limit.when.end(), [&](const auto& so) {
                                 return bench::holds(on_, state, so);
                             });
            };
            if (can(now) && !can(start))
                lines += fmt::format("  measure {} {} {}\n", model_.item(id).name, limit.name,
                                     model::to_text(limit.limit));
        }
    }
}

// The old one comes to where a new one stands, a spring relaxed, and the new one to where the old
// one was.
void Writer::write_replacement(ItemId id, const bench::State& stands, std::string& lines) {
    const Item& item = model_.item(id);
    const Kind& kind = model_.kind(item.kind);
    bench::State new_one = stands;
    model::ItemRef ref;
    ref.item = id;
    bench::take_new_ones(on_, new_one, ref);
    const auto write_way = [&](const bench::State& from, const bench::State& to) {
        for (unsigned set = 1; set < kind.set_count(); ++set) {
            const auto wanted = bench::state_of(on_, to, id, 0, set);
            const auto acts = bench::bring_to(on_, from, id, model::in_set(wanted),
                                              [](std::uint32_t) { return model::StateSet{0}; });
            for (const bench::Act& act : acts ? *acts : std::vector<bench::Act>{}) {
                const auto tools = tools_for(model_, model_.item(act.item),
                                             model_.kind_of(act.item).verbs[act.verb]);
                write_act({act, 0, 0, 0, tools.empty() ? std::string() : tools.front()}, lines);
            }
        }
    };
    write_way(stands, new_one);
    list_renewed(id);
    lines += fmt::format("  replace {0} with {0}-new\n", item.name);
    write_way(new_one, stands);
}

void Writer::write_work() {
    std::string lines;
    write_needs_of_the_way_back(lines);
    write_measurements(lines);
    bench::State stands = bench::assembled(on_);
    for (const PlannedAct& planned : way_.acts)
        bench::perform(on_, stands, planned.act);
    if (replaces()) {
        for (const ItemId id : goal_.items)
            write_replacement(id, stands, lines);
    }
    for (const ItemId id : renewed_) {
        const Kind& kind = model_.kind_of(id);
        if (!kind.waste.empty())
            lines += fmt::format("  dispose {} as {}\n", model_.item(id).name, kind.waste);
    }
    if (!lines.empty())
        work_ = fmt::format("\nwork\n\nstep renew \"{}\"\n{}",
                            replaces() ? "Take the new one" : "See to what was taken off", lines);
}

bool Writer::moved(ItemId id) const {
    const Role role = model_.item(id).role;
    if (role == Role::part || role == Role::energy)
        return replaces() &&
               std::find(goal_.items.begin(), goal_.items.end(), id) != goal_.items.end();
    return std::any_of(way_.acts.begin(), way_.acts.end(),
                       [&](const PlannedAct& planned) { return planned.act.item == id; });
}

// In a part that is renewed, and not taken out of it before: it comes new with it.
bool Writer::comes_new_with_carrier(ItemId id) const {
    for (ItemId at = id; replaces() && model_.item(at).carrier.known();) {
        const bool taken_out =
            std::any_of(way_.acts.begin(), way_.acts.end(), [&](const PlannedAct& planned) {
                const Kind& kind = model_.kind_of(planned.act.item);
                return planned.act.item == at &&
                       (model::states_of_set(kind, 0) & ~kind.present &
                        model::in_set(kind.verbs[planned.act.verb].to)) != 0;
            });
        if (taken_out)
            return false;
        at = model_.item(at).carrier;
        if (among(goal_.items, at))
            return true;
    }
    return false;
}

// The ties of its path that were parted, as they are to be when it is tried.
std::string Writer::back_again(const model::Function& function) const {
    std::string when;
    for (const ItemId id : function.through) {
        const Kind& kind = model_.kind_of(id);
        if (model::is_tie(kind.role) && moved(id))
            when += fmt::format("{}{} {}", when.empty() ? "" : ", ", model_.item(id).name,
                                kind.states[kind.set_first.front()]);
    }
    return when.empty() ? when : "  when " + when + "\n";
}

// Ties that their kind wants tried, each once.
void Writer::write_tests_of_ties(const std::vector<ItemId>& proved) {
    std::set<ItemId> told(proved.begin(), proved.end());
    for (const PlannedAct& planned : way_.acts) {
        const ItemId id = planned.act.item;
        const Kind& kind = model_.kind_of(id);
        if (!kind.asks_test || !told.insert(id).second)
            continue;
        const std::string& name = model_.item(id).name;
        tests_ += fmt::format("\ntest try-{0} {1}\n  when {0} {2}\n  proves {0}\n", name,
                              model::in_quotes(model::capitalised(model::for_reader(model_, id)) +
                                               (model_.item(id).count > 1 ? " hold" : " holds")),
                              kind.states[kind.set_first.front()]);
    }
}

// What the work disturbs is tried before it is closed in.
void Writer::write_tests() {
    std::vector<ItemId> proved;
    for (const model::Function& function : model_.functions) {
        const auto& path = function.through;
        if (std::none_of(path.begin(), path.end(),
                         [&](ItemId id) { return moved(id) || comes_new_with_carrier(id); }))
            continue;
        proved.insert(proved.end(), path.begin(), path.end());
        tests_ +=
            fmt::format("\ntest try-{} {}\n{}  proves {}\n", function.name,
                        model::in_quotes(function.title.empty()
                                             ? model::capitalised(model::spaced(function.name))
                                             : function.title),
                        back_again(function), function.name);
    }
    write_tests_of_ties(proved);
    for (const ItemId id : goal_.items) {
        const Item& item = model_.item(id);
        const bool by_function = std::find(proved.begin(), proved.end(), id) != proved.end();
        if (replaces() && item.role == Role::part && !item.one_use && !by_function)
            tests_ +=
                fmt::format("\ntest try-{} {}\n  proves {}\n", item.name,
                            model::in_quotes(model::capitalised(model::for_reader(model_, id)) +
                                             (item.count > 1 ? " work" : " works") + " right"),
                            item.name);
    }
}

// The trades that its acts are reserved for, all of them: whoever works by it holds each licence.
std::string Writer::reader() const {
    std::vector<std::string> trades;
    for (const PlannedAct& planned : way_.acts) {
        const Kind& kind = model_.kind_of(planned.act.item);
        if (!kind.licensed.empty() &&
            std::find(trades.begin(), trades.end(), kind.licensed) == trades.end())
            trades.push_back(kind.licensed);
    }
    return trades.empty() ? "competent" : "licensed " + model::in_quotes(model::list(trades));
}

std::string Writer::text(const std::string& use) {
    write_acts();
    write_work();
    write_tests();
    std::vector<std::string> names;
    std::string goals;
    for (const ItemId id : goal_.items) {
        names.push_back(model::for_reader(model_, id));
        goals += fmt::format("  goal {} {}{}\n", goal_.verb, model_.item(id).name,
                             replaces() ? " with " + model_.item(id).name + "-new" : "");
    }
    std::string text = fmt::format(
        "# Drafted from the device. Change the words in `text:`, and add what only a "
        "person knows.\nuse \"{}\"\n\nguide {} {}\n",
        use, draft_name(model_, goal_),
        model::in_quotes(goal_.name.empty() ? model::capitalised(model::spaced(goal_.verb)) + " " +
                                                  model::list(names)
                                            : model::capitalised(model::spaced(goal_.name))));
    text += goals + "  for " + reader() + "\n";
    if (!goal_.only.empty())
        text += "  only " + goal_.only + "\n";
    text += before_ + spares_ + tools_;
    text += fmt::format("  text: Say here how the reader knows that this work is due.\n");
    if (!steps_.empty())
        text += "\ntake-apart\n" + steps_;
    text += work_ + "\nput-back\n  derived\n" + tests_;
    return text;
}

} // namespace

std::string draft_name(const Model& model, const DraftGoal& goal) {
    if (!goal.name.empty())
        return goal.name;
    std::string name = goal.verb;
    for (const ItemId id : goal.items)
        name += "-" + model.item(id).name;
    return name;
}

std::string draft(const bench::Bench& on, const WayIn& way, const DraftGoal& goal,
                  const std::string& use) {
    return Writer(on, made_safe(on, way), goal).text(use);
}

} // namespace matchmark::plan
