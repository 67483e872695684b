// In which order screws are tightened and how far in each pass, by model/tightening_order.hpp.
#include "drive/figures.hpp"
#include "drive/inputs.hpp"
#include "drive/reckoning.hpp"
#include "model/describe.hpp"
#include "model/tightening_order.hpp"

#include <fmt/core.h>

#include <charconv>

namespace matchmark::drive {

namespace {

constexpr int most_members = 999;
constexpr int most_passes = 20;

// A whole number from 1 to `most`, or 0.
int whole(const std::string& text, int most) {
    int value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool good = read.ec == std::errc{} && read.ptr == text.data() + text.size();
    return good && value >= 1 && value <= most ? value : 0;
}

bool read_coordinate(const char*& at, const char* end, double& value) {
    const auto read = std::from_chars(at, end, value);
    at = read.ptr;
    return read.ec == std::errc{};
}

// "5,5 69,5"; nothing when some place is not two numbers with a comma between.
std::optional<std::vector<model::Point>> read_places(const std::string& text) {
    std::vector<model::Point> places;
    const char* at = text.data();
    const char* const end = at + text.size();
    while (at != end) {
        if (*at == ' ') {
            ++at;
            continue;
        }
        model::Point place;
        if (!read_coordinate(at, end, place.x) || at == end || *at != ',')
            return std::nullopt;
        ++at;
        if (!read_coordinate(at, end, place.y) || (at != end && *at != ' '))
            return std::nullopt;
        places.push_back(place);
    }
    if (places.empty())
        return std::nullopt;
    return places;
}

struct Asked {
    std::string pattern;
    std::vector<model::Point> places;
    int count = 0;
};

std::variant<Asked, std::string> read_asked(const ReckonOptions& options) {
    const std::vector<std::string>& words = options.words;
    if (words.empty() || !model::is_pattern(words[0])) {
        const std::string word = words.empty() ? "" : words[0];
        return fmt::format("name a pattern: {}{}", model::list(model::pattern_names(), "or"),
                           did_you_mean(word, model::pattern_names()));
    }
    Asked asked{words[0], {}, 0};
    if (words.size() > 2)
        return fmt::format("`{}` is one word too many", words[2]);
    if (words.size() == 2) {
        asked.count = whole(words[1], most_members);
        if (asked.count == 0)
            return fmt::format("`{}` is no count from 1 to {}", words[1], most_members);
    }
    if (!options.at.empty()) {
        const auto places = read_places(options.at);
        if (!places || places->size() > most_members)
            return fmt::format("`{}` are no places: write them as \"5,5 69,5\"", options.at);
        asked.places = *places;
        const int found = static_cast<int>(places->size());
        if (asked.count != 0 && asked.count != found)
            return fmt::format("{} members have {}", asked.count,
                               model::counted(places->size(), "place"));
        asked.count = found;
    }
    if (asked.count == 0)
        return "say how many there are, or where: --at \"5,5 69,5\"";
    if (asked.pattern != model::pattern_names().front() && asked.places.empty())
        return fmt::format("{} is worked out from places: --at \"5,5 69,5\"", asked.pattern);
    return asked;
}

// A line for each pass; what is wrong, otherwise.
std::string add_passes(Reckoning& into, const ReckonOptions& options) {
    if (options.torque.empty() && options.passes.empty())
        return {};
    const int passes = options.passes.empty() ? 1 : whole(options.passes, most_passes);
    if (passes == 0)
        return fmt::format("`{}` is no number of passes from 1 to {}", options.passes, most_passes);
    std::optional<model::Quantity> torque;
    if (!options.torque.empty()) {
        auto read = read_given(options.torque, model::Measure::torque, "--torque");
        if (auto* wrong = std::get_if<std::string>(&read))
            return *wrong;
        torque = std::get<model::Quantity>(read);
    }
    int number = 0;
    for (const double part : model::pass_parts(passes)) {
        const std::string share = fmt::format("{:.0f} %", 100 * part);
        const auto quantity =
            torque ? model::make_quantity(three_figures(part * torque->value), torque->unit)
                   : model::make_quantity(three_figures(100 * part), "%");
        into.figures.push_back(figure(fmt::format("pass {} of {}", ++number, passes), *quantity,
                                      torque ? share : "", "within the ranges of ASME PCC-1"));
    }
    return {};
}

} // namespace

Reckoned reckon_order(const ReckonOptions& options) {
    auto read = read_asked(options);
    if (auto* wrong = std::get_if<std::string>(&read))
        return *wrong;
    const Asked asked = std::get<Asked>(read);
    Reckoning done;
    done.about = fmt::format("{}, {}", asked.pattern,
                             model::counted(static_cast<std::size_t>(asked.count), "member"));
    done.order = model::tightening_order(asked.pattern, asked.places,
                                         static_cast<std::uint16_t>(asked.count));
    const bool across = asked.pattern == model::pattern_names().front();
    Figure order{"order", std::nullopt, "",
                 across ? "across and across again" : "from the middle outwards",
                 across ? "ASME PCC-1" : "common practice, no source"};
    for (const std::uint16_t member : done.order)
        order.shown += (order.shown.empty() ? "" : " ") + std::to_string(member);
    done.figures.push_back(std::move(order));
    if (const std::string wrong = add_passes(done, options); !wrong.empty())
        return wrong;
    return done;
}

} // namespace matchmark::drive
