// Ten thousand random edits: what the server says of the open files is, after each hundred, what a
// fresh check says. Questions asked in between never end it.
#include "drive/compilation.hpp"
#include "drive/pictures.hpp"
#include "editor/client.hpp"

#include <doctest/doctest.h>
#include <fmt/core.h>

#include <random>
#include <set>

using namespace matchmark;
using editor_test::Client;

namespace {

constexpr int edits = 10000;
constexpr int between_checks = 100;

// Where an editor that counts in UTF-16 sees a byte of the text. Worked out here once more, without
// the server's own count.
std::string place_of(const std::string& text, std::size_t offset) {
    std::size_t line = 0;
    std::size_t units = 0;
    for (std::size_t i = 0; i < offset && i < text.size(); ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        const bool ends =
            byte == '\n' || (byte == '\r' && (i + 1 >= text.size() || text[i + 1] != '\n'));
        if (ends) {
            ++line;
            units = 0;
        } else if ((byte & 0xC0U) != 0x80U) {
            units += byte >= 0xF0U ? 2 : 1;
        }
    }
    return fmt::format("{}:{}", line, units);
}

// As the command `check` would say it of these files.
std::set<std::string> fresh_check(MapDisk& disk, const std::vector<std::string>& roots) {
    std::set<std::string> all;
    for (const std::string& root : roots) {
        drive::Compilation done = drive::compile(disk, root);
        drive::report_pictures(disk, done);
        for (const Diagnostic& finding : done.findings) {
            const bool placed =
                finding.primary.known() && !done.sources.file(finding.primary.file).built_in;
            const SourceFile& file = done.sources.file(placed ? finding.primary.file : done.root);
            const std::size_t begin = placed ? finding.primary.begin : 0;
            const std::size_t end = placed ? finding.primary.end : 0;
            all.insert(fmt::format("{} {}-{} {} {} {}", file.path, place_of(file.text, begin),
                                   place_of(file.text, end), finding.rule,
                                   1 + static_cast<int>(finding.severity), finding.message));
        }
    }
    return all;
}

class Author {
public:
    explicit Author(unsigned seed) : random_(seed) {}

    std::size_t below(std::size_t count) { return count == 0 ? 0 : random_() % count; }

    // The text after some edit, as bytes [begin, end) replaced.
    struct Change {
        std::size_t begin = 0;
        std::size_t end = 0;
        std::string text;
    };

    Change change(const std::string& text) {
        switch (below(10)) {
        case 0:
            return {place(text), 0, typed_letter()};
        case 1:
            return removed(text);
        case 2:
        case 3:
            return without_line(text);
        case 4: {
            const std::size_t at = line_start(text, place(text));
            return {at, at, some_line(text)};
        }
        case 5:
        case 6:
            return other_word(text);
        case 7:
            return {place(text), 0, odd()};
        default:
            return swapped(text);
        }
    }

private:
    static bool continues(const std::string& text, std::size_t at) {
        return at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U;
    }
    // Between two characters, and not between the two halves of a line end.
    std::size_t place(const std::string& text) {
        std::size_t at = below(text.size() + 1);
        while (continues(text, at) ||
               (at > 0 && at < text.size() && text[at - 1] == '\r' && text[at] == '\n'))
            --at;
        return at;
    }
    static std::size_t line_start(const std::string& text, std::size_t at) {
        const std::size_t before = at == 0 ? std::string::npos : text.rfind('\n', at - 1);
        return before == std::string::npos ? 0 : before + 1;
    }
    static std::size_t line_end(const std::string& text, std::size_t at) {
        const std::size_t end = text.find('\n', at);
        return end == std::string::npos ? text.size() : end + 1;
    }
    std::string typed_letter() {
        static const std::string letters = "abcdefghij  ,\"#:-1234\n";
        return std::string(1, letters[below(letters.size())]);
    }
    std::string odd() {
        static const std::vector<std::string> pieces = {"\xF0\x9F\x94\xA7",
                                                        "\xC3\xA9",
                                                        "\xE8\x93\x8B",
                                                        "\r\n",
                                                        "\t",
                                                        "\r",
                                                        "\\",
                                                        "\"\"",
                                                        "# allow still-held: so it is\n",
                                                        "  text: \xE2\x80\x9Cword\xE2\x80\x9D\n",
                                                        "\n\n"};
        return pieces[below(pieces.size())];
    }
    Change removed(const std::string& text) {
        const std::size_t begin = place(text);
        std::size_t end = std::min(text.size(), begin + below(12));
        while (end < text.size() && (continues(text, end) || text[end] == '\n'))
            ++end;
        return {begin, end, ""};
    }
    Change without_line(const std::string& text) {
        const std::size_t at = line_start(text, place(text));
        return {at, line_end(text, at), ""};
    }
    std::string some_line(const std::string& text) {
        const std::size_t at = line_start(text, place(text));
        std::string line = text.substr(at, line_end(text, at) - at);
        return line.ends_with('\n') ? line : line + "\n";
    }
    std::string word_at(const std::string& text, std::size_t& begin, std::size_t& end) {
        const auto is_letter = [&](std::size_t at) {
            return at < text.size() &&
                   (std::isalnum(static_cast<unsigned char>(text[at])) != 0 || text[at] == '-');
        };
        begin = place(text);
        while (begin < text.size() && !is_letter(begin))
            ++begin;
        while (begin > 0 && is_letter(begin - 1))
            --begin;
        end = begin;
        while (is_letter(end))
            ++end;
        return text.substr(begin, end - begin);
    }
    Change other_word(const std::string& text) {
        Change change;
        std::size_t from = 0;
        std::size_t to = 0;
        change.text = word_at(text, from, to);
        word_at(text, change.begin, change.end);
        return change;
    }
    Change swapped(const std::string& text) {
        const std::size_t first = line_start(text, place(text));
        const std::size_t second = line_end(text, first);
        const std::size_t end = line_end(text, second);
        std::string lines = text.substr(second, end - second);
        if (!lines.ends_with('\n'))
            lines += '\n';
        return {first, end, lines + text.substr(first, second - first)};
    }

    std::mt19937 random_;
};

// The guides of one sample folder, open in an editor, with their device.
struct SampleDesk {
    MapDisk disk; // what the files hold now
    std::map<std::string, std::string> first;
    std::vector<std::string> open;
};

SampleDesk desk_of(const std::string& sample) {
    SampleDesk desk;
    const auto real = real_disk();
    const std::string folder = std::string(MATCHMARK_SOURCE_DIR) + "/samples/" + sample;
    const auto listed = real->list(folder, "");
    for (const std::string& name : std::get<std::vector<std::string>>(listed)) {
        const std::string path = "/desk/" + name;
        desk.disk.files[path] = std::get<std::string>(real->read(folder + "/" + name));
        if (name.ends_with(".mmk"))
            desk.open.push_back(path);
    }
    desk.first = desk.disk.files;
    return desk;
}

void ask_something(Client& client, Author& author, const std::string& path) {
    static const std::vector<std::string> methods = {
        "completion",          "hover",          "definition", "references",
        "prepareRename",       "documentSymbol", "codeAction", "foldingRange",
        "semanticTokens/full", "inlayHint",      "formatting", "rename"};
    const std::size_t line = author.below(90);
    const std::size_t character = author.below(24);
    client.ask_at(methods[author.below(methods.size())], path, line, character);
}

void apply(Client& client, SampleDesk& desk, Author& author, const std::string& path) {
    std::string& text = desk.disk.files[path];
    if (author.below(12) == 0) { // an author gives up and starts again from the file
        text = desk.first[path];
        client.replace_all(path, text);
        return;
    }
    Author::Change change = author.change(text);
    change.end = std::max(change.begin, change.end);
    const std::string from = place_of(text, change.begin);
    const std::string to = place_of(text, change.end);
    text.replace(change.begin, change.end - change.begin, change.text);
    client.change(path, from, to, change.text);
}

} // namespace

namespace {

void compare(const std::set<std::string>& told, const std::set<std::string>& expected) {
    for (const std::string& finding : expected) {
        if (!told.contains(finding))
            MESSAGE("not told: " << finding);
    }
    for (const std::string& finding : told) {
        if (!expected.contains(finding))
            MESSAGE("told, and not so: " << finding);
    }
}

} // namespace

TEST_CASE("after ten thousand random edits the findings are those of a fresh check") {
    const std::vector<std::string> samples = {"logger", "lamp", "hub", "drill"};
    const int share = edits / static_cast<int>(samples.size());
    Author author(20240917);
    for (const std::string& sample : samples) {
        SampleDesk desk = desk_of(sample);
        MapDisk saved = desk.disk; // what was changed since stands in the editor alone
        Client client(saved);
        client.start("file:///desk");
        for (const std::string& path : desk.open)
            client.open(path, desk.disk.files[path]);
        for (int done = 1; done <= share; ++done) {
            apply(client, desk, author, desk.open[author.below(desk.open.size())]);
            if (author.below(8) == 0)
                client.settle();
            if (author.below(10) == 0)
                ask_something(client, author, desk.open[author.below(desk.open.size())]);
            if (done % between_checks != 0)
                continue;
            client.settle();
            const auto expected = fresh_check(desk.disk, desk.open);
            const auto told = client.findings();
            INFO(sample, " after ", done, " edits");
            compare(told, expected);
            REQUIRE(told == expected);
        }
    }
}
