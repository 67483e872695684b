// Which thing a line means, and where that thing stands by now.
#include "capture/reading.hpp"

#include "model/describe.hpp"
#include "model/spelling.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <deque>

namespace matchmark::capture {

using model::Role;
using model::StateId;

namespace {

std::string joined(const std::vector<std::string>& words, const char* between) {
    std::string text;
    for (const std::string& word : words)
        text += (text.empty() ? "" : between) + word;
    return text;
}

std::string name_of_piece(const std::vector<std::string>& words) {
    const std::string name = model::name_from(joined(words, "-"), "thing");
    return name.empty() ? "thing" : name;
}

// As two people may call the same thing: in singular, with hyphens.
std::string key_of(std::vector<std::string> words) {
    for (std::string& word : words)
        word = singular(word);
    return joined(words, "-");
}

// Two long words that differ in one letter, or in two that changed places. A digit is no slip.
bool one_slip(std::string_view a, std::string_view b) {
    constexpr std::size_t short_word = 5;
    if (std::min(a.size(), b.size()) < short_word)
        return false;
    while (!a.empty() && !b.empty() && a.front() == b.front()) {
        a.remove_prefix(1);
        b.remove_prefix(1);
    }
    while (!a.empty() && !b.empty() && a.back() == b.back()) {
        a.remove_suffix(1);
        b.remove_suffix(1);
    }
    const auto digit = [](char c) { return (c >= '0' && c <= '9') || c == '-'; };
    if (std::any_of(a.begin(), a.end(), digit) || std::any_of(b.begin(), b.end(), digit))
        return false;
    const bool swapped = a.size() == 2 && b.size() == 2 && a[0] == b[1] && a[1] == b[0];
    return swapped || std::max(a.size(), b.size()) == 1;
}

std::string likely(const KindFound& kind, const model::Model& model, const std::string& said) {
    const std::string taken = model.kind(kind.kind).name;
    return kind.others.empty() ? fmt::format("the notes say \"{}\"; taken for kind {}", said, taken)
                               : fmt::format("the notes say \"{}\"; taken for kind {}, could be {}",
                                             said, taken, model::list(kind.others, "or"));
}

} // namespace

Pieces::Pieces(const model::Model& model, Description& description, std::string base)
    : model_(model), all_(description), base_(std::move(base)) {
    for (std::uint32_t i = 0; i < model.kinds.size(); ++i) {
        if (model.kinds[i].name == "plain-part")
            plain_ = model::KindId{i};
    }
}

void Pieces::start_job() { states_.clear(); }

StateId Pieces::stands(Thing thing, unsigned set) const {
    const auto moved = states_.find({thing, set});
    return moved != states_.end() ? moved->second
                                  : model_.kind(all_.pieces[thing].kind).set_first[set];
}

bool Pieces::assembled(Thing thing) const {
    return stands(thing, 0) == model_.kind(all_.pieces[thing].kind).set_first.front();
}

void Pieces::move(Thing thing, StateId to) {
    states_[{thing, model_.kind(all_.pieces[thing].kind).set_of[to]}] = to;
}

std::optional<Thing> Pieces::called(const std::vector<std::string>& words, RoleSet roles,
                                    bool& guessed) const {
    guessed = false;
    const std::string key = key_of(words);
    std::vector<std::string> names;
    std::vector<Thing> things;
    for (Thing i = 0; i < all_.pieces.size(); ++i) {
        const Piece& piece = all_.pieces[i];
        if ((roles & in_role(piece.role)) == 0)
            continue;
        for (const std::string& own : {piece.name, piece.title}) {
            names.push_back(key_of(split_words(own)));
            things.push_back(i);
            if (names.back() == key)
                return i;
        }
    }
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (one_slip(key, names[i])) {
            guessed = true;
            return things[i];
        }
    }
    return std::nullopt;
}

std::string Pieces::free_name(const std::string& wanted) const {
    const auto taken = [&](const std::string& name) {
        return name == all_.device ||
               std::any_of(all_.pieces.begin(), all_.pieces.end(),
                           [&](const Piece& piece) { return piece.name == name; });
    };
    std::string name = wanted;
    for (int n = 2; taken(name); ++n)
        name = fmt::format("{}-{}", wanted, n);
    return name;
}

Thing Pieces::part(const std::vector<std::string>& words) {
    bool guessed = false;
    if (const auto known = called(words, in_role(Role::part), guessed)) {
        if (guessed) {
            all_.pieces[*known].decide.push_back(
                fmt::format("the notes also say \"{}\"; taken for this", joined(words, " ")));
        }
        return *known;
    }
    Piece piece;
    piece.title = joined(words, " ");
    piece.name = free_name(name_of_piece(words));
    piece.kind = plain_;
    piece.plain = true;
    all_.pieces.push_back(std::move(piece));
    return static_cast<Thing>(all_.pieces.size() - 1);
}

Thing Pieces::base_part() { return part(split_words(base_.empty() ? "body" : base_)); }

void Pieces::expect(const Saying& saying) {
    for (const auto& words : saying.more) {
        std::vector<std::string> single = words;
        single.back() = singular(single.back());
        const auto found = kind_by_words(model_, in_role(Role::part), single, saying.verb.name);
        if (found && found->sure && (saying.verb.roles & in_role(Role::part)) != 0)
            expected_.emplace(key_of(saying.head), found->kind);
    }
}

// The kind of a part: from a phrase of its own, or when it is called by a kind's whole title.
void Pieces::say_kind(const Saying& saying, Piece& piece) {
    const auto take = [&](const KindFound& found) {
        piece.kind = found.kind;
        piece.plain = false;
    };
    if (!piece.plain || piece.declared)
        return;
    if (const auto told = expected_.find(key_of(saying.head)); told != expected_.end())
        return take({told->second, true, {}, {}});
    const auto found = kind_by_words(model_, in_role(Role::part), saying.head, saying.verb.name);
    const bool whole = found && std::all_of(found->used.begin(), found->used.end(),
                                            [](bool used) { return used; });
    if (found && found->sure && whole)
        return take(*found);
    // A plain part comes out and goes in; one that was opened is none.
    const auto opened = kind_with_verb(model_, in_role(Role::part), saying.verb.name);
    const model::Verb* opens =
        opened ? model::find_verb(model_.kind(*opened), saying.verb.name) : nullptr;
    if (opens != nullptr && model_.kind(*opened).set_of[opens->to] == 0 &&
        model::contains(model_.kind(*opened).present, opens->to)) {
        piece.kind = *opened;
        piece.plain = false;
        piece.decide.push_back(fmt::format("the notes {} it; taken for kind {}", saying.verb.name,
                                           model_.kind(*opened).name));
        return;
    }
    if (found && piece.decide.empty()) {
        std::vector<std::string> names{model_.kind(found->kind).name};
        for (const std::string& other : found->others) {
            if (names.size() < 3)
                names.push_back(other);
        }
        piece.decide.push_back(fmt::format("a plain part, or kind {}?", model::list(names, "or")));
    }
}

Thing Pieces::the_part(const Saying& saying) {
    const Thing thing = part(saying.head);
    Piece& piece = all_.pieces[thing];
    if (piece.role != Role::part)
        return thing;
    say_kind(saying, piece);
    if (piece.declared)
        return thing;
    if (saying.count)
        piece.count = std::max(piece.count, *saying.count);
    if (!saying.carrier.empty()) {
        const Thing carrier = part(saying.carrier);
        all_.pieces[thing].carrier = all_.pieces[carrier].name;
    }
    return thing;
}

// What a tie holds, by the places said, or by what it is called: the lid screws hold the lid.
std::vector<Thing> Pieces::tied_by(const Saying& saying, const KindFound& kind) {
    std::vector<Thing> ties;
    for (const auto& words : saying.where)
        ties.push_back(part(words));
    if (!ties.empty())
        return ties;
    std::vector<std::string> rest;
    for (std::size_t i = 0; i < saying.head.size(); ++i) {
        if (i < kind.used.size() && !kind.used[i])
            rest.push_back(saying.head[i]);
    }
    if (rest.empty())
        return ties;
    bool guessed = false;
    const auto known = called(rest, in_role(Role::part), guessed);
    const Role role = model_.kind(kind.kind).role;
    const bool names_place = kind.sure && (role == Role::fastener || role == Role::bond);
    if ((known && !guessed) || names_place)
        ties.push_back(part(rest));
    return ties;
}

std::optional<Thing> Pieces::same(const Saying& saying, model::KindId kind,
                                  const std::vector<Thing>& ties, std::optional<Thing> base) const {
    for (Thing i = 0; i < all_.pieces.size(); ++i) {
        const Piece& piece = all_.pieces[i];
        const bool same_spec = piece.declared || saying.spec.empty() || piece.spec.empty() ||
                               saying.spec == piece.spec;
        const bool same_count = !saying.count || piece.count == *saying.count;
        const bool same_kind =
            piece.kind == kind || (piece.declared && piece.role == model_.kind(kind).role);
        const bool among_ties = std::all_of(ties.begin(), ties.end(), [&](Thing part) {
            return std::find(piece.ties.begin(), piece.ties.end(), part) != piece.ties.end();
        });
        const bool same_base = !base || piece.tie_assumed || piece.base == base;
        // A lead from the board to the cell is one from the cell to the board.
        const bool turned = base && ties.size() == 1 && piece.base == ties.front() &&
                            piece.ties == std::vector<Thing>{*base};
        const bool same_ties = ties.empty() ? piece.ties.empty() || piece.tie_assumed
                                            : (among_ties && same_base) || turned;
        // One of the same sort that is off already is another one.
        if (same_kind && same_spec && same_count && same_ties && piece.role != Role::part &&
            !acts(i, saying.verb.name).empty())
            return i;
    }
    return std::nullopt;
}

namespace {

std::vector<std::string> left_to_decide(const Saying& saying, const KindFound& kind,
                                        const model::Model& model) {
    std::vector<std::string> questions;
    if (!kind.sure)
        questions.push_back(likely(kind, model, joined(saying.head, " ")));
    if (!saying.count && saying.plural)
        questions.emplace_back("how many are there? The notes do not say");
    for (const std::string& odd : saying.unknown) {
        questions.push_back(
            fmt::format("the notes also say \"{}\"; which size or drive is that?", odd));
    }
    return questions;
}

} // namespace

Thing Pieces::the_other(const Saying& saying, const KindFound& kind) {
    const model::Kind& own = model_.kind(kind.kind);
    std::vector<Thing> ties = tied_by(saying, kind);
    const std::optional<Thing> base =
        saying.base.empty() ? std::nullopt : std::optional(part(saying.base));
    if (const auto known = same(saying, kind.kind, ties, base)) {
        Piece& piece = all_.pieces[*known];
        if (piece.tie_assumed && !piece.declared && base && !ties.empty()) {
            piece.ties = ties;
            piece.base = base;
            piece.tie_assumed = false;
        }
        return *known;
    }
    Piece piece;
    piece.role = own.role;
    piece.kind = kind.kind;
    piece.title = joined(saying.head, " ");
    piece.count = saying.count.value_or(1);
    piece.spec = saying.spec;
    piece.amount = saying.amount;
    piece.decide = left_to_decide(saying, kind, model_);
    std::vector<std::string> name = saying.head;
    if (!ties.empty()) {
        name = split_words(all_.pieces[ties.front()].name);
        name.push_back(saying.head.back());
    }
    piece.title = joined(name, " ");
    if (saying.plural || piece.count > 1)
        name.back() = model::plural(name.back());
    // Called by what it feeds: it is known as its kind is.
    const bool unsaid = own.role == Role::energy && !kind.used.empty() &&
                        std::none_of(kind.used.begin(), kind.used.end(), [](bool u) { return u; });
    if (unsaid) {
        piece.title = own.title;
        name = split_words(own.title);
    }
    if (own.role == Role::fluid && !ties.empty()) {
        piece.carrier = all_.pieces[ties.front()].name;
        name = saying.head;
        piece.title = joined(name, " ");
        ties.clear();
    } else if (model::is_tie(own.role)) {
        piece.base = base;
        if (!base && !ties.empty()) {
            piece.base = base_part();
            piece.tie_assumed = true;
        }
    }
    piece.ties = std::move(ties);
    piece.name = free_name(name_of_piece(name));
    all_.pieces.push_back(std::move(piece));
    return static_cast<Thing>(all_.pieces.size() - 1);
}

std::optional<Thing> Pieces::only_one(const std::string& word,
                                      const std::vector<std::string>& spec) const {
    std::optional<Thing> only;
    for (Thing i = 0; i < all_.pieces.size(); ++i) {
        const Piece& piece = all_.pieces[i];
        const auto title = split_words(piece.title);
        const bool called_so = !title.empty() && singular(title.back()) == word;
        const bool same_size = spec.empty() || piece.spec.empty() || spec == piece.spec;
        if (piece.role == Role::part || !called_so || !same_size || assembled(i))
            continue;
        if (only)
            return std::nullopt;
        only = i;
    }
    return only;
}

namespace {

// "at the socket": no part of the device.
bool is_at_the_wall(const std::vector<std::vector<std::string>>& where) {
    return std::all_of(where.begin(), where.end(), [](const std::vector<std::string>& words) {
        return words.size() == 1 &&
               (words[0] == "socket" || words[0] == "wall" || words[0] == "outlet");
    });
}

} // namespace

std::optional<Thing> Pieces::meant(const Saying& saying) {
    const RoleSet roles = saying.verb.roles;
    const RoleSet others = roles & ~in_role(Role::part);
    bool guessed = false;
    if (saying.where.empty()) {
        const auto known = called(saying.head, any_role, guessed);
        if (known && !guessed)
            return all_.pieces[*known].role == Role::part ? the_part(saying) : *known;
    }
    if (saying.base.empty() && is_at_the_wall(saying.where)) {
        if (const auto supply = supply_by_words(model_, saying.head, saying.verb.name)) {
            Saying bare = saying;
            bare.where.clear();
            return the_other(bare, *supply);
        }
    }
    const bool may_be_part = (roles & in_role(Role::part)) != 0;
    const bool sized = saying.count.value_or(1) > 1 || !saying.spec.empty();
    auto kind = kind_by_words(model_, others, saying.head, saying.verb.name);
    if (kind && (kind->sure || !may_be_part || sized))
        return the_other(saying, *kind);
    if (may_be_part)
        return the_part(saying);
    if (roles == in_role(Role::energy))
        return std::nullopt;
    auto plainest = (roles & in_role(Role::energy)) != 0 ? gravest_supply(model_, saying.verb.name)
                                                         : std::nullopt;
    if (!plainest)
        plainest = kind_with_verb(model_, others, saying.verb.name);
    if (!plainest)
        plainest = kind_with_verb(model_, others, "");
    KindFound found{plainest.value_or(plain_), false, {}, {}};
    found.used.assign(saying.head.size(), false);
    return the_other(saying, found);
}

std::vector<std::uint16_t> Pieces::acts(Thing thing, const std::string& verb) const {
    const Piece& piece = all_.pieces[thing];
    const model::Kind& kind = model_.kind(piece.kind);
    const model::Verb* named = model::find_verb(kind, verb);
    if (named != nullptr && !leads_outwards(kind, *named))
        named = nullptr;
    // To discharge a thing of which no charge is known is not to take it out.
    const bool of_other_set =
        named == nullptr &&
        std::any_of(model_.kinds.begin(), model_.kinds.end(), [&](const model::Kind& other) {
            const model::Verb* known = model::find_verb(other, verb);
            return other.role == kind.role && known != nullptr && other.set_of[known->to] != 0;
        });
    if (of_other_set)
        return {};
    const unsigned set = named == nullptr ? 0 : kind.set_of[named->to];
    const auto arrived = [&](StateId state) {
        if (named != nullptr)
            return state == named->to;
        const auto kept = model::is_tie(kind.role) ? kind.binds : kind.present;
        const bool flows = kind.role == Role::fluid || kind.role == Role::energy;
        return flows ? state != kind.set_first.front() : !model::contains(kept, state);
    };
    // The fewest verbs from where it stands, outwards all the way.
    std::map<StateId, std::vector<std::uint16_t>> ways{{stands(thing, set), {}}};
    std::deque<StateId> open{stands(thing, set)};
    while (!open.empty()) {
        const StateId at = open.front();
        open.pop_front();
        const std::vector<std::uint16_t>& way = ways[at];
        if (!way.empty() && arrived(at))
            return way;
        for (std::size_t v = 0; v < kind.verbs.size(); ++v) {
            const model::Verb& next = kind.verbs[v];
            if (!model::contains(next.from, at) || next.to <= at || ways.contains(next.to))
                continue;
            ways[next.to] = way;
            ways[next.to].push_back(static_cast<std::uint16_t>(v));
            open.push_back(next.to);
        }
    }
    return {};
}

} // namespace matchmark::capture
