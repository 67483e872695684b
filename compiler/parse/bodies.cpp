// Which words may open a line, under which declaration, and which rule of the grammar reads the
// rest.
#include "parse/bodies.hpp"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <utility>

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
         row<g::form>(K::form),
         row<g::thread>(K::thread),
         row<g::grade>(K::grade),
         row<g::friction>(K::friction),
         row<g::timing>(K::timing),
         row<g::tool_kind>(K::tool_kind),
         row<g::gear>(K::gear),
         row<g::rating_part>(K::rating),
         row<g::sign>(K::sign),
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
    add(bodies, {Body::fastener, Body::connector}, {row<g::torque>(K::torque)});
    add(bodies, {Body::fastener},
        {row<g::preload>(K::preload), row<g::depth>(K::depth), row<g::told_by>(K::told_by)});
    add(bodies, {Body::part, Body::fastener}, {row<g::limit>(K::limit)});
    add(bodies, {Body::part}, {row<g::carrier>(K::renewed_as)});
    add(bodies, {Body::connector}, {row<g::nothing_more>(K::safe_when_live)});
    add(bodies, {Body::connector, Body::part, Body::fastener},
        {row<g::nothing_more>(K::lets_nothing_out)});
    add(bodies, items,
        {row<g::positions>(K::at), row<g::keep>(K::keep), row<g::nothing_more>(K::one_use),
         row<g::used_again_if>(K::used_again_if), row<g::nothing_more>(K::used_again),
         row<g::variants>(K::only), row<g::price>(K::price), row<g::one_class>(K::counts_as)});
    add(bodies, {Body::fastener, Body::bond}, {row<g::reference_list>(K::comes_with)});
    add(bodies, {Body::part}, {row<g::nothing_more>(K::authorised_remotely)});
    add(bodies, {Body::device},
        {row<g::revision>(K::revision), row<g::mass>(K::mass), row<g::sealed>(K::sealed),
         row<g::variants>(K::variant), row<g::product_classes>(K::product),
         row<g::updates>(K::updates), row<g::one_class>(K::information),
         row<g::product_classes>(K::spares), row<g::supplied_tool>(K::supplied)});
    add(bodies, {Body::function}, {row<g::reference_list>(K::through)});
}

void add_kind_details(Bodies& bodies) {
    add(bodies, {Body::kind},
        {row<g::state_list>(K::states),
         row<g::state_list>(K::also),
         row<g::state_list>(K::present_in),
         row<g::state_list>(K::binds_in),
         row<g::state_list>(K::covers_in),
         row<g::state_list>(K::blocks_in),
         row<g::state_list>(K::live_in),
         row<g::state_list>(K::may_end_in),
         row<g::nothing_more>(K::laid_first),
         row<g::nothing_more>(K::lies_loose),
         row<g::nothing_more>(K::parted_last),
         row<g::nothing_more>(K::clamped),
         row<g::nothing_more>(K::lets_out),
         row<g::nothing_more>(K::bare),
         row<g::nothing_more>(K::runs_out),
         row<g::nothing_more>(K::rests_on_pressure),
         row<g::nothing_more>(K::guards),
         row<g::nothing_more>(K::protects),
         row<g::nothing_more>(K::moves),
         row<g::nothing_more>(K::passes_on),
         row<g::nothing_more>(K::one_use),
         row<g::used_again_if>(K::used_again_if),
         row<g::nothing_more>(K::used_again),
         row<g::good_for>(K::good_for),
         row<g::nothing_more>(K::asks_for_torque),
         row<g::nothing_more>(K::asks_for_test),
         row<g::kind_needs>(K::needs),
         row<g::hazard_until>(K::hazard_until),
         row<g::waste>(K::waste),
         row<g::licensed>(K::licensed)});
    add(bodies, {Body::hazard},
        {row<g::sign_of>(K::sign_of), row<g::wear>(K::wear), row<g::order>(K::order),
         row<g::lit_by>(K::lit_by)});
}

void add_trade_details(Bodies& bodies) {
    add(bodies, {Body::drive},
        {row<g::driven_by>(K::driven_by), row<g::drive_size>(K::size),
         row<g::at_a_pinch>(K::at_a_pinch)});
    add(bodies, {Body::form}, {row<g::one_number>(K::pitch_line), row<g::one_number>(K::root)});
    add(bodies, {Body::thread},
        {row<g::form_of>(K::form_of), row<g::amount>(K::diameter), row<g::amount>(K::pitch),
         row<g::amount>(K::root_at_least), row<g::bears_on>(K::bears_on),
         row<g::amount>(K::breaks_at)});
    add(bodies, {Body::grade},
        {row<g::strength>(K::tensile), row<g::strength>(K::yield), row<g::one_number>(K::shear),
         row<g::nothing_more>(K::usual)});
    add(bodies, {Body::friction},
        {row<g::one_number>(K::coefficient), row<g::nothing_more>(K::usual)});
    add(bodies, {Body::timing},
        {row<g::amount>(K::tool_change), row<g::amount>(K::identify), row<g::amount>(K::handle),
         row<g::amount>(K::position), row<g::amount>(K::set_aside), row<g::amount>(K::turn),
         row<g::timed_verb>(K::act), row<g::nothing_more>(K::usual)});
    add(bodies, {Body::tool_kind},
        {row<g::class_of_tool>(K::tool_class), row<g::torques>(K::sets_torque),
         row<g::nothing_more>(K::on_dead_circuits)});
    add(bodies, {Body::gear}, {row<g::sign_of>(K::sign_of)});
    add(bodies, {Body::sign},
        {row<g::number_of_sign>(K::number), row<g::nothing_more>(K::warns),
         row<g::nothing_more>(K::obliges), row<g::nothing_more>(K::forbids),
         row<g::outline>(K::outline)});
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
    add_trade_details(bodies);
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
    static constexpr auto opened = std::to_array<std::pair<Keyword, Body>>({
        {K::use, Body::bare},           {K::face, Body::bare},
        {K::device, Body::device},      {K::part, Body::part},
        {K::fastener, Body::fastener},  {K::connector, Body::connector},
        {K::bond, Body::bond},          {K::fluid, Body::fluid},
        {K::energy, Body::energy},      {K::function, Body::function},
        {K::caution_on, Body::message}, {K::danger_on, Body::message},
        {K::warning_on, Body::message}, {K::notice_on, Body::message},
        {K::kind, Body::kind},          {K::drive, Body::drive},
        {K::form, Body::form},          {K::thread, Body::thread},
        {K::grade, Body::grade},        {K::friction, Body::friction},
        {K::timing, Body::timing},      {K::tool_kind, Body::tool_kind},
        {K::gear, Body::gear},          {K::rating, Body::rating},
        {K::sign, Body::sign},          {K::hazard, Body::hazard},
        {K::guide, Body::guide},        {K::before_section, Body::section},
        {K::take_apart, Body::section}, {K::work, Body::section},
        {K::put_back, Body::put_back},  {K::step, Body::step},
        {K::test, Body::test},
    });
    const auto* const found = std::find_if(
        opened.begin(), opened.end(), [&](const auto& row) { return row.first == declaration; });
    return found == opened.end() ? Body::unknown : found->second;
}

bool takes_prose(Body body) {
    return body != Body::first_column && body != Body::photo && body != Body::bare;
}

std::string_view body_name(Body body) {
    static constexpr std::array<std::string_view, body_count> names = {
        "the first column", "a device",        "a part",     "a fastener",
        "a connector",      "a bond",          "a fluid",    "an energy",
        "a function",       "a kind",          "a drive",    "a form",
        "a thread",         "a grade",         "a friction", "a timing",
        "a tool-kind",      "a gear",          "a rating",   "a sign",
        "a hazard",         "a guide",         "a section",  "the put-back",
        "a step",           "a test",          "a photo",    "a safety message",
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
