// The names, kinds and counts of parts, fasteners, connectors, bonds, fluids and energies.
#include "model/role_words.hpp"
#include "model/spelling.hpp"
#include "resolve/stages.hpp"
#include "resolve/values.hpp"

#include <algorithm>
#include <array>
#include <fmt/core.h>

namespace matchmark::resolve {

using model::Item;
using model::ItemId;
using model::Role;
using syntax::Keyword;
using syntax::Line;
using syntax::LineShape;
using syntax::Reader;
using syntax::TermKind;

namespace {

constexpr double most_members = 1000;

struct ReadPhrase {
    model::SpecWords words;
    Span span;
};

// One phrase between commas: "M2 x 6", "hexalobular 6".
ReadPhrase read_phrase(Context& context, Reader& reader) {
    ReadPhrase read;
    model::SpecWords& phrase = read.words;
    read.span = reader.here();
    while (!reader.at_end() && !reader.next_is(TermKind::comma) && !reader.next_is_word("in") &&
           !reader.next_is_word("only") && !reader.next_is_word("kind")) {
        const Span here = reader.here();
        if (!phrase.text.empty())
            phrase.text += ' ';
        if (reader.next_is(TermKind::number) && reader.next_is(TermKind::unit, 1)) {
            if (auto quantity = read_quantity(context, reader)) {
                phrase.quantities.push_back(*quantity);
                phrase.text += to_text(*quantity);
            }
        } else {
            phrase.words.emplace_back(reader.next_text());
            phrase.text += reader.next_text();
            reader.skip();
        }
        read.span.end = here.end;
    }
    return read;
}

// By its name, or by its title: `hexagon-socket` is drive `hexagon`.
const model::Drive* drive_named(const Context& context, const std::string& word) {
    const auto& drives = context.model.drives;
    if (const auto named = context.drives.find(word))
        return &drives[named->index];
    const auto titled = std::find_if(drives.begin(), drives.end(), [&](const auto& drive) {
        return word.find('-') != std::string::npos && model::spaced(word) == drive.title;
    });
    return titled == drives.end() ? nullptr : &*titled;
}

void read_drive(const Context& context, model::Bolt& bolt, const model::SpecWords& phrase) {
    for (std::size_t i = 0; i < phrase.words.size(); ++i) {
        const model::Drive* drive = drive_named(context, phrase.words[i]);
        if (drive == nullptr)
            continue;
        bolt.drive = drive->name;
        if (i + 1 < phrase.words.size())
            bolt.drive_size = phrase.words[i + 1];
        if (bolt.drive_size.empty() && !phrase.quantities.empty()) {
            bolt.drive_size = model::number_text(phrase.quantities.front().value);
        }
    }
}

void read_thread(const Context& context, model::Bolt& bolt, const model::SpecWords& phrase) {
    for (std::size_t i = 0; i < phrase.words.size(); ++i) {
        if (!context.threads.find(phrase.words[i]))
            continue;
        bolt.thread = phrase.words[i];
        const bool has_length = i + 2 < phrase.words.size() && phrase.words[i + 1] == "x";
        if (has_length)
            bolt.length_mm = std::strtod(phrase.words[i + 2].c_str(), nullptr);
        const bool with_unit =
            i + 1 < phrase.words.size() && phrase.words[i + 1] == "x" && !phrase.quantities.empty();
        if (!has_length && with_unit)
            bolt.length_mm = phrase.quantities.front().base * 1000.0;
    }
}

// "class 8.8" names grade `class-8.8`, and "lightly oiled" friction `lightly-oiled`.
void read_make(const Context& context, model::Bolt& bolt, const model::SpecWords& phrase) {
    std::string name;
    for (const std::string& word : phrase.words)
        name += (name.empty() ? "" : "-") + word;
    if (context.grades.find(name))
        bolt.grade = name;
    if (context.frictions.find(name))
        bolt.friction = name;
}

// Does one of the words between hyphens stand in both names?
bool share_a_word(std::string_view left, std::string_view right) {
    constexpr std::size_t shortest = 3; // "of", "to" say nothing
    const auto has = [](std::string_view name, std::string_view word) {
        return ("-" + std::string(name) + "-").find("-" + std::string(word) + "-") !=
               std::string::npos;
    };
    for (std::size_t at = 0; at < left.size();) {
        const std::size_t end = std::min(left.find('-', at), left.size());
        if (end - at >= shortest && has(right, left.substr(at, end - at)))
            return true;
        at = end + 1;
    }
    return false;
}

// The kinds that share a word with the name: those of the item's role, or those of other roles.
std::string kinds_alike(const Context& context, const Item& item, std::string_view name,
                        bool same_role, std::size_t most_named) {
    std::string alike;
    std::size_t count = 0;
    for (const model::Kind& kind : context.model.kinds) {
        if ((kind.role == item.role) != same_role || count == most_named ||
            !share_a_word(name, kind.name))
            continue;
        alike += (count++ == 0 ? "`" : ", `") + kind.name + "`";
        if (!same_role)
            alike += " (" + a_role(kind.role) + ")";
    }
    return alike;
}

// `hinged cover` for `hinged-cover`: with the word that follows.
bool report_kind_of_two_words(Context& context, Span where) {
    const std::string_view text = context.sources.file(where.file).text;
    std::uint32_t begin = where.end;
    while (begin < text.size() && text[begin] == ' ')
        ++begin;
    std::uint32_t end = begin;
    while (end < text.size() && text[end] >= 'a' && text[end] <= 'z')
        ++end;
    const std::string name =
        fmt::format("{}-{}", context.sources.slice(where), text.substr(begin, end - begin));
    if (begin == where.end || !context.kinds.find(name))
        return false;
    Diagnostic& finding =
        report(context, "unknown-kind", where,
               fmt::format("there is no kind `{}`", context.sources.slice(where)));
    finding.help = fmt::format("write `{}`", name);
    finding.edits.push_back({{where.file, where.begin, end}, name});
    return true;
}

// One of the item's role that is spelled nearly so; else those that share a word with it.
void report_unknown_kind(Context& context, const Item& item, Span where) {
    if (report_kind_of_two_words(context, where))
        return;
    auto known = known_names(context, context.kinds);
    const bool all_compared = !known.empty();
    std::erase_if(known, [&](const std::string& name) {
        return context.model.kinds[context.kinds.find(name)->index].role != item.role;
    });
    report_unknown(context, "unknown-kind", where, "kind", known);
    if (!all_compared || !context.findings.back().edits.empty())
        return;
    const std::string_view name = context.sources.slice(where);
    std::string alike = kinds_alike(context, item, name, true, 4);
    // The first word tells most: `mains-plug` may mean a `mains-cord`.
    const std::string others = kinds_alike(context, item, name.substr(0, name.find('-')), false, 2);
    alike += (alike.empty() || others.empty() ? "" : ", ") + others;
    std::string& help = context.findings.back().help;
    help = "`matchmark kinds` lists them";
    if (!alike.empty())
        help += "; with a word in common: " + alike;
}

// The kind's name and what describes the item; the reader stands on the name.
void read_kind(Context& context, Item& item, Reader& reader) {
    const auto name = reader.take_name();
    if (!name)
        return;
    const auto kind = context.kinds.find(context.sources.slice(*name));
    if (!kind) {
        report_unknown_kind(context, item, *name);
        item.kind = model::KindId{context.kinds.find("plain-part")->index};
    } else if (context.model.kinds[kind->index].role != item.role) {
        const model::Kind& found = context.model.kinds[kind->index];
        Diagnostic& finding =
            report(context, "wrong-role", *name,
                   fmt::format("kind `{}` is {}, and `{}` is declared as {}", found.name,
                               a_role(found.role), item.name, a_role(item.role)));
        if (found.span.known())
            finding.related.push_back({found.span, "the kind"});
        finding.help = fmt::format("declare `{}` as {}", item.name, a_role(found.role));
        item.kind = model::KindId{context.kinds.find("plain-part")->index};
    } else {
        item.kind = model::KindId{kind->index};
    }
    model::Bolt bolt = *item.bolt;
    do {
        ReadPhrase phrase = read_phrase(context, reader);
        read_drive(context, bolt, phrase.words);
        read_thread(context, bolt, phrase.words);
        read_make(context, bolt, phrase.words);
        if (phrase.words.text.empty())
            continue;
        const std::string_view written = context.sources.slice(phrase.span);
        auto known = context.phrases.find(written);
        if (known == context.phrases.end()) {
            auto said = std::make_shared<const model::SpecWords>(std::move(phrase.words));
            known = context.phrases.emplace(written, std::move(said)).first;
        }
        item.spec.push_back({known->second, phrase.span});
    } while (reader.take_comma());
    if (bolt != model::Bolt{})
        item.bolt = context.bolts.try_emplace(bolt, bolt).first->second;
}

void read_count(Context& context, Item& item, Reader& reader) {
    const Span where = reader.here();
    const double count = read_number(reader);
    if (count < 1 || count > most_members || count != static_cast<std::uint16_t>(count)) {
        report(context, "wrong-count", where,
               fmt::format("`{}` counts {}, and from 1 to 1000 stand here", item.name,
                           model::number_text(count)))
            .help = "write how many there are; more than that are several groups";
    } else {
        item.count = static_cast<std::uint16_t>(count);
    }
    reader.skip(); // x
    read_kind(context, item, reader);
}

void read_carrier(Context& context, ItemId id, Reader& reader) {
    const auto carrier = read_ref(context, reader);
    if (!carrier)
        return;
    Item& item = context.model.items.edit(id.value);
    if (item.carrier.known()) {
        report(context, "duplicate-name", carrier->span,
               fmt::format("`{}` is already in `{}`", item.name,
                           context.model.item(item.carrier).name))
            .help = "leave one of the two lines out";
        return;
    }
    for (ItemId at = carrier->item; at.known(); at = context.model.item(at).carrier) {
        if (at != id)
            continue;
        report(context, "carrier-ring", carrier->span,
               fmt::format("`{}` cannot be in `{}`, which is in it", item.name,
                           text_of(context, carrier->span)))
            .help = "name what it goes with when that is taken out";
        return;
    }
    item.carrier = carrier->item;
}

void read_head(Context& context, ItemId id, const Declaration& declaration) {
    Reader reader{context.sources, *declaration.file, declaration.line()};
    reader.take_name();
    reader.take_text();
    while (!reader.at_end()) {
        Item& item = context.model.items.edit(id.value);
        if (reader.take_word("in")) {
            read_carrier(context, id, reader);
        } else if (reader.take_word("only")) {
            item.variants = read_variants(context, reader);
        } else if (reader.take_word("kind")) {
            read_kind(context, item, reader);
        } else if (reader.next_is(TermKind::number) && reader.next_is_word("x", 1)) {
            read_count(context, item, reader);
        } else if (reader.next_is(TermKind::number)) {
            item.amount = read_quantity(context, reader);
        } else {
            reader.skip();
        }
    }
}

void read_details(Context& context, ItemId id, const Declaration& declaration) {
    for (std::size_t i = declaration.head + 1; i < declaration.end; ++i) {
        const Line& line = declaration.file->lines[i];
        if (line.shape != LineShape::detail)
            continue;
        Reader reader{context.sources, *declaration.file, line};
        Item& item = context.model.items.edit(id.value);
        switch (line.keyword) {
        case Keyword::kind_of:
            read_kind(context, item, reader);
            break;
        case Keyword::count:
            if (reader.next_is_word("x", 1)) {
                read_count(context, item, reader);
            } else {
                item.amount = read_quantity(context, reader);
            }
            break;
        case Keyword::in:
            read_carrier(context, id, reader);
            break;
        case Keyword::only:
            item.variants = read_variants(context, reader);
            break;
        default:
            break;
        }
    }
}

void settle_kind(Context& context, Item& item) {
    if (item.kind.known())
        return;
    const auto plain = context.kinds.find("plain-part");
    if (item.role != Role::part && item.spec.empty()) {
        Diagnostic& finding =
            report(context, "unknown-kind", item.span,
                   fmt::format("`{}` is {} of no kind", item.name, a_role(item.role)));
        finding.why = "without a kind nothing says how it comes off";
        finding.help = "add `kind KIND`; `matchmark kinds` lists them";
    }
    item.kind = model::KindId{plain->index};
}

} // namespace

void declare_items(Context& context, const std::vector<Declaration>& all) {
    auto& items = context.model.items.edit();
    const auto declares = [](const Declaration& one) {
        return model::role_of(one.line().keyword).has_value();
    };
    items.reserve(items.size() +
                  static_cast<std::size_t>(std::count_if(all.begin(), all.end(), declares)));
    for (const Declaration& declaration : all) {
        const auto role = model::role_of(declaration.line().keyword);
        if (!role)
            continue;
        Reader reader{context.sources, *declaration.file, declaration.line()};
        const auto name = reader.take_name();
        if (!name)
            continue;
        Item item;
        item.name = text_of(context, *name);
        item.role = *role;
        item.span = *name;
        item.declaration = declaration.line().whole;
        item.title = title_or_name(reader, item.name);
        const auto index = static_cast<std::uint32_t>(items.size());
        if (const auto first = context.items.add(item.name, {index, *name})) {
            report_duplicate(context, *name, first->span);
            continue;
        }
        items.push_back(std::move(item));
    }
}

void resolve_items(Context& context, const std::vector<Declaration>& all) {
    for (const Declaration& declaration : all) {
        if (!model::role_of(declaration.line().keyword))
            continue;
        Reader reader{context.sources, *declaration.file, declaration.line()};
        const auto name = reader.take_name();
        if (!name)
            continue;
        const auto named = context.items.find(context.sources.slice(*name));
        if (!named || named->span != *name)
            continue; // a second declaration of the name
        read_head(context, ItemId{named->index}, declaration);
        read_details(context, ItemId{named->index}, declaration);
        settle_kind(context, context.model.items.edit(named->index));
    }
    model::Model& model = context.model;
    for (Item& item : model.items.edit()) {
        if (!item.kind.known())
            settle_kind(context, item);
        const model::Kind& kind = model.kind(item.kind);
        item.one_use = kind.one_use;
        if (!kind.used_again_if.empty())
            item.rare.edit().used_again_if = kind.used_again_if;
        item.first_slot = model.slot_count;
        item.first_member = model.member_count;
        model.slot_count += item.count * static_cast<std::uint32_t>(kind.set_count());
        model.member_count += item.count;
    }
}

} // namespace matchmark::resolve
