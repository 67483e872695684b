// Numbers for the bench, and the library browsed, by the real program.
#include "program/workshop.hpp"

#include <nlohmann/json.hpp>

using matchmark::test::Ran;
using matchmark::test::Workshop;

namespace {

double value_of(const Ran& ran, const std::string& name) {
    const auto object = nlohmann::json::parse(ran.out);
    for (const auto& figure : object["figures"]) {
        if (figure["name"] == name)
            return figure["value"].get<double>();
    }
    FAIL("no figure ", name, " in ", ran.out);
    return 0;
}

void check_told_off(const Ran& ran, const std::string& words) {
    CAPTURE(ran.err);
    CHECK(ran.code == 2);
    CHECK(ran.out.empty());
    CHECK(ran.complained(words));
}

// A thread and a grade of the test's own, so that the numbers do not hang on the library: M6 of
// class 8.8, ISO 898-1 and ISO 898-7.
constexpr const char* own_thread = "form own-form \"own form\"\n"
                                   "  pitch line 0.649519\n"
                                   "  root       1.226869\n"
                                   "thread Q6\n"
                                   "  form       own-form\n"
                                   "  diameter   6 mm\n"
                                   "  pitch      1 mm\n"
                                   "  root at least 4.596 mm\n"
                                   "  bears on   6.6..10 mm\n"
                                   "thread Q7\n"
                                   "  pitch      1 mm\n"
                                   "grade class-98 \"steel of class 98\"\n"
                                   "  tensile    800 MPa\n"
                                   "  yield      640 MPa\n"
                                   "  shear      0.84\n"
                                   "friction soapy \"with soap\"\n"
                                   "  coefficient 0.12\n";

} // namespace

TEST_CASE("reckon torque: what a screw bears, and torque and preload both ways") {
    Workshop shop;
    shop.put("own.mmk", own_thread);
    const std::vector<std::string> asked = {"reckon", "torque", "Q6",     "class 98",
                                            "soapy",  "--in",   "own.mmk"};
    const auto with = [&](std::vector<std::string> more) {
        more.insert(more.begin(), asked.begin(), asked.end());
        more.emplace_back("--json");
        return shop.run(more);
    };
    const Ran plain = with({});
    CHECK(plain.code == 0);
    CHECK(value_of(plain, "stress area") == doctest::Approx(20.1));    // ISO 898-1, table
    CHECK(value_of(plain, "breaking force") == doctest::Approx(16.1)); // ISO 898-1, table
    CHECK(value_of(plain, "breaking torque") == doctest::Approx(13).epsilon(0.02)); // ISO 898-7
    const double torque = value_of(with({"--preload", "9 kN"}), "torque for 9 kN");
    const Ran back = with({"--torque", std::to_string(torque) + " N.m"});
    const auto figures = nlohmann::json::parse(back.out)["figures"];
    CHECK(figures[figures.size() - 2]["value"].get<double>() == doctest::Approx(9).epsilon(0.005));
    for (const auto& figure : figures)
        CHECK_FALSE(figure["source"].get<std::string>().empty());
    CHECK(shop.run({"reckon", "torque", "Q6", "class", "98", "soapy", "--in", "own.mmk"}).out ==
          shop.run(asked).out);
}

TEST_CASE("reckon torque: what is wrong is said") {
    Workshop shop;
    shop.put("own.mmk", own_thread);
    const auto run = [&](std::vector<std::string> words) {
        words.insert(words.begin(), {"reckon", "torque"});
        words.insert(words.end(), {"--in", "own.mmk"});
        return shop.run(words);
    };
    check_told_off(run({}), "name a thread");
    check_told_off(run({"Q66"}), "did you mean `Q6`?");
    check_told_off(run({"Q6", "class 98", "soapi"}), "did you mean `soapy`?");
    check_told_off(run({"Q6", "class-98", "soapy", "--preload", "9 N.m"}), "is a torque");
    check_told_off(run({"Q6", "class-98", "soapy", "--torque", "9 Nn"}), "there is no unit `Nn`");
    check_told_off(run({"Q6", "class-98", "soapy", "--torque", "much"}), "is no quantity");
    check_told_off(run({"Q6", "class-98", "soapy", "--torque", "1 N.m", "--preload", "1 kN"}),
                   "not both");
    check_told_off(run({"Q7", "class-98", "soapy"}), "too little is known");
    check_told_off(shop.run({"reckon", "torque", "Q6", "--in", "none.mmk"}), "none.mmk");
}

TEST_CASE("reckon discharge and energy: textbook numbers") {
    Workshop shop;
    const Ran ran =
        shop.run({"reckon", "discharge", "10 kohm", "470 uF", "400 V", "--to", "60 V", "--json"});
    CHECK(value_of(ran, "time") == doctest::Approx(8.92));
    CHECK(value_of(ran, "energy") == doctest::Approx(37.6));
    CHECK(value_of(ran, "current at first") == doctest::Approx(40));
    CHECK(value_of(ran, "power at first") == doctest::Approx(16));
    CHECK(shop.run({"reckon", "energy", "3000 mAh", "3.85 V"}).told("11.6 Wh"));
    CHECK(shop.run({"reckon", "energy", "3000", "mAh", "3.85", "V"}).told("11.6 Wh"));
    const auto discharge = [&](const std::string& voltage, const std::string& to) {
        return shop.run({"reckon", "discharge", "470 uF", voltage, "10 kohm", "--to", to});
    };
    check_told_off(discharge("400 V", "400 V"), "from the beginning");
    check_told_off(discharge("400 V", "0 V"), "above 0");
    check_told_off(discharge("0 V", "60 V"), "leaves nothing");
    check_told_off(discharge("400 A", "60 V"), "a voltage is missing");
    check_told_off(discharge("470 nF", "60 V"), "given twice");
    check_told_off(shop.run({"reckon", "discharge", "470 uF", "400 V", "10 kohm"}), "--to");
    check_told_off(shop.run({"reckon", "energy", "3.85 V"}), "give a charge or a capacitance");
    check_told_off(shop.run({"reckon", "energy", "3 Ah", "4 V", "2 s"}), "not asked for");
    check_told_off(shop.run({"reckon", "energy", "3 Ah", "4"}), "has no unit");
}

TEST_CASE("reckon order: every member once, and the torque of each pass") {
    Workshop shop;
    for (int count = 1; count <= 24; ++count) {
        const Ran ran = shop.run({"reckon", "order", "star", std::to_string(count), "--json"});
        auto order = nlohmann::json::parse(ran.out)["order"].get<std::vector<int>>();
        std::sort(order.begin(), order.end());
        REQUIRE(static_cast<int>(order.size()) == count);
        for (int i = 0; i < count; ++i)
            CHECK(order[static_cast<std::size_t>(i)] == i + 1);
    }
    const Ran passes =
        shop.run({"reckon", "order", "star", "8", "--torque", "24 N.m", "--passes", "3"});
    CHECK(passes.told("1 5 3 7 2 6 4 8"));
    CHECK(passes.told("7.2 N"));
    CHECK(passes.told("15.6 N"));
    CHECK(shop.run({"reckon", "order", "spiral", "--at", "0,0 10,0 5,0"}).told("3 2 1"));
    check_told_off(shop.run({"reckon", "order"}), "star or spiral");
    check_told_off(shop.run({"reckon", "order", "stra", "4"}), "did you mean `star`?");
    check_told_off(shop.run({"reckon", "order", "star"}), "say how many");
    check_told_off(shop.run({"reckon", "order", "star", "0"}), "no count");
    check_told_off(shop.run({"reckon", "order", "spiral", "5"}), "worked out from places");
    check_told_off(shop.run({"reckon", "order", "star", "3", "--at", "0,0 1,1"}), "have 2 places");
    check_told_off(shop.run({"reckon", "order", "star", "--at", "0,0 1"}), "are no places");
    check_told_off(shop.run({"reckon", "order", "star", "4", "--passes", "0"}), "passes");
    check_told_off(shop.run({"reckon", "order", "star", "4", "--to", "6 V"}), "takes no --to");
    check_told_off(shop.run({"reckon", "torqe"}), "did you mean `torque`?");
    check_told_off(shop.run({"reckon"}), "say what to reckon");
}

TEST_CASE("kinds: each sort of declaration, in words and in JSON") {
    Workshop shop;
    shop.put("own.mmk", std::string(own_thread) +
                            "tool-kind bead-puller \"bead puller\"\n  class special\n"
                            "sign wear-hat \"Wear a hat\"\n  number M900\n  obliges\n"
                            "gear hat \"hard hat\"\n  sign wear-hat\n"
                            "rating QX7 \"kept from rain\"\n"
                            "hazard falling-cat \"Falling cat\"\n  sign wear-hat\n  wear hat\n"
                            "  order unplug, discharge\n  caution: Cats fall. Look up.\n"
                            "drive nine-lobe \"nine-lobe socket\"\n  driven by bead-puller\n"
                            "  size 4 across 2 mm for Q6\n");
    const auto told = [&](const std::string& word, const std::string& words) {
        const Ran ran = shop.run({"kinds", word, "--in", "own.mmk"});
        CAPTURE(word);
        CAPTURE(ran.out);
        CHECK(ran.code == 0);
        CHECK(ran.told(words));
    };
    told("Q6", "20.1 mm");
    told("q6", "nine-lobe 4");
    told("class-98", "0.84 of its tensile strength");
    told("soapy", "0.12");
    told("bead-puller", "special to the product");
    told("wear-hat", "M900 in ISO 7010");
    told("hat", "falling-cat");
    told("QK7", "kept from rain"); // X stands for any one sign
    told("falling-cat", "unplug, discharge");
    told("nine-lobe", "4, 2 mm across, for Q6");
    told("own-form", "Q6");
    told("falling cat", "falling-cat");
    for (const char* sort : {"threads", "grade", "friction", "tool-kinds", "sign", "rating",
                             "hazards", "drives", "form", "gear"}) {
        const Ran ran = shop.run({"kinds", sort, "--in", "own.mmk"});
        CAPTURE(sort);
        CHECK(ran.code == 0);
    }
    const auto object =
        nlohmann::json::parse(shop.run({"kinds", "Q6", "--in", "own.mmk", "--json"}).out);
    CHECK(object["threads"][0]["stress_area"] == "20.1 mm2");
    CHECK(object["kinds"].empty());
    check_told_off(shop.run({"kinds", "--markdown", "--json"}), "--markdown");
    check_told_off(shop.run({"kinds", "screwqe"}), "did you mean");
}
