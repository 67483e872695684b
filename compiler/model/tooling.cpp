// The classes of tools, in words.
#include "model/tooling.hpp"

#include <algorithm>
#include <array>

namespace matchmark::model {

namespace {

constexpr auto class_words =
    std::to_array<std::string_view>({"none", "basic", "supplied", "available", "special"});

} // namespace

std::optional<ToolClass> tool_class_named(std::string_view word) {
    const auto* const found = std::find(class_words.begin(), class_words.end(), word);
    if (found == class_words.end())
        return std::nullopt;
    return static_cast<ToolClass>(found - class_words.begin());
}

std::string_view describe(ToolClass tool_class) {
    static constexpr auto words = std::to_array<std::string_view>(
        {"no tool", "basic tool", "supplied with the product or the spare",
         "commercially available", "special to the product"});
    return words[static_cast<std::size_t>(tool_class)];
}

} // namespace matchmark::model
