// What a device says otherwise than before: what of it the reader of a guide meets, and what not.
#include "compare/compare.hpp"
#include "compare/facts.hpp"
#include "compare/findings.hpp"
#include "compare/messages.hpp"
#include "model/describe.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace matchmark::compare {

using model::ItemId;
using model::Model;

namespace {

ItemId id_of(std::size_t index) { return ItemId{static_cast<std::uint32_t>(index)}; }

// What every line of a device has to be compared by.
struct Devices {
    const Model& before;
    const Model& after;
    const Pairs& items;

    [[nodiscard]] ItemKey key(bool old) const {
        return [this, old](ItemId item) { return item_key(items, item, old); };
    }

    [[nodiscard]] Change fact(std::size_t now, const Fact& was, const Fact& is) const {
        Change change;
        change.sort = was.about == "torque" ? Sort::torque_changed : Sort::fact_changed;
        change.safety = is.grave;
        change.subject = after.items[now].name;
        change.what = fmt::format("{} of {}", is.about, model::quoted(after, id_of(now)));
        if (is.about.starts_with("what ") || is.about.starts_with("with ") ||
            is.about.starts_with("through ")) {
            change.what = fmt::format("{}: {}", model::quoted(after, id_of(now)), is.about);
        }
        change.before = was.words;
        change.after = is.words;
        change.at = now;
        return change;
    }

    // Calls `tell` with each fact of each paired item that differs.
    void each_fact(const auto& tell) const {
        for (std::size_t now = 0; now < after.items.size(); ++now) {
            const auto old = items.before_of[now];
            if (!old) {
                continue;
            }
            const auto was = facts_of(before, id_of(*old), key(true));
            const auto is = facts_of(after, id_of(now), key(false));
            for (std::size_t i = 0; i < is.size(); ++i) {
                if (was[i].key != is[i].key) {
                    tell(now, was[i], is[i]);
                }
            }
        }
    }

    [[nodiscard]] std::vector<Change> renamed() const {
        std::vector<Change> notes;
        for (std::size_t now = 0; now < after.items.size(); ++now) {
            const auto old = items.before_of[now];
            if (old && before.items[*old].name != after.items[now].name) {
                Change note;
                note.sort = Sort::renamed;
                note.subject = after.items[now].name;
                note.what = fmt::format("`{}` is now called `{}`", before.items[*old].name,
                                        after.items[now].name);
                note.before = before.items[*old].name;
                note.after = after.items[now].name;
                notes.push_back(std::move(note));
            }
        }
        return notes;
    }

    // Items that came or went.
    [[nodiscard]] std::vector<Change> one_sided() const {
        std::vector<Change> changes;
        const auto look = [&](const Model& model, const auto& partners, bool old) {
            for (std::size_t i = 0; i < partners.size(); ++i) {
                if (!partners[i]) {
                    Change change;
                    change.sort = old ? Sort::item_dropped : Sort::item_added;
                    change.subject = model.items[i].name;
                    change.what = fmt::format("{} {}", model::with_kind(model, id_of(i)),
                                              old ? "is there no more" : "is new");
                    change.at = i;
                    changes.push_back(std::move(change));
                }
            }
        };
        look(before, items.after_of, true);
        look(after, items.before_of, false);
        return changes;
    }
};

// A guide's sentence of its own tells these.
bool told_by_action(const Gathering& gathering, const Fact& fact, const std::string& subject) {
    return fact.about == "limits" && std::any_of(gathering.changes.begin(), gathering.changes.end(),
                                                 [&](const Change& change) {
                                                     return change.sort == Sort::limit_changed &&
                                                            change.subject == subject;
                                                 });
}

// One that is good for one use has a supply in the lines that renew it.
void fold_supplies(Gathering& gathering, Change& fact) {
    auto& changes = gathering.changes;
    for (std::size_t i = changes.size(); i-- > 0;) {
        const bool renews =
            (changes[i].sort == Sort::supply_changed || changes[i].sort == Sort::spare_changed) &&
            changes[i].subject == fact.subject;
        if (renews) {
            fact.with_it.push_back(
                fmt::format("{}: {} -> {}", changes[i].what,
                            changes[i].before.empty() ? "none" : changes[i].before,
                            changes[i].after.empty() ? "none" : changes[i].after));
            changes.erase(changes.begin() + static_cast<std::ptrdiff_t>(i));
        }
    }
}

// One safety message or note that the device holds, and whose it is.
struct Held {
    std::string owner;
    std::string text; // with its signal word
    bool grave = false;
};

std::vector<Held> held_by(const Model& model, const ItemKey& key, bool keyed) {
    std::vector<Held> all;
    const auto add = [&](const std::string& owner, const model::Prose& prose,
                         const std::string& when) {
        const auto signal = signal_of(prose.kind);
        std::string text = signal ? std::string(guide::signal_word(*signal)) + ": " : "";
        all.push_back(
            {owner, text + flowing(prose.markdown) + when, signal && can_injure(*signal)});
    };
    for (const model::Prose& prose : model.device.messages) {
        add(keyed ? "device" : model.device.name, prose, "");
    }
    for (std::size_t i = 0; i < model.items.size(); ++i) {
        for (const model::Prose& prose : model.items[i].messages) {
            add(keyed ? key(id_of(i)) : model.items[i].name, prose, "");
        }
    }
    for (const model::ItemCaution& caution : model.cautions) {
        const ItemId item = caution.item.item;
        std::string when;
        for (const model::Condition& condition : caution.when) {
            const ItemId on = condition.item.item;
            when += fmt::format(" (when {} {})", keyed ? key(on) : model.item(on).name,
                                model.kind_of(on).states[condition.state]);
        }
        add(keyed ? key(item) : model.item(item).name, caution.message, when);
    }
    return all;
}

std::vector<Change> messages(const Devices& devices) {
    std::vector<Change> changes;
    const auto look = [&](bool old) {
        const Model& mine = old ? devices.before : devices.after;
        const Model& theirs = old ? devices.after : devices.before;
        const auto keys = held_by(mine, devices.key(old), true);
        const auto words = held_by(mine, devices.key(old), false);
        auto others = held_by(theirs, devices.key(!old), true);
        for (std::size_t i = 0; i < keys.size(); ++i) {
            const auto same = std::find_if(others.begin(), others.end(), [&](const Held& other) {
                return other.owner == keys[i].owner && other.text == keys[i].text;
            });
            if (same != others.end()) {
                others.erase(same);
                continue;
            }
            Change change;
            change.sort = old ? Sort::message_dropped : Sort::message_added;
            change.safety = words[i].grave;
            change.subject = words[i].owner;
            change.what = words[i].text;
            changes.push_back(std::move(change));
        }
    };
    look(true);
    look(false);
    return changes;
}

// A line about the device itself, or one of its functions.
void add_line(std::vector<Change>& changes, const std::string& subject, const std::string& what,
              const std::string& before, const std::string& after, bool safety) {
    if (before == after) {
        return;
    }
    Change change;
    change.sort = Sort::fact_changed;
    change.safety = safety;
    change.subject = subject;
    change.what = what;
    change.before = before;
    change.after = after;
    changes.push_back(std::move(change));
}

std::string mass(const Model& model) {
    return model.device.mass ? model::for_reader(*model.device.mass) : "";
}

// Functions and ratings, by name.
void add_functions(const Devices& devices, std::vector<Change>& changes) {
    std::map<std::string, std::pair<std::string, std::string>> both;
    std::map<std::string, std::pair<std::string, std::string>> keys;
    const auto look = [&](const Model& model, bool old) {
        for (const model::Function& function : model.functions) {
            std::vector<std::string> names;
            std::vector<std::string> path;
            for (const ItemId item : function.through) {
                names.push_back(model::quoted(model, item));
                path.push_back(devices.key(old)(item));
            }
            std::sort(names.begin(), names.end());
            std::sort(path.begin(), path.end());
            const std::string words =
                fmt::format("“{}” through {}", function.title, model::list(names));
            const std::string key = fmt::format("{}|{}", function.title, fmt::join(path, ","));
            (old ? both[function.name].first : both[function.name].second) = words;
            (old ? keys[function.name].first : keys[function.name].second) = key;
        }
    };
    look(devices.before, true);
    look(devices.after, false);
    for (const auto& [name, words] : both) {
        if (keys[name].first != keys[name].second) {
            add_line(changes, name, fmt::format("what `{}` is and hangs on", name), words.first,
                     words.second, true);
        }
    }
}

} // namespace

void find_facts(Gathering& gathering) {
    const Pairing& pairing = gathering.pairing;
    const Devices devices{pairing.before.side.model, pairing.after.side.model, pairing.items};
    std::set<std::uint32_t> worked;
    std::map<std::uint32_t, StepPlace> first;
    for (const Deed& deed : pairing.after.deeds) {
        if (deed.target != nullptr) {
            worked.insert(deed.target->ref.item.value);
            first.try_emplace(deed.target->ref.item.value, pairing.after.place(deed.step, false));
        }
    }
    for (Change& note : devices.renamed()) {
        gathering.notes.push_back(std::move(note));
    }
    devices.each_fact([&](std::size_t now, const Fact& was, const Fact& is) {
        Change change = devices.fact(now, was, is);
        const auto place = first.find(static_cast<std::uint32_t>(now));
        const bool by_action = is.about == "torque" || is.about == "order of tightening";
        if (!is.told || place == first.end()) {
            if (place == first.end() || !by_action) {
                change.sort = Sort::kept_apart;
                change.safety = false;
                gathering.notes.push_back(std::move(change));
            }
            return;
        }
        if (told_by_action(gathering, is, change.subject)) {
            return;
        }
        change.steps = {place->second};
        change.at = 0;
        fold_supplies(gathering, change);
        gathering.add(std::move(change));
    });
    for (Change& change : devices.one_sided()) {
        const bool old = change.sort == Sort::item_dropped;
        const auto& deeds = old ? pairing.before.deeds : pairing.after.deeds;
        const bool in_guide = std::any_of(deeds.begin(), deeds.end(), [&](const Deed& deed) {
            return deed.target != nullptr && deed.target->ref.item.value == change.at;
        });
        if (!in_guide) { // else its actions tell
            change.sort = Sort::kept_apart;
            gathering.notes.push_back(std::move(change));
        }
    }
}

Difference compare_devices(const Model& before, const Model& after) {
    const Pairs items = pair_items(before, after);
    const Devices devices{before, after, items};
    Difference result;
    result.name = after.device.name;
    result.title = after.device.title;
    result.notes = devices.renamed();
    add_line(result.changes, after.device.name, "title of the device", before.device.title,
             after.device.title, false);
    add_line(result.changes, after.device.name, "revision of the device", before.device.revision,
             after.device.revision, false);
    add_line(result.changes, after.device.name, "mass of the device", mass(before), mass(after),
             false);
    add_line(result.changes, after.device.name, "variants of the device",
             fmt::format("{}", fmt::join(before.device.variants, ", ")),
             fmt::format("{}", fmt::join(after.device.variants, ", ")), false);
    devices.each_fact([&](std::size_t now, const Fact& was, const Fact& is) {
        result.changes.push_back(devices.fact(now, was, is));
    });
    for (auto more : {devices.one_sided(), messages(devices)}) {
        std::move(more.begin(), more.end(), std::back_inserter(result.changes));
    }
    add_functions(devices, result.changes);
    std::stable_sort(
        result.changes.begin(), result.changes.end(),
        [](const Change& left, const Change& right) { return left.safety > right.safety; });
    return result;
}

} // namespace matchmark::compare
