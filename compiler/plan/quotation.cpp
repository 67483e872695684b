// Puts a price on each line of a guide's lists and on the time that its work takes.
#include "plan/quotation.hpp"

#include "model/describe.hpp"
#include "model/fitting.hpp"
#include "plan/reader/walk.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

namespace matchmark::plan {

using model::Item;
using model::ItemId;
using model::Measure;
using model::Model;
using model::Procedure;
using model::Quantity;
using model::Resource;
using model::ResourceSort;

namespace {

constexpr std::int64_t whole = 10000; // hundredths of a percent

Money money(const Quantity& price, double times) {
    return {std::llround(price.value * times * 100), std::string(price.unit)};
}

// Half a hundredth goes up.
Money with_markup(Money price, std::int64_t markup) {
    price.hundredths = (price.hundredths * (whole + markup) + whole / 2) / whole;
    return price;
}

// The one item of the device that the line is for and that has a price.
const Item* priced_item(const Model& model, const Resource& resource) {
    const Item* found = nullptr;
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const ItemId id{i};
        const auto& listed = resource.for_items;
        const bool meant = listed.empty()
                               ? model::serves(model, resource, id)
                               : std::find(listed.begin(), listed.end(), id) != listed.end();
        if (!meant)
            continue;
        if (found != nullptr || !model.item(id).rare->price)
            return nullptr; // for several things, or for one whose price nobody knows
        found = &model.item(id);
    }
    return found;
}

// How many new ones the line's amount comes to; nothing when that cannot be said.
std::optional<double> how_many(const Item& item, const std::optional<Quantity>& amount) {
    if (!amount)
        return item.count;
    if (amount->measure == Measure::number)
        return amount->value;
    if (item.amount && model::comparable(*amount, *item.amount) && item.amount->base > 0)
        return amount->base / item.amount->base;
    return std::nullopt;
}

QuoteLine line_of(const Model& model, const Resource& resource, const QuoteTerms& terms) {
    QuoteLine line;
    line.is_spare = resource.sort == ResourceSort::spare;
    line.name = resource.name;
    line.words = resource.text.empty() ? resource.name : resource.text;
    std::optional<Quantity> amount;
    for (const Quantity& quantity : resource.quantities) {
        if (quantity.measure == Measure::money) {
            line.from = PriceFrom::guide;
            line.price = with_markup(money(quantity, 1), terms.markup);
        } else {
            amount = quantity;
            line.amount = model::for_reader(quantity);
        }
    }
    if (line.from == PriceFrom::guide)
        return line;
    const Item* item = priced_item(model, resource);
    const auto count = item == nullptr ? std::nullopt : how_many(*item, amount);
    if (count) {
        line.from = PriceFrom::device;
        line.price = with_markup(money(*item->rare->price, *count), terms.markup);
    }
    return line;
}

void add(std::vector<Money>& totals, const Money& price) {
    for (Money& total : totals) {
        if (total.currency == price.currency) {
            total.hundredths += price.hundredths;
            return;
        }
    }
    totals.push_back(price);
}

void reckon_labour(const Model& model, const Procedure& procedure, const QuoteTerms& terms,
                   Quotation& quote) {
    const model::VariantMask variants = terms.variant ? model::VariantMask{1} << *terms.variant
                                                      : model.guide(procedure.guide).variants;
    ReaderWalk walk = start_walk(model, variants);
    for (const model::Step& step : procedure.steps) {
        for (const model::Action& action : step.actions)
            follow(walk, procedure.resources, action);
    }
    for (std::size_t i = 0; i < walk.seconds.size(); ++i) {
        quote.seconds = std::max(quote.seconds, walk.seconds[i]);
        quote.waiting = std::max(quote.waiting, walk.waiting[i]);
    }
    // Sums of tenths of a second are not exact: a whole minute must not become two.
    quote.minutes = std::llround(std::ceil((quote.seconds - 0.001) / 60));
    quote.labour = {(quote.minutes * terms.rate.hundredths + 30) / 60, terms.rate.currency};
}

} // namespace

Quotation quotation(const Model& model, const Procedure& procedure, const QuoteTerms& terms) {
    Quotation quote;
    for (const Resource& resource : procedure.resources) {
        if (resource.sort == ResourceSort::tool)
            continue;
        quote.lines.push_back(line_of(model, resource, terms));
        if (quote.lines.back().from != PriceFrom::nowhere)
            add(quote.totals, quote.lines.back().price);
    }
    reckon_labour(model, procedure, terms, quote);
    add(quote.totals, quote.labour);
    return quote;
}

std::string to_text(const Money& money) {
    return fmt::format("{}.{:02} {}", money.hundredths / 100, money.hundredths % 100,
                       money.currency);
}

} // namespace matchmark::plan
