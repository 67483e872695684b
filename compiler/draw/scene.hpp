// A drawing before it is ink: lines, rectangles, circles, paths and text on a sheet.
//
// All lengths are millimetres on the paper, from the top left, downwards. Drawings are black on
// white; grey is a support and never the only carrier of a meaning.
#pragma once

#include "model/item.hpp"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace matchmark::draw {

using model::Point;

// Line types by meaning, after the idea of ISO 128-2. Which dashes stand for which type is our own.
enum class Dash : unsigned char {
    none,    // what is seen; leaders and dimensions, when thin
    hidden,  // what lies behind, or is only one of several ways
    centre,  // the middle of a round thing
    cut_off, // where a sheet ends and the next goes on
};

enum class Ink : unsigned char { black, grey, pale, white };

struct Stroke {
    double width = 0.25; // ISO 128-2 has 0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4 and 2 mm
    Ink ink = Ink::black;
    Dash dash = Dash::none;
};

// Between the margins of a page on which a drawing stands among text.
constexpr double page_width = 174;

constexpr double thin = 0.18;
constexpr double usual = 0.25;
constexpr double wide = 0.5;
constexpr double widest = 0.7;

struct Line {
    Point from;
    Point to;
    Stroke stroke;
};

struct Rectangle {
    Point corner; // top left
    double width = 0;
    double height = 0;
    double rounding = 0;
    std::optional<Stroke> stroke;
    std::optional<Ink> fill;
};

struct Circle {
    Point centre;
    double radius = 0;
    std::optional<Stroke> stroke;
    std::optional<Ink> fill;
};

// Straight and curved pieces, each from where the last one ended. Of a straight piece only `to`
// counts.
struct Piece {
    bool curved = false; // a cubic Bezier curve
    Point control_1;
    Point control_2;
    Point to;
};

struct Path {
    Point start;
    std::vector<Piece> pieces;
    bool closed = false;
    std::optional<Stroke> stroke;
    std::optional<Ink> fill;
};

enum class Align : unsigned char { left, middle, right };

// One line of text.
struct Text {
    Point at; // on its baseline
    std::string words;
    double size = 3; // of the letters, from ascent to descent about
    Align align = Align::left;
    bool bold = false;
    Ink ink = Ink::black;
    bool upwards = false; // reads from the bottom to the top
    bool heading = false; // names the drawing
};

struct Shape;

// What is seen through a window: nothing of it shows outside.
struct Window {
    Point corner;
    double width = 0;
    double height = 0;
    std::vector<Shape> shapes;
};

struct Shape {
    std::variant<Line, Rectangle, Circle, Path, Text, Window> form;
};

struct Scene {
    double width = 0;
    double height = 0;
    std::string title;
    std::string alternative_text; // Markdown: what the drawing says, in words
    std::vector<Shape> shapes;
};

// Made in its place: g++ 12 takes the move of a variant for a read of what was never written.
template <class Form> void put(std::vector<Shape>& shapes, Form form) {
    shapes.emplace_back().form.template emplace<Form>(std::move(form));
}

template <class Form> void add(Scene& scene, Form form) { put(scene.shapes, std::move(form)); }

} // namespace matchmark::draw
