// The stages of resolving, in the order in which resolve.cpp takes them.
#pragma once

#include "resolve/context.hpp"

#include <vector>

namespace matchmark::resolve {

// --- trade.cpp: drives, threads, grades, tools, signs, hazards ---
void resolve_trade(Context& context, const std::vector<Declaration>& all);

// --- timing.cpp; after the kinds ---
void resolve_timings(Context& context, const std::vector<Declaration>& all);

// --- product.cpp: lines of a device, and of an item; others are left alone ---
void read_product_detail(Context& context, model::Product& product, const syntax::Line& line,
                         syntax::Reader& reader);
void read_item_for_sale(Context& context, model::Item& item, const syntax::Line& line,
                        syntax::Reader& reader);

// --- kinds.cpp ---
void resolve_kinds(Context& context, const std::vector<Declaration>& all);

// --- device.cpp ---
void resolve_device(Context& context, const std::vector<Declaration>& all);
void resolve_functions(Context& context, const std::vector<Declaration>& all);
void resolve_cautions(Context& context, const std::vector<Declaration>& all);

// --- items.cpp: names and kinds; relations.cpp: what ties, covers, carries and feeds them ---
void declare_items(Context& context, const std::vector<Declaration>& all);
void resolve_items(Context& context, const std::vector<Declaration>& all);
void resolve_relations(Context& context, const std::vector<Declaration>& all);

// --- closed_in.cpp; after the relations ---
void check_closed_in(Context& context);

// --- guides.cpp ---
void declare_guides(Context& context, const std::vector<Declaration>& all);
void resolve_guides(Context& context, const std::vector<Declaration>& all);

// --- nesting.cpp: rings and bombs of `do`, once all guides are read ---
void check_nesting(Context& context);

} // namespace matchmark::resolve
