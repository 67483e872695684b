// Writes the first text of a device or a guide, so that nobody starts from an empty page.
#include "drive/first_draft.hpp"

#include "bench/missing.hpp"
#include "model/describe.hpp"
#include "model/fitting.hpp"
#include "model/spelling.hpp"
#include "source/embedded.hpp"
#include "source/replace_all.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <set>
#include <utility>

namespace matchmark::drive {

namespace {

using model::ItemId;

std::string with_hyphens(std::string words) {
    std::replace(words.begin(), words.end(), ' ', '-');
    return words;
}

// A way to take one part out.
struct Way {
    ItemId part;
    std::vector<bench::Act> acts;
};

// Ways to take out each part, the longest first: it shows the most of the device.
std::vector<Way> ways_out(const bench::Bench& on) {
    std::vector<Way> ways;
    const bench::State assembled = bench::assembled(on);
    const bench::Wish no_wish = [](std::uint32_t) { return model::StateSet{0}; };
    for (std::uint32_t i = 0; i < on.model->items.size(); ++i) {
        const ItemId id{i};
        const model::Kind& kind = on.model->kind_of(id);
        if (on.model->item(id).role != model::Role::part || !on.exists(id)) {
            continue;
        }
        const model::StateSet out = model::states_of_set(kind, 0) & ~kind.present;
        if (out == 0) {
            continue;
        }
        if (auto acts = bench::bring_to(on, assembled, id, out, no_wish); acts && !acts->empty()) {
            ways.push_back({id, std::move(*acts)});
        }
    }
    std::stable_sort(ways.begin(), ways.end(),
                     [](const Way& a, const Way& b) { return a.acts.size() > b.acts.size(); });
    return ways;
}

// The description of a tool that does this verb on this item; empty when its drive is not known.
std::string tool_for(const model::Model& model, const model::Item& item, const model::Verb& verb) {
    if (verb.by_driver) {
        for (const model::Drive& drive : model.drives) {
            if (drive.name == item.bolt->drive && !drive.driven_by.empty()) {
                const std::string size =
                    item.bolt->drive_size.empty() ? "" : " " + item.bolt->drive_size;
                return model::spaced(drive.driven_by.front()) + size;
            }
        }
    }
    for (const std::string& tool : verb.tools) {
        if (tool != "hand" && tool != "driver") {
            return model::spaced(tool);
        }
    }
    return {};
}

class Drafter {
public:
    Drafter(const model::Model& model, const Way& way) : model_(model) {
        for (const bench::Act& act : way.acts) {
            add(act);
        }
        add_tests(way);
    }

    [[nodiscard]] std::string text(const std::string& head, const std::string& prose) const {
        return head + resources_ + prose + "\ntake-apart\n" + steps_ + "\nput-back\n  derived\n" +
               tests_;
    }

private:
    void add(const bench::Act& act) {
        const model::Item& item = model_.item(act.item);
        const model::Kind& kind = model_.kind_of(act.item);
        const model::Verb& verb = kind.verbs[act.verb];
        const std::string step = verb.name + "-" + item.name;
        if (!named_.insert(step).second) {
            return; // again on other members: the line above does them all
        }
        std::string with;
        if (model::asks_tool(verb)) {
            with = add_tool(tool_for(model_, item, verb));
        }
        if (const model::Verb* back = model::inverse(kind, verb, first_of(verb.from));
            back != nullptr && model::asks_tool(*back)) {
            add_tool(tool_for(model_, item, *back));
        }
        steps_ += fmt::format("\nstep {} {}\n  {} {}{}\n", step,
                              model::in_quotes(title_of(model::spaced(verb.name)) + " " +
                                               model::for_reader(model_, act.item)),
                              verb.name, item.name, with.empty() ? "" : " with " + with);
        if (item.one_use) {
            resources_ += fmt::format(
                "  {} new-{} {}, {} for {}\n", item.role == model::Role::part ? "spare" : "supply",
                item.name, model::in_quotes(item.title.empty() ? item.name : item.title),
                item.count, item.name);
        }
    }

    static model::StateId first_of(model::StateSet set) {
        model::StateId state = 0;
        while (set != 0 && !model::contains(set, state)) {
            ++state;
        }
        return state;
    }

    std::string add_tool(const std::string& description) {
        if (description.empty()) {
            return {};
        }
        std::string name = with_hyphens(description);
        if (named_.insert(name).second) {
            resources_ += fmt::format("  tool {} {}\n", name, model::in_quotes(description));
        }
        return name;
    }

    // What the work parts is tried before it is done.
    void add_tests(const Way& way) {
        for (const model::Function& function : model_.functions) {
            const bool parted = std::any_of(way.acts.begin(), way.acts.end(), [&](const auto& act) {
                return std::find(function.through.begin(), function.through.end(), act.item) !=
                       function.through.end();
            });
            if (parted) {
                tests_ +=
                    fmt::format("\ntest try-{} {}\n  proves {}\n", function.name,
                                model::in_quotes(function.title.empty() ? title_of(function.name)
                                                                        : function.title),
                                function.name);
            }
        }
    }

    const model::Model& model_;
    std::string resources_;
    std::string steps_;
    std::string tests_;
    std::set<std::string> named_;
};

} // namespace

std::string title_of(const std::string& name) { return model::capitalised(model::spaced(name)); }

std::string device_draft(const std::string& name) {
    for (const EmbeddedText& start : templates()) {
        if (start.name == "device") {
            std::string text(start.text);
            replace_all(text, "{title}", title_of(name));
            replace_all(text, "{name}", name);
            return text;
        }
    }
    return {};
}

std::vector<std::string> guide_drafts(const Compilation& device, const std::string& name,
                                      const std::string& use) {
    const std::string about =
        device.model.device.title.empty() ? device.model.device.name : device.model.device.title;
    const std::string head =
        fmt::format("use \"{}\"\n\nguide {} \"{}\"\n  for competent\n", use, name, title_of(name));
    const std::string prose =
        fmt::format("  text: Written for the {}. Say here what the work is for.\n", about);
    std::vector<std::string> drafts;
    const bench::Bench on{&device.model, 0};
    for (const Way& way : ways_out(on)) {
        drafts.push_back(Drafter(device.model, way).text(head, prose));
    }
    drafts.push_back(head + prose);
    return drafts;
}

} // namespace matchmark::drive
