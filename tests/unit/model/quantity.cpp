// Units and decimal arithmetic against the SI Brochure and NIST SP 811.
#include "model/quantity.hpp"

#include <charconv>
#include <doctest/doctest.h>

using namespace matchmark::model;

namespace {

// NIST prints seven significant digits in most rows.
void check_base(double value, const char* unit, double base, double relative = 5e-7) {
    CAPTURE(unit);
    const auto quantity = make_quantity(value, unit);
    REQUIRE(quantity.has_value());
    CHECK(quantity->base == doctest::Approx(base).epsilon(relative));
}

std::string sum(double left, const char* left_unit, double right, const char* right_unit,
                bool subtract = false) {
    const auto total =
        add(*make_quantity(left, left_unit), *make_quantity(right, right_unit), subtract);
    return total ? to_text(*total) : "nothing";
}

} // namespace

TEST_CASE("inch and pound units have the factors of NIST SP 811, B.8") {
    check_base(1, "in", 2.54e-2, 1e-15);    // inch: 2.54 E-02 (exact)
    check_base(1, "ft", 3.048e-1, 1e-15);   // foot: 3.048 E-01 (exact)
    check_base(1, "oz", 2.834952e-2);       // ounce (avoirdupois): 2.834 952 E-02
    check_base(1, "lb", 4.535924e-1);       // pound (avoirdupois): 4.535 924 E-01
    check_base(1, "lbf", 4.448222);         // pound-force: 4.448 222 E+00
    check_base(1, "kgf", 9.80665, 1e-15);   // kilogram-force: 9.806 65 E+00 (exact)
    check_base(1, "lbf.ft", 1.355818);      // pound-force foot: 1.355 818 E+00
    check_base(1, "lbf.in", 1.129848e-1);   // pound-force inch: 1.129 848 E-01
    check_base(1, "kgf.m", 9.80665, 1e-15); // kilogram-force meter: 9.806 65 E+00 (exact)
    check_base(1, "psi", 6.894757e3);       // pound-force per square inch: 6.894 757 E+03
    check_base(1, "bar", 1e5, 1e-15);       // bar: 1.0 E+05 (exact)
    check_base(1, "kWh", 3.6e6, 1e-15);     // kilowatt hour: 3.6 E+06 (exact)
    check_base(1, "r/min", 1.666667e-2);    // revolution per minute: 1.666 667 E-02 s-1
    check_base(212, "degF", 373.15, 1e-15); // B.9: T/K = (t/degF + 459.67)/1.8; water boils
    check_base(32, "degF", 273.15, 1e-15);
}

TEST_CASE("metric units have the factors of the SI Brochure, tables 3, 4, 7 and 8") {
    check_base(1, "l", 1e-3, 1e-15);       // table 8: 1 l = 1 dm3 = 10^-3 m3
    check_base(1, "t", 1e3, 1e-15);        // table 8
    check_base(1, "d", 86400, 1e-15);      // table 8
    check_base(20, "degC", 293.15, 1e-15); // 2.3.1: t/degC = T/K - 273.15
    check_base(3000, "mAh", 10800, 1e-15); // 3 A for 3600 s
    check_base(10, "kohm", 1e4, 1e-15);
    check_base(100, "uF", 1e-4, 1e-15);
}

TEST_CASE("every spelling is known, and spellings of one unit are equal amounts") {
    CHECK(unit_spellings().size() > 70);
    for (const std::string& spelling : unit_spellings()) {
        CAPTURE(spelling);
        CHECK(make_quantity(1, spelling).has_value());
    }
    CHECK(make_quantity(1, "N·m")->base == make_quantity(1, "N.m")->base);
    CHECK(make_quantity(1, "N·m")->measure == Measure::torque);
    CHECK(make_quantity(1, "\u00B5F")->base == make_quantity(1, "\u03BCF")->base); // micro, mu
    CHECK(make_quantity(1, "\u2126")->base == make_quantity(1, "\u03A9")->base);   // ohm, omega
    CHECK(to_text(*make_quantity(5, "kgf\u22C5cm")) == "5 kgf\u22C5cm");           // the longest
    CHECK(Unit("kgf\u22C5cm") == "kgf\u22C5cm");
    CHECK(std::string_view(Unit()).empty());
    CHECK_FALSE(make_quantity(1, "furlong").has_value());
    CHECK_FALSE(make_quantity(1, "MM").has_value());
}

TEST_CASE("equal amounts have equal bases, whatever the unit") {
    CHECK(make_quantity(25.4, "mm")->base == make_quantity(1, "in")->base);
    CHECK(make_quantity(0.3, "m")->base == make_quantity(30, "cm")->base);
    CHECK(make_quantity(0.07, "N.m")->base == make_quantity(7, "cN.m")->base);
    CHECK(make_quantity(0.29, "V")->base == make_quantity(290, "mV")->base);
}

TEST_CASE("what measures different things is never added") {
    CHECK(sum(3, "mm", 2, "N.m") == "nothing");
    CHECK(sum(3, "J", 2, "N.m") == "nothing"); // equal dimensions; nobody tightens to a joule
    CHECK(sum(3, "EUR", 2, "CHF") == "nothing");
    CHECK(sum(3, "EUR", 2.5, "EUR") == "5.5 EUR");
    CHECK(sum(3, "", 2, "") == "5");
    CHECK(sum(3, "", 2, "mm") == "nothing");
}

TEST_CASE("sums of decimals stay decimal, and nothing is left of what cancels") {
    CHECK(sum(0.1, "mm", 0.2, "mm") == "0.3 mm");
    CHECK(sum(0.3, "mm", 0.1, "mm", true) == "0.2 mm");
    const auto rest = add(*make_quantity(0.3, "mm"), *make_quantity(0.1, "mm"), true);
    CHECK(add(*rest, *make_quantity(0.2, "mm"), true)->value == 0);
    CHECK(sum(1, "in", 25.4, "mm", true) == "0 in");
    CHECK(sum(20, "degC", 5, "K") == "25 degC");
    CHECK(sum(20, "degC", 9, "degF") == "25 degC"); // a difference of 9 degF is one of 5 K
    CHECK(sum(1, "h", 30, "min") == "1.5 h");
    CHECK(sum(1e15, "mm", 1, "mm") == "1000000000000001 mm");
}

TEST_CASE("an amount is converted within its measure alone") {
    CHECK(to_text(*convert(*make_quantity(1, "in"), "mm")) == "25.4 mm");
    CHECK(to_text(*convert(*make_quantity(100, "degC"), "degF")) == "212 degF");
    CHECK(to_text(*convert(*make_quantity(273.15, "K"), "degC")) == "0 degC");
    CHECK(to_text(*convert(*make_quantity(1500, "r/min"), "Hz")) == "25 Hz");
    CHECK(to_text(*convert(*make_quantity(0.1, "V"), "V")) == "0.1 V");
    CHECK_FALSE(convert(*make_quantity(1, "m"), "kg").has_value());
    CHECK_FALSE(convert(*make_quantity(1, "EUR"), "CHF").has_value());
}

TEST_CASE("a number is written with the fewest digits that read back, never with an exponent") {
    for (const double value : {0.1, 1.0 / 3, 12345678.9, 1e-7, 2.5e22, 5e-324, 1.7e308, -0.2}) {
        const std::string text = number_text(value);
        CAPTURE(text);
        double back = 0;
        std::from_chars(text.data(), text.data() + text.size(), back);
        CHECK(back == value);
        CHECK(text.find('e') == std::string::npos);
    }
    CHECK(number_text(0.20) == "0.2");
    CHECK(number_text(-0.0) == "0");
    CHECK(number_text(100) == "100");
}

TEST_CASE("limits are written as in the source") {
    const auto bar = [](double value) { return *make_quantity(value, "mm"); };
    CHECK(to_text(Limit{bar(5), {}, false}) == "at least 5 mm");
    CHECK(to_text(Limit{bar(5), {}, true}) == "above 5 mm");
    CHECK(to_text(Limit{{}, bar(5), false}) == "at most 5 mm");
    CHECK(to_text(Limit{{}, bar(5), true}) == "below 5 mm");
    CHECK(to_text(Limit{bar(0.05), bar(0.15), false}) == "0.05..0.15 mm");
    CHECK(to_text(Limit{make_quantity(1, "cm"), bar(15), false}) == "10..15 mm");
    CHECK(to_text(*make_quantity(45, "°")) == "45°"); // SI Brochure 5.4.3: no space
    CHECK(to_text(*make_quantity(25, "%")) == "25 %");
}
