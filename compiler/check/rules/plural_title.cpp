// A group's title that says several already: the page counts "4 lid screwses".
#include "check/troubles.hpp"

#include "model/plural_title.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::Item;

// Most titles do not, and to put all kinds in the plural takes a third of a small guide's check.
bool may_say_several(const std::string& title) {
    const auto words = model::words_in(title);
    return std::any_of(words.begin(), words.end(), model::may_be_plural);
}

Diagnostic several_already(const Walk& walk, model::ItemId id, const std::string& one) {
    const Item& item = walk.model.item(id);
    Diagnostic finding;
    finding.message =
        fmt::format("the title of {} says several already", model::with_kind(walk.model, id));
    finding.primary = item.span;
    finding.why = fmt::format("a page counts them itself, as \"{} {}\"", item.count,
                              model::plural(item.title));
    finding.help = "say it of one";
    const Span head = item.declaration;
    const std::size_t quoted = walk.sources.slice(head).find('"' + item.title + '"');
    if (quoted != std::string_view::npos) {
        const auto begin = static_cast<std::uint32_t>(head.begin + quoted + 1);
        const auto end = static_cast<std::uint32_t>(begin + item.title.size());
        finding.edits = {{{head.file, begin, end}, one}};
    }
    return finding;
}

void find_plural_title(const Walk& walk, std::vector<Diagnostic>& findings) {
    model::KindsCalled kinds;
    for (std::uint32_t i = 0; i < walk.model.items.size(); ++i) {
        const Item& item = walk.model.items[i];
        if (item.count < 2 || !may_say_several(item.title))
            continue;
        if (kinds.empty())
            kinds = model::kinds_called(walk.model);
        if (const auto one = model::said_of_one(kinds, item.role, item.title))
            findings.push_back(several_already(walk, model::ItemId{i}, *one));
    }
}

} // namespace

extern const Rule plural_title;
const Rule plural_title{"plural-title", "prose", Severity::advice,
                        "a title of several things that says so itself", find_plural_title};

} // namespace matchmark::check::rules
