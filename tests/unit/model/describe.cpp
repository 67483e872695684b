// Parts, counts and states in words.
#include "model/describe.hpp"

#include <doctest/doctest.h>

using namespace matchmark::model;

namespace {

ItemId add_item(Model& model, const char* name, const char* title, std::uint16_t count) {
    if (model.kinds.empty()) {
        model.kinds.edit().emplace_back();
        model.kinds.edit().back().title = "screw";
    }
    Item item;
    item.name = name;
    item.title = title;
    item.count = count;
    item.kind = KindId{0};
    model.items.edit().push_back(item);
    return ItemId{static_cast<std::uint32_t>(model.items.size() - 1)};
}

} // namespace

TEST_CASE("items are named for authors by name and kind") {
    Model model;
    const ItemId lid = add_item(model, "lid-screws", "lid screw", 4);
    const ItemId post = add_item(model, "post", "", 1);
    CHECK(quoted(model, lid) == "`lid-screws`");
    CHECK(with_kind(model, lid) == "`lid-screws` (4 screws)");
    CHECK(with_kind(model, post) == "`post` (screw)");
}

TEST_CASE("items are named for readers by title and count") {
    Model model;
    CHECK(for_reader(model, add_item(model, "a", "lid screw", 4)) == "the 4 lid screws");
    CHECK(for_reader(model, add_item(model, "b", "display lid", 1)) == "the display lid");
    CHECK(for_reader(model, add_item(model, "c", "display lid", 1), false) == "display lid");
    CHECK(for_reader(model, add_item(model, "d", "The lid", 1)) == "the lid");
    CHECK(for_reader(model, add_item(model, "lid-screws", "", 4)) == "the 4 lid screws");
    CHECK(for_reader(model, add_item(model, "cell-plug", "", 1)) == "the cell plug");
    CHECK(for_reader(model, add_item(model, "e", "蓋ねじ", 4)) == "the 4 蓋ねじ");
}

TEST_CASE("some members of a group are named by their numbers") {
    Model model;
    const ItemId lid = add_item(model, "a", "lid screw", 4);
    CHECK(for_reader(model, ItemRef{lid, {1, 3}, {}}) == "the lid screws 1 and 3");
    CHECK(for_reader(model, ItemRef{lid, {2}, {}}) == "the lid screw 2");
    CHECK(for_reader(model, ItemRef{lid, {1, 2, 3, 4}, {}}) == "the 4 lid screws");
    CHECK(for_reader(model, ItemRef{lid, {}, {}}) == "the 4 lid screws");
}

TEST_CASE("units are printed as the SI Brochure prints them (5.4, table 4)") {
    CHECK(for_reader(*make_quantity(0.2, "N.m")) == "0.2 N·m");
    CHECK(for_reader(*make_quantity(60, "degC")) == "60 °C");
    CHECK(for_reader(*make_quantity(90, "deg")) == "90°");
    CHECK(for_reader(*make_quantity(10, "kohm")) == "10 kΩ");
    CHECK(for_reader(Limit{{}, make_quantity(60, "degC"), true}) == "below 60 °C");
    CHECK(for_reader(Limit{make_quantity(0.05, "mm"), make_quantity(0.15, "mm"), false}) ==
          "0.05 to 0.15 mm");
    CHECK(for_reader(Limit{}).empty());
}

TEST_CASE("plurals") {
    // Regular English plurals; the irregular ones are listed in the source (common practice, no
    // source).
    CHECK(plural("screw") == "screws");
    CHECK(plural("main board") == "main boards");
    CHECK(plural("bush") == "bushes");
    CHECK(plural("box") == "boxes");
    CHECK(plural("assembly") == "assemblies");
    CHECK(plural("key") == "keys");
    CHECK(plural("foot") == "feet");
    CHECK(plural("length of hose") == "lengths of hose");
    CHECK(plural("screw, long") == "screws, long");
    CHECK(plural("screw M2 x 6") == "screws M2 x 6");
    CHECK(plural("screw (upper)") == "screws (upper)");
    CHECK(plural("").empty());
    CHECK(plural("42") == "42");
    CHECK(counted(1, "screw") == "1 screw");
    CHECK(counted(0, "screw") == "0 screws");
    CHECK(counted(4, "screw") == "4 screws");
}

TEST_CASE("lists") {
    CHECK(list({}).empty());
    CHECK(list({"a"}) == "a");
    CHECK(list({"a", "b"}) == "a and b");
    CHECK(list({"a", "b", "c"}, "or") == "a, b or c");
}

TEST_CASE("a description has a phrase when it has all its words, in any order and case") {
    CHECK(has_words("hexalobular driver 6", "hexalobular-driver"));
    CHECK(has_words("Driver 6, hexalobular", "hexalobular-driver"));
    CHECK(has_words("hexalobular driver 6", "6"));
    CHECK_FALSE(has_words("hexalobular driver 60", "6"));
    CHECK_FALSE(has_words("hexalobular key 6", "hexalobular-driver"));
    CHECK(has_words("cell, 3000 mAh.", "mAh"));
    CHECK_FALSE(has_words("torque wrench 0.5 N.m", "0"));
    CHECK_FALSE(has_words("anything", "")); // or an item without a title would take every supply
}
