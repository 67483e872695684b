// Reads the quantities that a command line gives.
#include "drive/reckoning.hpp"

#include "drive/inputs.hpp"
#include "model/describe.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <utility>

namespace matchmark::drive {

Figure figure(std::string name, const model::Quantity& quantity, std::string formula,
              std::string source) {
    return {std::move(name), quantity, model::for_reader(quantity), std::move(formula),
            std::move(source)};
}

std::variant<model::Quantity, std::string> read_given(const std::string& text) {
    double value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    if (read.ec != std::errc{} || !std::isfinite(value))
        return fmt::format("`{}` is no quantity: write a number and a unit, as in \"10 kN\"", text);
    std::string unit(read.ptr, static_cast<std::size_t>(text.data() + text.size() - read.ptr));
    unit.erase(0, unit.find_first_not_of(' '));
    while (unit.ends_with(' '))
        unit.pop_back();
    if (value < 0)
        return fmt::format("`{}` is below nothing", text);
    if (const auto quantity = model::make_quantity(value, unit))
        return *quantity;
    return fmt::format("there is no unit `{}`{}", unit,
                       did_you_mean(unit, model::unit_spellings()));
}

std::variant<model::Quantity, std::string>
read_given(const std::string& text, model::Measure measure, std::string_view name) {
    auto read = read_given(text);
    const auto* quantity = std::get_if<model::Quantity>(&read);
    if (quantity == nullptr || quantity->measure == measure)
        return read;
    return fmt::format("`{}` is {}, and {} asks for {}", text, model::describe(quantity->measure),
                       name, model::describe(measure));
}

std::variant<std::vector<model::Quantity>, std::string>
read_all_given(const std::vector<std::string>& words) {
    std::vector<model::Quantity> given;
    for (std::size_t i = 0; i < words.size(); ++i) {
        auto read = read_given(words[i]);
        const auto* bare = std::get_if<model::Quantity>(&read);
        if (bare != nullptr && bare->unit.empty()) {
            if (i + 1 == words.size())
                return fmt::format("`{}` has no unit", words[i]);
            read = read_given(words[i] + " " + words[i + 1]);
            ++i;
        }
        if (const auto* wrong = std::get_if<std::string>(&read))
            return *wrong;
        const model::Quantity& quantity = std::get<model::Quantity>(read);
        if (of_measure(given, quantity.measure) != nullptr)
            return fmt::format("{} is given twice", model::describe(quantity.measure));
        given.push_back(quantity);
    }
    return given;
}

const model::Quantity* of_measure(const std::vector<model::Quantity>& given,
                                  model::Measure measure) {
    const auto found = std::find_if(given.begin(), given.end(), [&](const auto& quantity) {
        return quantity.measure == measure;
    });
    return found == given.end() ? nullptr : &*found;
}

} // namespace matchmark::drive
