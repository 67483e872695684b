// What a job costs: spares and supplies, and the labour at a rate. Tax is left to others.
//
// How each number comes about: docs/planning.md, "A quotation".
#pragma once

#include "model/model.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace matchmark::plan {

// In hundredths, whatever the currency.
struct Money {
    std::int64_t hundredths = 0;
    std::string currency; // "EUR"
};

struct QuoteTerms {
    Money rate;                        // of an hour of labour
    std::int64_t markup = 0;           // on spares and supplies, in hundredths of a percent
    std::optional<unsigned> variant{}; // none: the one that takes longest
};

// Where the price of a line stands.
enum class PriceFrom : unsigned char { nowhere, guide, device };

struct QuoteLine {
    bool is_spare = false;
    std::string name;
    std::string words;  // as the guide describes it
    std::string amount; // "40 cm"; empty: not said
    PriceFrom from = PriceFrom::nowhere;
    Money price; // of the whole amount, with the markup
};

struct Quotation {
    std::vector<QuoteLine> lines;
    double seconds = 0;        // labour, by the usual timing
    std::int64_t minutes = 0;  // the same, up to whole minutes
    double waiting = 0;        // s that pass by themselves; not charged
    Money labour;              // of the minutes
    std::vector<Money> totals; // by currency, in the order in which they first occur
};

Quotation quotation(const model::Model& model, const model::Procedure& procedure,
                    const QuoteTerms& terms);

// "14.50 EUR"
std::string to_text(const Money& money);

} // namespace matchmark::plan
