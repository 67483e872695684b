// All that this room draws, as bytes and as figures of a page.
#pragma once

#include "draw/fastener_map.hpp"
#include "draw/folding.hpp"
#include "draw/paint.hpp"
#include "guide/document.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace matchmark::draw {

enum class What : unsigned char { access, held, wiring, order };

// "access", "held", "wiring", "order"
std::optional<What> what_named(std::string_view word);
const std::vector<std::string>& what_names();

// `procedure`: null for a device without a guide; `order` then has no scene, and neither has
// `wiring` when nothing is wired. Without a part chosen, the way to the guide's goal is emphasised.
std::vector<Scene> drawing(What what, const model::Model& model, const model::Procedure* procedure,
                           const Viewing& viewing);

// Drawings of a guide's page, in both forms: what a page of HTML takes in, and what `paint_on` puts
// onto paper. As many of the one as of the other, in the same order.
struct PageDrawings {
    std::vector<guide::Figure> figures;
    std::vector<Scene> scenes;
};

// The order of the work, the way in, what holds what on that way, and the wiring near it, each no
// more than the guide needs.
PageDrawings page_drawings(const model::Model& model, const model::Procedure& procedure,
                           const language::Language& in = language::english());

// The fastener map. Empty when the guide undoes no fastener whose place is known.
struct MapFiles {
    std::string pdf;
    std::vector<std::string> svg; // a file for each sheet
};

// `created` as in PdfNotes.
MapFiles map_files(const model::Model& model, const model::Procedure& procedure, Paper paper,
                   const std::string& created, const language::Language& in = language::english());

// What the scenes say, as a Markdown page with a heading for each; names in it act as plain words.
std::string in_markdown(const std::vector<Scene>& scenes);

} // namespace matchmark::draw
