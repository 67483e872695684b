// An author's Markdown as boxes: paragraphs, lists, tables, quotations, code.
#pragma once

#include "publish/paper/flow.hpp"

namespace matchmark::publish {

struct Prose {
    double size = 10.5;
    double between = 4; // paragraphs
};

void add_prose(Flow& flow, std::string_view markdown, const Prose& prose = {});

} // namespace matchmark::publish
