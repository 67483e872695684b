// Drives, threads, grades, frictions, tools, gear, ratings, signs and hazards, as the parts library
// and authors' files declare them.
#include "resolve/stages.hpp"
#include "resolve/values.hpp"

#include <algorithm>
#include <array>
#include <fmt/core.h>

namespace matchmark::resolve {

using syntax::Keyword;
using syntax::Line;
using syntax::Reader;

namespace {

// The name's text, when it is one of the known; reports it otherwise.
std::string known_name(Context& context, Reader& reader, const Names& names, const char* rule,
                       const char* what) {
    const auto name = reader.take_name();
    if (!name)
        return {};
    if (!names.find(context.sources.slice(*name))) {
        report_unknown(context, rule, *name, what, known_names(context, names));
        return {};
    }
    return text_of(context, *name);
}

void read_size(Context& context, model::Drive& drive, Reader& reader) {
    model::DriveSize size;
    size.span = reader.here();
    size.size = reader.next_text();
    reader.skip();
    if (reader.take_word("across"))
        size.across = read_quantity(context, reader, model::Measure::length);
    if (reader.take_word("for")) {
        for (const Span thread : read_name_list(reader)) {
            const std::string name = text_of(context, thread);
            if (!context.threads.find(name)) {
                report_unknown(context, "unknown-thread", thread, "thread",
                               known_names(context, context.threads));
                continue;
            }
            size.threads.push_back(name);
        }
    }
    size.note = reader.take_text().value_or("");
    drive.sizes.push_back(std::move(size));
}

void read_stand_in(Context& context, model::Drive& drive, Reader& reader) {
    model::StandIn stand_in;
    const auto tool = reader.take_name();
    if (!tool)
        return;
    stand_in.span = *tool;
    stand_in.tool = text_of(context, *tool);
    if (!reader.next_is_word("for")) {
        stand_in.tool_size = reader.next_text();
        reader.skip();
    }
    reader.take_word("for");
    stand_in.size = reader.next_text();
    drive.stand_ins.push_back(std::move(stand_in));
}

void resolve_drive(Context& context, const Declaration& declaration) {
    Reader head{context.sources, *declaration.file, declaration.line()};
    model::Drive* drive = declared(context.drives, context.model.drives, context, head);
    if (drive == nullptr)
        return;
    drive->title = title_or_name(head, drive->name);
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        if (line.keyword == Keyword::size) {
            read_size(context, *drive, reader);
        } else if (line.keyword == Keyword::at_a_pinch) {
            read_stand_in(context, *drive, reader);
        } else if (line.keyword == Keyword::driven_by) {
            do {
                if (const auto tool = reader.take_name())
                    drive->driven_by.push_back(text_of(context, *tool));
            } while (reader.take_word("or"));
        }
    });
}

void resolve_form(Context& context, const Declaration& declaration) {
    Reader head{context.sources, *declaration.file, declaration.line()};
    model::ThreadForm* form = declared(context.forms, context.model.forms, context, head);
    if (form == nullptr)
        return;
    form->title = title_or_name(head, form->name);
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        (line.keyword == Keyword::root ? form->root : form->pitch_line) = read_number(reader);
    });
}

void read_thread_detail(Context& context, model::Thread& thread, const Line& line, Reader& reader) {
    using model::Measure;
    switch (line.keyword) {
    case Keyword::form_of:
        if (const std::string name =
                known_name(context, reader, context.forms, "unknown-form", "form of thread");
            !name.empty())
            thread.form = context.model.forms[context.forms.find(name)->index];
        break;
    case Keyword::diameter:
        thread.diameter = read_quantity(context, reader, Measure::length);
        break;
    case Keyword::pitch:
        thread.pitch = read_quantity(context, reader, Measure::length);
        break;
    case Keyword::root_at_least:
        thread.root_at_least = read_quantity(context, reader, Measure::length);
        break;
    case Keyword::bears_on:
        thread.bears_on = read_limit(context, reader);
        break;
    case Keyword::breaks_at:
        thread.breaks_at = read_quantity(context, reader, Measure::torque);
        break;
    default:
        break;
    }
}

void resolve_thread(Context& context, const Declaration& declaration) {
    Reader head{context.sources, *declaration.file, declaration.line()};
    model::Thread* thread = declared(context.threads, context.model.threads, context, head);
    if (thread == nullptr)
        return;
    thread->title = head.take_text().value_or(thread->name);
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        read_thread_detail(context, *thread, line, reader);
    });
}

void read_strength(Context& context, model::Strength& strength, Reader& reader) {
    const auto value = read_quantity(context, reader, model::Measure::pressure);
    if (reader.take_word("above")) {
        strength.above = read_quantity(context, reader, model::Measure::length);
        strength.large = value;
    } else {
        strength.usual = value;
    }
}

void resolve_grade(Context& context, const Declaration& declaration) {
    Reader head{context.sources, *declaration.file, declaration.line()};
    model::Grade* grade = declared(context.grades, context.model.grades, context, head);
    if (grade == nullptr)
        return;
    grade->title = head.take_text().value_or(grade->name);
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        if (line.keyword == Keyword::tensile)
            read_strength(context, grade->tensile, reader);
        if (line.keyword == Keyword::yield)
            read_strength(context, grade->yield, reader);
        if (line.keyword == Keyword::shear)
            grade->shear = read_number(reader);
        grade->usual = grade->usual || line.keyword == Keyword::usual;
    });
}

void resolve_friction(Context& context, const Declaration& declaration) {
    Reader head{context.sources, *declaration.file, declaration.line()};
    model::Friction* friction = declared(context.frictions, context.model.frictions, context, head);
    if (friction == nullptr)
        return;
    friction->title = title_or_name(head, friction->name);
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        if (line.keyword == Keyword::coefficient)
            friction->coefficient = read_number(reader);
        friction->usual = friction->usual || line.keyword == Keyword::usual;
    });
}

void resolve_tool_kind(Context& context, const Declaration& declaration) {
    Reader head{context.sources, *declaration.file, declaration.line()};
    model::ToolKind* tool = declared(context.tool_kinds, context.model.tool_kinds, context, head);
    if (tool == nullptr)
        return;
    tool->title = title_or_name(head, tool->name);
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        if (line.keyword == Keyword::tool_class)
            tool->tool_class = model::tool_class_named(reader.next_text());
        if (line.keyword == Keyword::sets_torque)
            tool->torques = read_limit(context, reader);
        tool->on_dead_circuits =
            tool->on_dead_circuits || line.keyword == Keyword::on_dead_circuits;
    });
}

void resolve_gear(Context& context, const Declaration& declaration) {
    Reader head{context.sources, *declaration.file, declaration.line()};
    model::Gear* gear = declared(context.gear, context.model.gear, context, head);
    if (gear == nullptr)
        return;
    gear->title = title_or_name(head, gear->name);
    each_detail(context, declaration, [&](const Line& /*line*/, Reader& reader) {
        gear->sign = known_name(context, reader, context.signs, "unknown-sign", "sign");
    });
}

void resolve_rating(Context& context, const Declaration& declaration) {
    Reader head{context.sources, *declaration.file, declaration.line()};
    const auto name = head.take_name();
    if (!name)
        return;
    const std::string code = text_of(context, *name);
    const auto index = static_cast<std::uint32_t>(context.model.rating_parts.size());
    if (const auto first = context.rating_parts.add(code, {index, *name})) {
        report_duplicate(context, *name, first->span);
        return;
    }
    context.model.rating_parts.edit().push_back({code, head.take_text().value_or(code), *name});
}

// Only moves, lines and curves to places, so that any painter can draw it and nothing else hides in
// it.
bool is_outline(std::string_view text) {
    return !text.empty() && (text.front() == 'M') &&
           text.find_first_not_of("MLCZ0123456789. -") == std::string_view::npos;
}

void resolve_sign(Context& context, const Declaration& declaration) {
    Reader head{context.sources, *declaration.file, declaration.line()};
    model::Sign* sign = declared(context.signs, context.model.signs, context, head);
    if (sign == nullptr)
        return;
    sign->title = title_or_name(head, sign->name);
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        if (line.keyword == Keyword::number) {
            sign->number = reader.next_text();
        } else if (line.keyword == Keyword::warns) {
            sign->form = model::SignForm::warns;
        } else if (line.keyword == Keyword::obliges) {
            sign->form = model::SignForm::obliges;
        } else if (line.keyword == Keyword::forbids) {
            sign->form = model::SignForm::forbids;
        } else if (line.keyword == Keyword::outline) {
            const Span where = reader.here();
            const std::string part = reader.take_text().value_or("");
            if (is_outline(part)) {
                sign->outline += (sign->outline.empty() ? "" : " ") + part;
                return;
            }
            Diagnostic& finding =
                report(context, "bad-outline", where,
                       fmt::format("the outline of sign `{}` cannot be drawn", sign->name));
            finding.why = "an outline starts with M and is made of M, L, C and Z with numbers";
            finding.help = "write it as `\"M58 8 L30 55 L47 55 Z\"`, in a square of 100";
        }
    });
}

void resolve_hazard(Context& context, const Declaration& declaration) {
    Reader head{context.sources, *declaration.file, declaration.line()};
    model::Hazard* hazard = declared(context.hazards, context.model.hazards, context, head);
    if (hazard == nullptr)
        return;
    hazard->title = title_or_name(head, hazard->name);
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        if (line.keyword == Keyword::sign_of) {
            hazard->sign = known_name(context, reader, context.signs, "unknown-sign", "sign");
        } else if (line.keyword == Keyword::wear) {
            do {
                const std::string gear =
                    known_name(context, reader, context.gear, "unknown-gear", "protective gear");
                if (!gear.empty())
                    hazard->wear.push_back(gear);
            } while (reader.take_comma());
        } else if (line.keyword == Keyword::order) {
            for (const Span verb : read_name_list(reader))
                hazard->order.push_back(text_of(context, verb));
        }
    });
    for (std::size_t i = declaration.head + 1; i < declaration.end;) {
        if (syntax::is_prose(declaration.file->lines[i].keyword)) {
            hazard->messages.push_back(read_prose(context, declaration, i));
        } else {
            ++i;
        }
    }
}

// Once all hazards are known, for they name each other.
void resolve_what_lights(Context& context, const Declaration& declaration) {
    Reader head{context.sources, *declaration.file, declaration.line()};
    const auto id = context.hazards.find(head.next_text());
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        if (line.keyword != Keyword::lit_by || !id)
            return;
        do {
            const std::string name =
                known_name(context, reader, context.hazards, "unknown-hazard", "hazard");
            if (!name.empty())
                context.model.hazards.edit(id->index).lit_by.push_back(name);
        } while (reader.take_comma());
    });
}

struct Resolving {
    Keyword keyword;
    void (*resolve)(Context&, const Declaration&);
};

} // namespace

// In this order a declaration finds what it names, whichever file that stands in.
void resolve_trade(Context& context, const std::vector<Declaration>& all) {
    static constexpr auto order = std::to_array<Resolving>({
        {Keyword::form, resolve_form},
        {Keyword::thread, resolve_thread},
        {Keyword::grade, resolve_grade},
        {Keyword::friction, resolve_friction},
        {Keyword::drive, resolve_drive},
        {Keyword::tool_kind, resolve_tool_kind},
        {Keyword::rating, resolve_rating},
        {Keyword::sign, resolve_sign},
        {Keyword::gear, resolve_gear},
        {Keyword::hazard, resolve_hazard},
        {Keyword::hazard, resolve_what_lights},
    });
    for (const Resolving& one : order) {
        for (const Declaration& declaration : all) {
            if (declaration.line().keyword == one.keyword)
                one.resolve(context, declaration);
        }
    }
}

} // namespace matchmark::resolve
