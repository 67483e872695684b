// What can hurt, and the signs and the gear against it.
#pragma once

#include "source/text.hpp"

#include <string>
#include <vector>

namespace matchmark::model {

// Words for the reader, as Markdown; a safety message if its signal word is one.
enum class ProseKind : unsigned char { text, note, why, notice, caution, warning, danger };

struct Prose {
    ProseKind kind = ProseKind::text;
    std::string markdown;
    Span span; // from the keyword (or first word) to the end of the last line
};

// What a safety sign does: it warns, tells what to wear or do, or forbids.
enum class SignForm : unsigned char { warns, obliges, forbids };

struct Sign {
    std::string name;
    std::string title;
    std::string number; // in ISO 7010; may be empty
    SignForm form = SignForm::warns;
    std::string outline; // of its symbol: SVG path data, M L C Z alone, in a square of 100
    Span span;
};

struct Gear {
    std::string name;
    std::string title;
    std::string sign; // may be empty
    Span span;
};

struct Hazard {
    std::string name;
    std::string title;
    std::string sign;                // may be empty
    std::vector<std::string> wear;   // names of gear
    std::vector<std::string> order;  // verbs that make safe, whatever the kind, in this order
    std::vector<std::string> lit_by; // names of hazards: what has one of these sets it on fire
    std::vector<Prose> messages;
    Span span;
};

} // namespace matchmark::model
