// The parts of a guide's PDF, in the order in which they stand.
#pragma once

#include "guide/document.hpp"
#include "publish/paper/print.hpp"

namespace matchmark::publish {

// What every part needs. All of it outlives the printing.
struct Leaflet {
    const guide::Document& document;
    const ShownPictures& pictures;
    const FigurePainter& painter; // may hold none
    Printer& printer;
    Flow& flow;
};

void add_title_block(Leaflet& leaflet);
void add_opening(Leaflet& leaflet); // who it is for, what goes before it, the aim
void add_contents(Leaflet& leaflet);
void add_safety(Leaflet& leaflet);
void add_needs(Leaflet& leaflet);
void add_sections(Leaflet& leaflet);
void add_afterwards(Leaflet& leaflet);
void add_figures(Leaflet& leaflet);

// The parts that a document has, as the contents list them.
struct Part {
    std::string place;
    std::string title;
    std::string more; // "steps 3 to 7"; may be empty
};
std::vector<Part> parts_of(const guide::Document& document);

// The heading of a part: a rule, its title, `more` at the right. `place` is one of parts_of.
void add_heading(Leaflet& leaflet, const std::string& place);

// A label above a list or a table.
void add_label(Flow& flow, std::string_view words);

void add_passages(Flow& flow, const language::Language& in,
                  const std::vector<guide::Passage>& passages);

// A picture with its key beside it, or below it where there is no room.
void add_picture(Leaflet& leaflet, const guide::Picture& picture);

// A box to tick, its top left at the flow's left edge.
void add_tick(Flow& flow, std::size_t box, double left, double size);

} // namespace matchmark::publish
