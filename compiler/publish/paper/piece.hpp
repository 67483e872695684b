// What stands on a sheet of paper: pieces with places, gathered in boxes that no page break cuts.
//
// All measures are in points, x from the left edge of the sheet, y downwards from the top of the
// box.
#pragma once

#include "guide/document.hpp"
#include "publish/paper/drawing.hpp"
#include "publish/paper/setting.hpp"
#include "publish/shown_picture.hpp"

#include <memory>
#include <string>
#include <variant>
#include <vector>

namespace matchmark::publish {

// Lines of a text.
struct Letters {
    std::shared_ptr<const Setting> setting;
    int first = 0;
    int last = 0; // the line after the last one
    double x = 0;
    double y = 0;
    const char* tag = nullptr; // of the structure: "P", "H2"
    bool light = false;        // white, on black ground
};

struct Stroke {
    double x1 = 0;
    double y1 = 0;
    double x2 = 0;
    double y2 = 0;
    double width = 0.5;
    bool dashed = false;
    bool grey = false;
    bool parting = false; // from what stands above: not at the head of a page
};

enum class Ground : unsigned char { none, black, soft };

struct Frame {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
    double line = 0; // 0: no line
    Ground ground = Ground::none;
    bool dashed = false;
    bool grey = false;
};

// The safety alert symbol: a triangle with a stroke and a dot.
struct Alert {
    double x = 0;
    double y = 0;
    double height = 0;
    bool light = false;
};

// A safety sign in a square; the document outlives it.
struct SignPiece {
    const guide::Sign* sign = nullptr;
    double x = 0;
    double y = 0;
    double side = 0;
};

// A photo or drawing; the pictures and the document outlive it.
struct PicturePiece {
    const ShownPicture* shown = nullptr;
    const guide::Picture* picture = nullptr; // whose marks it bears; may be null
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
    std::string words; // for who cannot see it
};

// A place that links and the outline lead to.
struct Target {
    std::string name;
    std::string title; // in the outline; empty: not in it
    int level = 1;     // 1: a section, 2: a step
};

// The number of the page on which a target stands, its right edge at x.
struct PageOf {
    std::string name;
    double x = 0;
    double y = 0;
    double size = 0;
};

using Piece = std::variant<Letters, Stroke, Frame, Alert, SignPiece, PicturePiece, DrawingPiece,
                           Target, PageOf>;

struct Box {
    double height = 0;
    double gap = 0;     // above it, unless it is the first on its page
    unsigned outer = 0; // boxes of one number that follow each other stay on one page where they
                        // fit on one; 0: none
    unsigned inner = 0; // the same, where the outer ones do not fit
    bool with_next = false;
    int header = -1; // the box that stands again above this one on a new page; -1: none
    std::vector<const char*> opens; // tags of the structure, before its pieces
    unsigned closes = 0;            // how many of them end after its pieces
    std::vector<Piece> pieces;
};

} // namespace matchmark::publish
