// Writes what is missing where it belongs in the author's text.
#include "check/mending.hpp"

#include "bench/proof.hpp"
#include "check/title_of_lines.hpp"
#include "model/describe.hpp"
#include "model/fitting.hpp"
#include "model/spelling.hpp"

#include <algorithm>
#include <fmt/core.h>
#include <utility>

namespace matchmark::check {

using bench::Act;
using model::Action;
using model::Step;

namespace {

bool is_derived(const Walk& walk, std::size_t at) {
    if (at >= walk.events.size())
        return walk.guide().derives_put_back;
    const Event& event = walk.events[at];
    const Action* action = walk.action(event);
    if (action != nullptr)
        return action->derived;
    return false; // a test has a place of its own in the text
}

Edit insertion(FileId file, std::uint32_t at, std::string text) {
    return {{file, at, at}, std::move(text)};
}

std::uint32_t line_begin(const SourceMap& sources, Span span) {
    return sources.line_start(span.file, sources.place(span.file, span.begin).line);
}

std::uint32_t line_end(const SourceMap& sources, Span span) {
    return sources.line_start(span.file, sources.place(span.file, span.end).line + 1);
}

// Text that starts on a line of its own: after a last line without a line end, one is added.
Edit insertion_on_new_line(const SourceMap& sources, FileId file, std::uint32_t at,
                           const std::string& text) {
    const std::string& bytes = sources.file(file).text;
    const bool open = at > 0 && at <= bytes.size() && bytes[at - 1] != '\n';
    return insertion(file, at, open ? "\n" + text : text);
}

std::string indented(const std::vector<std::string>& lines) {
    std::string text;
    for (const auto& line : lines)
        text += "  " + line + "\n";
    return text;
}

std::string free_step_name(const Walk& walk, std::string name) {
    const auto taken = [&] {
        for (const Step& step : walk.procedure.steps) {
            if (step.name == name)
                return true;
        }
        return false;
    };
    while (taken())
        name += "-then";
    return name;
}

std::string new_step(const Walk& walk, const std::vector<std::string>& lines) {
    return fmt::format("step {} {}\n{}", free_step_name(walk, "then"),
                       model::in_quotes(title_of_lines(walk.model, lines)), indented(lines));
}

} // namespace

std::set<std::uint32_t> used_resources(const Walk& walk) {
    std::set<std::uint32_t> used;
    const auto take = [&](const std::vector<model::ResourceId>& list) {
        for (const auto id : list)
            used.insert(id.value);
    };
    for (const Step& step : walk.procedure.steps) {
        take(step.with);
        for (const Action& action : step.actions) {
            take(action.with);
            take(action.otherwise->with);
        }
    }
    for (const Action& goal : walk.guide().goals)
        take(goal.with);
    return used;
}

std::string with_unused_tools(const Walk& walk) {
    const auto used = used_resources(walk);
    std::string text;
    for (std::uint32_t i = 0; i < walk.procedure.resources.size(); ++i) {
        const auto& resource = walk.procedure.resources[i];
        if (resource.sort != model::ResourceSort::tool || used.count(i) != 0 ||
            model::works_fasteners(walk.model, resource))
            continue;
        text += (text.empty() ? " with " : ", ") + resource.name;
    }
    return text;
}

std::vector<std::string> unused_for(const Walk& walk, model::ItemId item) {
    const auto used = used_resources(walk);
    std::vector<std::string> names;
    for (const auto id : model::serving(walk.model, walk.procedure.resources, item)) {
        if (used.count(id.value) == 0)
            names.push_back(walk.procedure.resources[id.value].name);
    }
    return names;
}

namespace {

// By hand, any tool may help: one that is left over by itself was laid out for this, unless the
// library knows it as the tool for something else.
bool only_unused_tool(const std::vector<model::Resource>& list, const std::set<std::uint32_t>& used,
                      std::uint32_t tool) {
    for (std::uint32_t i = 0; i < list.size(); ++i) {
        if (i != tool && list[i].sort == model::ResourceSort::tool && used.count(i) == 0)
            return false;
    }
    return true;
}

// A tool or supply on the list that nothing uses was most likely meant for the line that is
// missing.
void add_unused(const Walk& walk, const Act& act, std::set<std::uint32_t>& used, Action& action) {
    const auto& list = walk.procedure.resources;
    const model::Item& item = walk.model.item(act.item);
    const model::Kind& kind = walk.model.kind(item.kind);
    const model::Verb& verb = kind.verbs[act.verb];
    // What is good for one use is renewed when it goes back, not when it is cooled or let out.
    const bool takes_supply = !item.one_use || verb.to == kind.set_first[kind.set_of[verb.to]];
    for (std::uint32_t i = 0; i < list.size(); ++i) {
        if (used.count(i) != 0)
            continue;
        const bool tool = model::tool_fits(walk.model, list[i], item, verb) &&
                          (!verb.tools.empty() || (!model::class_of(walk.model, list[i]) &&
                                                   only_unused_tool(list, used, i)));
        const bool supply = takes_supply && list[i].sort == model::ResourceSort::supply &&
                            model::serves(walk.model, list[i], act.item);
        const model::ResourceId id{i};
        if ((!tool && !supply) ||
            std::find(action.with.begin(), action.with.end(), id) != action.with.end()) {
            continue;
        }
        // In place of another that fits too.
        if (tool && !action.with.empty() &&
            list[action.with.front().value].sort == model::ResourceSort::tool) {
            action.with.edit().front() = id;
        } else {
            auto& with = action.with.edit();
            with.insert(tool ? with.begin() : with.end(), id);
        }
    }
}

// The act in the words of the line that does it later: means, time and limit are the author's.
std::optional<std::string> moved_words(const Walk& walk, const Act& act,
                                       const std::vector<Span>& moved) {
    for (const Event& event : walk.events) {
        const Action* action = walk.action(event);
        if (!event.act || event.act->item != act.item || event.act->verb != act.verb ||
            std::find(moved.begin(), moved.end(), action->line) == moved.end())
            continue;
        const model::Target& target = action->targets[event.target];
        if (action->targets.size() == 1 && target.ref.members == act.members) {
            const Span line = action->line;
            return walk.sources.file(line.file).text.substr(line.begin, line.end - line.begin);
        }
        Action alone = *action;
        alone.targets = {target};
        alone.targets.front().ref.members = act.members;
        return model::as_source(walk.model, walk.procedure.resources, alone);
    }
    return std::nullopt;
}

} // namespace

std::vector<std::string> lines_for(const Walk& walk, const std::vector<Act>& acts,
                                   const std::vector<Span>& moved) {
    std::vector<std::string> lines;
    std::set<std::uint32_t> used = used_resources(walk);
    for (const Act& act : acts) {
        if (auto words = moved_words(walk, act, moved)) {
            lines.push_back(std::move(*words));
            continue;
        }
        const model::Item& item = walk.model.item(act.item);
        const model::Kind& kind = walk.model.kind(item.kind);
        model::ItemRef ref;
        ref.item = act.item;
        ref.members = act.members;
        const bool renew = item.one_use && kind.verbs[act.verb].to == kind.set_first.front();
        Action action =
            model::written_action(walk.model, walk.procedure.resources, ref, act.verb, renew);
        add_unused(walk, act, used, action);
        for (const auto id : action.with)
            used.insert(id.value);
        lines.push_back(model::as_source(walk.model, walk.procedure.resources, action));
    }
    return lines;
}

namespace {

// The lines as they stand beside this event's: those in the guide's head start with `before`.
std::string lines_beside(const Walk& walk, std::size_t event,
                         const std::vector<std::string>& lines) {
    const Step& step = walk.step(walk.events[event]);
    if (step.section != model::Section::before || !step.derived)
        return indented(lines);
    std::vector<std::string> in_head;
    for (const std::string& line : lines)
        in_head.push_back("before     " + line);
    return indented(in_head);
}

} // namespace

std::vector<Edit> insert_before(const Walk& walk, std::size_t at,
                                const std::vector<std::string>& lines) {
    if (lines.empty() || is_derived(walk, at))
        return {};
    const SourceMap& sources = walk.sources;
    const bool at_end = at >= walk.events.size();
    if (!at_end && walk.events[at].action) {
        const Span line = walk.action(walk.events[at])->line;
        return {insertion(line.file, line_begin(sources, line), lines_beside(walk, at, lines))};
    }
    // Before a test or at the end: as the last line of the step before, if that is the author's
    // own.
    const Action* before = at > 0 ? walk.action(walk.events[at - 1]) : nullptr;
    if (before != nullptr && !before->derived) {
        return {insertion_on_new_line(sources, before->line.file, line_end(sources, before->line),
                                      lines_beside(walk, at - 1, lines))};
    }
    if (at_end) {
        const Span end = walk.guide().end;
        return {insertion_on_new_line(sources, end.file, end.begin, "\n" + new_step(walk, lines))};
    }
    const Span test = walk.step(walk.events[at]).declaration;
    return {insertion(test.file, line_begin(sources, test), new_step(walk, lines) + "\n")};
}

std::vector<Edit> insert_at(const Walk& walk, std::size_t at,
                            const std::vector<std::string>& lines) {
    auto edits = insert_before(walk, at, lines);
    const Action* before = at > 0 ? walk.action(walk.events[at - 1]) : nullptr;
    if (!edits.empty() || before == nullptr || before->derived)
        return edits;
    return {insertion_on_new_line(walk.sources, before->line.file,
                                  line_end(walk.sources, before->line),
                                  lines_beside(walk, at - 1, lines))};
}

std::vector<Edit> insert_test(const Walk& walk, std::size_t at, const std::string& text) {
    const SourceMap& sources = walk.sources;
    const model::Guide& guide = walk.guide();
    if (guide.derives_put_back || at >= walk.events.size()) {
        return {insertion_on_new_line(sources, guide.end.file, guide.end.begin, "\n" + text)};
    }
    const Event& event = walk.events[at];
    const Step& step = walk.step(event);
    const bool starts_step = !event.action || *event.action == 0;
    if (starts_step)
        return {
            insertion(step.declaration.file, line_begin(sources, step.declaration), text + "\n")};
    const Span line = walk.action(event)->line;
    const std::string rest =
        fmt::format("\n{}\nstep {} {}\n", text, free_step_name(walk, step.name + "-then"),
                    model::in_quotes(step.title));
    return {insertion(line.file, line_begin(sources, line), rest)};
}

namespace {

// Whole lines.
std::string text_of(const SourceMap& sources, Span body) {
    const std::uint32_t begin = line_begin(sources, body);
    const std::uint32_t end = line_end(sources, {body.file, body.end, body.end});
    std::string text = sources.file(body.file).text.substr(begin, end - begin);
    if (text.empty() || text.back() != '\n')
        text += '\n';
    return text;
}

std::vector<Edit> move_text(const Walk& walk, Span body, std::size_t at, const std::string& text) {
    std::vector<Edit> edits{remove_declaration(walk.sources, body)};
    for (Edit& edit : insert_test(walk, at, text))
        edits.push_back(std::move(edit));
    return edits;
}

} // namespace

std::vector<Edit> move_step(const Walk& walk, std::size_t event, std::size_t at) {
    const SourceMap& sources = walk.sources;
    const Span body = walk.step(walk.events[event]).body;
    return move_text(walk, body, at, text_of(sources, body));
}

std::vector<Edit> move_step(const Walk& walk, std::size_t test, std::optional<std::size_t> at,
                            const std::vector<model::Condition>& kept) {
    const SourceMap& sources = walk.sources;
    const Step& step = walk.step(walk.events[test]);
    const std::string& bytes = sources.file(step.body.file).text;
    std::string conditions;
    for (const model::Condition& condition : kept) {
        conditions += (conditions.empty() ? "  when       " : ", ") +
                      bytes.substr(condition.span.begin, condition.span.end - condition.span.begin);
    }
    std::string text;
    const std::uint32_t end = line_end(sources, {step.body.file, step.body.end, step.body.end});
    for (std::uint32_t line = line_begin(sources, step.body); line < end;) {
        const std::uint32_t next = line_end(sources, {step.body.file, line, line});
        const bool says_when =
            std::any_of(step.when.begin(), step.when.end(), [&](const model::Condition& condition) {
                return line <= condition.span.begin && condition.span.begin < next;
            });
        if (!says_when)
            text += bytes.substr(line, next - line);
        else if (!conditions.empty())
            text += std::exchange(conditions, {}) + "\n";
        line = next;
    }
    if (!text.empty() && text.back() != '\n')
        text += '\n';
    if (at)
        return move_text(walk, step.body, *at, text);
    return {{{step.body.file, line_begin(sources, step.body), end}, text}};
}

std::vector<Edit> add_condition(const Walk& walk, std::size_t test, const std::string& condition) {
    const Span head = walk.step(walk.events[test]).declaration;
    return {insertion_on_new_line(walk.sources, head.file, line_end(walk.sources, head),
                                  "  when       " + condition + "\n")};
}

Edit remove_line(const SourceMap& sources, Span line) {
    return {{line.file, line_begin(sources, line), line_end(sources, line)}, ""};
}

Edit take_out(const Walk& walk, Span line, const std::vector<Act>& acts) {
    const auto event = std::find_if(walk.events.begin(), walk.events.end(), [&](const Event& one) {
        return walk.action(one) != nullptr && walk.action(one)->line == line;
    });
    if (event == walk.events.end())
        return remove_line(walk.sources, line);
    const auto& targets = walk.action(*event)->targets;
    const std::string& bytes = walk.sources.file(line.file).text;
    std::string kept;
    for (const model::Target& target : targets) {
        const Span written = target.ref.span;
        const bool taken = std::any_of(acts.begin(), acts.end(),
                                       [&](const Act& act) { return act.item == target.ref.item; });
        if (!taken)
            kept += (kept.empty() ? "" : ", ") +
                    bytes.substr(written.begin, written.end - written.begin);
    }
    if (kept.empty())
        return remove_line(walk.sources, line);
    return {{line.file, targets.front().ref.span.begin, targets.back().ref.span.end}, kept};
}

Edit remove_declaration(const SourceMap& sources, Span body) {
    const std::string& bytes = sources.file(body.file).text;
    std::uint32_t from = line_begin(sources, body);
    while (from > 1 && bytes[from - 1] == '\n' && bytes[from - 2] == '\n')
        --from;
    return {{body.file, from, line_end(sources, {body.file, body.end, body.end})}, ""};
}

Edit add_to_head(const Walk& walk, const std::string& line) {
    const Span at = walk.guide().head_end;
    return insertion_on_new_line(walk.sources, at.file, at.begin, "  " + line + "\n");
}

Edit add_tool(const Walk& walk, const std::string& name, const std::string& description) {
    const std::string line = fmt::format("tool       {} {}", name, model::in_quotes(description));
    const auto& list = walk.guide().resources;
    const auto last = std::find_if(list.rbegin(), list.rend(), [](const auto& resource) {
        return resource.sort == model::ResourceSort::tool;
    });
    if (last == list.rend())
        return add_to_head(walk, line);
    return insertion_on_new_line(walk.sources, last->line.file, line_end(walk.sources, last->line),
                                 "  " + line + "\n");
}

Span place_of(const Walk& walk, std::size_t at) {
    if (at >= walk.events.size()) {
        const Step* last = walk.procedure.steps.empty() ? nullptr : &walk.procedure.steps.back();
        if (last == nullptr)
            return walk.guide().span;
        return last->derived ? walk.guide().derived_span : last->head;
    }
    const Event& event = walk.events[at];
    const Action* action = walk.action(event);
    if (action == nullptr)
        return walk.step(event).head;
    return action->derived && walk.guide().derived_span.known() ? walk.guide().derived_span
                                                                : action->head;
}

std::string free_resource_name(const Walk& walk, const std::string& wanted) {
    const auto& list = walk.procedure.resources;
    std::string name = wanted;
    for (int n = 2; std::any_of(list.begin(), list.end(),
                                [&](const auto& known) { return known.name == name; });
         ++n)
        name = fmt::format("{}-{}", wanted, n);
    return name;
}

std::optional<Edit> reworded(const Walk& walk, const model::Action& action, const std::string& from,
                             const std::string& to) {
    const Span line = action.line;
    const std::string text =
        walk.sources.file(line.file).text.substr(line.begin, line.end - line.begin);
    const std::size_t at = text.rfind(from);
    if (at == std::string::npos)
        return std::nullopt;
    const auto begin = line.begin + static_cast<std::uint32_t>(at);
    return Edit{{line.file, begin, begin + static_cast<std::uint32_t>(from.size())}, to};
}

Diagnostic finding_at(const Walk& walk, std::size_t at, std::string message) {
    Diagnostic finding;
    finding.message = std::move(message);
    finding.primary = place_of(walk, at);
    if (at < walk.events.size()) {
        const Action* action = walk.action(walk.events[at]);
        if (action != nullptr && action->derived && action->head != finding.primary) {
            finding.related.push_back({action->head, "the way back from here"});
        }
    }
    return finding;
}

void mend_with(const Walk& walk, Diagnostic& finding, std::size_t at, const std::vector<Act>& acts,
               const std::vector<Span>& moved) {
    if (acts.empty())
        return;
    const auto lines = lines_for(walk, acts, moved);
    finding.edits = insert_before(walk, at, lines);
    if (!finding.edits.empty()) {
        finding.help = lines.size() == 1 ? "add this line before it" : "add these lines before it";
        if (at >= walk.events.size())
            finding.help = lines.size() == 1 ? "add this line" : "add these lines";
        return;
    }
    // Nothing can be put into a derived way back; what is done from outside can be done before all,
    // unless it brings something back.
    if (is_derived(walk, at) && std::all_of(acts.begin(), acts.end(), [&](const Act& act) {
            const model::Kind& kind = walk.model.kind_of(act.item);
            return kind.verbs[act.verb].from_outside && !leads_home(kind, kind.verbs[act.verb]);
        })) {
        std::string text;
        for (const auto& line : lines)
            text += (text.empty() ? "before     " : "\n  before     ") + line;
        finding.edits = {add_to_head(walk, text)};
        finding.help = lines.size() == 1 ? "add this line to the guide's head"
                                         : "add these lines to the guide's head";
        return;
    }
    std::vector<std::string> quoted;
    for (const auto& line : lines)
        quoted.push_back("`" + line + "`");
    finding.help =
        "write this step's way back in the put-back, with " + model::list(quoted) + " in it";
}

} // namespace matchmark::check
