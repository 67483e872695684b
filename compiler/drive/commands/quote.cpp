// `quote`: what a guide's job costs: spares, supplies, and the labour at a rate.
#include "drive/commands.hpp"
#include "drive/inputs.hpp"
#include "drive/reckoning.hpp"
#include "drive/report.hpp"
#include "drive/timing_choice.hpp"
#include "language/spoken.hpp"
#include "model/describe.hpp"
#include "plan/quotation.hpp"
#include "plan/work_time.hpp"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <ostream>

namespace matchmark::drive {

namespace {

constexpr const char* quote_command = "quote";
constexpr double most_rate = 1e9; // an hour that costs more is a slip of the keyboard
constexpr double most_markup = 10000;

using Json = nlohmann::ordered_json;
using plan::Money;
using plan::PriceFrom;
using plan::Quotation;
using plan::QuoteLine;

// What is the same for every guide of the file.
struct Offer {
    const model::Model& model;
    const QuoteOptions& options;
    plan::QuoteTerms terms;
};

// "48 EUR/h", "0.80 EUR/min"
std::variant<Money, std::string> read_rate(const std::string& text) {
    const auto slash = text.find('/');
    const std::string per = slash == std::string::npos ? "" : text.substr(slash + 1);
    const auto read = read_given(text.substr(0, slash), model::Measure::money, "--rate");
    if (const auto* wrong = std::get_if<std::string>(&read))
        return *wrong;
    if (per != "h" && per != "min")
        return fmt::format("`{}` says not what time it is for: write \"48 EUR/h\"", text);
    const auto& price = std::get<model::Quantity>(read);
    const double hour = price.value * (per == "min" ? 60 : 1);
    if (hour > most_rate)
        return fmt::format("`{}` is more than any labour costs", text);
    return Money{std::llround(hour * 100), std::string(price.unit)};
}

// "10 %"; nothing said is no markup.
std::variant<std::int64_t, std::string> read_markup(const std::string& text) {
    if (text.empty())
        return std::int64_t{0};
    const auto read = read_given(text, model::Measure::ratio, "--markup");
    if (const auto* wrong = std::get_if<std::string>(&read))
        return *wrong;
    const double percent = std::get<model::Quantity>(read).base * 100;
    if (percent > most_markup)
        return fmt::format("`{}` is more than any markup", text);
    return std::int64_t{std::llround(percent * 100)};
}

std::string timing_name(const model::Model& model) {
    const model::Timing* timing = plan::usual_timing(model);
    return timing == nullptr ? "the kinds' own times" : "timing `" + timing->name + "`";
}

// "6 min 12 s"
std::string exact_time(double seconds) {
    const std::int64_t tenths = std::llround(seconds * 10);
    const double rest = static_cast<double>(tenths % 600) / 10;
    return tenths < 600 ? model::number_text(rest) + " s"
                        : fmt::format("{} min {} s", tenths / 600, model::number_text(rest));
}

std::string waiting_text(double seconds) {
    return language::said_time(language::english(), 60 * std::ceil(seconds / 60));
}

std::string rate_text(const Offer& offer) { return plan::to_text(offer.terms.rate) + "/h"; }

struct TableRow {
    std::string sort;
    std::string words;
    std::string amount;
    std::string price;
};

std::vector<std::string> open_lines(const Quotation& quote) {
    std::vector<std::string> open;
    for (const QuoteLine& line : quote.lines) {
        if (line.from == PriceFrom::nowhere)
            open.push_back("`" + line.name + "`");
    }
    return open;
}

// Beside a total, so that nobody takes it for the whole.
std::string without_open(const Quotation& quote) {
    const std::size_t open = open_lines(quote).size();
    return open == 0 ? "" : fmt::format("without {} unpriced", open);
}

std::vector<TableRow> rows_of(const Offer& offer, const Quotation& quote) {
    std::vector<TableRow> rows;
    for (const QuoteLine& line : quote.lines) {
        rows.push_back({line.is_spare ? "spare" : "supply", line.words, line.amount,
                        line.from == PriceFrom::nowhere ? "no price" : plan::to_text(line.price)});
    }
    rows.push_back({"labour", "at " + rate_text(offer), fmt::format("{} min", quote.minutes),
                    plan::to_text(quote.labour)});
    for (const Money& total : quote.totals)
        rows.push_back({"total", without_open(quote), "", plan::to_text(total)});
    return rows;
}

// As many as it takes on the screen, but for letters of double width.
std::size_t columns(const std::string& text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    }));
}

void write_quote_text(const Offer& offer, const model::Guide& guide, const Quotation& quote,
                      std::ostream& out) {
    out << fmt::format("Quotation: {}\n\n", guide.title.empty() ? guide.name : guide.title);
    const auto rows = rows_of(offer, quote);
    std::size_t words = 0;
    std::size_t amount = 0;
    std::size_t price = 0;
    for (const TableRow& row : rows) {
        words = std::max(words, columns(row.words));
        amount = std::max(amount, columns(row.amount));
        price = std::max(price, columns(row.price));
    }
    for (const TableRow& row : rows) {
        out << fmt::format("  {:<6}  {:<{}}  {:>{}}  {:>{}}\n", row.sort, row.words, words,
                           row.amount, amount, row.price, price);
    }
    out << fmt::format("\nLabour: {} by {}, up to whole minutes. Looking, reading and fetching are "
                       "not in it.\n",
                       exact_time(quote.seconds), timing_name(offer.model));
    if (quote.waiting > 0)
        out << fmt::format("Waiting: {}, not charged.\n", waiting_text(quote.waiting));
    if (offer.terms.markup > 0)
        out << fmt::format("Spares and supplies are with {} on top.\n", offer.options.markup);
    if (const auto open = open_lines(quote); !open.empty())
        out << fmt::format("Open: {} {} no price and {} not in the total.\n", model::list(open),
                           open.size() == 1 ? "has" : "have", open.size() == 1 ? "is" : "are");
    out << "Tax is not in it.\n";
}

std::string amount_of(const Money& money) {
    const std::string text = plan::to_text(money);
    return text.substr(0, text.find(' '));
}

// As RFC 4180 has it.
std::string cell(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos)
        return text;
    std::string quoted = "\"";
    for (const char c : text)
        quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
    return quoted + "\"";
}

void write_csv_line(const std::vector<std::string>& cells, std::ostream& out) {
    for (std::size_t i = 0; i < cells.size(); ++i)
        out << (i == 0 ? "" : ",") << cell(cells[i]);
    out << "\r\n";
}

void write_csv(const Offer& offer, const model::Guide& guide, const Quotation& quote,
               std::ostream& out) {
    for (const QuoteLine& line : quote.lines) {
        const bool known = line.from != PriceFrom::nowhere;
        write_csv_line({guide.name, line.is_spare ? "spare" : "supply", line.words, line.amount,
                        known ? amount_of(line.price) : "", known ? line.price.currency : ""},
                       out);
    }
    write_csv_line({guide.name, "labour", "at " + rate_text(offer),
                    fmt::format("{} min", quote.minutes), amount_of(quote.labour),
                    quote.labour.currency},
                   out);
    for (const Money& total : quote.totals)
        write_csv_line(
            {guide.name, "total", without_open(quote), "", amount_of(total), total.currency}, out);
}

Json money_json(const Money& money) {
    Json object;
    object["amount"] = amount_of(money); // digits, so that no cent is lost
    object["currency"] = money.currency;
    return object;
}

Json as_json(const Offer& offer, const model::Guide& guide, const Quotation& quote) {
    static constexpr const char* from[] = {nullptr, "guide", "device"};
    Json root;
    root["guide"] = guide.name;
    root["title"] = guide.title;
    root["lines"] = Json::array();
    for (const QuoteLine& line : quote.lines) {
        const bool known = line.from != PriceFrom::nowhere;
        Json entry;
        entry["sort"] = line.is_spare ? "spare" : "supply";
        entry["name"] = line.name;
        entry["description"] = line.words;
        entry["amount"] = line.amount.empty() ? Json(nullptr) : Json(line.amount);
        entry["price"] = known ? money_json(line.price) : Json(nullptr);
        entry["price_from"] = known ? Json(from[static_cast<std::size_t>(line.from)]) : Json();
        root["lines"].push_back(std::move(entry));
    }
    const model::Timing* timing = plan::usual_timing(offer.model);
    Json labour;
    labour["seconds"] = quote.seconds;
    labour["minutes"] = quote.minutes;
    labour["timing"] = timing == nullptr ? Json(nullptr) : Json(timing->name);
    labour["rate"] = money_json(offer.terms.rate);
    labour["price"] = money_json(quote.labour);
    root["labour"] = std::move(labour);
    root["waiting_seconds"] = quote.waiting;
    root["markup_percent"] = static_cast<double>(offer.terms.markup) / 100;
    root["totals"] = Json::array();
    for (const Money& total : quote.totals)
        root["totals"].push_back(money_json(total));
    return root;
}

void write_quotations(const Offer& offer, const std::vector<model::Procedure>& procedures,
                      std::ostream& out) {
    Json all = Json::array();
    if (offer.options.csv)
        write_csv_line({"guide", "sort", "description", "amount", "price", "currency"}, out);
    for (std::size_t i = 0; i < procedures.size(); ++i) {
        const model::Guide& guide = offer.model.guide(procedures[i].guide);
        const Quotation quote = plan::quotation(offer.model, procedures[i], offer.terms);
        if (offer.options.json) {
            all.push_back(as_json(offer, guide, quote));
        } else if (offer.options.csv) {
            write_csv(offer, guide, quote, out);
        } else {
            out << (i == 0 ? "" : "\n");
            write_quote_text(offer, guide, quote, out);
        }
    }
    if (offer.options.json) {
        Json root;
        root["quotations"] = std::move(all);
        out << root.dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
    }
}

// The rate, the markup and the variant; what is wrong with them instead.
std::variant<plan::QuoteTerms, std::string> read_terms(const QuoteOptions& options,
                                                       const model::Model& model) {
    plan::QuoteTerms terms;
    auto rate = read_rate(options.rate);
    if (const auto* wrong = std::get_if<std::string>(&rate))
        return *wrong;
    terms.rate = std::get<Money>(std::move(rate));
    const auto markup = read_markup(options.markup);
    if (const auto* wrong = std::get_if<std::string>(&markup))
        return *wrong;
    terms.markup = std::get<std::int64_t>(markup);
    if (options.variant.empty())
        return terms;
    const auto& variants = model.device.variants;
    const auto found = std::find(variants.begin(), variants.end(), options.variant);
    if (found == variants.end())
        return fmt::format("`{}` has no variant `{}`{}", model.device.name, options.variant,
                           did_you_mean(options.variant, variants));
    terms.variant = static_cast<unsigned>(found - variants.begin());
    return terms;
}

} // namespace

int quote_work(const QuoteOptions& options, Terminal& terminal) {
    if (options.rate.empty())
        return fail(terminal, quote_command, "say what an hour costs: --rate \"48 EUR/h\"");
    if (options.json && options.csv)
        return fail(terminal, quote_command, "--json and --csv are two forms; name one");
    const auto files = inputs(quote_command, {options.path}, terminal);
    if (!files)
        return exit_failed;
    if (files->size() != 1 || terminal.disk.is_folder(options.path))
        return fail(terminal, quote_command,
                    fmt::format("`{}` is a folder; name one guide's file", options.path));
    Compilation done = compile(terminal.disk, files->front().path, files->front().given());
    if (any_error(done.findings)) {
        return fail_with_findings(done, terminal);
    }
    if (done.procedures.empty())
        return fail(terminal, quote_command, fmt::format("`{}` declares no guide", options.path));
    if (const auto wrong = choose_timing(done.model, options.timing))
        return fail(terminal, quote_command, *wrong);
    auto terms = read_terms(options, done.model);
    if (const auto* wrong = std::get_if<std::string>(&terms))
        return fail(terminal, quote_command, *wrong);
    const Offer offer{done.model, options, std::get<plan::QuoteTerms>(std::move(terms))};
    for (const model::Procedure& procedure : done.procedures) {
        const model::Guide& guide = done.model.guide(procedure.guide);
        if (offer.terms.variant && ((guide.variants >> *offer.terms.variant) & 1U) == 0)
            return fail(terminal, quote_command,
                        fmt::format("`{}` is not for variant {}", guide.name, options.variant));
    }
    write_quotations(offer, done.procedures, terminal.out);
    return exit_clean;
}

} // namespace matchmark::drive
