// What changed in a procedure, as data: one entry for one change, in the words of who does the
// work.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace matchmark::compare {

enum class Sort : std::uint8_t {
    action_added,
    action_dropped,
    action_moved,
    action_changed, // another verb on the same item, other members
    torque_changed, // or the force that it is worked out from
    tightening_changed,
    tool_added,
    tool_dropped,
    tool_changed,
    spare_added,
    spare_dropped,
    spare_changed,
    supply_added,
    supply_dropped,
    supply_changed,
    amount_changed,
    price_changed,
    time_changed,
    limit_changed,
    means_changed,
    waste_changed,
    marks_changed,
    variants_changed,
    message_added,
    message_dropped,
    message_moved,
    message_changed,
    test_added,
    test_dropped,
    test_changed,
    test_moved,
    step_added,
    step_dropped,
    step_moved,
    step_retitled,
    text_changed,
    picture_changed,
    reader_changed,
    goal_changed,
    title_changed,
    gear_added,
    gear_dropped,
    fact_changed, // of the device
    item_added,
    item_dropped,
    guide_added,
    guide_dropped,
    renamed,    // a note: the content is the same
    kept_apart, // a note: what the device or the head says that the procedure does not turn on
    other_change,
};

// "torque-changed", as JSON has it.
std::string_view name_of(Sort sort);
// "torque", "order of actions": what an entry stands under.
std::string_view heading_of(Sort sort);

struct StepPlace {
    unsigned number = 0; // as the reader counts; 0: the step is for none of the guide's variants
    std::string name;
    std::string title;
    bool in_old = false; // it is there no more
    friend bool operator==(const StepPlace&, const StepPlace&) = default;
};

struct Change {
    Sort sort = Sort::other_change;
    bool safety = false;
    bool matters = true; // false: an order that can be either way round
    std::string subject; // the name, in the source, of what it is about
    std::string what;    // a sentence
    std::string before;  // may be empty
    std::string after;   // may be empty
    std::vector<StepPlace> steps;
    std::string why;                  // why it matters, or does not; may be empty
    std::vector<std::string> with_it; // what follows from it, sentences
    std::size_t at = 0;               // its place in the work, for sorting
};

// Of one guide, or of a device.
struct Difference {
    std::string name;
    std::string title;
    std::vector<Change> changes; // what touches safety first, then in the order of the work
    std::vector<Change> notes;   // what changed in the source and leaves the procedure as it was
};

} // namespace matchmark::compare
