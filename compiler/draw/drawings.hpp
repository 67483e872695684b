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

// For the guide's page: the order of the work, the way in, what holds what on that way, and the
// wiring near it, each no more than the guide needs.
std::vector<guide::Figure> figures(const model::Model& model, const model::Procedure& procedure);

// The fastener map. Empty when the guide undoes no fastener whose place is known. `created` as in
// PdfNotes.
std::string map_pdf(const model::Model& model, const model::Procedure& procedure, Paper paper,
                    const std::string& created);
// A file for each sheet.
std::vector<std::string> map_svg(const model::Model& model, const model::Procedure& procedure,
                                 Paper paper);

// What the scenes say, as a Markdown page with a heading for each; names in it act as plain words.
std::string in_markdown(const std::vector<Scene>& scenes);

} // namespace matchmark::draw
