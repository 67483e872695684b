// A language in which every translated word stands in brackets: what stands outside them was
// forgotten.
#include "draw/drawings.hpp"
#include "drive/compilation.hpp"
#include "drive/translation.hpp"
#include "language/loading.hpp"
#include "language/words.hpp"
#include "plan/reader/guide.hpp"
#include "publish/html.hpp"
#include "publish/markdown.hpp"
#include "publish/sheet.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <regex>
#include <set>

using namespace matchmark;

namespace {

constexpr const char* open = "\u27e6";
constexpr const char* close = "\u27e7";

// Each piece between places in brackets; the article that an item has in sentences stays one.
std::string bracketed(const std::string& english) {
    std::string text;
    std::string piece;
    const auto finish = [&] {
        text += piece.empty() ? "" : open + piece + close;
        piece.clear();
    };
    for (std::size_t at = 0; at < english.size(); ++at) {
        const std::size_t end = english[at] == '{' ? english.find('}', at) : std::string::npos;
        if (end != std::string::npos) {
            finish();
            text += english.substr(at, end - at + 1);
            at = end;
        } else if (english.substr(at, 6) == "[the] ") {
            text += std::string("[") + open + "the" + close + " ]";
            at += 5;
        } else {
            piece += english[at];
        }
    }
    finish();
    return text;
}

language::Language bracket_language(const std::vector<language::Text>& texts) {
    auto table = std::make_shared<language::Table>();
    for (const language::Message& message : language::built_in("de").messages) {
        (*table)[message.one].push_back({message.context, {bracketed(message.one)}});
    }
    for (const language::Text& text : texts) {
        std::vector<std::string> forms{bracketed(text.one)};
        if (!text.many.empty()) {
            forms.push_back(bracketed(text.many));
        }
        (*table)[text.one].push_back({text.context, forms});
    }
    language::Language language;
    language.tag = "qaa";
    language.marks_english = true;
    language.table = std::move(table);
    return language;
}

void erase_all(std::string& text, const std::string& begin, const std::string& end) {
    for (std::size_t at = text.find(begin); at != std::string::npos; at = text.find(begin, at)) {
        const std::size_t to = text.find(end, at + begin.size());
        text.erase(at, to == std::string::npos ? text.npos : to + end.size() - at);
        text.insert(at, " ");
    }
}

// What of a page a reader sees or hears: text, and the attributes that are read out.
std::string visible(std::string page) {
    erase_all(page, "<script", "</script>");
    erase_all(page, "<style", "</style>");
    std::string words;
    const std::regex attributes("(alt|aria-label)=\"([^\"]*)\"");
    for (std::sregex_iterator at(page.begin(), page.end(), attributes), end; at != end; ++at) {
        words += " " + (*at)[2].str();
    }
    erase_all(page, "<", ">");
    return page + words;
}

// Words outside brackets that are neither numbers, units nor names of parts.
std::set<std::string> forgotten(std::string text, const std::set<std::string>& names) {
    std::string outside;
    int depth = 0;
    for (std::size_t at = 0; at < text.size();) {
        const bool opens = text.compare(at, 3, open) == 0;
        const bool closes = text.compare(at, 3, close) == 0;
        depth += opens ? 1 : closes ? -1 : 0;
        if (opens || closes) {
            at += 3;
            outside += ' ';
        } else {
            outside += depth == 0 ? text[at] : ' ';
            ++at;
        }
    }
    CHECK(depth == 0);
    std::set<std::string> words;
    const std::regex word("[A-Za-z][A-Za-z-]{2,}");
    for (std::sregex_iterator at(outside.begin(), outside.end(), word), end; at != end; ++at) {
        if (!names.contains(at->str())) {
            words.insert(at->str());
        }
    }
    return words;
}

std::string listed(const std::set<std::string>& words) {
    std::string text;
    for (const std::string& word : words) {
        text += word + " ";
    }
    return text;
}

// Names stay as they are: of files, variants, people, currencies; entities of HTML; symbols of
// units.
std::set<std::string> names_of(const drive::Compilation& done, const model::Guide& guide) {
    std::set<std::string> names{"amp", "quot", "nbsp", "min", "EUR", "bar", "GBP", "USD", "mAh"};
    for (const std::string& variant : done.model.device.variants) {
        names.insert(variant);
    }
    for (const std::string& text : {guide.author, guide.name, guide.revision, guide.date}) {
        const std::regex word("[A-Za-z][A-Za-z-]{2,}");
        for (std::sregex_iterator at(text.begin(), text.end(), word), end; at != end; ++at) {
            names.insert(at->str());
        }
    }
    return names;
}

} // namespace

TEST_CASE("no English word is left in any form of any sample") {
    const auto disk = real_disk();
    const std::string folder = std::string(MATCHMARK_SOURCE_DIR) + "/samples";
    const auto listed_files = disk->list(folder, ".mmk");
    std::size_t guides = 0;
    for (const auto& name : std::get<std::vector<std::string>>(listed_files)) {
        const auto done = drive::compile(*disk, folder + "/" + name);
        for (const auto& procedure : done.procedures) {
            CAPTURE(name);
            ++guides;
            const auto texts = drive::texts_met(done, procedure);
            const auto language = bracket_language(texts);
            auto document = plan::reader_guide(done.sources, done.model, procedure, language);
            language::Language unmarked = language; // as for publishing: drawings hold no marks
            unmarked.marks_english = false;
            auto drawings = draw::page_drawings(
                done.model,
                drive::as_told(procedure, done.model.guide(procedure.guide).variants, document),
                unmarked);
            document.figures = drawings.figures;
            const auto names = names_of(done, done.model.guide(procedure.guide));
            const std::string html = publish::html(document, {});
            CHECK(html.find("<html lang=\"qaa\">") != std::string::npos);
            const std::size_t english = html.find(" lang=\"en\"");
            CHECK((english == html.npos ? "" : html.substr(english, 80)) == "");
            CHECK(listed(forgotten(visible(html), names)) == "");
            CHECK(listed(forgotten(visible(publish::sheet_html(document)), names)) == "");
            // A drawing's lines are cut to fit; the page says in words what it says.
            const auto map = draw::map_files(done.model, procedure, draw::Paper::a4, "", language);
            for (const std::string& sheet : map.svg) {
                CHECK(listed(forgotten(visible(sheet), names)) == "");
            }
        }
    }
    CHECK(guides >= 14);
}

TEST_CASE("a word without a translation is told as English where it stands") {
    const auto disk = real_disk();
    const std::string path = std::string(MATCHMARK_SOURCE_DIR) + "/samples/lamp/replace-switch.mmk";
    const auto done = drive::compile(*disk, path);
    const auto& procedure = done.procedures.front();
    auto texts = drive::texts_met(done, procedure);
    std::erase_if(texts, [](const language::Text& text) {
        return text.one == "Take the switch out" || text.one.starts_with("Pull each terminal");
    });
    const auto document =
        plan::reader_guide(done.sources, done.model, procedure, bracket_language(texts));
    const std::string html = publish::html(document, {});
    CHECK(html.find("<span lang=\"en\">Take the switch out</span>") != std::string::npos);
    CHECK(html.find("<div lang=\"en\">\n<p>Pull each terminal") != std::string::npos);
    CHECK(html.find("\xEF\xB7\x90") == std::string::npos);
}
