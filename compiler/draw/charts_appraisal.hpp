// The charts of an appraisal.
#pragma once

#include "draw/scene.hpp"
#include "guide/appraisal.hpp"
#include "guide/document.hpp"

#include <vector>

namespace matchmark::draw {

// Steps of each part, its times apart and back, and what most parts wait for; each no more than
// what a reader looks at. A chart that would hold nothing is left out.
std::vector<Scene> appraisal_charts(const guide::Appraisal& appraisal);

// The same as a page takes them in.
std::vector<guide::Figure> appraisal_figures(const guide::Appraisal& appraisal);

} // namespace matchmark::draw
