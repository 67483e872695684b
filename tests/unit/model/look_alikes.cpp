// Screws that a bench would mix up, and the depth of a hole.
#include "model/look_alikes.hpp"

#include <doctest/doctest.h>

using namespace matchmark::model;

namespace {

Thread thread(const char* name, const char* form, double diameter_mm) {
    Thread made;
    made.name = name;
    made.form = ThreadForm{form, form, 0.65, 1.23, {}};
    made.diameter = make_quantity(diameter_mm, "mm");
    return made;
}

Model threads() {
    Model model;
    model.threads.edit() = {thread("A3", "a", 3), thread("A4", "a", 4), thread("A4x0.5", "a", 4),
                            thread("A5", "a", 5), thread("B3.5", "b", 3.5)};
    return model;
}

Item screw(const char* of, double length_mm, const char* head = "pan") {
    Item item;
    item.kind = KindId{0};
    item.bolt.edit().thread = of;
    item.bolt.edit().length_mm = length_mm;
    item.spec.push_back(spec_phrase({std::string(of) + " x 1", {of, "x", "1"}, {}}));
    item.spec.push_back(spec_phrase({head, {head}, {}}));
    return item;
}

} // namespace

TEST_CASE("threads are neighbours when none of their form lies between") {
    const Model model = threads();
    CHECK(are_neighbours(model, model.threads[0], model.threads[1]));
    CHECK(are_neighbours(model, model.threads[1], model.threads[2]));
    CHECK(are_neighbours(model, model.threads[3], model.threads[2]));
    CHECK_FALSE(are_neighbours(model, model.threads[0], model.threads[3]));
    CHECK_FALSE(are_neighbours(model, model.threads[0], model.threads[4]));
    CHECK_FALSE(are_neighbours(model, model.threads[0], model.threads[0]));
}

TEST_CASE("lengths are told apart from the larger of a millimetre and a tenth on") {
    const Model model = threads();
    CHECK(likeness(model, screw("A3", 6), screw("A3", 6.9)) == Likeness::length);
    CHECK(likeness(model, screw("A3", 6), screw("A3", 7)) == Likeness::none);
    CHECK(likeness(model, screw("A3", 30), screw("A3", 32)) == Likeness::length);
    CHECK(likeness(model, screw("A3", 30), screw("A3", 34)) == Likeness::none);
}

TEST_CASE("equal screws may change places, screws with other heads are seen") {
    const Model model = threads();
    CHECK(likeness(model, screw("A3", 6), screw("A3", 6)) == Likeness::none);
    CHECK(likeness(model, screw("A3", 6), screw("A3", 6.5, "cheese")) == Likeness::none);
    CHECK(likeness(model, screw("A3", 6), screw("A3", 0)) == Likeness::none);
    CHECK(likeness(model, screw("", 6), screw("", 6.5)) == Likeness::none);
}

TEST_CASE("neighbouring threads of one length are alike") {
    const Model model = threads();
    CHECK(likeness(model, screw("A3", 6), screw("A4", 6)) == Likeness::thread);
    CHECK(likeness(model, screw("A3", 6), screw("A5", 6)) == Likeness::none);
    CHECK(likeness(model, screw("A3", 6), screw("A4", 8)) == Likeness::none);
    CHECK(likeness(model, screw("A3", 6), screw("unknown", 6)) == Likeness::none);
}

TEST_CASE("a screw passes the depth of a hole by what it is longer") {
    Item hole = screw("A3", 6);
    CHECK(passes_depth_by(screw("A3", 9), hole) == 0);
    hole.rare.edit().depth = make_quantity(0.65, "cm");
    CHECK(passes_depth_by(screw("A3", 8), hole) == doctest::Approx(1.5));
    CHECK(passes_depth_by(screw("A3", 6.5), hole) == 0);
    CHECK(passes_depth_by(screw("A3", 0), hole) == 0);
    CHECK(goes_into(screw("A3", 8), hole));
    CHECK_FALSE(goes_into(screw("A4", 8), hole));
    CHECK_FALSE(goes_into(screw("A3", 8, "cheese"), hole));
}
