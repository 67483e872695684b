// What a tool's description says that it measures.
#include "model/stated_numbers.hpp"

#include <doctest/doctest.h>
#include <string>

using namespace matchmark::model;

namespace {

std::string most(const char* text, Measure measure) {
    Resource meter;
    meter.text = text;
    const auto found = measures_up_to(meter, measure);
    return found ? to_text(*found) : "";
}

} // namespace

TEST_CASE("a meter measures as far as the greatest of what its description names") {
    CHECK(most("meter 0 to 600 V", Measure::voltage) == "600 V");
    CHECK(most("meter 1000 V, 10 A", Measure::voltage) == "1000 V");
    CHECK(most("meter 1000 V, 10 A", Measure::current) == "10 A");
    CHECK(most("meter 600V/1000V, class III", Measure::voltage) == "1000 V");
    CHECK(most("gauge 0..2.5 bar", Measure::pressure) == "2.5 bar");
    CHECK(most("meter 20 mV to 50 V", Measure::voltage) == "50 V");
}

TEST_CASE("thousands may stand in groups") {
    CHECK(most("probe 40 000 V", Measure::voltage) == "40000 V");
    CHECK(most("probe 40,000 V", Measure::voltage) == "40000 V");
    CHECK(most("meter 2 600 V", Measure::voltage) == "2600 V"); // as SI writes it
}

TEST_CASE("a description without a range says nothing") {
    CHECK(most("multimeter", Measure::voltage).empty());
    CHECK(most("meter 600 Volt", Measure::voltage).empty());
    CHECK(most("meter 10 A", Measure::voltage).empty());
    CHECK(most("", Measure::voltage).empty());
    CHECK(most("meter 5", Measure::voltage).empty());
}
