// From trees to the model: declarations gathered, then names, kinds, items, relations and guides in
// that order.
#include "resolve/resolve.hpp"

#include "resolve/parts.hpp"

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

} // namespace

model::Model resolve(const SourceMap& sources, const std::vector<syntax::File>& files,
                     std::vector<Diagnostic>& findings) {
    model::Model model;
    Context context{sources, model, findings};
    std::vector<Declaration> all;
    for (const syntax::File& file : files)
        gather(file, all);
    resolve_trade(context, all);
    resolve_kinds(context, all);
    resolve_device(context, all);
    declare_items(context, all);
    resolve_items(context, all);
    resolve_relations(context, all);
    resolve_functions(context, all);
    resolve_cautions(context, all);
    declare_guides(context, all);
    resolve_guides(context, all);
    return model;
}

} // namespace matchmark::resolve
