// The names of the sorts of change.
#include "compare/change.hpp"

#include <array>

namespace matchmark::compare {

namespace {

struct Named {
    std::string_view name;
    std::string_view heading;
};

// In the order of Sort.
constexpr std::array<Named, 50> names{{
    {"action-added", "Action added"},
    {"action-dropped", "Action dropped"},
    {"action-moved", "Order of actions"},
    {"action-changed", "Action changed"},
    {"torque-changed", "Torque"},
    {"tightening-changed", "Order of tightening"},
    {"tool-added", "Tool added"},
    {"tool-dropped", "Tool dropped"},
    {"tool-changed", "Tool"},
    {"spare-added", "Spare added"},
    {"spare-dropped", "Spare dropped"},
    {"spare-changed", "Spare"},
    {"supply-added", "Supply added"},
    {"supply-dropped", "Supply dropped"},
    {"supply-changed", "Supply"},
    {"amount-changed", "Amount"},
    {"price-changed", "Price"},
    {"time-changed", "Time"},
    {"limit-changed", "Limit"},
    {"means-changed", "Means"},
    {"waste-changed", "Disposal"},
    {"marks-changed", "Match marks"},
    {"variants-changed", "Variants"},
    {"message-added", "Message added"},
    {"message-dropped", "Message dropped"},
    {"message-moved", "Place of a message"},
    {"message-changed", "Message"},
    {"test-added", "Test added"},
    {"test-dropped", "Test dropped"},
    {"test-changed", "Test"},
    {"test-moved", "Place of a test"},
    {"step-added", "Step added"},
    {"step-dropped", "Step dropped"},
    {"step-moved", "Order of steps"},
    {"step-retitled", "Title of a step"},
    {"text-changed", "Text"},
    {"picture-changed", "Picture"},
    {"reader-changed", "Reader"},
    {"goal-changed", "Goal"},
    {"title-changed", "Title"},
    {"gear-added", "Protection added"},
    {"gear-dropped", "Protection dropped"},
    {"fact-changed", "The device"},
    {"item-added", "Item added"},
    {"item-dropped", "Item dropped"},
    {"guide-added", "Guide added"},
    {"guide-dropped", "Guide dropped"},
    {"renamed", "Renamed"},
    {"kept-apart", "Beside the procedure"},
    {"other-change", "Other"},
}};

} // namespace

std::string_view name_of(Sort sort) { return names[static_cast<std::size_t>(sort)].name; }

std::string_view heading_of(Sort sort) { return names[static_cast<std::size_t>(sort)].heading; }

} // namespace matchmark::compare
