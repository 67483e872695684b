// Reads the shape of a file off its lines.
#include "serve/editor/outline.hpp"

#include "parse/parse.hpp"
#include "serve/editor/findings.hpp"
#include "serve/editor/names.hpp"
#include "syntax/reader.hpp"
#include "tidy/tidy.hpp"

#include <algorithm>

namespace matchmark::serve {

using syntax::Keyword;
using syntax::Line;
using syntax::LineShape;

namespace {

constexpr std::size_t most_symbols = 500;

// The last line, from `first` on and before `end`, that is neither blank nor a comment.
std::size_t last_line(const syntax::File& file, std::size_t first, std::size_t end) {
    std::size_t last = first;
    for (std::size_t i = first; i < end; ++i) {
        const LineShape shape = file.lines[i].shape;
        if (shape != LineShape::blank && shape != LineShape::comment)
            last = i;
    }
    return last;
}

struct Declared {
    std::size_t line = 0;
    std::size_t last = 0; // of its lines
};

bool is_declaration(const Line& line) {
    return line.shape == LineShape::declaration ||
           (line.shape == LineShape::broken && line.depth == 0);
}

std::vector<Declared> declarations_of(const syntax::File& file) {
    std::vector<Declared> found;
    const std::size_t count = file.lines.size();
    for (std::size_t i = 0; i < count; ++i) {
        if (!is_declaration(file.lines[i]))
            continue;
        std::size_t end = i + 1;
        while (end < count && !is_declaration(file.lines[end]))
            ++end;
        found.push_back({i, last_line(file, i, end)});
    }
    return found;
}

SymbolSort sort_of(Keyword keyword) {
    switch (keyword) {
    case Keyword::device:
        return SymbolSort::module;
    case Keyword::guide:
        return SymbolSort::namespace_;
    case Keyword::take_apart:
    case Keyword::work:
    case Keyword::put_back:
    case Keyword::before_section:
        return SymbolSort::object;
    case Keyword::step:
        return SymbolSort::method;
    case Keyword::test:
        return SymbolSort::event;
    case Keyword::kind:
        return SymbolSort::kind;
    case Keyword::function:
        return SymbolSort::function;
    case Keyword::part:
    case Keyword::fastener:
    case Keyword::connector:
    case Keyword::bond:
    case Keyword::fluid:
    case Keyword::energy:
        return SymbolSort::variable;
    default:
        return SymbolSort::constant;
    }
}

bool is_section(Keyword keyword) {
    return keyword == Keyword::take_apart || keyword == Keyword::work ||
           keyword == Keyword::put_back || keyword == Keyword::before_section;
}

Symbol symbol_of(const SourceMap& sources, const syntax::File& file, const LineTable& table,
                 const Declared& declared) {
    const Line& line = file.lines[declared.line];
    syntax::Reader reader{sources, file, line};
    Symbol symbol;
    Span name = line.head;
    if (const auto taken = reader.take_name())
        name = *taken;
    symbol.name = sources.slice(name);
    if (symbol.name.empty())
        symbol.name = sources.slice(line.whole);
    symbol.detail = reader.take_text().value_or(std::string(syntax::spelling(line.keyword)));
    symbol.sort = sort_of(line.keyword);
    symbol.selection = table.range(name);
    symbol.range = table.range(line.whole.begin, file.lines[declared.last].whole.end);
    symbol.range.start = std::min(symbol.range.start, symbol.selection.start);
    symbol.range.end = std::max(symbol.range.end, symbol.selection.end);
    return symbol;
}

bool has_letters(const std::string& text, const std::string& query) {
    const auto lower = [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    };
    return std::search(text.begin(), text.end(), query.begin(), query.end(),
                       [&](char a, char b) { return lower(a) == lower(b); }) != text.end();
}

// Indices into token_types().
enum class Colour : std::uint8_t {
    keyword,
    kind,
    variable,
    method,
    member,
    property,
    name_space,
    string,
    number,
    comment
};

Colour colour_of(NameSort sort) {
    switch (sort) {
    case NameSort::kind:
    case NameSort::trade:
    case NameSort::hazard:
        return Colour::kind;
    case NameSort::item:
    case NameSort::device:
    case NameSort::face:
    case NameSort::variant:
    case NameSort::caution:
        return Colour::variable;
    case NameSort::verb:
    case NameSort::function:
        return Colour::method;
    case NameSort::state:
        return Colour::member;
    case NameSort::resource:
    case NameSort::other:
        return Colour::property;
    case NameSort::guide:
    case NameSort::step:
        return Colour::name_space;
    }
    return Colour::property;
}

struct Token {
    Span span;
    Colour colour = Colour::keyword;
};

std::vector<Token> tokens_of(const Analysis& analysis) {
    const syntax::File& file = analysis.root();
    std::vector<Token> tokens;
    for (const Line& line : file.lines) {
        const bool read = line.shape == LineShape::declaration || line.shape == LineShape::detail;
        if (read && line.keyword != Keyword::verb && line.keyword != Keyword::count &&
            line.keyword != Keyword::quantity)
            tokens.push_back({line.head, Colour::keyword});
        if (line.shape == LineShape::comment)
            tokens.push_back({line.whole, Colour::comment});
        if (line.comment.known() && !line.comment.empty())
            tokens.push_back({line.comment, Colour::comment});
        for (std::uint32_t i = 0; read && i < line.term_count; ++i) {
            const syntax::Term& term = file.terms[line.first_term + i];
            if (term.kind == syntax::TermKind::word)
                tokens.push_back({file.span_of(term), Colour::keyword});
            if (term.kind == syntax::TermKind::text)
                tokens.push_back({file.span_of(term), Colour::string});
            if (term.kind == syntax::TermKind::number || term.kind == syntax::TermKind::unit)
                tokens.push_back({file.span_of(term), Colour::number});
        }
    }
    for (const NameUse& use : names_of(analysis.done.sources, file, analysis.done.model))
        tokens.push_back({use.span, colour_of(use.sort)});
    std::sort(tokens.begin(), tokens.end(),
              [](const Token& a, const Token& b) { return a.span.begin < b.span.begin; });
    return tokens;
}

} // namespace

std::vector<Symbol> outline(Workspace& workspace, const std::string& path) {
    const Analysis& analysis = workspace.analysis(path);
    const syntax::File& file = analysis.root();
    const LineTable table = workspace.lines(analysis.source().text);
    std::vector<Symbol> symbols;
    bool in_guide = false;
    for (const Declared& declared : declarations_of(file)) {
        const Keyword keyword = file.lines[declared.line].keyword;
        if (keyword == Keyword::use || keyword == Keyword::none)
            continue;
        Symbol symbol = symbol_of(analysis.done.sources, file, table, declared);
        const bool below =
            is_section(keyword) || keyword == Keyword::step || keyword == Keyword::test;
        in_guide = keyword == Keyword::guide || (in_guide && below);
        if (!below || !in_guide) {
            symbols.push_back(std::move(symbol));
            continue;
        }
        Symbol& guide = symbols.back();
        guide.range.end = std::max(guide.range.end, symbol.range.end);
        if (is_section(keyword) || guide.children.empty() ||
            guide.children.back().sort != SymbolSort::object) {
            guide.children.push_back(std::move(symbol));
            continue;
        }
        Symbol& section = guide.children.back();
        section.range.end = std::max(section.range.end, symbol.range.end);
        section.children.push_back(std::move(symbol));
    }
    return symbols;
}

std::vector<FoundSymbol> find_symbols(Workspace& workspace, const std::string& query) {
    std::vector<FoundSymbol> found;
    std::set<std::string> paths;
    for (const std::string& path : workspace.files_in_folders())
        paths.insert(path);
    for (const auto& entry : workspace.disk().open)
        paths.insert(entry.first);
    for (const std::string& path : paths) {
        const auto text = workspace.disk().read(path);
        const auto* bytes = std::get_if<std::string>(&text);
        if (bytes == nullptr || first_unreadable_byte(*bytes) != std::string::npos)
            continue;
        SourceMap sources;
        std::vector<Diagnostic> findings;
        const FileId id = sources.add(path, *bytes);
        const syntax::File file = syntax::parse(sources, id, findings);
        const LineTable table = workspace.lines(sources.file(id).text);
        for (const Declared& declared : declarations_of(file)) {
            const Keyword keyword = file.lines[declared.line].keyword;
            if (keyword == Keyword::use || keyword == Keyword::none || is_section(keyword))
                continue;
            const Symbol symbol = symbol_of(sources, file, table, declared);
            if (!has_letters(symbol.name, query) && !has_letters(symbol.detail, query))
                continue;
            found.push_back({symbol.name,
                             symbol.sort,
                             path.substr(path.rfind('/') + 1),
                             {workspace.uri(path), symbol.selection}});
            if (found.size() >= most_symbols)
                return found;
        }
    }
    return found;
}

std::vector<Fold> folds(Workspace& workspace, const std::string& path) {
    const Analysis& analysis = workspace.analysis(path);
    const syntax::File& file = analysis.root();
    std::vector<Fold> found;
    const auto add = [&](std::size_t first, std::size_t last, bool comment) {
        if (last > first)
            found.push_back(
                {static_cast<std::uint32_t>(first), static_cast<std::uint32_t>(last), comment});
    };
    for (const Declared& declared : declarations_of(file))
        add(declared.line, declared.last, false);
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
        std::size_t end = i;
        while (end < file.lines.size() && file.lines[end].shape == LineShape::comment)
            ++end;
        if (end > i)
            add(i, end - 1, true);
        i = std::max(i, end == i ? i : end - 1);
    }
    // A section with its steps, and prose of several lines.
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
        const Line& line = file.lines[i];
        std::size_t end = i + 1;
        if (is_section(line.keyword) && line.shape == LineShape::declaration) {
            const auto goes_on = [&](const Line& next) {
                return !is_declaration(next) || next.keyword == Keyword::step ||
                       next.keyword == Keyword::test;
            };
            while (end < file.lines.size() && goes_on(file.lines[end]))
                ++end;
            add(i, last_line(file, i, end), false);
        } else if (line.shape == LineShape::detail && syntax::is_prose(line.keyword)) {
            while (end < file.lines.size() && file.lines[end].shape == LineShape::prose)
                ++end;
            add(i, end - 1, false);
        }
    }
    std::sort(found.begin(), found.end(), [](const Fold& a, const Fold& b) {
        return std::pair(a.first, b.last) < std::pair(b.first, a.last);
    });
    // An editor takes one fold a line.
    found.erase(std::unique(found.begin(), found.end(),
                            [](const Fold& a, const Fold& b) { return a.first == b.first; }),
                found.end());
    return found;
}

std::vector<std::uint32_t> semantic_tokens(Workspace& workspace, const std::string& path) {
    const Analysis& analysis = workspace.analysis(path);
    const LineTable table = workspace.lines(analysis.source().text);
    std::vector<std::uint32_t> numbers;
    Position last;
    std::uint32_t covered = 0; // bytes before which all is told
    for (const Token& token : tokens_of(analysis)) {
        if (token.span.begin < covered || token.span.empty())
            continue;
        const Position at = table.position(token.span.begin);
        const std::uint32_t width = table.width(analysis.done.sources.slice(token.span));
        const bool same_line = at.line == last.line;
        numbers.insert(numbers.end(), {at.line - last.line,
                                       same_line ? at.character - last.character : at.character,
                                       width, static_cast<std::uint32_t>(token.colour), 0});
        last = at;
        covered = token.span.end;
    }
    return numbers;
}

std::vector<TextEdit> layout_edits(Workspace& workspace, const std::string& path) {
    const OpenFile* open = workspace.find(path);
    if (open == nullptr || first_unreadable_byte(open->text) != std::string::npos)
        return {};
    SourceMap sources;
    std::vector<Diagnostic> findings;
    const FileId id = sources.add(path, open->text);
    const syntax::File file = syntax::parse(sources, id, findings);
    if (any_error(findings))
        return {};
    const std::string after = matchmark::tidy(sources, file);
    if (after == open->text)
        return {};
    return {change_between(workspace.lines(open->text), open->text, after)};
}

} // namespace matchmark::serve
