// Whether words mean a supply that is cut from outside, whatever the verb that is said of it.
#include "capture/kind_words.hpp"

#include <algorithm>

namespace matchmark::capture {

namespace {

using model::Kind;
using model::Role;
using Words = std::vector<std::string>;

Words own_words(const Kind& kind) {
    Words words = split_words(kind.title);
    for (std::string& word : split_words(kind.name))
        words.push_back(std::move(word));
    return words;
}

bool cut_at_once(const Kind& kind) {
    constexpr std::size_t on_and_off = 2;
    return kind.role == Role::energy && kind.states.size() == on_and_off && kind.live != 0 &&
           std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const model::Verb& verb) {
               return verb.from_outside && leads_outwards(kind, verb);
           });
}

bool is_of_supplies_alone(const model::Model& model, const std::string& word) {
    bool known = false;
    for (const Kind& kind : model.kinds) {
        if (!among(own_words(kind), word))
            continue;
        if (kind.role != Role::energy)
            return false;
        known = true;
    }
    return known;
}

} // namespace

std::optional<KindFound> supply_by_words(const model::Model& model, const Words& words,
                                         const std::string& verb) {
    const bool parts = one_of(verb, {"pull", "pull-out", "disconnect", "unplug"});
    const bool takes = one_of(verb, {"remove", "detach", "take-out", "pull-off"});
    if (words.empty() || (!parts && !takes))
        return std::nullopt;
    std::optional<KindFound> best;
    std::size_t most = 0;
    for (std::uint32_t i = 0; i < model.kinds.size(); ++i) {
        const Kind& kind = model.kinds[i];
        if (!cut_at_once(kind))
            continue;
        const Words own = own_words(kind);
        KindFound found{model::KindId{i}, false, {}, {}};
        std::size_t shared = 0;
        bool all = true;
        for (const std::string& word : words) {
            found.used.push_back(among(own, word));
            shared += found.used.back() ? 1U : 0U;
            all = all && (found.used.back() || model::find_verb(kind, word) != nullptr);
        }
        const bool told = found.used.front() && is_of_supplies_alone(model, words.front()) &&
                          (parts || (all && words.size() > 1));
        const bool only_verb = parts && words.size() == 1 && all && shared == 0;
        if ((told || only_verb) && (!best || shared > most)) {
            const Words title = split_words(kind.title);
            found.sure = std::all_of(title.begin(), title.end(),
                                     [&](const std::string& word) { return among(words, word); });
            best = std::move(found);
            most = shared;
        }
    }
    return best;
}

std::optional<model::KindId> gravest_supply(const model::Model& model, const std::string& verb) {
    std::optional<model::KindId> best;
    for (std::uint32_t i = 0; i < model.kinds.size(); ++i) {
        const Kind& kind = model.kinds[i];
        const model::Verb* has = model::find_verb(kind, verb);
        if (kind.role != Role::energy || has == nullptr || !leads_outwards(kind, *has))
            continue;
        if (!best || kind.hazards.size() > model.kind(*best).hazards.size())
            best = model::KindId{i};
    }
    return best;
}

} // namespace matchmark::capture
