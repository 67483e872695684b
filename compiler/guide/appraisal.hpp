// How easy a device is to repair, as a reader is told it: everything counted, nothing formatted.
//
// Strings are plain text. Scores are whole numbers of hundredths (500 is 5.00), the index is one of
// ten-thousandths (33500 is 3.35): a limit that is met exactly is met.
#pragma once

#include "model/tooling.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::guide {

enum class WayFound : unsigned char {
    least,   // proved: no way in takes less time
    bounded, // the best that was found in the time given
    none,    // proved: the part cannot be brought out
    unknown, // none was found in the time given
};

struct Counted {
    std::string words; // "screw M2 x 6, hexalobular 6"
    unsigned count = 0;
    friend bool operator==(const Counted&, const Counted&) = default;
};

struct ToolNeeded {
    std::string words;
    std::string sort; // "basic tool", "comes with the spare part"; empty: nothing says
};

// One step of the disassembly, as Commission Decision (EU) 2016/1371 counts them.
struct CountedStep {
    std::vector<std::string> acts; // "undo the 4 lid screws"
    std::string ends_with;         // why it ends there
};

struct PartAppraisal {
    std::string name;
    std::string title;
    std::string counts_as; // which of an index's parts it is; may be empty
    WayFound way = WayFound::unknown;
    std::vector<std::string> why_not; // of a part without a way out: what stops what, a line each
    std::vector<CountedStep> steps;   // in the order with the fewest
    bool fewest_steps = false;        // proved, for these acts
    unsigned acts = 0;
    std::vector<Counted> fasteners; // undone, by what they are
    std::vector<Counted> plugs;
    std::vector<Counted> bonds;
    std::vector<ToolNeeded> tools;
    std::vector<std::string> renewed; // good for one use, and parted on the way
    double seconds_apart = 0;         // usual time of the handling
    double seconds_back = 0;
    double waiting_apart = 0; // for glue, a drain, cooling: no hands needed
    double waiting_back = 0;
    double at_least_seconds = 0; // no way in takes less
};

// An item that others wait for.
struct WaitedFor {
    std::string name;
    std::string title;
    std::vector<std::string> parts;  // names of those whose least way in moves it
    std::vector<std::string> always; // of these, those that no way in reaches without moving it
};

// A score may depend on what the device does not say: then it lies between two bounds.
struct ScoreRange {
    int lowest = 0;  // hundredths
    int highest = 0; // hundredths
    friend bool operator==(const ScoreRange&, const ScoreRange&) = default;
};

// One priority part's share in a score.
struct PartScore {
    std::string part;  // "battery"
    std::string items; // the device's titles for it; empty: it has none
    int weight = 0;    // hundredths
    ScoreRange depth;
    ScoreRange fasteners;
    ScoreRange tools;
    std::string depth_because;
    std::string fasteners_because;
    std::string tools_because;
};

struct IndexScore {
    std::string name;   // "Disassembly depth"
    std::string symbol; // "S_DD"
    int weight = 0;     // hundredths
    ScoreRange score;
    std::string because;
};

struct RepairIndex {
    std::string source; // the regulation
    bool folding = false;
    std::vector<PartScore> parts;
    std::vector<IndexScore> scores;
    int lowest = 0;  // ten-thousandths
    int highest = 0; // ten-thousandths
    char lowest_class = 'E';
    char highest_class = 'E';
    std::vector<std::string> undeclared; // what the device does not say, and where to say it
    std::vector<std::string> notes;      // how it was counted
};

// A change of the design that would help.
struct DesignChange {
    std::string words; // in the bench's words, with the place of the line
    double seconds_saved = 0;
    int acts_saved = 0;
    std::vector<std::string> parts;  // those that it brings nearer
    std::vector<std::string> opened; // those that have no way out as the device is
};

struct Appraisal {
    std::string device;               // name
    std::string title;                // of the device
    std::string variant;              // empty: the device has no variants
    std::vector<PartAppraisal> parts; // by steps, then acts, then as declared; the last without way
    std::vector<WaitedFor> waited_for; // most first; items that no part waits for are left out
    std::optional<RepairIndex> index;  // of a product in its scope
    std::vector<DesignChange> changes; // most helpful first
};

// "3.35", "2.70": hundredths and ten-thousandths as decimals.
std::string hundredths(int value);
std::string ten_thousandths(int value);
// "3.00", "1.00 to 5.00"
std::string range_words(const ScoreRange& range);
// "2 min 5 s": language::said_time in English, for an appraisal is in English alone.
std::string time_words(double seconds);
// "4 screws M2 x 6, hexalobular 6; 2 latches"; empty when there are none
std::string counted_words(const std::vector<Counted>& counted);

// "40 s and 2 acts less together for cell and board; fan can be brought out"
std::string gain_words(const DesignChange& change);

// What stands beside an index wherever it is shown.
const std::string& index_disclaimer();
const std::string& index_tolerance();

} // namespace matchmark::guide
