// The guide as a PDF, to print and keep: the same content as the page.
#pragma once

#include "guide/document.hpp"
#include "publish/paper/drawing.hpp"
#include "publish/paper/size.hpp"

#include <string>

namespace matchmark::publish {

// Tagged, with an outline, its fonts within it, and nothing in it that runs. The same arguments
// give the same bytes on a machine with the same fonts. `created` is the date of creation that the
// file states ("2026-01-31" or "2026-01-31T12:00:00Z"); empty or unreadable: the guide's date when
// it is written like that, else 1970-01-01. A picture that `assets` lacks, or that is neither JPEG,
// PNG nor SVG, is shown by its words. Without a painter the figures are told in words alone. Empty
// when the file could not be made.
std::string pdf(const guide::Document& document, const guide::Assets& assets, Paper paper,
                const std::string& created, const FigurePainter& painter = {});

} // namespace matchmark::publish
