// What a job costs: prices of the guide and of the device, what has none, labour up to the minute.
#include "support/in_text.hpp"
#include "unit/drive/bench_files.hpp"

#include <doctest/doctest.h>

using namespace matchmark;
using matchmark::test::has;
using test::Desk;

namespace {

constexpr const char* device = R"(timing bench "Our bench"
  tool-change 4 s
  usual

device lamp "Bench lamp"

part body "body"
part shade "shade"
  price      12.25 EUR
part bulb "bulb" kind lamp
  behind     shade
  price      3.10 EUR
fastener screws "screw" 2 x screw M3 x 8, hexalobular 10
  holds      shade to body
  price      0.15 EUR
)";

constexpr const char* guide = R"(use "lamp.mmk"

guide new-bulb "Renew the bulb, and the shade"
  goal       replace bulb with bulb-new
  for        competent
  spare      bulb-new "bulb", 1 for bulb
  spare      shade-new "shade", 1, 9.99 EUR for shade
  supply     screws-new "screw", 2 for screws
  supply     rag "rag", 1
  tool       driver-10 "hexalobular driver 10"

take-apart

step open "Open it"
  undo       screws with driver-10
  remove     shade
  remove     bulb

work

step renew "Renew the bulb"
  replace    bulb with bulb-new
  replace    shade with shade-new

put-back
  derived

test light "It shines"
  proves     bulb

test sits "The shade sits firmly"
  proves     shade
)";

Desk desk_with_lamp() {
    Desk desk;
    desk.disk.files["lamp.mmk"] = device;
    desk.disk.files["bulb.mmk"] = guide;
    return desk;
}

} // namespace

TEST_CASE("prices are the guide's, else the device's, and what has none is told") {
    Desk desk = desk_with_lamp();
    REQUIRE(desk.run({"quote", "bulb.mmk", "--rate", "48 EUR/h"}) == 0);
    CHECK(has(desk.out, "Quotation: Renew the bulb, and the shade"));
    CHECK(has(desk.out, "3.10 EUR"));
    CHECK(has(desk.out, "9.99 EUR"));
    CHECK(has(desk.out, "0.30 EUR")); // two screws
    CHECK(has(desk.out, "no price"));
    CHECK(has(desk.out, "Open: `rag` has no price and is not in the total."));
    // undo 2 x 8 + driver 4 + remove 4 + 6, fit 6 + 4, fasten 2 x 8 (driver in hand): 56 s
    CHECK(has(desk.out, "Labour: 56 s by timing `bench`, up to whole minutes."));
    CHECK(has(desk.out, "1 min"));
    // 3.10 + 9.99 + 0.30 + 48.00 / 60
    CHECK(has(desk.out, "14.19 EUR"));
    CHECK(has(desk.out, "  total   without 1 unpriced"));
}

TEST_CASE("a markup is on spares and supplies alone, and half a cent goes up") {
    Desk desk = desk_with_lamp();
    REQUIRE(desk.run(
                {"quote", "bulb.mmk", "--rate", "0.80 EUR/min", "--markup", "10 %", "--csv"}) == 0);
    CHECK(has(desk.out, "guide,sort,description,amount,price,currency\r\n"));
    CHECK(has(desk.out, "new-bulb,spare,bulb,1,3.41,EUR\r\n"));
    CHECK(has(desk.out, "new-bulb,spare,shade,1,10.99,EUR\r\n")); // 10.989
    CHECK(has(desk.out, "new-bulb,supply,rag,1,,\r\n"));
    CHECK(has(desk.out, "new-bulb,labour,at 48.00 EUR/h,1 min,0.80,EUR\r\n"));
    CHECK(has(desk.out, "new-bulb,total,without 1 unpriced,,"));
}

TEST_CASE("each currency has its total") {
    Desk desk = desk_with_lamp();
    REQUIRE(desk.run({"quote", "bulb.mmk", "--rate", "60 USD/h", "--json"}) == 0);
    CHECK(has(desk.out, "\"minutes\": 1"));
    CHECK(has(desk.out, "\"price_from\": \"device\""));
    const auto totals = desk.out.find("\"totals\"");
    REQUIRE(totals != std::string::npos);
    CHECK(has(desk.out.substr(totals), "\"amount\": \"13.39\""));
    CHECK(has(desk.out.substr(totals), "\"amount\": \"1.00\""));
}

TEST_CASE("what is asked wrongly is told, and nothing is quoted") {
    Desk desk = desk_with_lamp();
    CHECK(desk.run({"quote", "bulb.mmk"}) == 2);
    CHECK(has(desk.err, "--rate \"48 EUR/h\""));
    CHECK(desk.run({"quote", "bulb.mmk", "--rate", "48 EUR"}) == 2);
    CHECK(desk.run({"quote", "bulb.mmk", "--rate", "48 kg/h"}) == 2);
    CHECK(desk.run({"quote", "bulb.mmk", "--rate", "48 EUR/h", "--markup", "3 mm"}) == 2);
    CHECK(desk.run({"quote", "bulb.mmk", "--rate", "48 EUR/h", "--csv", "--json"}) == 2);
    CHECK(desk.run({"quote", "lamp.mmk", "--rate", "48 EUR/h"}) == 2);
    CHECK(has(desk.err, "declares no guide"));
    desk.disk.files["bad.mmk"] = "use \"lamp.mmk\"\n\nguide bad \"Bad\"\n  goal replace none\n";
    CHECK(desk.run({"quote", "bad.mmk", "--rate", "48 EUR/h"}) == 1);
}

TEST_CASE("a draft has the price of what it renews") {
    Desk desk = desk_with_lamp();
    REQUIRE(desk.run({"draft", "lamp.mmk", "--goal", "replace bulb"}) == 0);
    CHECK(has(desk.out, "1, 3.10 EUR for bulb"));
}
