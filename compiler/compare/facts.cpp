// What a device says of its items, line by line, in words that can be compared.
#include "compare/facts.hpp"

#include "compare/findings.hpp"
#include "model/describe.hpp"
#include "model/passing_on.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace matchmark::compare {

using model::Item;
using model::ItemId;
using model::Model;

namespace {

// An item's lines are gathered in one order, whatever the order in which they are written.
class Facts {
public:
    Facts(const Model& model, ItemId id, const ItemKey& key)
        : model_(model), item_(model.item(id)), key_(key) {}

    std::vector<Fact> gather() {
        add_plain();
        add_bound();
        add_ways();
        return std::move(facts_);
    }

private:
    void add(const char* about, std::string key, std::string words, bool told, bool grave = false) {
        facts_.push_back({about, std::move(key), std::move(words), told, grave});
    }
    void add(const char* about, const std::string& words, bool told, bool grave = false) {
        add(about, words, words, told, grave);
    }

    void add_items(const char* about, const std::vector<ItemId>& items, bool grave = false) {
        std::vector<std::pair<std::string, std::string>> both;
        for (const ItemId item : items) {
            both.emplace_back(key_(item), model::quoted(model_, item));
        }
        std::sort(both.begin(), both.end());
        std::string key;
        std::vector<std::string> words;
        for (const auto& [one_key, one_words] : both) {
            key += one_key + ",";
            words.push_back(one_words);
        }
        add(about, key, model::list(words), false, grave);
    }

    // A quantity by its size, whatever its unit.
    static std::string sized(const std::optional<model::Quantity>& quantity) {
        return quantity
                   ? fmt::format("{} {:.9g}", static_cast<int>(quantity->measure), quantity->base)
                   : std::string();
    }

    [[nodiscard]] std::string condition(const model::Condition& condition, bool keyed) const {
        const ItemId item = condition.item.item;
        return fmt::format("{} {} {}", keyed ? key_(item) : model::quoted(model_, item),
                           fmt::join(condition.item.members, ","),
                           model_.kind_of(item).states[condition.state]);
    }

    void add_plain() {
        add("title", item_.title, true);
        add("kind", item_.kind.known() ? model_.kind(item_.kind).name : "", true);
        add("number", std::to_string(item_.count), true);
        std::vector<std::string> spec;
        for (const model::SpecPhrase& phrase : item_.spec) {
            spec.push_back(phrase->text);
        }
        add("description", fmt::format("{}", fmt::join(spec, ", ")), true, dangerous());
        add("amount", sized(item_.amount), item_.amount ? model::for_reader(*item_.amount) : "",
            true);
        add("told by", flowing(*item_.told_by), true);
        add("what goes back as it was", fmt::format("{}", fmt::join(item_.rare->keep, ", ")), true);
        add("use", item_.one_use ? "one use" : "used again", true, true);
        add("what to look at before it is used again", flowing(*item_.rare->used_again_if), true,
            true);
        add("parting under power", item_.safe_when_live ? "safe when live" : "not when live", false,
            true);
        add("what it lets out", item_.lets_nothing_out ? "nothing" : "what its parts hold", false,
            true);
        add("variants",
            fmt::format("{}", fmt::join(model::variant_names(model_, item_.variants), ", ")), true);
    }

    // What it can hold or give away is a matter of safety.
    [[nodiscard]] bool dangerous() const {
        return item_.role == model::Role::energy || !item_.feeds.empty() ||
               (item_.kind.known() && !model_.kind(item_.kind).hazards.empty());
    }

    void add_bound() {
        std::string torque;
        std::string torque_key;
        std::string order;
        if (const auto& tightening = item_.tightening) {
            const std::optional<model::Quantity> preload = tightening->preload;
            const auto& asked = preload ? preload : tightening->torque;
            torque = asked ? model::for_reader(*asked) : "";
            torque_key = sized(asked);
            order = tightening->pattern +
                    (tightening->passes > 1 ? fmt::format(", {} passes", tightening->passes) : "");
        }
        add("torque", torque_key, torque, false, true);
        add("order of tightening", order, false, true);
        add("depth", sized(item_.rare->depth),
            item_.rare->depth ? model::for_reader(*item_.rare->depth) : "", false, true);
        std::vector<std::pair<std::string, std::string>> limits;
        for (const model::WearLimit& limit : item_.rare->limits) {
            std::string key = limit.name + sized(limit.limit.least) + ".." +
                              sized(limit.limit.most) + (limit.limit.strict ? " strict" : "");
            for (const model::Condition& when : limit.when) {
                key += " " + condition(when, true);
            }
            limits.emplace_back(key, limit.name + " " + model::for_reader(limit.limit));
        }
        std::sort(limits.begin(), limits.end());
        std::string key;
        std::vector<std::string> words;
        for (const auto& [one_key, one_words] : limits) {
            key += one_key + ";";
            words.push_back(one_words);
        }
        add("limits", key, model::list(words), true, true);
        std::string at;
        if (item_.rare->positions) {
            at = item_.rare->positions->face;
            for (const model::Point& point : item_.rare->positions->points) {
                at += fmt::format(" {},{}", point.x, point.y);
            }
        }
        add("place on the face", at, true);
    }

    void add_ways() {
        const auto one = [](ItemId item) {
            return item.known() ? std::vector<ItemId>{item} : std::vector<ItemId>{};
        };
        add_items("what carries it", one(item_.carrier));
        add_items("what it ties", item_.touches);
        add_items("what blocks it", item_.blocked_by);
        add_items("what it feeds", model::fed_directly(item_), true);
        add_items("through what it feeds", item_.through, true);
        add_items("with what it is renewed", one(item_.renewed_as));
        add_items("what lies below it", one(item_.above), true);
        std::vector<std::pair<std::string, std::string>> lines;
        for (const model::Need& need : item_.needs) {
            std::string to;
            const model::Kind& kind = model_.kind_of(need.condition.item.item);
            for (std::size_t state = 0; state < kind.states.size(); ++state) {
                if (model::contains(need.or_in, static_cast<model::StateId>(state)))
                    to += " or " + kind.states[state];
            }
            to += " to " + need.verb + (need.alone ? " alone" : "");
            lines.emplace_back(condition(need.condition, true) + to,
                               condition(need.condition, false) + to);
        }
        add_lines("what it needs", lines, true);
        lines.clear();
        for (const model::ReachClause& clause : item_.reach) {
            lines.emplace_back(clause_words(clause, true), clause_words(clause, false));
        }
        add_lines("what is in the way to it", lines, false);
    }

    void add_lines(const char* about, std::vector<std::pair<std::string, std::string>> lines,
                   bool grave) {
        std::sort(lines.begin(), lines.end());
        lines.erase(std::unique(lines.begin(), lines.end()), lines.end());
        std::string key;
        std::string words;
        for (const auto& [one_key, one_words] : lines) {
            key += one_key + ";";
            words += words.empty() ? one_words : "; " + one_words;
        }
        add(about, key, words, false, grave);
    }

    [[nodiscard]] std::string clause_words(const model::ReachClause& clause, bool keyed) const {
        std::vector<std::string> ways;
        for (const auto& way : clause.ways) {
            std::vector<std::string> items;
            for (const model::ItemRef& ref : way) {
                std::string name = keyed ? key_(ref.item) : model::quoted(model_, ref.item);
                for (const std::uint16_t member : ref.members) {
                    name += fmt::format(" {}", member);
                }
                items.push_back(std::move(name));
            }
            std::sort(items.begin(), items.end());
            ways.push_back(fmt::format("{}", fmt::join(items, ", ")));
        }
        std::sort(ways.begin(), ways.end());
        return fmt::format("{}", fmt::join(ways, " or "));
    }

    const Model& model_;
    const Item& item_;
    const ItemKey& key_;
    std::vector<Fact> facts_;
};

} // namespace

std::vector<Fact> facts_of(const Model& model, ItemId item, const ItemKey& key) {
    return Facts(model, item, key).gather();
}

} // namespace matchmark::compare
