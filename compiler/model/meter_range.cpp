// Reads the numbers with units out of a tool's description.
#include "model/meter_range.hpp"

#include <charconv>

namespace matchmark::model {

namespace {

bool is_digit(char letter) { return letter >= '0' && letter <= '9'; }

// Is it where a unit ends? "1000 V, class III" names volts, "230 Volt" no unit that is known.
std::string_view word_at(std::string_view text) {
    return text.substr(0, text.find_first_of(" ,;()/"));
}

} // namespace

std::optional<Quantity> measures_up_to(const Resource& tool, Measure measure) {
    const std::string_view text = tool.text;
    std::optional<Quantity> most;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (!is_digit(text[at]))
            continue;
        double value = 0;
        const auto read = std::from_chars(text.data() + at, text.data() + text.size(), value,
                                          std::chars_format::fixed);
        if (read.ec != std::errc{})
            return most; // no meter has a number as long
        at = static_cast<std::size_t>(read.ptr - text.data());
        std::string_view rest = text.substr(at);
        rest.remove_prefix(std::min(rest.find_first_not_of(' '), rest.size()));
        const auto quantity = make_quantity(value, word_at(rest));
        if (quantity && quantity->measure == measure && (!most || most->base < quantity->base))
            most = quantity;
    }
    return most;
}

} // namespace matchmark::model
