// Finds the plural of what a kind is called, where a page would put it in the plural again.
#include "model/plural_title.hpp"

#include "model/describe.hpp"

namespace matchmark::model {

KindsCalled kinds_called(const Model& model) {
    KindsCalled called;
    for (const Kind& kind : model.kinds) {
        const std::size_t space = kind.title.rfind(' ');
        const std::string word =
            space == std::string::npos ? kind.title : kind.title.substr(space + 1);
        called[kind.role].try_emplace(plural(word), word);
    }
    return called;
}

std::optional<std::string> said_of_one(const KindsCalled& kinds, Role role,
                                       const std::string& title) {
    const auto called = kinds.find(role);
    if (called == kinds.end())
        return std::nullopt;
    for (const std::string_view word : words_in(title)) {
        const auto found = called->second.find(word);
        if (found == called->second.end() || found->first == found->second)
            continue;
        std::string one = title;
        one.replace(one.find(word), word.size(), found->second);
        // Only the word that would be put in the plural: "feet of bolts" says nothing of how many.
        if (plural(one) == title)
            return one;
    }
    return std::nullopt;
}

} // namespace matchmark::model
