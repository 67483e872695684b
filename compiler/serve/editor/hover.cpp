// Puts items, kinds, verbs and rules into a few lines of Markdown.
#include "serve/editor/hover.hpp"

#include "drive/kinds/words.hpp"
#include "language/texts.hpp"
#include "model/describe.hpp"
#include "model/passing_on.hpp"
#include "serve/editor/follow.hpp"
#include "serve/editor/moment.hpp"
#include "source/embedded.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::serve {

using model::ItemId;
using model::Model;

namespace {

std::optional<ItemId> item_named(const Model& model, std::string_view name) {
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (model.items[i].name == name)
            return ItemId{i};
    }
    return std::nullopt;
}

const model::Kind* kind_named(const Model& model, std::string_view name) {
    const auto found = std::find_if(model.kinds.begin(), model.kinds.end(),
                                    [&](const model::Kind& kind) { return kind.name == name; });
    return found == model.kinds.end() ? nullptr : &*found;
}

void add_row(std::string& text, std::string_view name, const std::string& value) {
    if (!value.empty())
        text += fmt::format("- {}: {}\n", name, value);
}

std::string named(const Model& model, const std::vector<ItemId>& items) {
    std::vector<std::string> words;
    words.reserve(items.size());
    for (const ItemId item : items)
        words.push_back(model::quoted(model, item));
    return words.empty() ? std::string() : model::list(words);
}

std::string spec_words(const model::Item& item) {
    std::string words;
    for (const model::SpecPhrase& phrase : item.spec)
        words += (words.empty() ? "" : ", ") + phrase->text;
    return words;
}

// What holds it now, at a line of a guide; else on the assembled device.
std::vector<ItemId> holders(const Moment* moment, const Model& model, ItemId item) {
    std::vector<ItemId> found;
    for (const ItemId tie : model.item(item).ties) {
        if (moment == nullptr ||
            (moment->bench().exists(tie) && bench::binds(moment->bench(), moment->state, tie)))
            found.push_back(tie);
    }
    return found;
}

std::string verbs_now(const Moment& moment, ItemId item) {
    std::string text;
    const model::Kind& kind = moment.model().kind_of(item);
    for (const Choice& choice : choices(moment, "")) {
        if (!(choice.act.item == item))
            continue;
        const model::Verb& verb = kind.verbs[choice.act.verb];
        text +=
            fmt::format("- `{}` {}\n", verb.name,
                        choice.against.empty() ? "can be done now" : "not yet: " + choice.against);
    }
    return text;
}

std::string item_page(const Model& model, const Moment* moment, ItemId id) {
    const model::Item& item = model.item(id);
    const model::Kind& kind = model.kind(item.kind);
    std::string text =
        fmt::format("**{}** - {}{}, `{}`\n\n", item.title,
                    item.count > 1 ? fmt::format("{} x ", item.count) : "", kind.title, kind.name);
    add_row(text, "description", spec_words(item));
    if (moment != nullptr && moment->bench().exists(id))
        add_row(text, "here", state_words(moment->bench(), moment->state, id));
    if (item.tightening && item.tightening->torque)
        add_row(text, "torque", model::for_reader(*item.tightening->torque));
    add_row(text, "in", item.carrier.known() ? model::quoted(model, item.carrier) : "");
    add_row(text, "held by", named(model, holders(moment, model, id)));
    add_row(text, "ties", named(model, item.touches));
    if (moment != nullptr && moment->bench().exists(id)) {
        const ItemId at = bench::seat(moment->bench(), moment->state, id);
        add_row(text, "behind",
                named(model, bench::in_the_way(moment->bench(), moment->state, id, at)));
    }
    add_row(text, "feeds", named(model, model::fed_directly(item)));
    add_row(text, "drives", named(model, item.feeding->drives));
    add_row(text, "one use", item.one_use ? "once parted it is renewed" : "");
    add_row(text, "told by", *item.told_by);
    for (const model::Prose& message : item.messages)
        add_row(text, language::prose_word(message.kind), message.markdown);
    if (moment != nullptr && moment->bench().exists(id))
        text += "\n" + verbs_now(*moment, id);
    return text;
}

std::string kind_page(const Model& model, const model::Kind& kind) {
    const drive::Page page = drive::describe_kind(model, kind);
    std::string text = fmt::format("**{}** - `{}`\n\n", kind.title, kind.name);
    for (const drive::Row& row : page.rows) {
        std::string value = row.value;
        std::replace(value.begin(), value.end(), '\n', ' ');
        add_row(text, row.name, value);
    }
    return text;
}

std::string verb_page(const model::Kind& kind, const std::string& name) {
    const model::Verb* verb = model::find_verb(kind, name);
    if (verb == nullptr)
        return {};
    std::string text = fmt::format("**{}** - of `{}`\n\n", verb->name, kind.name);
    add_row(text, "from", drive::joined(drive::state_names(kind, verb->from), ", "));
    add_row(text, "to", kind.states[verb->to]);
    add_row(text, "tools", drive::tool_words(*verb));
    add_row(text, "usual time", verb->takes ? model::for_reader(*verb->takes) : "");
    add_row(text, "waits", verb->waits ? model::for_reader(*verb->waits) : "");
    return text;
}

// `# allow NAME: reason`: the page of that rule.
std::optional<Hover> rule_page(const Analysis& analysis, const LineTable& table,
                               std::uint32_t offset) {
    const std::string& text = analysis.source().text;
    const std::size_t before = offset == 0 ? std::string::npos : text.rfind('\n', offset - 1);
    const std::size_t begin = before == std::string::npos ? 0 : before + 1;
    const std::size_t end = std::min(text.find('\n', offset), text.size());
    const std::string_view line = std::string_view(text).substr(begin, end - begin);
    for (const EmbeddedText& page : rule_pages()) {
        const std::size_t at = line.find(page.name);
        const bool allowed = at != std::string_view::npos && at >= 6 &&
                             line.substr(at - 6, 6) == "allow " &&
                             line.substr(at + page.name.size()).starts_with(':');
        if (!allowed)
            continue;
        const auto first = static_cast<std::uint32_t>(begin + at);
        return Hover{std::string(page.text),
                     table.range(first, first + static_cast<std::uint32_t>(page.name.size()))};
    }
    return std::nullopt;
}

std::string resource_page(const Model& model, const std::string& name, FileId root) {
    for (const model::Guide& guide : model.guides) {
        if (guide.file != root)
            continue;
        for (const model::Resource& resource : guide.resources) {
            if (resource.name != name)
                continue;
            std::string text = fmt::format("**{}** - {}\n\n", name, resource.text);
            add_row(text, "for", named(model, resource.for_items));
            return text;
        }
    }
    return {};
}

std::string page_of(const Analysis& analysis, const Followed& name, const Moment* moment) {
    const Model& model = analysis.done.model;
    switch (name.use.sort) {
    case NameSort::item: {
        const auto item = item_named(model, name.text);
        return item ? item_page(model, moment, *item) : std::string();
    }
    case NameSort::kind: {
        const model::Kind* kind = kind_named(model, name.text);
        return kind != nullptr ? kind_page(model, *kind) : std::string();
    }
    case NameSort::verb: {
        const auto item = item_named(model, analysis.done.sources.slice(name.use.item));
        return item ? verb_page(model.kind_of(*item), name.text) : std::string();
    }
    case NameSort::state: {
        const auto item = item_named(model, analysis.done.sources.slice(name.use.item));
        return item ? kind_page(model, model.kind_of(*item)) : std::string();
    }
    case NameSort::resource:
        return resource_page(model, name.text, analysis.done.root);
    case NameSort::function:
        for (const model::Function& function : model.functions) {
            if (function.name == name.text)
                return fmt::format("**{}**\n\n- through: {}\n", function.title,
                                   named(model, function.through));
        }
        return {};
    default:
        return {};
    }
}

// The part of a state that the verb changes.
std::string hint_for(const check::Walk& walk, const check::Event& event,
                     const bench::State& after) {
    const model::Item& item = walk.model.item(event.act->item);
    return fmt::format("{}: {}", item.name, state_words(walk.bench, after, event.act->item));
}

} // namespace

std::optional<Hover> hover(Workspace& workspace, const std::string& path, Position position) {
    const Analysis& analysis = workspace.analysis(path);
    const LineTable table = workspace.lines(analysis.source().text);
    if (auto page = rule_page(analysis, table, table.offset(position)))
        return page;
    const auto name = followed(workspace, path, position);
    if (!name)
        return std::nullopt;
    const Course course = course_of(analysis);
    const auto moment = moment_before(course, analysis.root().lines[name->use.line].whole.begin);
    std::string text = page_of(analysis, *name, moment ? &*moment : nullptr);
    if (text.empty())
        return std::nullopt;
    return Hover{std::move(text), table.range(name->use.span)};
}

std::vector<InlayHint> state_hints(Workspace& workspace, const std::string& path, Range range) {
    const Analysis& analysis = workspace.analysis(path);
    const LineTable table = workspace.lines(analysis.source().text);
    const Course course = course_of(analysis);
    std::vector<InlayHint> hints;
    for (const check::Walk& walk : course.walks) {
        for (std::size_t i = 0; i < walk.events.size(); ++i) {
            const check::Event& event = walk.events[i];
            const model::Action* action = walk.action(event);
            if (action == nullptr || !event.act || action->derived ||
                action->line.file != analysis.done.root)
                continue;
            const Position end = table.position(action->line.end);
            if (end < range.start || range.end < end)
                continue;
            const std::string words = hint_for(walk, event, state_after(walk, i));
            if (!hints.empty() && hints.back().position == end) {
                hints.back().label += ", " + words;
            } else {
                hints.push_back({end, words, "after this line"});
            }
        }
    }
    std::stable_sort(hints.begin(), hints.end(), [](const InlayHint& a, const InlayHint& b) {
        return a.position < b.position;
    });
    return hints;
}

} // namespace matchmark::serve
