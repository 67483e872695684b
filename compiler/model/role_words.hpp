// The roles of items as the language spells them, and by the keywords that declare them.
#pragma once

#include "model/kind.hpp"
#include "syntax/items.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

namespace matchmark::model {

// In the order of Role.
inline constexpr std::array<std::string_view, 6> role_words{"part", "fastener", "connector",
                                                            "bond", "fluid",    "energy"};

constexpr std::string_view role_word(Role role) {
    return role_words[static_cast<std::size_t>(role)];
}

constexpr std::optional<Role> role_named(std::string_view word) {
    const auto* const found = std::find(role_words.begin(), role_words.end(), word);
    if (found == role_words.end())
        return std::nullopt;
    return static_cast<Role>(found - role_words.begin());
}

// Nothing for a keyword that declares no item.
constexpr std::optional<Role> role_of(syntax::Keyword keyword) {
    const auto* const found =
        std::find(syntax::item_keywords.begin(), syntax::item_keywords.end(), keyword);
    if (found == syntax::item_keywords.end())
        return std::nullopt;
    return static_cast<Role>(found - syntax::item_keywords.begin());
}

} // namespace matchmark::model
