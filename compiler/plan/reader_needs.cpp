// What a reader must have before the work: tools, spares, supplies, what they cost, and the
// fasteners to sort.
#include "plan/reader_needs.hpp"

#include "model/describe.hpp"
#include "model/fitting.hpp"
#include "plan/reader_words.hpp"

#include <algorithm>

namespace matchmark::plan {

using model::Item;
using model::ItemId;
using model::Measure;
using model::Model;
using model::Procedure;
using model::Quantity;

namespace {

// The new total of each currency, in the order in which they first occur.
void add_price(std::vector<Quantity>& totals, const Quantity& price) {
    for (Quantity& total : totals) {
        if (const auto sum = model::add(total, price)) {
            total = *sum;
            return;
        }
    }
    totals.push_back(price);
}

// Money has two decimals (usual minor unit of ISO 4217), and more only where more are written.
std::string money_text(const Quantity& price) {
    std::string number = model::number_text(price.value);
    const auto point = number.find('.');
    if (point != std::string::npos && number.size() - point == 2) {
        number += '0';
    }
    return number + " " + price.unit;
}

guide::Provision provision(const Model& model, const model::Resource& resource) {
    guide::Provision told;
    told.words = capital(resource_words(resource));
    if (resource.sort == model::ResourceSort::tool) {
        if (const auto tool_class = model::class_of(model, resource)) {
            told.tool_class = model::describe(*tool_class);
        }
    }
    std::vector<std::string> amounts;
    for (const Quantity& quantity : resource.quantities) {
        if (quantity.measure == Measure::money) {
            told.price = money_text(quantity);
        } else {
            amounts.push_back(model::for_reader(quantity));
        }
    }
    told.amount = model::list(amounts);
    std::vector<std::string> purposes;
    for (const ItemId item : resource.for_items) {
        purposes.push_back(model::for_reader(model, item));
    }
    if (!purposes.empty()) {
        told.purpose = "for " + model::list(purposes);
    }
    return told;
}

void tell_resources(const Model& model, const Procedure& procedure, guide::Document& document) {
    std::vector<Quantity> totals;
    for (const model::Resource& resource : procedure.resources) {
        const guide::Provision told = provision(model, resource);
        switch (resource.sort) {
        case model::ResourceSort::tool: {
            // The guides that this one does may list the same tool.
            const bool listed =
                std::any_of(document.tools.begin(), document.tools.end(),
                            [&](const auto& tool) { return tool.words == told.words; });
            if (!listed) {
                document.tools.push_back(told);
            }
            break;
        }
        case model::ResourceSort::spare:
            document.spares.push_back(told);
            break;
        case model::ResourceSort::supply:
            document.supplies.push_back(told);
            break;
        }
        for (const Quantity& quantity : resource.quantities) {
            if (quantity.measure == Measure::money) {
                add_price(totals, quantity);
            }
        }
    }
    for (const Quantity& total : totals) {
        document.cost.push_back(money_text(total));
    }
}

guide::FastenerRow fastener_row(const Model& model, ItemId id, model::VariantMask variants) {
    const Item& item = model.item(id);
    guide::FastenerRow row;
    row.words = capital(model::for_reader(model, id, false));
    std::vector<std::string> phrases;
    for (const model::SpecPhrase& phrase : item.spec) {
        phrases.push_back(phrase.text);
    }
    for (std::size_t i = 0; i < phrases.size(); ++i) {
        row.description += (i == 0 ? "" : ", ") + phrases[i];
    }
    if (row.description.empty()) {
        row.description = model.kind(item.kind).title;
    }
    row.told_by = item.told_by;
    if (item.tightening) {
        row.torque = tightening_words(*item.tightening);
    }
    if ((item.variants & variants) != variants) {
        row.variants = model::variant_names(model, item.variants & variants);
    }
    return row;
}

void add_disposal(guide::Document& document, guide::Disposal disposal) {
    const auto same = [&](const guide::Disposal& other) {
        return other.words == disposal.words && other.waste_class == disposal.waste_class;
    };
    if (std::none_of(document.disposals.begin(), document.disposals.end(), same)) {
        document.disposals.push_back(std::move(disposal));
    }
}

// Names the old one without its count.
std::string bare_words(const Model& model, ItemId id) {
    std::string words = model::for_reader(model, id, false);
    if (model.item(id).count > 1) {
        words.erase(0, words.find(' ') + 1);
    }
    return capital(words);
}

} // namespace

void tell_needs(const Model& model, const Procedure& procedure, model::VariantMask covered,
                guide::Document& document) {
    tell_resources(model, procedure, document);
    const model::VariantMask variants = covered;
    std::vector<ItemId> listed;
    for (const model::Step& step : procedure.steps) {
        for (const model::Action& action : step.actions) {
            for (const model::Target& target : action.targets) {
                const ItemId id = target.ref.item;
                const bool seen = std::find(listed.begin(), listed.end(), id) != listed.end();
                if (model.item(id).role == model::Role::fastener && !seen) {
                    listed.push_back(id);
                    document.fasteners.push_back(fastener_row(model, id, variants));
                }
                const std::string& waste = model.kind_of(id).waste;
                if (action.sort == model::ActionSort::dispose) {
                    add_disposal(document, {bare_words(model, id), spaced(action.aspect)});
                } else if (action.sort == model::ActionSort::replace && !waste.empty()) {
                    add_disposal(document, {bare_words(model, id), spaced(waste)});
                }
            }
        }
    }
}

} // namespace matchmark::plan
