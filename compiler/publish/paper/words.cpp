// What Cairo leaves out of a PDF for those who cannot see it: the words of each figure, the
// language.
#include "publish/paper/words.hpp"

#include <charconv>
#include <fmt/core.h>
#include <glib.h>
#include <memory>
#include <optional>
#include <string_view>

namespace matchmark::publish {

namespace {

constexpr std::string_view figure_head = "<< /Type /StructElem\n   /S /Figure\n";
constexpr std::string_view catalog_head = "<< /Type /Catalog\n";

struct Object {
    std::size_t number = 0;
    std::string_view body; // from its first byte to before `endobj`
};

std::optional<std::size_t> number_at(std::string_view text, std::size_t at) {
    std::size_t number = 0;
    if (at >= text.size()) {
        return std::nullopt;
    }
    const auto read = std::from_chars(text.data() + at, text.data() + text.size(), number);
    return read.ec == std::errc{} ? std::optional(number) : std::nullopt;
}

std::optional<std::size_t> number_after(std::string_view text, std::string_view words,
                                        std::size_t from) {
    const std::size_t at = text.find(words, from);
    return at == std::string_view::npos ? std::nullopt : number_at(text, at + words.size());
}

// Objects are found by the table of the file alone: a photo may hold any bytes.
std::optional<Object> object_at(std::string_view pdf, std::size_t number, std::size_t offset) {
    const std::string head = fmt::format("{} 0 obj\n", number);
    if (offset > pdf.size() || !pdf.substr(offset).starts_with(head)) {
        return std::nullopt;
    }
    const std::string_view rest = pdf.substr(offset + head.size());
    const bool wanted = rest.starts_with(figure_head) || rest.starts_with(catalog_head);
    const std::size_t end = wanted ? rest.find("\nendobj\n") : std::string_view::npos;
    if (end == std::string_view::npos) {
        return std::nullopt;
    }
    return Object{number, rest.substr(0, end + 1)};
}

// A text string in UTF-16 (ISO 32000-1, 7.9.2.2), in hexadecimal.
std::string text_string(const std::string& words) {
    glong length = 0;
    const std::unique_ptr<gunichar2, decltype(&g_free)> units(
        g_utf8_to_utf16(words.data(), static_cast<glong>(words.size()), nullptr, &length, nullptr),
        &g_free);
    std::string text = "<FEFF";
    for (glong i = 0; units != nullptr && i < length; ++i) {
        text += fmt::format("{:04X}", static_cast<unsigned>(units.get()[i]));
    }
    return text + ">";
}

struct Table {
    std::size_t size = 0;
    std::size_t start = 0;
    std::size_t root = 0;
    std::size_t info = 0;
    std::vector<Object> figures; // in the order of their numbers, which is that of their painting
    std::optional<Object> catalog;
};

std::optional<Table> read_table(std::string_view pdf) {
    const std::size_t last = pdf.rfind("startxref\n");
    const auto start =
        last == std::string_view::npos ? std::nullopt : number_after(pdf, "startxref\n", last);
    const std::string_view head = "xref\n0 ";
    if (!start || *start > pdf.size() || !pdf.substr(*start).starts_with(head)) {
        return std::nullopt;
    }
    const auto size = number_at(pdf, *start + head.size());
    const auto root = number_after(pdf, "/Root ", *start);
    const auto info = number_after(pdf, "/Info ", *start);
    const std::size_t first = pdf.find('\n', *start + head.size()) + 1;
    constexpr std::size_t entry = 20; // bytes of a line of the table
    if (!size || !root || !info || first + *size * entry > pdf.size()) {
        return std::nullopt;
    }
    Table table{*size, *start, *root, *info, {}, {}};
    for (std::size_t i = 1; i < *size; ++i) {
        // Ten digits with zeros before them.
        const auto offset = number_at(pdf, first + i * entry);
        const auto object = offset ? object_at(pdf, i, *offset) : std::nullopt;
        if (object && object->body.starts_with(figure_head)) {
            table.figures.push_back(*object);
        } else if (object && i == *root) {
            table.catalog = object;
        }
    }
    return table;
}

} // namespace

std::string with_words(std::string pdf, const std::vector<std::string>& figures,
                       const std::string& tag) {
    const auto table = read_table(pdf);
    if (!table || !table->catalog || table->figures.size() != figures.size()) {
        return pdf;
    }
    std::string more;
    std::string entries;
    const auto write = [&](const Object& object, std::string_view head, const std::string& added) {
        entries += fmt::format("{} 1\n{:010} 00000 n \n", object.number, pdf.size() + more.size());
        more += fmt::format("{} 0 obj\n{}{}{}endobj\n", object.number, head, added,
                            object.body.substr(head.size()));
    };
    for (std::size_t i = 0; i < figures.size(); ++i) {
        write(table->figures[i], figure_head, "   /Alt " + text_string(figures[i]) + "\n");
    }
    write(*table->catalog, catalog_head,
          "   /Lang (" + tag + ")\n   /ViewerPreferences << /DisplayDocTitle true >>\n");
    const std::size_t start = pdf.size() + more.size();
    more += fmt::format("xref\n{}trailer\n<< /Size {}\n   /Root {} 0 R\n   /Info {} 0 R\n   /Prev "
                        "{}\n>>\nstartxref\n{}\n%%EOF\n",
                        entries, table->size, table->root, table->info, table->start, start);
    return pdf + more;
}

} // namespace matchmark::publish
