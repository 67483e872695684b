// Guides: what is needed, the sections with their steps and tests.
#include "resolve/actions.hpp"
#include "resolve/stages.hpp"

#include "model/describe.hpp"
#include "model/fitting.hpp"

#include <algorithm>
#include <fmt/core.h>
#include <map>
#include <tuple>

namespace matchmark::resolve {

using model::Action;
using model::Guide;
using model::ResourceSort;
using model::Section;
using model::Step;
using syntax::Keyword;
using syntax::Line;
using syntax::LineShape;
using syntax::Reader;
using syntax::TermKind;

namespace {

std::optional<ResourceSort> resource_sort(Keyword keyword) {
    switch (keyword) {
    case Keyword::tool:
        return ResourceSort::tool;
    case Keyword::spare:
        return ResourceSort::spare;
    case Keyword::supply:
        return ResourceSort::supply;
    default:
        return std::nullopt;
    }
}

void read_resource(Context& context, Guide& guide, ResourceSort sort, const Line& line,
                   Reader& reader) {
    const auto name = reader.take_name();
    if (!name)
        return;
    model::Resource resource;
    resource.sort = sort;
    resource.name = text_of(context, *name);
    resource.span = *name;
    resource.line = line.whole;
    for (const auto& known : guide.resources) {
        if (known.name != resource.name)
            continue;
        report_duplicate(context, *name, known.span);
        return;
    }
    resource.text = reader.take_text().value_or("");
    while (reader.take_comma()) {
        if (sort == ResourceSort::tool)
            resource.tool_class = model::tool_class_named(reader.next_text());
        else if (auto quantity = read_quantity(context, reader))
            resource.quantities.push_back(*quantity);
    }
    if (reader.take_word("for"))
        resource.for_items = read_items(context, reader);
    guide.resources.push_back(std::move(resource));
}

Alias alias_for(const Guide& guide) {
    return [&guide](std::string_view name) -> std::optional<model::ItemId> {
        for (std::uint32_t i = 0; i < guide.resources.size(); ++i) {
            const model::Resource& resource = guide.resources[i];
            if (resource.name != name || resource.sort == ResourceSort::tool)
                continue;
            for (const Action& goal : guide.goals) {
                if (goal.sort != model::ActionSort::replace)
                    continue;
                if (std::find(goal.with.begin(), goal.with.end(), model::ResourceId{i}) ==
                    goal.with.end())
                    continue;
                return goal.targets.front().ref.item;
            }
            if (resource.for_items.size() == 1)
                return resource.for_items.front();
        }
        return std::nullopt;
    };
}

void read_reader_level(Guide& guide, Reader& reader) {
    const std::string_view word = reader.next_text();
    if (word == "novice")
        guide.reader = model::ReaderLevel::novice;
    if (word == "competent")
        guide.reader = model::ReaderLevel::competent;
    if (word == "trained")
        guide.reader = model::ReaderLevel::trained;
    if (word == "licensed")
        guide.reader = model::ReaderLevel::licensed;
    reader.skip();
    guide.trade = reader.take_text().value_or("");
}

// `goal replace cell with cell-new, grease bearing`: actions, each a verb and what it is done to.
void read_goals(Context& context, Guide& guide, const Line& line, Reader& reader) {
    ActionPlace place{context, guide, alias_for(guide)};
    while (const auto verb = reader.take_name()) {
        Action goal;
        goal.verb = text_of(context, *verb);
        goal.head = *verb;
        goal.line = line.whole;
        if (goal.verb == "replace")
            goal.sort = model::ActionSort::replace;
        while (auto ref = read_ref(context, reader, &place.alias)) {
            goal.targets.push_back({*ref, 0});
            const bool goes_on = reader.next_is(TermKind::comma) &&
                                 reader.next_is(TermKind::name, 1) &&
                                 !reader.next_is(TermKind::name, 2);
            if (!goes_on)
                break;
            reader.take_comma();
        }
        if (reader.take_word("with"))
            goal.with = read_resources(place, reader);
        if (!goal.targets.empty())
            guide.goals.push_back(std::move(goal));
        if (!reader.take_comma())
            break;
    }
}

model::Photo read_photo(Context& context, const Declaration& declaration, std::size_t& at) {
    const Line& line = declaration.file->lines[at];
    Reader reader{context.sources, *declaration.file, line};
    model::Photo photo;
    photo.line = line.whole;
    photo.path = reader.take_text(&photo.span).value_or("");
    photo.alternative_text = reader.take_text().value_or("");
    for (++at; at < declaration.end; ++at) {
        const Line& next = declaration.file->lines[at];
        if (next.shape == LineShape::blank || next.shape == LineShape::comment)
            continue;
        if (next.keyword != Keyword::mark_on_photo || next.shape != LineShape::detail)
            break;
        Reader words{context.sources, *declaration.file, next};
        const auto item = read_ref(context, words, nullptr, Numbers::members_or_place);
        if (!item)
            continue;
        photo.marks.push_back({*item, read_points(words), next.whole});
    }
    return photo;
}

void read_head_detail(Context& context, Guide& guide, const Line& line, Reader& reader) {
    ActionPlace place{context, guide, alias_for(guide)};
    const auto words = [&] { return reader.take_text().value_or(std::string(reader.next_text())); };
    switch (line.keyword) {
    case Keyword::for_reader:
        read_reader_level(guide, reader);
        break;
    case Keyword::only:
        guide.variants = read_variants(context, reader);
        break;
    case Keyword::author:
        guide.author = words();
        break;
    case Keyword::revision:
        for (; !reader.at_end(); reader.skip()) {
            if (!guide.revision.empty())
                guide.revision += ' ';
            guide.revision += reader.next_text();
        }
        break;
    case Keyword::date:
        for (; !reader.at_end(); reader.skip())
            guide.date += reader.next_text();
        break;
    case Keyword::before:
        if (const auto verb = reader.take_name()) {
            const Span span{verb->file, verb->begin, line.whole.end};
            if (auto action = read_action(place, reader, *verb, span))
                guide.before.push_back(*action);
        }
        break;
    default:
        break;
    }
}

Span last_line(const Declaration& declaration) {
    for (std::size_t i = declaration.end; i > declaration.head + 1; --i) {
        const Line& line = declaration.file->lines[i - 1];
        if (line.shape != LineShape::blank && line.shape != LineShape::comment)
            return line.whole;
    }
    return declaration.line().whole;
}

void read_guide_head(Context& context, Guide& guide, const Declaration& declaration) {
    guide.declaration = declaration.line().whole;
    guide.head_end = guide.end = after_line(context, last_line(declaration));
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        if (const auto sort = resource_sort(line.keyword))
            read_resource(context, guide, *sort, line, reader);
    });
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        if (line.keyword == Keyword::goal)
            read_goals(context, guide, line, reader);
    });
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        read_head_detail(context, guide, line, reader);
    });
    const auto& lines = declaration.file->lines;
    for (std::size_t i = declaration.head + 1; i < declaration.end;) {
        if (syntax::is_prose(lines[i].keyword)) {
            guide.prose.push_back(read_prose(context, declaration, i));
        } else if (lines[i].keyword == Keyword::photo) {
            guide.photos.push_back(read_photo(context, declaration, i));
        } else {
            ++i;
        }
    }
}

void read_proofs(Context& context, const Guide& guide, Step& step, Reader& reader) {
    const Alias alias = alias_for(guide);
    do {
        const auto name = reader.take_name();
        if (!name)
            break;
        const std::string text = text_of(context, *name);
        model::Proof proof;
        proof.span = *name;
        if (const auto function = context.functions.find(text)) {
            proof.function = model::FunctionId{function->index};
        } else if (const auto item = context.items.find(text)) {
            proof.item = model::ItemId{item->index};
        } else if (const auto renewed = alias(text)) {
            proof.item = *renewed;
        } else {
            auto known = known_names(context, context.functions);
            const auto items = known_names(context, context.items);
            known.insert(known.end(), items.begin(), items.end());
            report_unknown(context, "unknown-item", *name, "item or function", known);
            continue;
        }
        step.proves.push_back(proof);
    } while (reader.take_comma());
}

void read_step_line(Context& context, const Guide& guide, Step& step, const Line& line,
                    Reader& reader) {
    ActionPlace place{context, guide, alias_for(guide)};
    switch (line.keyword) {
    case Keyword::verb: {
        Span span = line.whole;
        if (line.comment.known() && !line.comment.empty())
            span.end = line.comment.begin;
        while (span.end > span.begin &&
               context.sources.slice({span.file, span.end - 1, span.end}) == " ")
            --span.end;
        if (auto action = read_action(place, reader, line.head, span))
            step.actions.edit().push_back(*action);
        break;
    }
    case Keyword::when: {
        auto conditions = read_conditions(context, reader);
        step.when.append(conditions);
        break;
    }
    case Keyword::proves:
        read_proofs(context, guide, step, reader);
        break;
    case Keyword::with: {
        const auto tools = read_resources(place, reader);
        step.with.append(tools);
        step.on_dead_circuits =
            std::any_of(step.with.begin(), step.with.end(), [&](model::ResourceId id) {
                return model::measures_dead_circuits(context.model, guide.resources[id.value]);
            });
        break;
    }
    default:
        break;
    }
}

// A test on what only some variants have is for those variants.
model::VariantMask variants_of_test(const model::Model& model, const Step& step) {
    model::VariantMask mask = step.variants;
    for (const auto& condition : step.when)
        mask &= model.item(condition.item.item).variants;
    model::VariantMask proved = step.proves.empty() ? model::all_variants : 0;
    for (const auto& proof : step.proves) {
        proved |= proof.function.known() ? model::all_variants : model.item(proof.item).variants;
    }
    return mask & proved;
}

void check_do_alone(Context& context, const Step& step) {
    if (step.actions.size() < 2)
        return;
    for (const Action& action : step.actions) {
        if (action.sort != model::ActionSort::do_guide)
            continue;
        Diagnostic& finding =
            report(context, "do-not-alone", action.head,
                   fmt::format("`do` stands beside other actions in step `{}`", step.name));
        finding.help = "give `do` a step of its own";
    }
}

// Where each step and test stands that was read so far.
using StepPlaces = std::map<std::tuple<Section, bool, std::string>, Span>;

void read_step(Context& context, Guide& guide, Section section, const Declaration& declaration,
               StepPlaces& known) {
    Reader head{context.sources, *declaration.file, declaration.line()};
    const auto name = head.take_name();
    if (!name)
        return;
    Step step;
    step.section = section;
    step.is_test = declaration.line().keyword == Keyword::test;
    step.name = text_of(context, *name);
    step.title = head.take_text().value_or("");
    step.head = *name;
    step.declaration = declaration.line().whole;
    step.body = {declaration.file->id, declaration.line().whole.begin, last_line(declaration).end};
    const auto [same, added] =
        known.try_emplace(std::tuple(section, step.is_test, step.name), step.head);
    if (!added)
        report_duplicate(context, *name, same->second);
    const auto& lines = declaration.file->lines;
    for (std::size_t i = declaration.head + 1; i < declaration.end;) {
        if (syntax::is_prose(lines[i].keyword)) {
            step.prose.push_back(read_prose(context, declaration, i));
        } else if (lines[i].keyword == Keyword::photo) {
            step.photos.push_back(read_photo(context, declaration, i));
        } else {
            Reader reader{context.sources, *declaration.file, lines[i]};
            if (lines[i].shape == LineShape::detail)
                read_step_line(context, guide, step, lines[i], reader);
            ++i;
        }
    }
    check_do_alone(context, step);
    if (!step.actions.empty())
        step.actions.edit().shrink_to_fit();
    if (step.is_test)
        step.variants = variants_of_test(context.model, step);
    guide.end = after_line(context, last_line(declaration));
    guide.steps.push_back(std::move(step));
}

std::optional<Section> section_of(Keyword keyword) {
    switch (keyword) {
    case Keyword::before_section:
        return Section::before;
    case Keyword::take_apart:
        return Section::take_apart;
    case Keyword::work:
        return Section::work;
    case Keyword::put_back:
        return Section::put_back;
    default:
        return std::nullopt;
    }
}

void read_section(Context& context, Guide& guide, const Declaration& declaration) {
    guide.end = after_line(context, last_line(declaration));
    for (std::size_t i = declaration.head + 1; i < declaration.end; ++i) {
        const Line& line = declaration.file->lines[i];
        if (line.keyword != Keyword::derived)
            continue;
        guide.derives_put_back = true;
        guide.derived_at = guide.steps.size();
        guide.derived_span = line.head;
    }
}

// All declarations of one guide, from its head to the next guide, device or end of file.
std::size_t read_guide(Context& context, const std::vector<Declaration>& all, std::size_t at,
                       Guide& guide) {
    const Declaration& head = all[at];
    guide.file = head.file->id;
    read_guide_head(context, guide, head);
    std::optional<Section> section;
    StepPlaces steps;
    const auto first = all.begin() + static_cast<std::ptrdiff_t>(at + 1);
    const auto end = std::find_if(first, all.end(), [&](const Declaration& one) {
        return one.file != head.file || one.line().keyword == Keyword::guide;
    });
    guide.steps.reserve(static_cast<std::size_t>(std::count_if(first, end, [](const auto& one) {
        return one.line().keyword == Keyword::step || one.line().keyword == Keyword::test;
    })));
    for (++at; at < all.size() && all[at].file == head.file; ++at) {
        const Keyword keyword = all[at].line().keyword;
        if (const auto next = section_of(keyword)) {
            if (section && *next < *section) {
                report(context, "section-order", all[at].line().head,
                       fmt::format("`{}` stands after a later section", syntax::spelling(keyword)))
                    .help = "keep the order `before`, `take-apart`, `work`, `put-back`";
            }
            section = next;
            read_section(context, guide, all[at]);
        } else if (keyword == Keyword::step || keyword == Keyword::test) {
            if (!section) {
                report(context, "section-order", all[at].line().head,
                       "this step stands before any section")
                    .help = "write `take-apart` on a line of its own above it";
                section = Section::take_apart;
            }
            read_step(context, guide, *section, all[at], steps);
        } else if (keyword == Keyword::guide) {
            break;
        }
    }
    return at;
}

} // namespace

void declare_guides(Context& context, const std::vector<Declaration>& all) {
    for (const Declaration& declaration : all) {
        if (declaration.line().keyword != Keyword::guide)
            continue;
        Reader reader{context.sources, *declaration.file, declaration.line()};
        const auto name = reader.take_name();
        if (!name)
            continue;
        Guide guide;
        guide.name = text_of(context, *name);
        guide.span = *name;
        guide.title = reader.take_text().value_or(guide.name);
        const auto index = static_cast<std::uint32_t>(context.model.guides.size());
        if (const auto first = context.guides.add(guide.name, {index, *name})) {
            report_duplicate(context, *name, first->span);
            continue;
        }
        context.model.guides.edit().push_back(std::move(guide));
    }
}

void resolve_guides(Context& context, const std::vector<Declaration>& all) {
    for (std::size_t at = 0; at < all.size();) {
        const Declaration& declaration = all[at];
        Reader reader{context.sources, *declaration.file, declaration.line()};
        const auto name =
            declaration.line().keyword == Keyword::guide ? reader.take_name() : std::nullopt;
        const auto named = name ? context.guides.find(context.sources.slice(*name)) : std::nullopt;
        if (!named || named->span != *name) {
            ++at;
            continue;
        }
        // Worked on aside: reading a guide may look at the others.
        Guide guide = context.model.guides[named->index];
        at = read_guide(context, all, at, guide);
        context.model.guides.edit(named->index) = std::move(guide);
    }
    check_nesting(context);
    if (!context.model.guides.empty() && !context.model.device.span.known()) {
        const Guide& guide = context.model.guides.back();
        report(context, "no-device", guide.span,
               fmt::format("guide `{}` is about no device", guide.name))
            .help = "add `use \"DEVICE.mmk\"` at the top of the file";
    }
}

} // namespace matchmark::resolve
