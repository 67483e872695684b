// From trees to the model: declarations gathered, then names, kinds, items, relations and guides in
// that order.
#include "resolve/resolve.hpp"

#include "model/comes_first.hpp"
#include "model/driven.hpp"
#include "model/pressed_up.hpp"
#include "resolve/stages.hpp"

#include <algorithm>

namespace matchmark::resolve {

namespace {

void gather(const syntax::File& file, std::vector<Declaration>& all) {
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
        const bool starts =
            file.lines[i].shape == syntax::LineShape::declaration ||
            (file.lines[i].shape == syntax::LineShape::broken && file.lines[i].depth == 0);
        if (!starts)
            continue;
        const bool open = !all.empty() && all.back().file == &file;
        if (open)
            all.back().end = i;
        all.push_back({&file, i, file.lines.size()});
    }
}

// Whatever its files declare beside guides.
void resolve_all(Context& context, const std::vector<Declaration>& all) {
    resolve_trade(context, all);
    resolve_kinds(context, all);
    resolve_timings(context, all);
    resolve_device(context, all);
    declare_items(context, all);
    resolve_items(context, all);
    resolve_relations(context, all);
    check_closed_in(context);
    resolve_functions(context, all);
    model::settle_driven(context.model);
    model::settle_pressed_up(context.model);
    model::settle_what_comes_first(context.model);
    resolve_cautions(context, all);
    declare_guides(context, all);
    resolve_guides(context, all);
}

std::vector<Declaration> gathered(const syntax::Files& files, std::size_t first,
                                  std::size_t count) {
    std::vector<Declaration> all;
    for (std::size_t i = first; i < count; ++i)
        gather(*files[i], all);
    return all;
}

// Declares nothing but guides, or what belongs to them.
bool is_of_guides(syntax::Keyword keyword) {
    using syntax::Keyword;
    switch (keyword) {
    case Keyword::none:
    case Keyword::use:
    case Keyword::guide:
    case Keyword::before_section:
    case Keyword::take_apart:
    case Keyword::work:
    case Keyword::put_back:
    case Keyword::step:
    case Keyword::test:
        return true;
    default:
        return false;
    }
}

} // namespace

struct Base {
    model::Model model;
    NameSpaces names;
    std::size_t count = 0; // of its files
    BasePointer below;     // whose names these stand above

    [[nodiscard]] bool has_device() const {
        return !model.items.empty() || model.device.span.known() || !model.guides.empty() ||
               !model.functions.empty();
    }
};

namespace {

NameSpaces above(const NameSpaces& below) {
    NameSpaces names;
    names.kinds = Names(&below.kinds);
    names.drives = Names(&below.drives);
    names.forms = Names(&below.forms);
    names.threads = Names(&below.threads);
    names.grades = Names(&below.grades);
    names.frictions = Names(&below.frictions);
    names.timings = Names(&below.timings);
    names.tool_kinds = Names(&below.tool_kinds);
    names.gear = Names(&below.gear);
    names.rating_parts = Names(&below.rating_parts);
    names.signs = Names(&below.signs);
    names.hazards = Names(&below.hazards);
    names.faces = Names(&below.faces);
    names.items = Names(&below.items);
    names.functions = Names(&below.functions);
    names.guides = Names(&below.guides);
    names.variants = Names(&below.variants);
    return names;
}

} // namespace

model::Model resolve(const SourceMap& sources, const syntax::Files& files,
                     std::vector<Diagnostic>& findings) {
    model::Model model;
    Context context{sources, model, findings, {}};
    resolve_all(context, gathered(files, 0, files.size()));
    return model;
}

BasePointer resolve_base(const SourceMap& sources, const syntax::Files& files, std::size_t count,
                         const BasePointer& below) {
    std::vector<Diagnostic> findings;
    auto base = std::make_shared<Base>();
    base->count = count;
    base->below = below;
    if (below != nullptr)
        base->model = below->model;
    Context context{sources, base->model, findings,
                    below != nullptr ? above(below->names) : NameSpaces{}};
    resolve_all(context, gathered(files, below != nullptr ? below->count : 0, count));
    if (!findings.empty())
        return nullptr;
    base->names = std::move(static_cast<NameSpaces&>(context));
    return base;
}

bool may_follow(const Base& base, const syntax::Files& files) {
    if (!base.has_device())
        return true;
    const auto all = gathered(files, base.count, files.size());
    return std::all_of(all.begin(), all.end(), [](const Declaration& declaration) {
        return is_of_guides(declaration.line().keyword);
    });
}

model::Model resolve(const SourceMap& sources, const syntax::Files& files,
                     std::vector<Diagnostic>& findings, const Base& base) {
    model::Model model = base.model;
    Context context{sources, model, findings, above(base.names)};
    const auto all = gathered(files, base.count, files.size());
    if (!base.has_device()) {
        resolve_all(context, all);
        return model;
    }
    declare_guides(context, all);
    resolve_guides(context, all);
    return model;
}

} // namespace matchmark::resolve
