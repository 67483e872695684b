// How easy a device is to repair, as one page to read or print.
#pragma once

#include "guide/appraisal.hpp"
#include "guide/document.hpp"

#include <string>
#include <vector>

namespace matchmark::publish {

// Self-contained like a guide's page, and without a script. `charts` stand in the page as SVG.
std::string appraisal_page(const guide::Appraisal& appraisal,
                           const std::vector<guide::Figure>& charts);

} // namespace matchmark::publish
