// Computations for the bench: what is given, what is worked out, and by which formula of whose.
#pragma once

#include "drive/commands.hpp"
#include "model/model.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace matchmark::drive {

struct Figure {
    std::string name;
    std::optional<model::Quantity> quantity; // nothing: `shown` is all there is
    std::string shown;                       // for readers
    std::string formula;                     // may be empty
    std::string source;
};

struct Reckoning {
    std::string about;   // what was given, in words
    std::string caution; // stands before the figures; may be empty
    std::vector<Figure> figures;
    std::vector<std::uint16_t> order; // of members, from 1; empty when none was asked for
};

// Or else what is wrong with what was given, in a line.
using Reckoned = std::variant<Reckoning, std::string>;

Reckoned reckon_torque(const ReckonOptions& options, const model::Model& model);
Reckoned reckon_discharge(const ReckonOptions& options);
Reckoned reckon_energy(const ReckonOptions& options);
Reckoned reckon_order(const ReckonOptions& options);

// A figure whose quantity is shown as the SI Brochure prints it.
Figure figure(std::string name, const model::Quantity& quantity, std::string formula,
              std::string source);

// "470 uF" -> a quantity, or else what is wrong with it.
std::variant<model::Quantity, std::string> read_given(const std::string& text);
// The same of one that has to measure this; `name` is what it is given as: "--torque".
std::variant<model::Quantity, std::string>
read_given(const std::string& text, model::Measure measure, std::string_view name);
// Quantities in any order, a number and its unit in one word or in two; no measure twice.
std::variant<std::vector<model::Quantity>, std::string>
read_all_given(const std::vector<std::string>& words);
// The one of that measure; null when there is none.
const model::Quantity* of_measure(const std::vector<model::Quantity>& given,
                                  model::Measure measure);

} // namespace matchmark::drive
