// A line of each sort as it should look, for whoever wrote one that does not.
#include "parse/examples.hpp"

#include "source/embedded.hpp"

#include <algorithm>
#include <map>
#include <string>

namespace matchmark::syntax {

namespace {

std::string_view examples() {
    const auto all = templates();
    const auto found = std::find_if(
        all.begin(), all.end(), [](const EmbeddedText& text) { return text.name == "examples"; });
    return found == all.end() ? std::string_view{} : found->text;
}

// The line of each word, by the heading that it stands under: a file of nonsense asks for as many
// as it has lines.
using Heading = std::map<std::string_view, std::string_view>;
using Headings = std::map<std::string_view, Heading>;

Headings headings_of(std::string_view text) {
    Headings headings;
    Heading* under = nullptr;
    while (!text.empty()) {
        const std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(line.size() + 1, text.size()));
        constexpr std::string_view between = " | ";
        const std::size_t bar = line.find(between);
        if (line.starts_with('[') && line.ends_with(']'))
            under = &headings[line.substr(1, line.size() - 2)];
        else if (under != nullptr && bar != std::string_view::npos)
            under->try_emplace(line.substr(0, bar), line.substr(bar + between.size()));
    }
    return headings;
}

std::string_view example_in(std::string_view heading, std::string_view word) {
    static const Headings headings = headings_of(examples());
    const auto under = headings.find(heading);
    if (under == headings.end())
        return {};
    const auto line = under->second.find(word);
    return line == under->second.end() ? std::string_view{} : line->second;
}

std::string_view word_of(Keyword keyword) {
    switch (keyword) {
    case Keyword::verb:
        return "verb";
    case Keyword::count:
        return "count";
    case Keyword::quantity:
        return "quantity";
    default:
        return spelling(keyword);
    }
}

} // namespace

std::string_view example_line(Body body, Keyword keyword) {
    const std::string_view word = word_of(keyword);
    if (body == Body::first_column)
        return example_in("first column", word);
    if (body == Body::kind) {
        const std::string_view found = example_in("kind", word);
        return found.empty() ? example_in("item", word) : found;
    }
    if (keyword == Keyword::verb)
        return example_in("guide", word);
    for (const char* heading : {"item", "kind", "trade", "guide"}) {
        const std::string_view found = example_in(heading, word);
        if (!found.empty())
            return found;
    }
    return {};
}

} // namespace matchmark::syntax
