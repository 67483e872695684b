// What changes the text and leaves the procedure: no change, exit code 0.
#include "compare/two_states.hpp"

#include "parse/parse.hpp"
#include "tidy/tidy.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cctype>
#include <sstream>

using namespace matchmark;
using namespace matchmark::test;

namespace {

using Files = std::vector<std::pair<std::string, std::string>>;

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) {
        lines.push_back(line);
    }
    return lines;
}

std::string joined(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines) {
        text += line + "\n";
    }
    return text;
}

std::string first_word(const std::string& line) {
    const std::size_t begin = line.find_first_not_of(' ');
    return begin == std::string::npos ? "" : line.substr(begin, line.find(' ', begin) - begin);
}

bool is_prose(const std::string& line) {
    const std::string word = first_word(line);
    return word.ends_with(':');
}

// Details deeper and with other gaps, comments between them, blank lines.
std::string messed(const std::string& text) {
    std::vector<std::string> result = {"# laid out otherwise"};
    bool prose = false;
    bool told = false; // under `caution NAME on ITEM`, where all is prose
    for (const std::string& line : lines_of(text)) {
        const bool deeper = line.starts_with("    ");
        const bool message = line.find(" on ") != std::string::npos && !line.starts_with(" ");
        prose = is_prose(line) || message || (prose && line.starts_with("  ") && (deeper || told));
        told = message || (told && line.starts_with("  "));
        if (line.empty()) {
            result.emplace_back();
            result.emplace_back();
            continue;
        }
        const std::size_t indent = line.find_first_not_of(' ');
        if (prose || indent == 0 || line[indent] == '#') {
            result.push_back(line);
            continue;
        }
        // Wider gaps between words, up to the first text in quotes.
        std::string wide = line.substr(0, indent);
        for (std::size_t i = indent; i < line.size(); ++i) {
            wide += line[i];
            const bool before_text = line.find('"') == std::string::npos || i < line.find('"');
            wide += line[i] == ' ' && before_text ? "  " : "";
        }
        result.push_back(wide);
        result.push_back(line.substr(0, indent) + "# a remark");
    }
    return joined(result);
}

// Prose on lines of two or three words.
std::string reflowed(const std::string& text) {
    std::vector<std::string> result;
    const std::vector<std::string> lines = lines_of(text);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (!is_prose(lines[i])) {
            result.push_back(lines[i]);
            continue;
        }
        std::string all = lines[i];
        while (i + 1 < lines.size() && lines[i + 1].starts_with("    ")) {
            all += " " + lines[++i].substr(4);
        }
        std::istringstream words(all);
        std::string line = " ";
        std::size_t count = 0;
        for (std::string word; words >> word;) {
            line += " " + word;
            if (++count % 3 == 0) {
                result.push_back(line);
                line = "    ";
            }
        }
        if (line != "    ") {
            result.push_back(line);
        }
    }
    return joined(result);
}

// The items of a device, the last first; what is declared before the first of them stays.
std::string reordered(const std::string& text) {
    std::vector<std::string> head;
    std::vector<std::string> items;
    for (const std::string& line : lines_of(text)) {
        const std::string word =
            line.starts_with(" ") || line.starts_with("#") ? "" : first_word(line);
        const bool item = word == "part" || word == "fastener" || word == "connector" ||
                          word == "bond" || word == "fluid" || word == "energy" ||
                          word == "function" || word == "caution" || word == "notice";
        if (item) {
            items.push_back(line + "\n");
        } else if (items.empty()) {
            head.push_back(line);
        } else if (line.starts_with(" ")) {
            items.back() += line + "\n";
        }
    }
    std::reverse(items.begin(), items.end());
    std::string result = joined(head);
    for (const std::string& item : items) {
        result += item;
    }
    return result;
}

std::string tidied(const std::string& text) {
    SourceMap sources;
    std::vector<Diagnostic> findings;
    const FileId id = sources.add("a.mmk", text);
    return tidy(sources, syntax::parse(sources, id, findings));
}

struct Guide {
    const char* sample;
    const char* file;
    const char* device;
};

const std::vector<Guide>& guides() {
    static const std::vector<Guide> all = {
        {"logger", "replace-cell.mmk", "logger.mmk"}, {"heater", "renew-valve.mmk", "heater.mmk"},
        {"oven", "renew-cutout.mmk", "oven.mmk"},     {"drill", "renew-brushes.mmk", "drill.mmk"},
        {"press", "renew-blade.mmk", "press.mmk"},    {"press", "renew-platen.mmk", "press.mmk"},
        {"gearbox", "renew-seal.mmk", "gearbox.mmk"}, {"pump", "renew-seal.mmk", "pump.mmk"},
        {"hub", "service-bearings.mmk", "hub.mmk"},   {"lamp", "renew-lead.mmk", "lamp.mmk"},
    };
    return all;
}

void check_same(const Guide& guide, const Files& files) {
    CAPTURE(guide.file);
    const Told told = compare_texts(guide.sample, guide.file, files, false);
    CHECK_MESSAGE(told.code == 0, told.out << told.err);
    CHECK(told.out.find("no change in the procedure") != std::string::npos);
}

void check_changed(const auto& change) {
    for (const Guide& guide : guides()) {
        Files files = sample_files(guide.sample);
        for (auto& [name, text] : files) {
            const std::string before = text;
            text = change(guide, name, text);
        }
        check_same(guide, files);
    }
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
    for (std::size_t at = text.find(from); at != std::string::npos;
         at = text.find(from, at + to.size())) {
        text.replace(at, from.size(), to);
    }
    return text;
}

} // namespace

TEST_CASE("the same text") {
    check_changed([](const Guide&, const std::string&, const std::string& text) { return text; });
}

TEST_CASE("laid out otherwise, and tidied again") {
    check_changed([](const Guide&, const std::string&, const std::string& text) {
        std::string wild = messed(text);
        CHECK(wild != text);
        return wild;
    });
    check_changed([](const Guide&, const std::string&, const std::string& text) {
        return tidied(messed(text));
    });
}

TEST_CASE("prose on other lines") {
    check_changed(
        [](const Guide&, const std::string&, const std::string& text) { return reflowed(text); });
}

TEST_CASE("declarations of the device in another order") {
    check_changed([](const Guide& guide, const std::string& name, const std::string& text) {
        if (name != guide.device) {
            return text;
        }
        std::string turned = reordered(text);
        CHECK(turned != text);
        return turned;
    });
}

TEST_CASE("another unit for the same torque") {
    const Told told =
        compare_sample("heater", "renew-valve.mmk",
                       {{"heater.mmk", "torque     4 N.m", "torque     400 N.cm"}}, false);
    CHECK_MESSAGE(told.code == 0, told.out << told.err);
}

TEST_CASE("items, steps and tools called otherwise are told, and are no change") {
    const struct {
        const char* from;
        const char* to;
    } names[] = {{"cell-plug", "supply-plug"},
                 {"lid-screws", "top-screws"},
                 {"shield-off", "shield-away"},
                 {"driver-6", "small-driver"}};
    for (const auto& name : names) {
        CAPTURE(name.from);
        Files files = sample_files("logger");
        for (auto& [file, text] : files) {
            text = replaced(text, name.from, name.to);
        }
        const Told told = compare_texts("logger", "replace-cell.mmk", files);
        CHECK_MESSAGE(told.code == 0, told.out << told.err);
        const nlohmann::json notes = told.json()["guides"][0]["notes"];
        REQUIRE_FALSE(notes.empty());
        CHECK(notes[0]["sort"] == "renamed");
        CHECK(notes[0]["before"] == name.from);
        CHECK(notes[0]["after"] == name.to);
    }
}

TEST_CASE("an item that this guide does not work on") {
    const Told told =
        compare_sample("logger", "replace-cell.mmk",
                       {{"logger.mmk", "holds      display-frame to lid\n  torque     0.08 N.m",
                         "holds      display-frame to lid\n  torque     0.10 N.m"}});
    CHECK(told.code == 0);
    CHECK(told.json()["guides"][0]["notes"][0]["subject"] == "frame-screws");
}
