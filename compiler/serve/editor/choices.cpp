// Puts names and acts into offers.
#include "serve/editor/choices.hpp"

#include "model/describe.hpp"
#include "model/fitting.hpp"
#include "model/role_words.hpp"
#include "model/spelling.hpp"
#include "syntax/reader.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>

namespace matchmark::serve {

using model::ItemId;
using model::Section;
using syntax::Keyword;

namespace {

constexpr std::size_t most_actions = 40; // whole lines offered at one time

struct OwnVerb {
    const char* name;
    const char* about;
};
// The compiler's own, which all kinds have.
constexpr std::array own_verbs = {
    OwnVerb{"replace", "what was taken out is from now on the new one"},
    OwnVerb{"mark", "match marks, or order and face noted"},
    OwnVerb{"measure", "against the limit declared on the item"},
    OwnVerb{"dispose", "the old one, by rule"},
    OwnVerb{"scrap", "does not go back"},
    OwnVerb{"leave-off", "does not go back, and that is meant"},
    OwnVerb{"do", "the steps of another guide"},
};

template <class Entry>
void offer_entries(Offers& offers, const model::SharedList<Entry>& entries, CompletionSort sort) {
    for (const Entry& entry : entries)
        offers.add(entry.name, sort, entry.title, "0");
}

} // namespace

void Offers::add(const std::string& text, CompletionSort sort, std::string detail,
                 const std::string& group) {
    if (!known_.insert(text).second)
        return;
    Completion offer;
    offer.label = text;
    offer.text = text;
    offer.sort = sort;
    offer.detail = std::move(detail);
    offer.order = fmt::format("{}{:05}", group, offers_.size());
    offer.range = range_;
    offers_.push_back(std::move(offer));
}

Asked::Asked(const Analysis& analysis, std::uint32_t line_begin)
    : analysis_(analysis), course_(course_of(analysis)),
      moment_(moment_before(course_, line_begin)) {}

std::optional<ItemId> Asked::item_named(const std::string& name) const {
    for (std::uint32_t i = 0; i < model().items.size(); ++i) {
        if (model().items[i].name == name)
            return ItemId{i};
    }
    return std::nullopt;
}

const std::vector<model::Resource>& Asked::resources() const {
    static const std::vector<model::Resource> none;
    return moment_ ? moment_->resources() : none;
}

std::string Asked::declared_name(const syntax::Line& line) const {
    syntax::Reader reader{analysis_.done.sources, analysis_.root(), line};
    const auto name = reader.take_name();
    return name ? std::string(reader.text(*name)) : std::string();
}

void Asked::offer_items(Offers& offers) const {
    for (std::uint32_t i = 0; i < model().items.size(); ++i) {
        const model::Kind& kind = model().kind_of(ItemId{i});
        offers.add(model().items[i].name, CompletionSort::variable, kind.title, "0");
    }
}

void Asked::offer_functions(Offers& offers) const {
    offer_entries(offers, model().functions, CompletionSort::function);
}

void Asked::offer_guides(Offers& offers) const {
    for (const model::Guide& guide : model().guides) {
        const bool own = guide.file == analysis_.done.root;
        offers.add(guide.name, CompletionSort::function, guide.title, own ? "1" : "0");
    }
}

void Asked::offer_variants(Offers& offers) const {
    for (const std::string& name : model().device.variants)
        offers.add(name, CompletionSort::value, "", "0");
}

void Asked::offer_faces(Offers& offers) const {
    for (const model::Face& face : model().device.faces)
        offers.add(face.name, CompletionSort::value,
                   fmt::format("{:g} x {:g} mm", face.width_mm, face.height_mm), "0");
}

void Asked::offer_kinds(Offers& offers, Keyword role) const {
    const auto wanted = model::role_of(role);
    for (const model::Kind& kind : model().kinds) {
        if (!wanted || kind.role == *wanted)
            offers.add(kind.name, CompletionSort::kind, kind.title, "0");
    }
}

void Asked::offer_states(Offers& offers, const std::string& item) const {
    const auto id = item_named(item);
    if (!id)
        return;
    const std::string now =
        moment_ ? state_words(moment_->bench(), moment_->state, *id) : std::string();
    for (const std::string& state : model().kind_of(*id).states)
        offers.add(state, CompletionSort::member, state == now ? "as it is here" : "", "0");
}

void Asked::offer_states_of_kind(Offers& offers, const std::string& kind) const {
    for (const model::Kind& candidate : model().kinds) {
        if (candidate.name != kind)
            continue;
        for (const std::string& state : candidate.states)
            offers.add(state, CompletionSort::member, "", "0");
    }
}

void Asked::offer_verbs_of(Offers& offers, const std::string& name, bool is_kind) const {
    const auto offer = [&](const model::Kind& kind) {
        for (const model::Verb& verb : kind.verbs)
            offers.add(verb.name, CompletionSort::method, "-> " + kind.states[verb.to], "0");
    };
    if (const auto item = is_kind ? std::nullopt : item_named(name))
        offer(model().kind_of(*item));
    for (const model::Kind& kind : model().kinds) {
        if (is_kind && kind.name == name)
            offer(kind);
    }
}

bool Asked::offer_trade(Offers& offers, Keyword keyword) const {
    switch (keyword) {
    case Keyword::driven_by:
    case Keyword::at_a_pinch:
        offer_entries(offers, model().tool_kinds, CompletionSort::value);
        return true;
    case Keyword::form_of:
        offer_entries(offers, model().forms, CompletionSort::value);
        return true;
    case Keyword::sign_of:
        offer_entries(offers, model().signs, CompletionSort::value);
        return true;
    case Keyword::wear:
        offer_entries(offers, model().gear, CompletionSort::value);
        return true;
    case Keyword::hazard_until:
    case Keyword::lit_by:
        offer_entries(offers, model().hazards, CompletionSort::value);
        return true;
    case Keyword::size:
        offer_entries(offers, model().threads, CompletionSort::value);
        return true;
    default:
        return false;
    }
}

void Asked::offer_actions(Offers& offers) const {
    if (moment_) {
        std::size_t offered = 0;
        for (const Choice& choice : choices(*moment_, "")) {
            const model::Kind& kind = model().kind_of(choice.act.item);
            const model::Verb& verb = kind.verbs[choice.act.verb];
            const bool back = moment_->section == Section::put_back;
            if (!choice.against.empty() || model::leads_home(kind, verb) != back)
                continue;
            if (++offered > most_actions)
                break;
            model::ItemRef ref;
            ref.item = choice.act.item;
            const model::Action action =
                model::written_action(model(), resources(), ref, choice.act.verb, back);
            offers.add(model::as_source(model(), resources(), action), CompletionSort::snippet,
                       fmt::format("{} -> {}", kind.title, kind.states[verb.to]), "0");
        }
    }
    offer_verbs(offers);
}

void Asked::offer_verbs(Offers& offers) const {
    if (moment_) {
        for (const Choice& choice : choices(*moment_, "")) {
            const model::Verb& verb = model().kind_of(choice.act.item).verbs[choice.act.verb];
            const bool now = choice.against.empty();
            offers.add(verb.name, CompletionSort::method,
                       now ? "" : fmt::format("not yet: {}", choice.against), now ? "1" : "4");
        }
    }
    for (const OwnVerb& verb : own_verbs)
        offers.add(verb.name, CompletionSort::method, verb.about, "2");
}

void Asked::offer_targets(Offers& offers, const std::string& verb,
                          const std::vector<std::string>& named) const {
    const auto is_named = [&](const std::string& name) {
        return std::find(named.begin(), named.end(), name) != named.end();
    };
    const bool own = std::any_of(own_verbs.begin(), own_verbs.end(),
                                 [&](const OwnVerb& entry) { return verb == entry.name; });
    if (own || !moment_) {
        offer_items(offers);
        return;
    }
    for (const Choice& choice : choices(*moment_, verb)) {
        const model::Item& item = model().item(choice.act.item);
        if (is_named(item.name))
            continue;
        const bool now = choice.against.empty();
        offers.add(item.name, CompletionSort::variable,
                   now ? model().kind(item.kind).title : fmt::format("not yet: {}", choice.against),
                   now ? "0" : "1");
    }
}

void Asked::offer_resources(Offers& offers, const std::string& verb,
                            const std::vector<std::string>& named) const {
    std::set<std::uint32_t> fitting;
    for (const std::string& name : named) {
        const auto item = item_named(name);
        if (!item)
            continue;
        const model::Verb* wanted = model::find_verb(model().kind_of(*item), verb);
        if (wanted != nullptr) {
            for (const auto id :
                 model::fitting_tools(model(), resources(), model().item(*item), *wanted))
                fitting.insert(id.value);
        }
        for (const auto id : model::serving(model(), resources(), *item))
            fitting.insert(id.value);
    }
    for (std::uint32_t i = 0; i < resources().size(); ++i) {
        const model::Resource& resource = resources()[i];
        const bool fits = fitting.contains(i);
        offers.add(resource.name, CompletionSort::property,
                   fits || fitting.empty() ? resource.text : resource.text + " (does not fit)",
                   fits ? "0" : "1");
    }
}

void Asked::offer_torque(Offers& offers, const std::vector<std::string>& named) const {
    for (const std::string& name : named) {
        const auto item = item_named(name);
        if (!item)
            continue;
        const auto& tightening = model().item(*item).tightening;
        if (tightening && tightening->torque)
            offers.add(model::to_text(*tightening->torque), CompletionSort::value,
                       "as the device declares it", "0");
    }
}

} // namespace matchmark::serve
