// What a reader must have before the work: tools, spares, supplies, what they cost, and the
// fasteners to sort.
#include "plan/reader/needs.hpp"

#include "model/fitting.hpp"
#include "plan/reader/words.hpp"

#include <algorithm>

namespace matchmark::plan {

using language::capital;
using language::description_words;
using language::fill_text;
using language::own;
using language::said;
using language::said_bare;
using language::said_list;
using language::said_number;
using language::text;
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
std::string money_text(const language::Language& language, const Quantity& price) {
    const language::Traits& traits = traits_of(language);
    std::string number = said_number(language, price.value);
    const auto point = number.find(traits.decimal);
    if (point != std::string::npos && number.size() - point == 2) {
        number += '0';
    }
    return number + std::string(traits.unit_space) + std::string(price.unit);
}

guide::Provision provision(const ReaderWords& in, const model::Resource& resource) {
    const Model& model = in.model;
    guide::Provision told;
    told.words = capital(in.language, resource_words(in, resource));
    if (resource.sort == model::ResourceSort::tool) {
        if (const auto tool_class = model::class_of(model, resource)) {
            told.tool_class = text(in.language, model::describe(*tool_class));
        }
    }
    std::vector<std::string> amounts;
    for (const Quantity& quantity : resource.quantities) {
        if (quantity.measure == Measure::money) {
            told.price = money_text(in.language, quantity);
        } else {
            amounts.push_back(said(in.language, quantity));
        }
    }
    told.amount = said_list(in.language, amounts);
    std::vector<std::string> purposes;
    std::vector<std::string> bare;
    for (const ItemId item : resource.for_items) {
        purposes.push_back(said(in.language, model, item));
        bare.push_back(said(in.language, model, item, false));
    }
    if (!purposes.empty()) {
        told.purpose = fill_text(text(in.language, "for {the items}"),
                                 {{"the items", said_list(in.language, purposes)},
                                  {"items", said_list(in.language, bare)}});
    }
    return told;
}

void tell_resources(const ReaderWords& in, const Procedure& procedure, guide::Document& document) {
    std::vector<Quantity> totals;
    for (const model::Resource& resource : procedure.resources) {
        const guide::Provision told = provision(in, resource);
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
        document.cost.push_back(money_text(in.language, total));
    }
}

guide::FastenerRow fastener_row(const ReaderWords& in, ItemId id, model::VariantMask variants) {
    const Model& model = in.model;
    const Item& item = model.item(id);
    guide::FastenerRow row;
    row.words = capital(in.language, said(in.language, model, id, false));
    std::vector<std::string> phrases;
    for (const model::SpecPhrase& phrase : item.spec) {
        phrases.push_back(description_words(in.language, phrase->text));
    }
    for (std::size_t i = 0; i < phrases.size(); ++i) {
        row.description += (i == 0 ? "" : ", ") + phrases[i];
    }
    if (row.description.empty()) {
        const model::Kind& kind = model.kind(item.kind);
        row.description = own(in.language, "kind " + kind.name, kind.title);
    }
    row.told_by = own(in.language, "item " + item.name + " told by", *item.told_by);
    if (item.tightening) {
        row.torque = tightening_words(in.language, *item.tightening);
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
std::string bare_words(const ReaderWords& in, ItemId id) {
    return capital(in.language, said_bare(in.language, in.model, id));
}

} // namespace

void tell_needs(const ReaderWords& in, const Procedure& procedure, model::VariantMask covered,
                guide::Document& document) {
    const Model& model = in.model;
    const auto waste_words = [&](const std::string& waste) {
        return own(in.language, "waste " + waste, spaced(waste));
    };
    tell_resources(in, procedure, document);
    const model::VariantMask variants = covered;
    std::vector<ItemId> listed;
    for (const model::Step& step : procedure.steps) {
        for (const model::Action& action : step.actions) {
            for (const model::Target& target : action.targets) {
                const ItemId id = target.ref.item;
                const bool seen = std::find(listed.begin(), listed.end(), id) != listed.end();
                if (model.item(id).role == model::Role::fastener && !seen) {
                    listed.push_back(id);
                    document.fasteners.push_back(fastener_row(in, id, variants));
                }
                const std::string& waste = model.kind_of(id).waste;
                if (action.sort == model::ActionSort::dispose) {
                    add_disposal(document, {bare_words(in, id), waste_words(*action.aspect)});
                } else if (action.sort == model::ActionSort::replace && !waste.empty()) {
                    add_disposal(document, {bare_words(in, id), waste_words(waste)});
                }
            }
        }
    }
}

} // namespace matchmark::plan
