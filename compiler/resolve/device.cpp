// The device itself: its variants, faces, functions and ratings, and the cautions on its items.
#include "resolve/limits.hpp"
#include "resolve/stages.hpp"
#include "resolve/values.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::resolve {

using model::Measure;
using syntax::Keyword;
using syntax::Line;
using syntax::LineShape;
using syntax::Reader;

namespace {

void report_variants(Context& context, Span first_left_out) {
    Diagnostic& finding = report(context, "too-many-variants", first_left_out,
                                 fmt::format("a device has {} variants at most", most_variants));
    finding.label = "this one and those after it are left out";
    finding.help = "make a device of its own of those that have more in common";
}

void read_device_detail(Context& context, const Line& line, Reader& reader) {
    model::Device& device = context.model.device;
    if (line.keyword == Keyword::revision) {
        for (; !reader.at_end(); reader.skip()) {
            if (!device.revision.empty())
                device.revision += ' ';
            device.revision += reader.next_text();
        }
    } else if (line.keyword == Keyword::mass) {
        device.mass = read_quantity(context, reader, Measure::mass);
    } else if (line.keyword == Keyword::variant) {
        for (const Span name : read_name_list(reader)) {
            if (device.variants.size() == most_variants) {
                report_variants(context, name);
                break;
            }
            const auto index = static_cast<std::uint32_t>(device.variants.size());
            const std::string text = text_of(context, name);
            if (const auto first = context.variants.add(text, {index, name})) {
                report_duplicate(context, name, first->span);
            } else {
                device.variants.push_back(text);
            }
        }
    }
}

void read_device(Context& context, const Declaration& declaration) {
    model::Device& device = context.model.device;
    Reader head{context.sources, *declaration.file, declaration.line()};
    const auto name = head.take_name();
    if (!name)
        return;
    if (device.span.known()) {
        Diagnostic& finding = report(context, "duplicate-name", *name,
                                     "a guide is about one device, and this is a second one");
        finding.related.push_back({device.span, "the first is declared here"});
        return;
    }
    device.name = text_of(context, *name);
    device.span = *name;
    device.title = head.take_text().value_or(device.name);
    const auto& lines = declaration.file->lines;
    for (std::size_t i = declaration.head + 1; i < declaration.end;) {
        if (syntax::is_prose(lines[i].keyword)) {
            device.messages.push_back(read_prose(context, declaration, i));
            continue;
        }
        if (lines[i].shape == LineShape::detail) {
            Reader reader{context.sources, *declaration.file, lines[i]};
            read_device_detail(context, lines[i], reader);
            read_product_detail(context, device.product, lines[i], reader);
        }
        ++i;
    }
}

double millimetres(const std::optional<model::Quantity>& length) {
    return length ? length->base * 1000.0 : 0.0;
}

void read_face(Context& context, const Declaration& declaration) {
    Reader reader{context.sources, *declaration.file, declaration.line()};
    const auto name = reader.take_name();
    if (!name)
        return;
    model::Face face;
    face.name = text_of(context, *name);
    face.span = *name;
    const auto index = static_cast<std::uint32_t>(context.model.device.faces.size());
    if (const auto first = context.faces.add(face.name, {index, *name})) {
        report_duplicate(context, *name, first->span);
        return;
    }
    reader.take_text();
    const double width = read_number(reader);
    reader.skip(); // x
    const auto height = read_quantity(context, reader, Measure::length);
    face.height_mm = millimetres(height);
    if (height)
        face.width_mm = millimetres(model::make_quantity(width, height->unit));
    if (reader.take_comma()) {
        reader.skip(); // corner
        face.corner_mm = millimetres(read_quantity(context, reader, Measure::length));
    }
    context.model.device.faces.push_back(face);
}

void add_function(Context& context, model::Function function) {
    const auto index = static_cast<std::uint32_t>(context.model.functions.size());
    if (const auto first = context.functions.add(function.name, {index, function.span})) {
        report_duplicate(context, function.span, first->span);
        return;
    }
    if (const auto item = context.items.find(function.name)) {
        report_duplicate(context, function.span, item->span);
        return;
    }
    context.model.functions.edit().push_back(std::move(function));
}

// `IP6X` says something of `IP67`: X stands for any one sign.
bool is_part_of(std::string_view code, std::string_view rating) {
    if (code.size() > rating.size())
        return false;
    return std::equal(code.begin(), code.end(), rating.begin(),
                      [](char part, char sign) { return part == 'X' || part == sign; });
}

// Every sign of a code that some declared part begins like must be declared: IP68 is, IP70 is not.
void check_code(Context& context, const model::Function& rating) {
    const auto& parts = context.model.rating_parts;
    std::string known(rating.name.size(), ' ');
    bool any = false;
    for (const model::RatingPart& part : parts) {
        any = any || part.code.substr(0, 2) == rating.name.substr(0, 2);
        if (!is_part_of(part.code, rating.name))
            continue;
        for (std::size_t i = 0; i < part.code.size(); ++i) {
            if (part.code[i] != 'X' || rating.name[i] == 'X')
                known[i] = rating.name[i];
        }
    }
    const std::size_t unknown = known.find(' ');
    if (!any || unknown == std::string::npos)
        return;
    Diagnostic& finding = report(context, "bad-rating", rating.span,
                                 fmt::format("`{}` is no rating: its `{}` means nothing there",
                                             rating.name, rating.name.substr(unknown)));
    finding.help = "`matchmark kinds rating` lists what the parts of a rating mean";
}

void check_upheld(Context& context, const model::Function& rating) {
    if (!rating.through.empty())
        return;
    Diagnostic& finding = report(context, "bad-rating", rating.span,
                                 fmt::format("nothing is said to uphold `{}`", rating.name));
    finding.why = "when a seal is parted the rating is void, and nobody would know";
    finding.help = fmt::format("add `by` and its seals: `sealed {} by ...`", rating.name);
}

void read_ratings(Context& context, const Declaration& declaration) {
    for (std::size_t i = declaration.head + 1; i < declaration.end; ++i) {
        const Line& line = declaration.file->lines[i];
        if (line.keyword != Keyword::sealed || line.shape != LineShape::detail)
            continue;
        Reader reader{context.sources, *declaration.file, line};
        const auto name = reader.take_name();
        if (!name)
            continue;
        model::Function rating;
        rating.name = rating.title = text_of(context, *name);
        rating.is_rating = true;
        rating.span = *name;
        if (reader.take_word("by"))
            rating.through = read_items(context, reader);
        check_code(context, rating);
        check_upheld(context, rating);
        add_function(context, std::move(rating));
    }
}

void read_function(Context& context, const Declaration& declaration) {
    Reader head{context.sources, *declaration.file, declaration.line()};
    const auto name = head.take_name();
    if (!name)
        return;
    model::Function function;
    function.name = text_of(context, *name);
    function.span = *name;
    function.title = head.take_text().value_or(function.name);
    for (std::size_t i = declaration.head + 1; i < declaration.end; ++i) {
        const Line& line = declaration.file->lines[i];
        if (line.keyword != Keyword::through || line.shape != LineShape::detail)
            continue;
        Reader reader{context.sources, *declaration.file, line};
        const auto items = read_items(context, reader);
        function.through.insert(function.through.end(), items.begin(), items.end());
    }
    add_function(context, std::move(function));
}

bool is_caution(Keyword keyword) {
    return keyword == Keyword::caution_on || keyword == Keyword::danger_on ||
           keyword == Keyword::warning_on || keyword == Keyword::notice_on;
}

void read_caution(Context& context, const Declaration& declaration) {
    Reader head{context.sources, *declaration.file, declaration.line()};
    const auto name = head.take_name();
    if (!name)
        return;
    head.take_word("on");
    const auto refs = read_refs(context, head);
    std::vector<model::Condition> when;
    if (head.take_word("when"))
        when = read_conditions(context, head);
    model::ItemCaution caution;
    caution.name = text_of(context, *name);
    caution.when = when;
    for (std::size_t i = declaration.head + 1; i < declaration.end; ++i) {
        if (declaration.file->lines[i].shape != LineShape::prose)
            continue;
        caution.message = read_prose(context, declaration, i);
        break;
    }
    for (const auto& ref : refs) {
        caution.item = ref;
        context.model.cautions.edit().push_back(caution);
    }
}

} // namespace

void resolve_device(Context& context, const std::vector<Declaration>& all) {
    for (const Declaration& declaration : all) {
        if (declaration.line().keyword == Keyword::device)
            read_device(context, declaration);
    }
    for (const Declaration& declaration : all) {
        if (declaration.line().keyword == Keyword::face)
            read_face(context, declaration);
    }
}

void resolve_functions(Context& context, const std::vector<Declaration>& all) {
    for (const Declaration& declaration : all) {
        if (declaration.line().keyword == Keyword::device)
            read_ratings(context, declaration);
        if (declaration.line().keyword == Keyword::function)
            read_function(context, declaration);
    }
}

void resolve_cautions(Context& context, const std::vector<Declaration>& all) {
    for (const Declaration& declaration : all) {
        if (is_caution(declaration.line().keyword))
            read_caution(context, declaration);
    }
}

} // namespace matchmark::resolve
