// A line of each sort as it should look, for whoever wrote one that does not.
#include "parse/examples.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace matchmark::syntax {

namespace {

using K = Keyword;

struct Example {
    Keyword keyword = Keyword::none;
    std::string_view line;
};

constexpr auto declarations = std::to_array<Example>({
    {K::use, "use \"kettle.mmk\""},
    {K::device, "device kettle \"Kettle\""},
    {K::face, "face top 74 x 128 mm"},
    {K::part, "part lid \"lid\""},
    {K::fastener, "fastener lid-screws \"lid screw\" 4 x screw M3 x 8, hexalobular 10"},
    {K::connector, "connector motor-plug \"motor plug\" kind locking-tab-plug"},
    {K::bond, "bond lid-seal \"lid seal\" kind seal-tape"},
    {K::fluid, "fluid oil \"oil\" 0.5 l kind oil"},
    {K::energy, "energy mains \"mains\" kind mains-cord"},
    {K::function, "function heating \"It heats\""},
    {K::caution_on, "caution hot-base on base"},
    {K::danger_on, "danger live-base on base"},
    {K::warning_on, "warning sharp-lid on lid"},
    {K::notice_on, "notice thin-lid on lid"},
    {K::kind, "kind trap-door \"trap door\" is part"},
    {K::drive, "drive two-hole \"two-hole drive\""},
    {K::form, "form works-thread \"works thread\""},
    {K::thread, "thread W5 \"works thread 5\""},
    {K::grade, "grade class-8.8 \"steel of property class 8.8\""},
    {K::friction, "friction oiled \"lightly oiled\""},
    {K::timing, "timing bench \"our bench\""},
    {K::tool_kind, "tool-kind two-hole-driver \"two-hole driver\""},
    {K::gear, "gear apron \"apron\""},
    {K::rating, "rating IP6X \"dust-tight\""},
    {K::sign, "sign electricity \"Electricity\""},
    {K::hazard, "hazard stored-charge \"Stored charge\""},
    {K::guide, "guide open-lid \"Open the lid\""},
    {K::before_section, "before"},
    {K::take_apart, "take-apart"},
    {K::work, "work"},
    {K::put_back, "put-back"},
    {K::step, "step open \"Open the lid\""},
    {K::test, "test heats \"It heats\""},
});

constexpr auto item_details = std::to_array<Example>({
    {K::revision, "revision B"},
    {K::mass, "mass 312 g"},
    {K::sealed, "sealed IP67 by lid-seal"},
    {K::variant, "variant eu, uk"},
    {K::product, "product smartphone"},
    {K::updates, "updates 7 years"},
    {K::information, "information end-users"},
    {K::spares, "spares battery"},
    {K::supplied, "supplied opening-pick with product"},
    {K::kind_of, "kind circuit-board"},
    {K::in, "in lid"},
    {K::only, "only eu"},
    {K::covers, "covers board, motor"},
    {K::carries, "carries board, motor"},
    {K::blocks, "blocks board, motor"},
    {K::behind, "behind board or motor"},
    {K::under, "under board, lid-screws 2"},
    {K::holds, "holds lid to base"},
    {K::joins, "joins motor to board"},
    {K::feeds, "feeds board, motor through motor-plug"},
    {K::needs, "needs lid open to remove"},
    {K::torque, "torque 0.5 N.m"},
    {K::preload, "preload 18 kN"},
    {K::depth, "depth 6 mm"},
    {K::at, "at top 5,5 69,5"},
    {K::keep, "keep order, face"},
    {K::limit, "limit length at least 5 mm"},
    {K::renewed_as, "renewed as lid"},
    {K::one_use, "one use"},
    {K::used_again_if, "used again if \"it still grips\""},
    {K::used_again, "used again"},
    {K::told_by, "told by \"the blue patch\""},
    {K::safe_when_live, "safe when live"},
    {K::through, "through board, motor-plug"},
    {K::counts_as, "counts as battery"},
    {K::comes_with, "comes with cell"},
    {K::authorised_remotely, "authorised remotely"},
    {K::price, "price 14.50 EUR"},
});

constexpr auto kind_details = std::to_array<Example>({
    {K::needs, "needs open to remove"},
    {K::states, "states shut, open, out"},
    {K::also, "also charged, discharged"},
    {K::present_in, "present in shut, open"},
    {K::binds_in, "binds in shut"},
    {K::covers_in, "covers in shut"},
    {K::blocks_in, "blocks in shut"},
    {K::live_in, "live in plugged"},
    {K::may_end_in, "may end in shut, open"},
    {K::laid_first, "laid first"},
    {K::asks_for_torque, "asks for torque"},
    {K::asks_for_test, "asks for test"},
    {K::good_for, "good for 30 times"},
    {K::hazard_until, "hazard mains until unplugged on reach"},
    {K::waste, "waste electronic-waste"},
    {K::licensed, "licensed \"gas fitter\""},
    {K::wear, "wear insulating-gloves"},
    {K::order, "order isolate, discharge, prove"},
});

constexpr auto trade_details = std::to_array<Example>({
    {K::driven_by, "driven by hexalobular-driver or hexalobular-key"},
    {K::size, "size 6 across 1.75 mm for M2"},
    {K::at_a_pinch, "at a pinch slotted-driver 1.8 for 6"},
    {K::pitch_line, "pitch line 0.65"},
    {K::root, "root 1.23"},
    {K::form_of, "form metric"},
    {K::diameter, "diameter 2 mm"},
    {K::pitch, "pitch 0.40 mm"},
    {K::root_at_least, "root at least 1.4 mm"},
    {K::bears_on, "bears on 2.4..3.8 mm"},
    {K::breaks_at, "breaks at 0.37 N.m"},
    {K::tensile, "tensile 800 MPa"},
    {K::yield, "yield 640 MPa"},
    {K::shear, "shear 0.84"},
    {K::usual, "usual"},
    {K::coefficient, "coefficient 0.12"},
    {K::tool_change, "tool-change 6 s"},
    {K::identify, "identify 1 s"},
    {K::handle, "handle 2 s"},
    {K::position, "position 1.5 s"},
    {K::set_aside, "set-aside 1.5 s"},
    {K::turn, "turn 20 s"},
    {K::act, "act undo screw, bolt 9 s"},
    {K::tool_class, "class basic"},
    {K::sign_of, "sign electricity"},
    {K::number, "number W012"},
    {K::warns, "warns"},
    {K::obliges, "obliges"},
    {K::forbids, "forbids"},
    {K::outline, "outline \"M58 8 L30 55 L47 55 Z\""},
});

constexpr auto guide_details = std::to_array<Example>({
    {K::goal, "goal replace cell with cell-new"},
    {K::for_reader, "for competent"},
    {K::before, "before discharge cell below 25 %"},
    {K::spare, "spare cell-new \"cell, 3000 mAh\", 1 for cell"},
    {K::supply, "supply tape-new \"lid seal tape 2 mm\", 40 cm for lid-seal"},
    {K::tool, "tool driver-6 \"hexalobular driver 6\""},
    {K::author, "author \"R. Tolle\""},
    {K::date, "date 2026-03-31"},
    {K::derived, "derived"},
    {K::photo, "photo \"img/open.jpg\" \"The lid from the left\""},
    {K::mark_on_photo, "mark lid-screws 0.08,0.05 0.92,0.05"},
    {K::when, "when lid open, motor-plug connected"},
    {K::proves, "proves motor, heating"},
    {K::with, "with meter"},
});

template <std::size_t Size>
std::string_view example_in(const std::array<Example, Size>& among, Keyword keyword) {
    const auto* const found = std::find_if(among.begin(), among.end(), [&](const Example& example) {
        return example.keyword == keyword;
    });
    return found == among.end() ? std::string_view{} : found->line;
}

} // namespace

std::string_view example_line(Body body, Keyword keyword) {
    if (keyword == K::verb) {
        return body == Body::kind ? "open shut -> open by hand" : "undo lid-screws with driver-10";
    }
    if (keyword == K::count) {
        return "4 x screw M3 x 8";
    }
    if (keyword == K::quantity) {
        return "1.2 l";
    }
    if (body == Body::first_column) {
        return example_in(declarations, keyword);
    }
    if (body == Body::kind) {
        const std::string_view found = example_in(kind_details, keyword);
        return found.empty() ? example_in(item_details, keyword) : found;
    }
    for (const std::string_view found :
         {example_in(item_details, keyword), example_in(kind_details, keyword),
          example_in(trade_details, keyword), example_in(guide_details, keyword)}) {
        if (!found.empty()) {
            return found;
        }
    }
    return {};
}

} // namespace matchmark::syntax
