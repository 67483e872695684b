// Times: what a published method or a shop's own watch gives for each act.
#include "resolve/stages.hpp"
#include "resolve/values.hpp"

namespace matchmark::resolve {

using syntax::Keyword;
using syntax::Line;
using syntax::Reader;

namespace {

std::optional<model::Quantity>* place_of(model::Timing& timing, Keyword keyword) {
    switch (keyword) {
    case Keyword::tool_change:
        return &timing.tool_change;
    case Keyword::identify:
        return &timing.identify;
    case Keyword::handle:
        return &timing.handle;
    case Keyword::position:
        return &timing.position;
    case Keyword::set_aside:
        return &timing.set_aside;
    case Keyword::turn:
        return &timing.turn;
    default:
        return nullptr;
    }
}

// A verb that the kind does not have would never be timed so.
void check_verb(Context& context, const model::Kind& kind, Span verb) {
    const std::string name = text_of(context, verb);
    if (model::find_verb(kind, name) != nullptr)
        return;
    std::vector<std::string> verbs;
    for (const model::Verb& known : kind.verbs)
        verbs.push_back(known.name);
    report_unknown(context, "unknown-verb", verb, "verb of kind `" + kind.name + "` called", verbs);
}

void read_timed_verb(Context& context, model::Timing& timing, const Line& line, Reader& reader) {
    model::TimedVerb timed;
    timed.span = line.whole;
    const auto verb = reader.take_name();
    if (!verb)
        return;
    timed.verb = text_of(context, *verb);
    for (const Span name : read_name_list(reader)) {
        const auto kind = context.kinds.find(context.sources.slice(name));
        if (!kind) {
            report_unknown(context, "unknown-kind", name, "kind",
                           known_names(context, context.kinds));
            continue;
        }
        check_verb(context, context.model.kinds[kind->index], *verb);
        timed.kinds.push_back(text_of(context, name));
    }
    timed.takes = read_quantity(context, reader, model::Measure::time);
    timing.verbs.push_back(std::move(timed));
}

void resolve_timing(Context& context, const Declaration& declaration) {
    Reader head{context.sources, *declaration.file, declaration.line()};
    model::Timing* timing = declared(context.timings, context.model.timings, context, head);
    if (timing == nullptr)
        return;
    timing->title = title_or_name(head, timing->name);
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        if (line.keyword == Keyword::act) {
            read_timed_verb(context, *timing, line, reader);
        } else if (auto* place = place_of(*timing, line.keyword); place != nullptr) {
            *place = read_quantity(context, reader, model::Measure::time);
        }
        timing->usual = timing->usual || line.keyword == Keyword::usual;
    });
}

} // namespace

void resolve_timings(Context& context, const std::vector<Declaration>& all) {
    for (const Declaration& declaration : all) {
        if (declaration.line().keyword == Keyword::timing)
            resolve_timing(context, declaration);
    }
}

} // namespace matchmark::resolve
