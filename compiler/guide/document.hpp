// What a reader holds: the guide with everything decided and nothing formatted.
//
// Every sentence, count, torque and order stands here as it is to be read; a form of output (a
// page, a sheet) only lays it out. Strings are plain text unless they are called markdown.
#pragma once

#include "language/language.hpp"
#include "language/words.hpp"
#include "model/item.hpp"

#include <map>
#include <string>
#include <vector>

namespace matchmark::guide {

// Signal words by what happens if the message is not heeded (ANSI Z535.6): damage to property
// alone, minor or moderate injury, could kill or maim, will kill or maim.
enum class Signal : unsigned char { notice, caution, warning, danger };

using language::Run;
using language::RunKind;
using language::Words;
using model::SignForm;

// A safety sign in the form of ISO 7010 (a triangle, a disc, a struck-out circle), with a symbol of
// our own.
struct Sign {
    std::string name;
    std::string title; // its words, for who cannot see it
    SignForm form = SignForm::warns;
    std::string outline; // of the symbol, filled: SVG path data, M L C Z alone, in a square of 100
};

// A safety message; it stands before the actions that it is about.
struct Message {
    Signal signal = Signal::notice;
    std::string subject; // what it is about: "Stored charge"; may be empty
    std::string markdown;
    unsigned full_in_step = 0; // not 0: stands in full in that step, here by its subject alone
    std::vector<std::string> variants; // to which it applies; empty: to all
    std::string sign = {};             // the name of one of the document's signs; may be empty
};

struct GatheredMessage {
    Message message;
    std::vector<unsigned> steps; // numbers of the steps that show it; empty: the whole guide
};

enum class PassageKind : unsigned char { text, note, why };

struct Passage {
    PassageKind kind = PassageKind::text;
    std::string markdown;
    std::size_t after = 0; // how many of its step's instructions stand above it
    bool of_thing = false; // said by an item or its kind, wherever that is worked on
};

// One action, as a sentence in the imperative.
struct Instruction {
    Words words;
    std::vector<std::string> variants; // done on these alone; empty: on all
    std::vector<Words> details =
        {};                  // what stands below it: the order of tightening, a time worked out
    std::string record = {}; // what is measured and written down: "brush length, at least 5 mm"
};

struct Mark {
    unsigned number = 0;              // the item's number on every picture of the guide
    std::string words;                // "4 lid screws"
    std::vector<model::Point> points; // fractions of width and height, from the top left
};

struct Picture {
    std::string path; // as seen from where the compiler runs; the key of Assets
    std::string alternative_text;
    std::vector<Mark> marks;
};

struct Test {
    std::vector<std::string> when;   // "the cell plug connected"
    std::vector<std::string> proves; // "the cell", "The display shows"
    std::vector<std::string> with;   // tools
};

struct Step {
    unsigned number = 0; // through the whole guide, from 1
    std::string anchor;  // unique in the document, made of letters, digits and hyphens: "step-3"
    std::string title;
    bool is_test = false;
    std::vector<std::string> variants;
    std::vector<Message> messages; // highest signal word first
    std::vector<Instruction> instructions;
    std::vector<Passage> passages;
    std::vector<Picture> pictures;
    std::vector<std::string> tools; // used in it, in the order of use, as described
    double seconds = 0;             // usual handling time; 0: not known
    double waiting_seconds = 0;     // for glue, a drain, cooling: no hands needed
    Test test;                      // of a test
};

// The passages that stand right below so many of a step's instructions; 0: above all of them.
std::vector<Passage> passages_after(const Step& step, std::size_t instructions);

struct Section {
    std::string title;
    std::vector<Step> steps;
};

// A tool, spare, supply or protective gear.
struct Provision {
    std::string words;
    std::string amount;          // "2", "40 cm"; empty when none is given
    std::string price;           // of that amount; empty when none is given
    std::string purpose;         // "for the lid seal"; may be empty
    std::string tool_class = {}; // of a tool: "basic", "special to the product"; may be empty
    std::string sign = {};       // of protective gear: the name of one of the document's signs
};

// A group of fasteners that the work takes off or puts back, to lay out and to check against.
struct FastenerRow {
    std::string words;       // "4 lid screws"
    std::string description; // "M2 x 6, hexalobular 6, countersunk"
    std::string told_by;
    std::string torque; // "0.2 N·m, star, 3 passes"; empty when none is declared
    std::vector<std::string> variants;
};

// Old material that must not go into the bin.
struct Disposal {
    std::string words;       // "cell"
    std::string waste_class; // "lithium battery"
};

// A drawing made by the compiler, as SVG without scripts or links to anything outside.
struct Figure {
    std::string anchor; // unique in the document
    std::string title;
    std::string svg;
    double width_mm = 0; // at its natural size
    double height_mm = 0;
    std::string alternative_text; // Markdown: what the drawing says, in words
};

struct Document {
    std::string name; // of the guide, as in the source
    std::string title;
    std::string device;
    std::string device_revision;
    std::string revision; // of the guide
    std::string author;
    std::string date;                  // as written; the compiler has no clock
    std::vector<std::string> variants; // for which the guide is; empty: for all
    std::string reader;                // who it is for, a sentence
    std::string deferral;              // what goes before this guide, sentences
    std::string
        time; // "at least 25 min", handling alone; empty when no verb of it has a usual time
    std::string waiting;        // "24 h", beside the handling; empty when there is none
    std::string source_version; // of the source files, as given by the caller; may be empty
    std::vector<Words> goals;
    std::vector<Passage> passages;
    std::vector<Picture> pictures;
    std::vector<Sign> signs;           // that its messages and its protective gear show
    std::vector<Provision> protection; // what to wear
    std::vector<Words> energies;       // "the cell holds 11.6 W·h": what is stored, worked out
    std::vector<Words> ratings;        // what the work voids, and what it takes to restore it
    std::vector<Provision> tools;
    std::vector<Provision> spares;
    std::vector<Provision> supplies;
    std::vector<std::string> cost; // sum of the prices, one for each currency
    std::vector<FastenerRow> fasteners;
    std::vector<GatheredMessage> safety; // highest signal word first
    std::vector<Section> sections;
    std::vector<Disposal> disposals;
    std::vector<Figure> figures;
    language::Language language = {}; // of all of it: fixed words are said in it
};

// The pictures of a document by their path; what is not there could not be read.
struct Assets {
    std::map<std::string, std::string> files;
};

// Every path that the document shows, sorted, each once.
std::vector<std::string> picture_paths(const Document& document);

// "DANGER"
const char* signal_word(Signal signal);
// The same in the reader's language: "GEFAHR".
std::string signal_word(Signal signal, const language::Language& language);

using language::plain;

} // namespace matchmark::guide
