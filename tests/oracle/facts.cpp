// Turns the model's JSON (docs/model-json.md) into the facts that bench.lp reads.
#include "oracle/facts.hpp"

#include <algorithm>
#include <fmt/core.h>
#include <iterator>
#include <map>
#include <vector>

namespace matchmark::oracle {

using nlohmann::json;

namespace {

// A name as an answer-set term: in quotes, so that a name of any script will do.
std::string term(const std::string& name) {
    std::string quoted = "\"";
    for (const char c : name) {
        if (c == '"' || c == '\\') {
            quoted += '\\';
        }
        quoted += c;
    }
    return quoted + '"';
}

std::string term(const json& name) { return term(name.get<std::string>()); }

template <class... Arguments>
void add(std::string& facts, fmt::format_string<Arguments...> format, Arguments&&... arguments) {
    fmt::format_to(std::back_inserter(facts), format, std::forward<Arguments>(arguments)...);
    facts += ".\n";
}

void add_verbs(std::string& facts, const json& kind, const std::string& name) {
    for (const json& verb : kind["verbs"]) {
        const std::string word = term(verb["name"]);
        add(facts, "verb({},{},{})", name, word, verb["set"].get<int>());
        add(facts, "to({},{},{})", name, word, term(verb["to"]));
        for (const json& from : verb["from"]) {
            add(facts, "from({},{},{})", name, word, term(from));
        }
        if (verb["safe_when_live"].get<bool>()) {
            add(facts, "safe_live({},{})", name, word);
        }
        if (verb["from_outside"].get<bool>()) {
            add(facts, "outside({},{})", name, word);
        }
        if (verb["decays"].get<bool>() || !verb["waits"].is_null()) {
            add(facts, "timed({},{})", name, word);
        }
        if (!verb["waits"].is_null()) {
            add(facts, "waits({},{})", name, word);
        }
    }
}

void add_kind(std::string& facts, const json& kind) {
    const std::string name = term(kind["name"]);
    std::size_t place = 0;
    for (const json& state : kind["states"]) {
        const int set = state["set"].get<int>();
        add(facts, "order({},{},{})", name, place++, term(state["name"]));
        add(facts, "state({},{},{})", name, set, term(state["name"]));
        if (state["first"].get<bool>()) {
            add(facts, "first({},{},{})", name, set, term(state["name"]));
        }
    }
    for (const char* list :
         {"present_in", "binds_in", "covers_in", "blocks_in", "live_in", "may_end_in"}) {
        for (const json& state : kind[list]) {
            add(facts, "{}({},{})", list, name, term(state));
        }
    }
    for (const json& hazard : kind["hazards"]) {
        for (const json& state : hazard["until"]) {
            add(facts, "safe_state({},{})", name, term(state));
        }
    }
    if (kind["asks_for_test"].get<bool>()) {
        add(facts, "asks_test({})", name);
    }
    if (kind["laid_first"].get<bool>()) {
        add(facts, "laid_first({})", name);
    }
    if (kind["lies_loose"].get<bool>()) {
        add(facts, "lies_loose({})", name);
    }
    if (kind["moves"].get<bool>()) {
        add(facts, "moving({})", name);
    }
    if (kind["guards"].get<bool>()) {
        add(facts, "guarding({})", name);
    }
    if (kind["passes_on"].get<bool>()) {
        add(facts, "passes_on({})", name);
    }
    if (kind["lets_out"].get<bool>()) {
        add(facts, "lets_out({})", name);
    }
    if (kind["runs_out"].get<bool>() && kind["role"] == "energy") {
        add(facts, "escapes({})", name);
    }
    if (kind["runs_out"].get<bool>() && kind["role"] == "energy" && !kind["moves"].get<bool>()) {
        add(facts, "of_matter({})", name);
    }
    if (kind["bare"].get<bool>()) {
        add(facts, "bare({})", name);
    }
    if (kind["clamped"].get<bool>()) {
        add(facts, "clamped({})", name);
    }
    add_verbs(facts, kind, name);
    std::size_t number = 0;
    for (const json& need : kind["needs"]) {
        add(facts, "own_need({},{},{})", name, number, term(need["verb"]));
        for (const json& state : need["states"]) {
            add(facts, "own_state({},{},{})", name, number, term(state));
        }
        ++number;
    }
}

// The items by name: what does not exist in the variant ties, covers and blocks nothing.
class Items {
public:
    explicit Items(const json& root) {
        for (const json& item : root["items"]) {
            by_name_[item["name"].get<std::string>()] = &item;
        }
    }

    // Nothing when the item does not exist.
    [[nodiscard]] const json* find(const json& name) const {
        const json* item = by_name_.at(name.get<std::string>());
        return (*item)["exists"].get<bool>() ? item : nullptr;
    }

    // The next carrier that exists: what one that does not exist carries goes with the carrier's
    // own.
    [[nodiscard]] const json* carrier(const json& item) const {
        const json* next = &item["carrier"];
        while (!next->is_null() && find(*next) == nullptr) {
            next = &(*by_name_.at(next->get<std::string>()))["carrier"];
        }
        return next->is_null() ? nullptr : next;
    }

    // The members of a reference, from 1; none when the item does not exist.
    [[nodiscard]] std::vector<int> members(const json& ref) const {
        const json* item = find(ref["item"]);
        if (item == nullptr) {
            return {};
        }
        auto listed = ref["members"].get<std::vector<int>>();
        for (int member = 1; ref["members"].empty() && member <= (*item)["count"]; ++member) {
            listed.push_back(member);
        }
        return listed;
    }

private:
    std::map<std::string, const json*> by_name_;
};

void add_reach(std::string& facts, const Items& items, const json& item, const std::string& name) {
    std::size_t clause = 0;
    for (const json& reach : item["reach"]) {
        add(facts, "clause({},{})", name, clause);
        std::size_t way = 0;
        for (const json& refs : reach["ways"]) {
            add(facts, "way({},{},{})", name, clause, way);
            for (const json& ref : refs) {
                for (const int member : items.members(ref)) {
                    add(facts, "bars({},{},{},{},{})", name, clause, way, term(ref["item"]),
                        member);
                }
            }
            ++way;
        }
        ++clause;
    }
}

void add_needs(std::string& facts, const Items& items, const json& item, const std::string& name) {
    std::size_t number = 0;
    for (const json& need : item["needs"]) {
        add(facts, "need({},{},{})", name, number, term(need["verb"]));
        for (const json& state : need["or"]) {
            add(facts, "does_too({},{},{})", name, number, term(state));
        }
        if (need["alone"].get<bool>()) {
            add(facts, "for_one_verb({},{})", name, number);
        }
        for (const int member : items.members(need)) {
            add(facts, "asked({},{},{},{},{})", name, number, term(need["item"]), member,
                term(need["state"]));
        }
        ++number;
    }
}

void add_links(std::string& facts, const Items& items, const json& item, const std::string& name) {
    if (const json* carrier = items.carrier(item)) {
        add(facts, "carrier({},{})", name, term(*carrier));
    }
    std::size_t position = 0;
    for (const json& part : item["touches"]) {
        ++position;
        if (items.find(part) != nullptr) {
            add(facts, "touches({},{},{})", name, position, term(part));
        }
    }
    for (const auto& [key, fact] :
         {std::pair{"blocked_by", "blocker"}, std::pair{"feeds", "feeds_line"},
          std::pair{"drives", "drives_line"}, std::pair{"through", "through_line"}}) {
        for (const json& other : item[key]) {
            if (items.find(other) != nullptr) {
                add(facts, "{}({},{})", fact, name, term(other));
            }
        }
    }
    for (const json& line : item["lines_through"]) {
        for (const json& connector : line["through"]) {
            if (items.find(line["part"]) != nullptr && items.find(connector) != nullptr) {
                add(facts, "line_plug({},{},{})", name, term(line["part"]), term(connector));
            }
        }
    }
}

void add_item(std::string& facts, const Items& items, const json& item) {
    const std::string name = term(item["name"]);
    const std::string role = item["role"].get<std::string>();
    add(facts, "item({},{})", name, term(role));
    if (role == "fastener" || role == "connector" || role == "bond") {
        add(facts, "tie({})", name);
    }
    if (role == "connector") {
        add(facts, "connector({})", name);
    }
    add(facts, "kind({},{})", name, term(item["kind"]));
    add(facts, "member({},1..{})", name, item["count"].get<int>());
    if (item["one_use"].get<bool>()) {
        add(facts, "one_use({})", name);
    }
    if (item["safe_when_live"].get<bool>()) {
        add(facts, "item_safe_live({})", name);
    }
    add_links(facts, items, item, name);
    add_reach(facts, items, item, name);
    add_needs(facts, items, item, name);
}

void add_verb_act(std::string& facts, const json& act, std::size_t scenario, std::size_t time) {
    add(facts, "verb_act({},{},{},{})", scenario, time, term(act["item"]), term(act["verb"]));
    if (act["supplied"].get<bool>()) {
        add(facts, "supplied({},{})", scenario, time);
    }
    if (act["members"].empty()) {
        return;
    }
    add(facts, "listed({},{})", scenario, time);
    for (const json& member : act["members"]) {
        add(facts, "on({},{},{})", scenario, time, member.get<int>());
    }
}

void add_trial(std::string& facts, const json& root, const json& step, std::size_t scenario,
               std::size_t time) {
    add(facts, "trial({},{})", scenario, time);
    for (const json& proof : step["proves"]) {
        const char* sort = proof.contains("item") ? "item" : "function";
        add(facts, "proves_{}({},{},{})", sort, scenario, time, term(proof[sort]));
    }
    for (const json& act : root["acts"]) {
        if (step["proves"].empty() && act["sort"] == "replace") {
            add(facts, "proves_item({},{},{})", scenario, time, term(act["item"]));
        }
    }
    for (const json& condition : step["when"]) {
        add(facts, "said({},{},{})", scenario, time, term(condition["item"]));
    }
}

} // namespace

std::string device_facts(const json& root) {
    std::string facts;
    for (const json& kind : root["kinds"]) {
        add_kind(facts, kind);
    }
    const Items items(root);
    for (const json& item : root["items"]) {
        if (item["exists"].get<bool>()) {
            add_item(facts, items, item);
        }
    }
    for (const json& function : root["functions"]) {
        if (function["rating"].get<bool>()) {
            continue;
        }
        add(facts, "function({})", term(function["name"]));
        for (const json& item : function["through"]) {
            if (items.find(item) != nullptr) {
                add(facts, "path({},{})", term(function["name"]), term(item));
            }
        }
    }
    return facts;
}

std::string scenario_facts(const json& root, std::size_t scenario) {
    const Items items(root);
    std::string facts;
    std::size_t time = 0;
    std::size_t number = 0;
    for (const json& step : root["steps"]) {
        if (step["test"].get<bool>()) {
            add_trial(facts, root, step, scenario, time++);
        }
        for (std::size_t acts = step["act_count"].get<std::size_t>(); acts > 0; --acts) {
            const json& act = root["acts"][number];
            const std::string sort = act["sort"].get<std::string>();
            const std::string item = term(act["item"]);
            add(facts, "number({},{},{})", scenario, time, number++);
            if (sort == "verb") {
                add_verb_act(facts, act, scenario, time);
            }
            for (const int member : items.members(act)) {
                if (sort == "replace") {
                    add(facts, "replaced({},{},{},{})", scenario, time, item, member);
                }
                if (sort == "scrap" || sort == "leave-off") {
                    add(facts, "given_up({},{},{})", scenario, item, member);
                    add(facts, "gives_up({},{},{})", scenario, time, item);
                }
            }
            ++time;
        }
    }
    add(facts, "length({},{})", scenario, time);
    return facts;
}

} // namespace matchmark::oracle
