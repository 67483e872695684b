// The parts of a page in the order in which a reader needs them.
#pragma once

#include "publish/page/context.hpp"

#include <string_view>

namespace matchmark::publish {

// Everything before <body>. `title` is escaped already. Nothing may be loaded, and nothing may run
// but `script`, whatever an author or a picture brings with it.
std::string page_head(const std::string& title, std::string_view style, std::string_view script,
                      const language::Language& in = language::english());

// Title block, safety, needs, the steps, what comes afterwards. `drawings` as the form shows them.
std::string page_body(const PageContext& context, const std::string& drawings);

} // namespace matchmark::publish
