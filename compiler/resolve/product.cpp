// What a device says for a published index of repair: its sort of product, its spare parts, and
// which of the index's parts each item is.
#include "resolve/stages.hpp"
#include "resolve/values.hpp"

#include "model/describe.hpp"
#include "model/index_words.hpp"

#include <algorithm>
#include <cmath>

namespace matchmark::resolve {

using syntax::Keyword;
using syntax::Line;
using syntax::Reader;

namespace {

// The word, which has to be one of these; empty (and a finding) when it is not.
std::string word_among(Context& context, std::optional<Span> word, const std::string& rule,
                       std::string_view what, const std::vector<std::string>& known) {
    if (!word)
        return {};
    std::string text = text_of(context, *word);
    if (std::find(known.begin(), known.end(), text) != known.end())
        return text;
    report_unknown(context, rule, *word, what, known);
    Diagnostic& finding = context.findings.back();
    finding.why = "known are " + model::list(known);
    if (finding.edits.empty())
        finding.help = "write one of them";
    return {};
}

std::vector<std::string> words_among(Context& context, Reader& reader, const std::string& rule,
                                     std::string_view what, const std::vector<std::string>& known) {
    std::vector<std::string> words;
    for (const Span name : read_name_list(reader)) {
        std::string word = word_among(context, name, rule, what, known);
        if (!word.empty())
            words.push_back(std::move(word));
    }
    return words;
}

// A tool is of a tool-kind when its words hold the tool-kind's.
void check_tool(Context& context, Span tool) {
    const std::string text = text_of(context, tool);
    const auto& kinds = context.model.tool_kinds;
    const bool known = std::any_of(kinds.begin(), kinds.end(), [&](const model::ToolKind& kind) {
        return model::has_words(text, kind.name);
    });
    if (!known)
        report_unknown(context, "unknown-tool", tool, "tool-kind for",
                       known_names(context, context.tool_kinds));
}

void read_supplied(Context& context, model::Product& product, Reader& reader, Span line) {
    model::SuppliedTool supplied;
    supplied.span = line;
    if (const auto tool = reader.take_name()) {
        supplied.tool = text_of(context, *tool);
        check_tool(context, *tool);
    }
    if (!reader.next_is_word("with")) {
        supplied.size = reader.next_text();
        reader.skip();
    }
    reader.take_word("with");
    supplied.with = word_among(context, reader.take_name(), "unknown-product", "way of supply",
                               model::supplied_with_words());
    product.tools.push_back(std::move(supplied));
}

} // namespace

void read_product_detail(Context& context, model::Product& product, const Line& line,
                         Reader& reader) {
    switch (line.keyword) {
    case Keyword::product:
        product.classes = words_among(context, reader, "unknown-product", "sort of product",
                                      model::product_words());
        product.span = line.whole;
        break;
    case Keyword::updates:
        product.update_years = static_cast<int>(std::lround(read_number(reader)));
        break;
    case Keyword::information:
        product.information = word_among(context, reader.take_name(), "unknown-product",
                                         "sort of reader", model::information_words());
        break;
    case Keyword::spares:
        product.spares = words_among(context, reader, "unknown-index-part", "part of an index",
                                     model::index_part_words());
        break;
    case Keyword::supplied:
        read_supplied(context, product, reader, line.whole);
        break;
    default:
        break;
    }
}

void read_item_for_sale(Context& context, model::Item& item, const Line& line, Reader& reader) {
    switch (line.keyword) {
    case Keyword::price:
        item.rare.edit().price = read_quantity(context, reader, model::Measure::money);
        break;
    case Keyword::counts_as:
        item.rare.edit().counts_as = word_among(context, reader.take_name(), "unknown-index-part",
                                                "part of an index", model::index_part_words());
        break;
    case Keyword::comes_with:
        item.rare.edit().comes_with = read_items(context, reader);
        break;
    case Keyword::authorised_remotely:
        item.rare.edit().authorised_remotely = true;
        break;
    default:
        break;
    }
}

} // namespace matchmark::resolve
