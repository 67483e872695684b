// Every sample, as its reader and its author would use it: checked, tidied, written out in full.
#include "drive/compilation.hpp"
#include "parse/parse.hpp"
#include "plan/written_out.hpp"
#include "tidy/tidy.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <set>
#include <string>
#include <vector>

using namespace matchmark;

namespace {

std::vector<std::string> sample_paths() {
    const std::string folder = std::string(MATCHMARK_SOURCE_DIR) + "/samples";
    std::vector<std::string> paths;
    const auto listed = real_disk()->list(folder, ".mmk");
    for (const auto& name : std::get<std::vector<std::string>>(listed)) {
        paths.push_back(folder + "/" + name);
    }
    return paths;
}

std::string text_of(const std::string& path) {
    return std::get<std::string>(real_disk()->read(path));
}

std::string tidied(const std::string& text) {
    SourceMap sources;
    const FileId file = sources.add("text", text);
    std::vector<Diagnostic> findings;
    return tidy(sources, syntax::parse(sources, file, findings));
}

std::size_t comments(const std::string& text) {
    SourceMap sources;
    const FileId id = sources.add("text", text);
    std::vector<Diagnostic> findings;
    const syntax::File file = syntax::parse(sources, id, findings);
    return static_cast<std::size_t>(
        std::count_if(file.lines.begin(), file.lines.end(), [](const syntax::Line& line) {
            return line.shape == syntax::LineShape::comment ||
                   (line.comment.known() && !line.comment.empty());
        }));
}

// The same file as a hurried author leaves it: no columns, blank lines doubled, spaces at line
// ends.
std::string untidied(const std::string& text) {
    std::string out;
    bool line_start = true;
    bool in_text = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (c == '\n') {
            out += " \n";
            if (i + 1 < text.size() && text[i + 1] == '\n')
                out += "\n";
            line_start = true;
            in_text = false;
            continue;
        }
        in_text = in_text != (c == '"');
        const bool repeated = c == ' ' && !out.empty() && out.back() == ' ';
        if (repeated && !line_start && !in_text)
            continue;
        line_start = line_start && c == ' ';
        out += c;
    }
    return out;
}

std::vector<std::string> messages(const drive::Compilation& compiled) {
    std::vector<std::string> all;
    for (const Diagnostic& finding : compiled.findings)
        all.push_back(finding.rule + ": " + finding.message);
    return all;
}

} // namespace

TEST_CASE("every sample checks without a finding") {
    const auto disk = real_disk();
    for (const std::string& path : sample_paths()) {
        CAPTURE(path);
        CHECK(messages(drive::compile(*disk, path)).empty());
    }
}

TEST_CASE("the samples are of the size that real work is") {
    const auto disk = real_disk();
    std::set<std::string> devices;
    std::size_t guides = 0;
    std::size_t most_members = 0;
    std::size_t most_steps = 0;
    for (const std::string& path : sample_paths()) {
        const auto compiled = drive::compile(*disk, path);
        devices.insert(compiled.model.device.name);
        guides += compiled.procedures.size();
        most_members = std::max<std::size_t>(most_members, compiled.model.member_count);
        for (const auto& procedure : compiled.procedures)
            most_steps = std::max(most_steps, procedure.steps.size());
    }
    CHECK(devices.size() >= 8);
    CHECK(guides >= 14);
    CHECK(most_members > 120);
    CHECK(most_steps > 60);
}

TEST_CASE("tidy leaves the samples as they are, and brings them back when they are not") {
    for (const std::string& path : sample_paths()) {
        CAPTURE(path);
        const std::string text = text_of(path);
        CHECK(tidied(text) == text);
        const std::string rough = untidied(text);
        CHECK(rough != text);
        const std::string again = tidied(rough);
        CHECK(tidied(again) == again);
        CHECK(comments(again) == comments(text));
    }
}

TEST_CASE("check says the same before and after tidy") {
    const auto disk = real_disk();
    for (const std::string& path : sample_paths()) {
        CAPTURE(path);
        // With its second half cut off, a guide has something to be found.
        std::string text = untidied(text_of(path));
        const std::size_t cut = text.find("\nput-back");
        if (cut != std::string::npos)
            text.resize(cut + 1);
        const std::string tidy_text = tidied(text);
        CHECK(messages(drive::compile(*disk, path, &text)) ==
              messages(drive::compile(*disk, path, &tidy_text)));
    }
}

TEST_CASE("written out in full, a guide checks clean and needs no more writing out") {
    const auto disk = real_disk();
    for (const std::string& path : sample_paths()) {
        const auto compiled = drive::compile(*disk, path);
        if (compiled.procedures.size() != 1)
            continue;
        CAPTURE(path);
        std::vector<std::string> uses;
        for (const syntax::Line& line : compiled.files.back()->lines) {
            if (line.keyword != syntax::Keyword::use)
                continue;
            const syntax::File& file = *compiled.files.back();
            const Span span = file.span_of(file.terms[line.first_term]);
            const std::string quoted(compiled.sources.slice(span));
            uses.push_back(quoted.substr(1, quoted.size() - 2));
        }
        const std::string full = tidied(
            plan::written_out(compiled.sources, compiled.model, compiled.procedures[0], uses));
        const auto second = drive::compile(*disk, path, &full);
        CHECK(messages(second).empty());
        REQUIRE(second.procedures.size() == 1);
        CHECK(tidied(plan::written_out(second.sources, second.model, second.procedures[0], uses)) ==
              full);
    }
}
