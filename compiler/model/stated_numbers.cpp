// Reads the numbers with units out of the description of what is listed.
#include "model/stated_numbers.hpp"

#include <algorithm>
#include <charconv>
#include <string>

namespace matchmark::model {

namespace {

bool is_digit(char letter) { return letter >= '0' && letter <= '9'; }

// Do three digits stand there, and no fourth: a group of thousands?
bool is_group(std::string_view text, std::size_t at) {
    return at + 3 <= text.size() && is_digit(text[at]) && is_digit(text[at + 1]) &&
           is_digit(text[at + 2]) && (at + 3 == text.size() || !is_digit(text[at + 3]));
}

// The number that begins there, "1 000" and "1,000" as 1000; `at` goes behind it.
std::string number_at(std::string_view text, std::size_t& at) {
    std::string digits;
    while (at < text.size()) {
        const bool point = text[at] == '.' && at + 1 < text.size() && is_digit(text[at + 1]);
        const bool gap = (text[at] == ' ' || text[at] == ',') && is_group(text, at + 1);
        if (gap)
            ++at;
        else if (!is_digit(text[at]) && !point)
            break;
        digits += text[at];
        ++at;
    }
    return digits;
}

// Is it where a unit ends? "1000 V, class III" names volts, "230 Volt" no unit that is known.
std::string_view word_at(std::string_view text) {
    return text.substr(0, text.find_first_of(" ,;()/"));
}

} // namespace

std::vector<Quantity> stated_in(std::string_view text) {
    std::vector<Quantity> found;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (!is_digit(text[at]))
            continue;
        const std::string digits = number_at(text, at);
        double value = 0;
        const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), value,
                                          std::chars_format::fixed);
        if (read.ec != std::errc{})
            return {}; // nothing has a number as long
        std::string_view rest = text.substr(at);
        rest.remove_prefix(std::min(rest.find_first_not_of(' '), rest.size()));
        if (const auto quantity = make_quantity(value, word_at(rest)))
            found.push_back(*quantity);
    }
    return found;
}

std::optional<Quantity> measures_up_to(const Resource& tool, Measure measure) {
    std::optional<Quantity> most;
    for (const Quantity& quantity : stated_in(tool.text)) {
        if (quantity.measure == measure && (!most || most->base < quantity.base))
            most = quantity;
    }
    return most;
}

} // namespace matchmark::model
