// Findings in SARIF 2.1.0 (OASIS Standard, with Errata 01 of 2023), for code hosts and editors.
#include "drive/check_sarif.hpp"

#include "check/rule.hpp"
#include "drive/reading_findings.hpp"
#include "source/disk.hpp"
#include "source/embedded.hpp"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>

namespace matchmark::drive {

namespace {

using Json = nlohmann::ordered_json;

constexpr const char* schema =
    "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
constexpr const char* root = "%SRCROOT%"; // the folder in which the compiler ran

// SARIF 2.1.0, 3.27.10.
const char* level_of(Severity severity) {
    switch (severity) {
    case Severity::error:
        return "error";
    case Severity::warning:
        return "warning";
    case Severity::advice:
        break;
    }
    return "note";
}

// A path as a URI reference (RFC 3986).
std::string uri_of(const std::string& path) {
    constexpr std::string_view plain = "-._~/!$&'()*+,;=@";
    std::string uri = path.starts_with('/') ? "file://" : "";
    for (const char c : path) {
        const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        if (letter || (c >= '0' && c <= '9') || plain.find(c) != std::string_view::npos) {
            uri += c;
        } else {
            uri += fmt::format("%{:02X}", static_cast<unsigned char>(c));
        }
    }
    return uri;
}

Json artifact(const SourceMap& sources, FileId file) {
    const std::string& path = sources.file(file).path;
    Json location;
    location["uri"] = uri_of(beside("", path));
    if (!path.starts_with('/')) {
        location["uriBaseId"] = root;
    }
    return location;
}

// Columns are counted in code points, from 1; the end is the first that does not belong to it.
Json region(const SourceMap& sources, const Span& span) {
    const Place begin = sources.place(span.file, span.begin);
    const Place end = sources.place(span.file, std::max(span.begin, span.end));
    Json object;
    object["startLine"] = begin.line;
    object["startColumn"] = begin.column;
    object["endLine"] = end.line;
    object["endColumn"] = end.column;
    return object;
}

Json physical(const SourceMap& sources, const Span& span) {
    Json object;
    object["artifactLocation"] = artifact(sources, span.file);
    object["region"] = region(sources, span);
    return object;
}

Json related(const SourceMap& sources, const std::vector<Mark>& marks) {
    Json list = Json::array();
    for (const Mark& mark : marks) {
        if (mark.span.file >= sources.size()) {
            continue;
        }
        Json entry;
        entry["id"] = list.size() + 1;
        entry["physicalLocation"] = physical(sources, mark.span);
        if (!mark.label.empty()) {
            entry["message"]["text"] = mark.label;
        }
        list.push_back(std::move(entry));
    }
    return list;
}

// All edits of a finding are one fix: they are applied together or not at all.
Json fix(const SourceMap& sources, const Diagnostic& finding) {
    std::map<FileId, Json> replacements;
    for (const Edit& edit : finding.edits) {
        if (edit.span.file >= sources.size() || sources.file(edit.span.file).built_in) {
            return {};
        }
        Json replacement;
        replacement["deletedRegion"] = region(sources, edit.span);
        if (!edit.text.empty()) {
            replacement["insertedContent"]["text"] = edit.text;
        }
        auto& list = replacements.try_emplace(edit.span.file, Json::array()).first->second;
        list.push_back(std::move(replacement));
    }
    Json object;
    object["description"]["text"] = finding.help.empty() ? "mend it" : finding.help;
    object["artifactChanges"] = Json::array();
    for (auto& [file, list] : replacements) {
        Json change;
        change["artifactLocation"] = artifact(sources, file);
        change["replacements"] = std::move(list);
        object["artifactChanges"].push_back(std::move(change));
    }
    return object;
}

// FNV-1a, 64 bits (Fowler, Noll, Vo; offset basis and prime as in RFC 9923): the same finding in a
// file whose lines have moved.
std::string fingerprint(const std::string& text) {
    std::uint64_t hash = 0xcbf29ce484222325U;
    for (const char c : text) {
        hash ^= static_cast<unsigned char>(c);
        hash *= 0x100000001b3U;
    }
    return fmt::format("{:016x}", hash);
}

struct RuleWords {
    std::string_view summary;
    std::string page;
    Severity severity = Severity::error;
};

RuleWords words_of(const std::string& name) {
    for (const check::Rule* rule : check::all_rules()) {
        if (name == rule->name) {
            const auto pages = rule_pages();
            const auto page =
                std::find_if(pages.begin(), pages.end(),
                             [&](const EmbeddedText& text) { return text.name == name; });
            return {rule->summary, page == pages.end() ? "" : std::string(page->text),
                    rule->severity};
        }
    }
    for (const ReadingFinding& finding : reading_findings()) {
        if (name == finding.name) {
            return {finding.summary, std::string(finding.more), finding.severity};
        }
    }
    return {"a finding of matchmark", "", Severity::error};
}

Json rule(const std::string& name) {
    const RuleWords words = words_of(name);
    Json object;
    object["id"] = name;
    object["shortDescription"]["text"] = words.summary;
    object["help"]["text"] = fmt::format("{}. More: matchmark explain {}", words.summary, name);
    if (!words.page.empty()) {
        object["help"]["markdown"] = words.page;
    }
    object["defaultConfiguration"]["level"] = level_of(words.severity);
    return object;
}

} // namespace

std::string sarif_result(const SourceMap& sources, const Diagnostic& finding) {
    Json object;
    object["ruleId"] = finding.rule;
    object["level"] = level_of(finding.severity);
    object["message"]["text"] =
        finding.why.empty() ? finding.message : fmt::format("{}: {}", finding.message, finding.why);
    object["locations"] = Json::array();
    std::string path;
    if (finding.primary.file < sources.size()) {
        path = beside("", sources.file(finding.primary.file).path);
        Json location;
        location["physicalLocation"] = physical(sources, finding.primary);
        if (!finding.label.empty()) {
            location["message"]["text"] = finding.label;
        }
        object["locations"].push_back(std::move(location));
    }
    object["partialFingerprints"]["finding/v1"] =
        fingerprint(finding.rule + "\n" + path + "\n" + finding.message);
    if (Json others = related(sources, finding.related); !others.empty()) {
        object["relatedLocations"] = std::move(others);
    }
    if (!finding.edits.empty()) {
        if (Json mend = fix(sources, finding); !mend.is_null()) {
            object["fixes"] = Json::array({std::move(mend)});
        }
    }
    if (!finding.variants.empty()) {
        object["properties"]["variants"] = finding.variants;
    }
    return object.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string sarif_log(const std::string& results, bool whole) {
    Json list = Json::parse(results);
    std::map<std::string, std::size_t> rules;
    for (const Json& result : list) {
        rules.emplace(result["ruleId"].get<std::string>(), 0);
    }
    Json driver;
    driver["name"] = "matchmark";
    driver["semanticVersion"] = "1.0.0";
    driver["rules"] = Json::array();
    for (auto& [name, index] : rules) {
        index = driver["rules"].size();
        driver["rules"].push_back(rule(name));
    }
    for (Json& result : list) {
        result["ruleIndex"] = rules[result["ruleId"].get<std::string>()];
    }
    Json run;
    run["tool"]["driver"] = std::move(driver);
    run["language"] = "en";
    run["columnKind"] = "unicodeCodePoints";
    run["originalUriBaseIds"][root]["description"]["text"] =
        "The folder in which the compiler was run.";
    run["invocations"] = Json::array();
    run["invocations"].push_back({{"executionSuccessful", whole}});
    run["results"] = std::move(list);
    Json log;
    log["$schema"] = schema;
    log["version"] = "2.1.0";
    log["runs"] = Json::array();
    log["runs"].push_back(std::move(run));
    return log.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace matchmark::drive
