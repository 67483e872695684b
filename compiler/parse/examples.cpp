// A line of each sort as it should look, for whoever wrote one that does not.
#include "parse/examples.hpp"

#include "source/embedded.hpp"

#include <algorithm>
#include <string>

namespace matchmark::syntax {

namespace {

std::string_view examples() {
    const auto all = templates();
    const auto found = std::find_if(
        all.begin(), all.end(), [](const EmbeddedText& text) { return text.name == "examples"; });
    return found == all.end() ? std::string_view{} : found->text;
}

// What stands below the heading, up to the next one.
std::string_view section(std::string_view heading) {
    const std::string_view all = examples();
    const std::size_t begin = all.find("[" + std::string(heading) + "]\n");
    if (begin == std::string_view::npos)
        return {};
    return all.substr(begin, all.find("\n[", begin) - begin);
}

std::string_view example_in(std::string_view heading, std::string_view word) {
    const std::string_view lines = section(heading);
    const std::string opening = "\n" + std::string(word) + " | ";
    const std::size_t found = lines.find(opening);
    if (found == std::string_view::npos)
        return {};
    const std::size_t begin = found + opening.size();
    return lines.substr(begin, lines.find('\n', begin) - begin);
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
