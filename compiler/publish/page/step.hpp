// One step of a guide as a part of a page.
#pragma once

#include "publish/page/context.hpp"

namespace matchmark::publish {

std::string step(const guide::Step& step, const PageContext& context);

} // namespace matchmark::publish
