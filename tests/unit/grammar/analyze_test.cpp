// No rule of the grammar can loop without reading anything.
#include "grammar/declarations.hpp"

#include <doctest/doctest.h>

#include <tao/pegtl/contrib/analyze.hpp>

namespace g = matchmark::grammar;

TEST_CASE("no rule loops without reading") {
    const std::size_t problems =
        g::p::analyze<g::use>() + g::p::analyze<g::device>() + g::p::analyze<g::face>() +
        g::p::analyze<g::item_head>() + g::p::analyze<g::fluid_head>() +
        g::p::analyze<g::function_head>() + g::p::analyze<g::safety_message>() +
        g::p::analyze<g::kind>() + g::p::analyze<g::drive>() + g::p::analyze<g::form>() +
        g::p::analyze<g::thread>() + g::p::analyze<g::grade>() + g::p::analyze<g::friction>() +
        g::p::analyze<g::tool_kind>() + g::p::analyze<g::gear>() + g::p::analyze<g::rating_part>() +
        g::p::analyze<g::sign>() + g::p::analyze<g::hazard>() + g::p::analyze<g::guide>() +
        g::p::analyze<g::section>() + g::p::analyze<g::step>() + g::p::analyze<g::test>();
    CHECK(problems == 0);
}

TEST_CASE("no rule of a detail loops without reading") {
    const std::size_t problems =
        g::p::analyze<g::kind_of>() + g::p::analyze<g::counted>() + g::p::analyze<g::amount>() +
        g::p::analyze<g::revision>() + g::p::analyze<g::mass>() + g::p::analyze<g::sealed>() +
        g::p::analyze<g::variants>() + g::p::analyze<g::carrier>() +
        g::p::analyze<g::reference_list>() + g::p::analyze<g::behind>() +
        g::p::analyze<g::tie_to>() + g::p::analyze<g::feeds>() + g::p::analyze<g::needs>() +
        g::p::analyze<g::torque>() + g::p::analyze<g::positions>() + g::p::analyze<g::keep>() +
        g::p::analyze<g::limit>() + g::p::analyze<g::told_by>() + g::p::analyze<g::state_list>() +
        g::p::analyze<g::verb_definition>() + g::p::analyze<g::kind_needs>() +
        g::p::analyze<g::hazard_until>() + g::p::analyze<g::waste>() +
        g::p::analyze<g::licensed>() + g::p::analyze<g::driven_by>() + g::p::analyze<g::preload>() +
        g::p::analyze<g::depth>() + g::p::analyze<g::used_again_if>() +
        g::p::analyze<g::good_for>() + g::p::analyze<g::drive_size>() +
        g::p::analyze<g::at_a_pinch>() + g::p::analyze<g::one_number>() +
        g::p::analyze<g::form_of>() + g::p::analyze<g::bears_on>() + g::p::analyze<g::strength>() +
        g::p::analyze<g::class_of_tool>() + g::p::analyze<g::sign_of>() +
        g::p::analyze<g::number_of_sign>() + g::p::analyze<g::outline>() +
        g::p::analyze<g::wear>() + g::p::analyze<g::order>() + g::p::analyze<g::lit_by>();
    CHECK(problems == 0);
}

TEST_CASE("no rule of an action or a guide loops without reading") {
    const std::size_t problems =
        g::p::analyze<g::action>() + g::p::analyze<g::measure>() + g::p::analyze<g::do_guide>() +
        g::p::analyze<g::goal>() + g::p::analyze<g::before>() + g::p::analyze<g::for_reader>() +
        g::p::analyze<g::stock>() + g::p::analyze<g::listed_tool>() + g::p::analyze<g::author>() +
        g::p::analyze<g::dated>() + g::p::analyze<g::photo>() + g::p::analyze<g::mark_on_photo>() +
        g::p::analyze<g::when>() + g::p::analyze<g::proves>() + g::p::analyze<g::with>();
    CHECK(problems == 0);
}
