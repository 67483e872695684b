// Which words may open a line, under which declaration, and which rule of the grammar reads the
// rest.
#include "parse/bodies.hpp"

#include <array>
#include <initializer_list>

namespace matchmark::syntax {

namespace {

using K = Keyword;

constexpr std::size_t body_count = static_cast<std::size_t>(Body::unknown) + 1;
using Bodies = std::array<std::vector<Row>, body_count>;

template <class Rule> Row row(Keyword keyword) {
    return {spelling(keyword), keyword, match_line<Rule>};
}

void add(Bodies& bodies, std::initializer_list<Body> where, std::initializer_list<Row> added) {
    for (const Body body : where) {
        std::vector<Row>& into = bodies[static_cast<std::size_t>(body)];
        into.insert(into.end(), added.begin(), added.end());
    }
}

void add_declarations(Bodies& bodies) {
    add(bodies, {Body::first_column},
        {row<g::use>(K::use),
         row<g::device>(K::device),
         row<g::face>(K::face),
         row<g::item_head>(K::part),
         row<g::item_head>(K::fastener),
         row<g::item_head>(K::connector),
         row<g::item_head>(K::bond),
         row<g::fluid_head>(K::fluid),
         row<g::item_head>(K::energy),
         row<g::function_head>(K::function),
         row<g::safety_message>(K::caution_on),
         row<g::safety_message>(K::danger_on),
         row<g::safety_message>(K::warning_on),
         row<g::safety_message>(K::notice_on),
         row<g::kind>(K::kind),
         row<g::drive>(K::drive),
         row<g::thread>(K::thread),
         row<g::hazard>(K::hazard),
         row<g::guide>(K::guide),
         row<g::section>(K::before_section),
         row<g::section>(K::take_apart),
         row<g::section>(K::work),
         row<g::section>(K::put_back),
         row<g::step>(K::step),
         row<g::test>(K::test)});
}

void add_item_details(Bodies& bodies) {
    const std::initializer_list<Body> items = {Body::part, Body::fastener, Body::connector,
                                               Body::bond, Body::fluid,    Body::energy};
    add(bodies, items, {row<g::kind_of>(K::kind_of), row<g::carrier>(K::in)});
    add(bodies, {Body::part},
        {row<g::reference_list>(K::carries), row<g::reference_list>(K::covers),
         row<g::reference_list>(K::blocks)});
    add(bodies, {Body::fastener, Body::bond}, {row<g::tie_to>(K::holds)});
    add(bodies, {Body::connector, Body::bond}, {row<g::tie_to>(K::joins)});
    add(bodies, {Body::part, Body::energy}, {row<g::feeds>(K::feeds)});
    add(bodies, items,
        {row<g::behind>(K::behind), row<g::reference_list>(K::under), row<g::needs>(K::needs)});
    add(bodies, {Body::fastener}, {row<g::torque>(K::torque), row<g::told_by>(K::told_by)});
    add(bodies, {Body::part, Body::fastener}, {row<g::limit>(K::limit)});
    add(bodies, {Body::part}, {row<g::carrier>(K::renewed_as)});
    add(bodies, {Body::connector}, {row<g::nothing_more>(K::safe_when_live)});
    add(bodies, items,
        {row<g::positions>(K::at), row<g::keep>(K::keep), row<g::nothing_more>(K::one_use),
         row<g::nothing_more>(K::used_again), row<g::variants>(K::only)});
    add(bodies, {Body::device},
        {row<g::revision>(K::revision), row<g::mass>(K::mass), row<g::sealed>(K::sealed),
         row<g::variants>(K::variant)});
    add(bodies, {Body::function}, {row<g::reference_list>(K::through)});
}

void add_kind_details(Bodies& bodies) {
    add(bodies, {Body::kind},
        {row<g::state_list>(K::states), row<g::state_list>(K::also),
         row<g::state_list>(K::present_in), row<g::state_list>(K::binds_in),
         row<g::state_list>(K::covers_in), row<g::state_list>(K::blocks_in),
         row<g::state_list>(K::live_in), row<g::state_list>(K::may_end_in),
         row<g::nothing_more>(K::one_use), row<g::nothing_more>(K::used_again),
         row<g::nothing_more>(K::asks_for_torque), row<g::kind_needs>(K::needs),
         row<g::hazard_until>(K::hazard_until), row<g::waste>(K::waste),
         row<g::licensed>(K::licensed)});
    add(bodies, {Body::drive}, {row<g::driven_by>(K::driven_by)});
    add(bodies, {Body::thread}, {row<g::amount>(K::pitch), row<g::amount>(K::breaks_at)});
}

void add_guide_details(Bodies& bodies) {
    add(bodies, {Body::guide},
        {row<g::goal>(K::goal), row<g::for_reader>(K::for_reader), row<g::variants>(K::only),
         row<g::before>(K::before), row<g::stock>(K::spare), row<g::stock>(K::supply),
         row<g::listed_tool>(K::tool), row<g::author>(K::author), row<g::dated>(K::date),
         row<g::revision>(K::revision)});
    add(bodies, {Body::put_back}, {row<g::nothing_more>(K::derived)});
    add(bodies, {Body::test},
        {row<g::when>(K::when), row<g::proves>(K::proves), row<g::with>(K::with)});
    add(bodies, {Body::step, Body::test}, {row<g::photo>(K::photo)});
    add(bodies, {Body::photo}, {row<g::mark_on_photo>(K::mark_on_photo)});
}

Bodies all_bodies() {
    Bodies bodies;
    add_declarations(bodies);
    add_item_details(bodies);
    add_kind_details(bodies);
    add_guide_details(bodies);
    return bodies;
}

const Bodies& known_bodies() {
    static const Bodies bodies = all_bodies();
    return bodies;
}

} // namespace

const std::vector<Row>& rows(Body body) { return known_bodies()[static_cast<std::size_t>(body)]; }

Body opened_by(Keyword declaration) {
    switch (declaration) {
    case K::use:
    case K::face:
        return Body::bare;
    case K::device:
        return Body::device;
    case K::part:
        return Body::part;
    case K::fastener:
        return Body::fastener;
    case K::connector:
        return Body::connector;
    case K::bond:
        return Body::bond;
    case K::fluid:
        return Body::fluid;
    case K::energy:
        return Body::energy;
    case K::function:
        return Body::function;
    case K::caution_on:
    case K::danger_on:
    case K::warning_on:
    case K::notice_on:
        return Body::message;
    case K::kind:
        return Body::kind;
    case K::drive:
        return Body::drive;
    case K::thread:
        return Body::thread;
    case K::hazard:
        return Body::hazard;
    case K::guide:
        return Body::guide;
    case K::before_section:
    case K::take_apart:
    case K::work:
        return Body::section;
    case K::put_back:
        return Body::put_back;
    case K::step:
        return Body::step;
    case K::test:
        return Body::test;
    default:
        return Body::unknown;
    }
}

bool takes_prose(Body body) {
    return body != Body::first_column && body != Body::photo && body != Body::bare;
}

std::string_view body_name(Body body) {
    static constexpr std::array<std::string_view, body_count> names = {
        "the first column", "a device",        "a part",    "a fastener", "a connector",
        "a bond",           "a fluid",         "an energy", "a function", "a kind",
        "a drive",          "a thread",        "a hazard",  "a guide",    "a section",
        "the put-back",     "a step",          "a test",    "a photo",    "a safety message",
        "this declaration", "this declaration"};
    return names[static_cast<std::size_t>(body)];
}

std::string homes(std::string_view spelling) {
    std::vector<std::string_view> found;
    for (std::size_t at = static_cast<std::size_t>(Body::device); at < body_count; ++at) {
        for (const Row& candidate : known_bodies()[at]) {
            if (candidate.spelling == spelling) {
                found.push_back(body_name(static_cast<Body>(at)));
                break;
            }
        }
    }
    std::string listed;
    for (std::size_t at = 0; at < found.size(); ++at) {
        if (at > 0) {
            listed += at + 1 == found.size() ? " or " : ", ";
        }
        listed += found[at];
    }
    return listed;
}

Keyword prose_keyword(std::string_view word) {
    for (const Keyword keyword :
         {K::text, K::note, K::why, K::danger, K::warning, K::caution, K::notice}) {
        if (spelling(keyword) == word) {
            return keyword;
        }
    }
    return K::none;
}

Slip match_count(Matching& matching, std::uint32_t begin, std::uint32_t end) {
    return match_line<g::counted>(matching, begin, end);
}

Slip match_amount(Matching& matching, std::uint32_t begin, std::uint32_t end) {
    return match_line<g::amount>(matching, begin, end);
}

Slip match_verb_definition(Matching& matching, std::uint32_t begin, std::uint32_t end) {
    return match_line<g::verb_definition>(matching, begin, end);
}

Matcher action_matcher(std::string_view verb) {
    if (verb == "measure") {
        return match_line<g::measure>;
    }
    return verb == "do" ? match_line<g::do_guide> : match_line<g::action>;
}

} // namespace matchmark::syntax
