// Scores kinds by the words that their titles and names share with what was said.
#include "capture/kind_words.hpp"

#include "diagnostics/nearest.hpp"

#include <algorithm>
#include <array>
#include <tuple>

namespace matchmark::capture {

namespace {

using model::Kind;
using model::Role;

struct Everyday {
    std::string_view words; // with hyphens
    RoleSet roles;
};

constexpr RoleSet part = in_role(Role::part);
constexpr RoleSet fastener = in_role(Role::fastener);
constexpr RoleSet connector = in_role(Role::connector);
constexpr RoleSet bond = in_role(Role::bond);
constexpr RoleSet fluid = in_role(Role::fluid);
constexpr RoleSet energy = in_role(Role::energy);

// What people say beside the verbs of the library.
constexpr auto everyday_verbs = std::to_array<Everyday>({
    {"take", part | fastener},
    {"take-out", part | fastener},
    {"take-off", part | fastener},
    {"take-away", part},
    {"lift-out", part},
    {"lift-off", part},
    {"lift", part},
    {"pull-out", part | connector | fastener},
    {"pull-off", part | connector},
    {"pull", part | connector | fastener},
    {"slide-out", part},
    {"remove", part | fastener | connector | bond},
    {"out", part},
    {"off", part},
    {"open", part},
    {"swing-open", part},
    {"flip-open", part},
    {"undo", fastener | connector},
    {"unscrew", fastener | part},
    {"unbolt", fastener},
    {"loosen", fastener},
    {"slacken", fastener},
    {"unfasten", fastener},
    {"release", fastener | connector},
    {"unhook", fastener | part},
    {"disconnect", connector},
    {"unplug", connector | energy},
    {"detach", connector | part},
    {"unstick", bond},
    {"unglue", bond},
    {"peel", bond},
    {"peel-off", bond},
    {"part", bond},
    {"drain", fluid},
    {"empty", fluid},
    {"switch-off", energy},
    {"turn-off", energy},
    {"shut-off", energy},
    {"cut-off", energy},
    {"isolate", energy},
});

// Those that do not end in "ed".
constexpr auto irregular_pasts = std::to_array<std::pair<std::string_view, std::string_view>>({
    {"took", "take"},
    {"taken", "take"},
    {"undid", "undo"},
    {"undone", "undo"},
    {"slid", "slide"},
    {"swung", "swing"},
    {"unstuck", "unstick"},
    {"drove", "drive"},
    {"bent", "bend"},
});

// How well a kind fits: sure before not, then by words in common, then by few words left over.
struct Fit {
    bool sure = false;
    std::size_t shared = 0;
    std::size_t unsaid = 0; // words of its title that were not said
    bool has_verb = false;
    friend auto operator<=>(const Fit& a, const Fit& b) {
        return std::tuple(a.sure, a.shared, a.has_verb, b.unsaid) <=>
               std::tuple(b.sure, b.shared, b.has_verb, a.unsaid);
    }
};

// What a title or a name has in common with the words said, of which the last names the thing.
struct Overlap {
    std::size_t words = 0;
    std::size_t shared = 0;
    bool has_head = false;
    bool ends_in_head = false;

    [[nodiscard]] bool is_said() const { return words > 0 && shared == words && has_head; }
};

Overlap overlap(std::string_view own, const std::vector<std::string>& said) {
    Overlap found;
    each_word(own, [&](std::string_view word) {
        ++found.words;
        found.ends_in_head = is_word(word, said.back());
        found.has_head = found.has_head || found.ends_in_head;
        const bool shared = std::any_of(said.begin(), said.end(),
                                        [&](const std::string& one) { return is_word(word, one); });
        found.shared += shared ? 1U : 0U;
    });
    return found;
}

bool ends_in(std::string_view own, const std::string& word) {
    bool last = false;
    each_word(own, [&](std::string_view one) { last = is_word(one, word); });
    return last;
}

// `any_flow`: of what flows, one word in common will do.
std::optional<Fit> fit_of(const Kind& kind, const std::vector<std::string>& said,
                          const std::string& verb, bool any_flow) {
    const Overlap title = overlap(kind.title, said);
    const Overlap name = overlap(kind.name, said);
    const bool heads = title.ends_in_head || name.ends_in_head;
    Fit fit;
    fit.sure = title.is_said() || name.is_said();
    fit.has_verb = model::find_verb(kind, verb) != nullptr;
    // Of what flows, any word tells: nobody says "mains cord" for the mains.
    const bool flows = kind.role == Role::fluid || kind.role == Role::energy;
    if (!fit.sure && !heads &&
        !(flows && title.shared + name.shared > 0 && (any_flow || fit.has_verb)))
        return std::nullopt;
    fit.shared = std::max(title.shared, name.shared);
    fit.unsaid = std::min(title.words - title.shared, name.words - name.shared);
    return fit;
}

} // namespace

char small(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

std::string singular(const std::string& word) {
    if (word.size() > 4 && word.ends_with("ies"))
        return word.substr(0, word.size() - 3) + "y";
    for (const char* ending : {"sses", "xes", "ches", "shes"}) {
        if (word.ends_with(ending))
            return word.substr(0, word.size() - 2);
    }
    if (word == "mains")
        return word;
    if (word.size() > 3 && word.ends_with("s") && !word.ends_with("ss") && !word.ends_with("us"))
        return word.substr(0, word.size() - 1);
    return word;
}

bool among(const std::vector<std::string>& words, const std::string& word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

bool one_of(const std::string& word, std::initializer_list<const char*> list) {
    return std::any_of(list.begin(), list.end(), [&](const char* one) { return word == one; });
}

std::vector<std::string> split_words(std::string_view text) {
    std::vector<std::string> words;
    each_word(text, [&](std::string_view word) {
        words.emplace_back(word);
        std::transform(word.begin(), word.end(), words.back().begin(), small);
    });
    return words;
}

bool is_word(std::string_view word, std::string_view small_letters) {
    return std::equal(word.begin(), word.end(), small_letters.begin(), small_letters.end(),
                      [](char a, char b) { return small(a) == b; });
}

bool leads_outwards(const Kind& kind, const model::Verb& verb) {
    // From some state that is declared before the one that it leads to.
    for (model::StateId state = 0; state < kind.states.size() && state < verb.to; ++state) {
        if (model::contains(verb.from, state) && kind.set_of[state] == kind.set_of[verb.to])
            return true;
    }
    return false;
}

std::optional<KindFound> kind_by_words(const model::Model& model, RoleSet roles,
                                       const std::vector<std::string>& words,
                                       const std::string& verb) {
    std::vector<std::string> said;
    for (const std::string& word : words) {
        for (std::string& one : split_words(word))
            said.push_back(std::move(one));
    }
    if (said.empty())
        return std::nullopt;
    const bool any_flow =
        std::none_of(model.kinds.begin(), model.kinds.end(), [&](const Kind& kind) {
            return kind.role == Role::energy && model::find_verb(kind, verb) != nullptr;
        });
    std::vector<std::pair<Fit, model::KindId>> fits;
    for (std::uint32_t i = 0; i < model.kinds.size(); ++i) {
        const Kind& kind = model.kinds[i];
        if ((roles & in_role(kind.role)) == 0)
            continue;
        if (const auto fit = fit_of(kind, said, verb, any_flow))
            fits.emplace_back(*fit, model::KindId{i});
    }
    if (fits.empty())
        return std::nullopt;
    std::stable_sort(fits.begin(), fits.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    KindFound found;
    found.kind = fits.front().second;
    const Fit& first = fits.front().first;
    const bool alone = fits.size() == 1 || !fits[1].first.sure ||
                       fits[1].first.shared < first.shared || fits[1].first.unsaid > first.unsaid;
    found.sure = first.sure && alone;
    for (std::size_t i = 1; i < fits.size() && i < 4 && !found.sure; ++i)
        found.others.push_back(model.kind(fits[i].second).name);
    const auto title = split_words(model.kind(found.kind).title);
    const auto name = split_words(model.kind(found.kind).name);
    for (const std::string& word : words) {
        const auto ones = split_words(word);
        found.used.push_back(std::all_of(ones.begin(), ones.end(), [&](const std::string& one) {
            return among(title, one) || among(name, one);
        }));
    }
    return found;
}

bool calls_a_kind(const model::Model& model, RoleSet roles, const std::string& word) {
    return std::any_of(model.kinds.begin(), model.kinds.end(), [&](const Kind& kind) {
        if ((roles & in_role(kind.role)) == 0)
            return false;
        return ends_in(kind.title, word) || ends_in(kind.name, word);
    });
}

std::optional<model::KindId> kind_with_verb(const model::Model& model, RoleSet roles,
                                            const std::string& verb) {
    std::optional<model::KindId> best;
    const auto worth = [&](model::KindId id) {
        const Kind& kind = model.kind(id);
        return std::tuple(kind.hazards.size(), kind.set_count(), kind.messages.size(),
                          kind.states.size());
    };
    for (std::uint32_t i = 0; i < model.kinds.size(); ++i) {
        const Kind& kind = model.kinds[i];
        const bool has =
            std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const model::Verb& own) {
                return (verb.empty() || own.name == verb) && leads_outwards(kind, own);
            });
        if ((roles & in_role(kind.role)) == 0 || !has || kind.needs_license)
            continue;
        if (!best || worth(model::KindId{i}) < worth(*best))
            best = model::KindId{i};
    }
    return best;
}

namespace {

RoleSet roles_with_verb(const model::Model& model, const std::string& verb) {
    RoleSet roles = 0;
    for (const Kind& kind : model.kinds) {
        const model::Verb* has = model::find_verb(kind, verb);
        if (has != nullptr && leads_outwards(kind, *has))
            roles |= in_role(kind.role);
    }
    return roles;
}

RoleSet everyday_roles(const std::string& verb) {
    RoleSet roles = 0;
    for (const Everyday& one : everyday_verbs) {
        if (one.words == verb)
            roles |= one.roles;
    }
    return roles;
}

// "pulled" -> "pull", "unplugged" -> "unplug", "took" -> "take": notes are often written
// afterwards. The word itself stands first.
std::vector<std::string> plain_forms(const std::string& word) {
    std::vector<std::string> forms{word};
    for (const auto& [past, plain] : irregular_pasts) {
        if (word == past)
            forms.emplace_back(plain);
    }
    const std::size_t size = word.size();
    if (size < 5 || !word.ends_with("ed"))
        return forms;
    forms.push_back(word.substr(0, size - 2));
    forms.push_back(word.substr(0, size - 1));
    if (word[size - 3] == word[size - 4])
        forms.push_back(word.substr(0, size - 3));
    return forms;
}

// A verb that the words begin with, or that stands around what it is said of.
std::optional<VerbFound> known_verb(const model::Model& model,
                                    const std::vector<std::string>& words) {
    for (std::size_t length = std::min<std::size_t>(3, words.size()); length > 0; --length) {
        std::string joined = words.front();
        for (std::size_t i = 1; i < length; ++i)
            joined += "-" + words[i];
        const RoleSet roles = roles_with_verb(model, joined) | everyday_roles(joined);
        if (roles != 0)
            return VerbFound{joined, roles, length, false};
    }
    // "turn the gas off"
    if (words.size() > 2) {
        const std::string apart = words.front() + "-" + words.back();
        if (const RoleSet roles = everyday_roles(apart); roles != 0)
            return VerbFound{apart, roles, 1, false};
    }
    return std::nullopt;
}

} // namespace

std::optional<VerbFound> verb_by_words(const model::Model& model,
                                       const std::vector<std::string>& words) {
    if (words.empty())
        return std::nullopt;
    for (const std::string& form : plain_forms(words.front())) {
        std::vector<std::string> plain = words;
        plain.front() = form;
        if (auto found = known_verb(model, plain))
            return found;
    }
    constexpr std::size_t short_word = 5; // of which one slip makes another
    if (words.front().size() < short_word)
        return std::nullopt;
    std::vector<std::string_view> known;
    for (const Everyday& one : everyday_verbs)
        known.emplace_back(one.words);
    for (const Kind& kind : model.kinds) {
        for (const model::Verb& verb : kind.verbs) {
            if (leads_outwards(kind, verb))
                known.push_back(verb.name);
        }
    }
    const std::string near = nearest_among(words.front(), known);
    if (near.empty())
        return std::nullopt;
    return VerbFound{near, roles_with_verb(model, near) | everyday_roles(near), 1, true};
}

} // namespace matchmark::capture
