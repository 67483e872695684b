// A fluid renewed from what the list describes as another fluid.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::Kind;
using model::Resource;

// The fluid that the description names, unless it names this one too, be it more loosely ("oil" for
// engine oil) or more closely.
const Kind* names_another(const model::Model& model, const model::Item& item,
                          const std::string& said) {
    const Kind& own = model.kind(item.kind);
    const Kind* other = nullptr;
    for (const Kind& kind : model.kinds) {
        if (kind.role != model::Role::fluid || !model::has_words(said, kind.title))
            continue;
        if (other == nullptr || kind.title.size() > other->title.size())
            other = &kind;
    }
    // "oil" says no more than engine oil does; gear oil is another, also where this one is titled
    // "oil".
    const auto speaks_of_this = [&](const std::string& title) {
        return model::has_words(title, other->title) ||
               (model::has_words(said, title) && !model::has_words(other->title, title));
    };
    return other == nullptr || speaks_of_this(own.title) || speaks_of_this(item.title) ? nullptr
                                                                                       : other;
}

void find_other_fluid(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const Resource& resource : walk.procedure.resources) {
        if (resource.sort == model::ResourceSort::tool)
            continue;
        for (const model::ItemId item : resource.for_items) {
            const Kind& own = walk.model.kind_of(item);
            const Kind* other =
                own.role == model::Role::fluid
                    ? names_another(walk.model, walk.model.item(item), resource.text)
                    : nullptr;
            if (other == nullptr)
                continue;
            Diagnostic finding;
            finding.primary = resource.span;
            finding.message = fmt::format("`{}` is described as {}, and {} is {}", resource.name,
                                          other->title, model::quoted(walk.model, item), own.title);
            finding.label = "another fluid";
            finding.why = "it attacks the seals that the other one spares, or does not do its work";
            finding.related.push_back({walk.model.item(item).span, "declared here"});
            finding.help = fmt::format("list {}, or give {} the kind that it is", own.title,
                                       model::quoted(walk.model, item));
            findings.push_back(std::move(finding));
        }
    }
}

} // namespace

extern const Rule other_fluid;
const Rule other_fluid{"other-fluid", "goal", Severity::warning,
                       "a fluid renewed from what the list describes as another fluid",
                       find_other_fluid};

} // namespace matchmark::check::rules
