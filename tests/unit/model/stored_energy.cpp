// What is stored, and how long a charge takes to run down.
#include "model/stored_energy.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace matchmark::model;

namespace {

Item described_by(std::vector<Quantity> quantities) {
    Item item;
    item.spec.push_back(spec_phrase({"", {}, std::move(quantities)}));
    return item;
}

} // namespace

TEST_CASE("a charge runs down to 1/e in one time constant") {
    CHECK(discharge_time(1000, 0.001, std::exp(1.0), 1) == doctest::Approx(1));
    CHECK(discharge_time(10e3, 470e-6, 400, 60) == doctest::Approx(8.9164).epsilon(1e-4));
}

TEST_CASE("no time is needed below the limit, and none is known to reach nothing") {
    CHECK(discharge_time(10e3, 470e-6, 50, 60) == 0);
    CHECK(discharge_time(10e3, 470e-6, 60, 60) == 0);
    CHECK(discharge_time(10e3, 470e-6, 400, 0) == 0);
}

TEST_CASE("a cell holds charge times voltage, a capacitor half of C V squared") {
    const Item cell = described_by({*make_quantity(3000, "mAh"), *make_quantity(3.85, "V")});
    CHECK(*stored_energy(cell) == doctest::Approx(41580));
    CHECK(to_text(*stored_energy_shown(cell)) == "11.6 Wh");
    const Item capacitor = described_by({*make_quantity(470, "uF"), *make_quantity(400, "V")});
    CHECK(*stored_energy(capacitor) == doctest::Approx(37.6));
    CHECK(to_text(*stored_energy_shown(capacitor)) == "37.6 J");
    CHECK_FALSE(stored_energy(described_by({*make_quantity(400, "V")})).has_value());
    CHECK_FALSE(stored_energy_shown(described_by({*make_quantity(470, "uF")})).has_value());
}
