// From trees to the model: declarations gathered, then names, kinds, items, relations and guides in
// that order.
#include "resolve/resolve.hpp"

#include "resolve/parts.hpp"
#include "resolve/spare.hpp"

#include <algorithm>
#include <mutex>
#include <optional>

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
    resolve_functions(context, all);
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
    mutable std::mutex guards_spares;
    mutable std::vector<model::Model> spares; // as `model`, and nobody's

    Base() = default;
    Base(const Base&) = delete;
    Base& operator=(const Base&) = delete;
    Base(Base&&) = delete;
    Base& operator=(Base&&) = delete;
    // Its models become the next ones upon the base below.
    ~Base() {
        if (below == nullptr)
            return;
        spares.push_back(std::move(model));
        for (model::Model& spare : spares)
            give_back(*below, std::move(spare));
    }

    [[nodiscard]] bool has_device() const {
        return !model.items.empty() || model.device.span.known() || !model.guides.empty() ||
               !model.functions.empty();
    }
};

namespace {

// The lists of two models, pair by pair: what is put on a base stands in each after what it has.
template <class Do> void each_list(model::Model& model, const model::Model& base, const Do& treat) {
    treat(model.kinds, base.kinds);
    treat(model.drives, base.drives);
    treat(model.forms, base.forms);
    treat(model.threads, base.threads);
    treat(model.grades, base.grades);
    treat(model.frictions, base.frictions);
    treat(model.timings, base.timings);
    treat(model.tool_kinds, base.tool_kinds);
    treat(model.gear, base.gear);
    treat(model.rating_parts, base.rating_parts);
    treat(model.signs, base.signs);
    treat(model.hazards, base.hazards);
    treat(model.items, base.items);
    treat(model.cautions, base.cautions);
    treat(model.assumptions, base.assumptions);
    treat(model.functions, base.functions);
    treat(model.guides, base.guides);
}

void take_rest(model::Model& model, const model::Model& base) {
    model.device = base.device;
    model.slot_count = base.slot_count;
    model.member_count = base.member_count;
}

std::optional<model::Model> spare_of(const Base& base) {
    const std::lock_guard<std::mutex> lock(base.guards_spares);
    if (base.spares.empty())
        return std::nullopt;
    model::Model model = std::move(base.spares.back());
    base.spares.pop_back();
    return model;
}

model::Model model_of(const Base& base) {
    if (auto spare = spare_of(base))
        return *std::move(spare);
    if (base.below == nullptr)
        return base.model;
    model::Model model = model_of(*base.below);
    each_list(model, base.model, [](auto& list, const auto& wanted) {
        list.insert(list.end(), wanted.begin() + static_cast<std::ptrdiff_t>(list.size()),
                    wanted.end());
    });
    take_rest(model, base.model);
    return model;
}

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
        base->model = model_of(*below);
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
    model::Model model = model_of(base);
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

void give_back(const Base& base, model::Model model) {
    each_list(model, base.model, [](auto& list, const auto& wanted) {
        list.erase(list.begin() + static_cast<std::ptrdiff_t>(wanted.size()), list.end());
    });
    take_rest(model, base.model);
    const std::lock_guard<std::mutex> lock(base.guards_spares);
    base.spares.push_back(std::move(model));
}

} // namespace matchmark::resolve
