// Boxes become the bytes of a PDF: pages, their furniture, structure, links and outline.
#pragma once

#include "publish/paper/flow.hpp"
#include "publish/paper/picture.hpp"
#include "publish/paper/size.hpp"

#include <cairo.h>
#include <memory>
#include <string>
#include <vector>

namespace matchmark::publish {

// Between the edges of the sheet and what stands on it, furniture apart; in points.
struct Margins {
    double side = 0;
    double top = 0;
    double bottom = 0;
};

// A PDF that is being made.
struct Printer {
    PaperSize size;
    Margins margins;
    std::unique_ptr<std::string> bytes; // filled as the pages are finished
    std::shared_ptr<cairo_surface_t> surface;
    std::shared_ptr<cairo_t> paper;
    Setter setter;
    Gallery gallery;
};

// What the file says of itself, and what stands on every page.
struct Imprint {
    std::string title;
    std::string author;
    std::string subject;
    std::string created; // as `pdf` takes it
    std::string date;    // as the guide states it
    std::string head;    // at the head of every page but the first
    std::string foot;    // at the foot of every page, beside the number of the page
    std::string language = "en";
    std::string page_words = "page {page} of {pages}";
};

// `tag`: the language, for line breaks and shapes of letters.
Printer printer_for(Paper paper, const Margins& margins, const std::string& tag = "en");

// The column between the margins.
Flow flow_for(const Printer& printer);

// Empty when the file could not be made.
std::string print(Printer& printer, const std::vector<Box>& boxes, const Imprint& imprint);

// "2026-01-31T00:00:00Z": the first of the dates that is written like that (its time may be
// missing), else 1970-01-01.
std::string date_of_creation(const std::string& created, const std::string& date);

} // namespace matchmark::publish
