// How the language's keywords are spelled.
#include "syntax/tree.hpp"

#include <array>
#include <cstddef>
#include <utility>

namespace matchmark::syntax {

namespace {

using Spelled = std::pair<Keyword, std::string_view>;

constexpr auto spellings = std::to_array<Spelled>({
    {Keyword::use, "use"},
    {Keyword::device, "device"},
    {Keyword::face, "face"},
    {Keyword::part, "part"},
    {Keyword::fastener, "fastener"},
    {Keyword::connector, "connector"},
    {Keyword::bond, "bond"},
    {Keyword::fluid, "fluid"},
    {Keyword::energy, "energy"},
    {Keyword::function, "function"},
    {Keyword::caution_on, "caution"},
    {Keyword::danger_on, "danger"},
    {Keyword::warning_on, "warning"},
    {Keyword::notice_on, "notice"},
    {Keyword::kind, "kind"},
    {Keyword::drive, "drive"},
    {Keyword::form, "form"},
    {Keyword::thread, "thread"},
    {Keyword::grade, "grade"},
    {Keyword::friction, "friction"},
    {Keyword::timing, "timing"},
    {Keyword::tool_kind, "tool-kind"},
    {Keyword::gear, "gear"},
    {Keyword::rating, "rating"},
    {Keyword::sign, "sign"},
    {Keyword::hazard, "hazard"},
    {Keyword::guide, "guide"},
    {Keyword::before_section, "before"},
    {Keyword::take_apart, "take-apart"},
    {Keyword::work, "work"},
    {Keyword::put_back, "put-back"},
    {Keyword::step, "step"},
    {Keyword::test, "test"},
    {Keyword::revision, "revision"},
    {Keyword::mass, "mass"},
    {Keyword::sealed, "sealed"},
    {Keyword::variant, "variant"},
    {Keyword::kind_of, "kind"},
    {Keyword::in, "in"},
    {Keyword::only, "only"},
    {Keyword::covers, "covers"},
    {Keyword::carries, "carries"},
    {Keyword::blocks, "blocks"},
    {Keyword::behind, "behind"},
    {Keyword::under, "under"},
    {Keyword::holds, "holds"},
    {Keyword::joins, "joins"},
    {Keyword::feeds, "feeds"},
    {Keyword::needs, "needs"},
    {Keyword::torque, "torque"},
    {Keyword::preload, "preload"},
    {Keyword::depth, "depth"},
    {Keyword::at, "at"},
    {Keyword::keep, "keep"},
    {Keyword::limit, "limit"},
    {Keyword::renewed_as, "renewed as"},
    {Keyword::laid_first, "laid first"},
    {Keyword::lies_loose, "lies loose"},
    {Keyword::parted_last, "parted last"},
    {Keyword::clamped, "clamped"},
    {Keyword::lets_out, "lets out"},
    {Keyword::bare, "bare"},
    {Keyword::runs_out, "runs out"},
    {Keyword::rests_on_pressure, "rests on pressure"},
    {Keyword::guards, "guards"},
    {Keyword::protects, "protects"},
    {Keyword::moves, "moves"},
    {Keyword::passes_on, "passes on"},
    {Keyword::one_use, "one use"},
    {Keyword::used_again_if, "used again if"},
    {Keyword::used_again, "used again"},
    {Keyword::told_by, "told by"},
    {Keyword::safe_when_live, "safe when live"},
    {Keyword::lets_nothing_out, "lets nothing out"},
    {Keyword::through, "through"},
    {Keyword::product, "product"},
    {Keyword::updates, "updates"},
    {Keyword::information, "information"},
    {Keyword::spares, "spares"},
    {Keyword::supplied, "supplied"},
    {Keyword::counts_as, "counts as"},
    {Keyword::comes_with, "comes with"},
    {Keyword::authorised_remotely, "authorised remotely"},
    {Keyword::price, "price"},
    {Keyword::states, "states"},
    {Keyword::also, "also"},
    {Keyword::binds_in, "binds in"},
    {Keyword::present_in, "present in"},
    {Keyword::covers_in, "covers in"},
    {Keyword::blocks_in, "blocks in"},
    {Keyword::live_in, "live in"},
    {Keyword::may_end_in, "may end in"},
    {Keyword::asks_for_torque, "asks for torque"},
    {Keyword::asks_for_test, "asks for test"},
    {Keyword::hazard_until, "hazard"},
    {Keyword::waste, "waste"},
    {Keyword::licensed, "licensed"},
    {Keyword::good_for, "good for"},
    {Keyword::driven_by, "driven by"},
    {Keyword::size, "size"},
    {Keyword::at_a_pinch, "at a pinch"},
    {Keyword::pitch_line, "pitch line"},
    {Keyword::root, "root"},
    {Keyword::form_of, "form"},
    {Keyword::diameter, "diameter"},
    {Keyword::pitch, "pitch"},
    {Keyword::root_at_least, "root at least"},
    {Keyword::bears_on, "bears on"},
    {Keyword::breaks_at, "breaks at"},
    {Keyword::tensile, "tensile"},
    {Keyword::yield, "yield"},
    {Keyword::shear, "shear"},
    {Keyword::usual, "usual"},
    {Keyword::coefficient, "coefficient"},
    {Keyword::tool_change, "tool-change"},
    {Keyword::identify, "identify"},
    {Keyword::handle, "handle"},
    {Keyword::position, "position"},
    {Keyword::set_aside, "set-aside"},
    {Keyword::turn, "turn"},
    {Keyword::act, "act"},
    {Keyword::tool_class, "class"},
    {Keyword::sets_torque, "sets torque"},
    {Keyword::on_dead_circuits, "on dead circuits"},
    {Keyword::sign_of, "sign"},
    {Keyword::number, "number"},
    {Keyword::warns, "warns"},
    {Keyword::obliges, "obliges"},
    {Keyword::forbids, "forbids"},
    {Keyword::outline, "outline"},
    {Keyword::wear, "wear"},
    {Keyword::order, "order"},
    {Keyword::lit_by, "lit by"},
    {Keyword::goal, "goal"},
    {Keyword::for_reader, "for"},
    {Keyword::before, "before"},
    {Keyword::spare, "spare"},
    {Keyword::supply, "supply"},
    {Keyword::tool, "tool"},
    {Keyword::author, "author"},
    {Keyword::date, "date"},
    {Keyword::derived, "derived"},
    {Keyword::photo, "photo"},
    {Keyword::mark_on_photo, "mark"},
    {Keyword::when, "when"},
    {Keyword::proves, "proves"},
    {Keyword::with, "with"},
    {Keyword::text, "text"},
    {Keyword::note, "note"},
    {Keyword::why, "why"},
    {Keyword::danger, "danger"},
    {Keyword::warning, "warning"},
    {Keyword::caution, "caution"},
    {Keyword::notice, "notice"},
});

constexpr auto by_keyword = [] {
    std::array<std::string_view, static_cast<std::size_t>(Keyword::verb) + 1> table{};
    for (const auto& [keyword, spelled] : spellings) {
        table[static_cast<std::size_t>(keyword)] = spelled;
    }
    return table;
}();

} // namespace

std::string_view spelling(Keyword keyword) { return by_keyword[static_cast<std::size_t>(keyword)]; }

bool is_prose(Keyword keyword) {
    switch (keyword) {
    case Keyword::text:
    case Keyword::note:
    case Keyword::why:
    case Keyword::danger:
    case Keyword::warning:
    case Keyword::caution:
    case Keyword::notice:
        return true;
    default:
        return false;
    }
}

} // namespace matchmark::syntax
