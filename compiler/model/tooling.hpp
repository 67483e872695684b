// Drives, and the tools that fit them.
#pragma once

#include "model/quantity.hpp"
#include "source/text.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::model {

// One size of a drive, and the threads whose screws usually have it.
struct DriveSize {
    std::string size;               // "6", "2.5"
    std::optional<Quantity> across; // its width, as the standard measures it
    std::vector<std::string> threads;
    std::string note; // a standard, a shape of head
    Span span;
};

// A tool with which a bench makes do.
struct StandIn {
    std::string tool;      // hyphenated words, as in `driven_by`
    std::string tool_size; // may be empty
    std::string size;      // of the drive
    Span span;
};

struct Drive {
    std::string name;
    std::string title;
    std::vector<std::string>
        driven_by; // hyphenated words: all must stand in the tool's description
    std::vector<DriveSize> sizes;
    std::vector<StandIn> stand_ins;
    Span span;
};

// After the idea of EN 45554: what a reader must have, buy or be sent.
enum class ToolClass : unsigned char { none, basic, supplied, available, special };

struct ToolKind {
    std::string name; // hyphenated words, as after `by` and `driven by`
    std::string title;
    std::optional<ToolClass> tool_class;
    std::optional<Limit> torques;  // that such tools can be set to, or show; none: neither
    bool on_dead_circuits = false; // measures with a current of its own: the circuit is off
    Span span;
};

// As the language spells them: none, basic, supplied, available, special.
std::optional<ToolClass> tool_class_named(std::string_view word);
// For readers: "basic tool", "special to the product".
std::string_view describe(ToolClass tool_class);

} // namespace matchmark::model
