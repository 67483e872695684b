// A part renewed with one of another rating: a fuse of 32 A for one of 2 A.
#include "check/troubles.hpp"

#include "model/stated_numbers.hpp"
#include "model/stored_energy.hpp"

#include <cmath>
#include <fmt/core.h>
#include <set>

namespace matchmark::check::rules {

namespace {

using model::Item;
using model::Measure;
using model::Quantity;
using model::Resource;

// The project's own rules: ratings are rounded, and a cut-out's temperature is printed to a degree
// or two.
constexpr double rounded = 0.1;
constexpr double degrees = 2;

enum class Asks : unsigned char { nothing, the_same, at_least };

// A capacitor may bear more volts and a resistor more watts than the old one.
Asks asks(const Item& item, Measure measure) {
    switch (measure) {
    case Measure::current:
    case Measure::resistance:
    case Measure::capacitance:
    case Measure::temperature:
        return Asks::the_same;
    case Measure::voltage:
        return model::described(item, Measure::capacitance) ? Asks::at_least : Asks::the_same;
    case Measure::power:
        return model::described(item, Measure::resistance) ? Asks::at_least : Asks::the_same;
    default:
        return Asks::nothing;
    }
}

bool goes_with(const Quantity& old, const Quantity& fresh, Asks asked) {
    const double spread = old.measure == Measure::temperature ? degrees : rounded * old.base;
    return fresh.base >= old.base - spread &&
           (asked == Asks::at_least || fresh.base <= old.base + spread);
}

struct Differs {
    Quantity old;
    Quantity fresh;
};

// A measure that either states more than once is a range, or of several things: not compared.
std::optional<Differs> other_number(const Item& item, const Resource& spare) {
    const auto stated = model::stated_in(spare.text);
    for (const Quantity& fresh : stated) {
        const auto same_measure = [&](const Quantity& other) {
            return other.measure == fresh.measure;
        };
        const Asks asked = asks(item, fresh.measure);
        const auto old = model::described(item, fresh.measure);
        if (asked != Asks::nothing && old &&
            std::count_if(stated.begin(), stated.end(), same_measure) == 1 &&
            !goes_with(*old, fresh, asked))
            return Differs{*old, fresh};
    }
    return std::nullopt;
}

void find_other_rating(const Walk& walk, std::vector<Diagnostic>& findings) {
    std::set<std::uint32_t> told;
    for (const Event& event : walk.events) {
        const model::Action* action = walk.action(event);
        if (action == nullptr || action->sort != model::ActionSort::replace || action->with.empty())
            continue;
        const model::ResourceId id = action->with.front();
        const Resource& spare = walk.procedure.resources[id.value];
        for (const model::Target& target : action->targets) {
            const Item& item = walk.model.item(target.ref.item);
            const auto found = other_number(item, spare);
            if (!found || !walk.bench.exists(target.ref.item) || !told.insert(id.value).second)
                continue;
            Diagnostic finding;
            finding.primary = spare.span;
            finding.message =
                fmt::format("`{}` is for {}, and {} has {}", spare.name, to_text(found->fresh),
                            model::with_kind(walk.model, target.ref.item), to_text(found->old));
            finding.label = "another rating";
            finding.why = "it overheats or bursts, or lets through what the old one cut off";
            finding.related.push_back({item.span, "declared here"});
            finding.help = "look the rating up again; where the maker names another, mend the "
                           "device";
            findings.push_back(std::move(finding));
        }
    }
}

} // namespace

extern const Rule other_rating;
const Rule other_rating{"other-rating", "goal", Severity::warning,
                        "a part renewed with one of another rating", find_other_rating};

} // namespace matchmark::check::rules
