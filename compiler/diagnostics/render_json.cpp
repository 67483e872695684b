// Findings as one JSON object, for editors and other programs.
#include "diagnostics/render.hpp"
#include "diagnostics/severity.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace matchmark {

namespace {

using Json = nlohmann::ordered_json;

// The keys of a place, null where a finding is about no place in a file.
void put_place(Json& object, const SourceMap& sources, const Span& span) {
    if (span.file >= sources.size()) {
        for (const char* key : {"file", "line", "column", "end_line", "end_column"}) {
            object[key] = nullptr;
        }
        return;
    }
    const Place begin = sources.place(span.file, span.begin);
    const Place end = sources.place(span.file, std::max(span.begin, span.end));
    object["file"] = sources.file(span.file).path;
    object["line"] = begin.line;
    object["column"] = begin.column;
    object["end_line"] = end.line;
    object["end_column"] = end.column;
}

Json json_of(const SourceMap& sources, const Diagnostic& finding) {
    Json object;
    object["rule"] = finding.rule;
    object["severity"] = severity_word(finding.severity);
    put_place(object, sources, finding.primary);
    object["message"] = finding.message;
    object["label"] = finding.label;
    object["why"] = finding.why;
    object["help"] = finding.help;
    object["related"] = Json::array();
    for (const Mark& mark : finding.related) {
        Json entry;
        put_place(entry, sources, mark.span);
        entry["label"] = mark.label;
        object["related"].push_back(std::move(entry));
    }
    object["edits"] = Json::array();
    for (const Edit& edit : finding.edits) {
        Json entry;
        put_place(entry, sources, edit.span);
        entry["text"] = edit.text;
        object["edits"].push_back(std::move(entry));
    }
    object["safe"] = finding.safe;
    object["variants"] = finding.variants;
    return object;
}

} // namespace

std::string render_json(const SourceMap& sources, const std::vector<Diagnostic>& findings) {
    Json list = Json::array();
    for (const Diagnostic& finding : findings) {
        list.push_back(json_of(sources, finding));
    }
    Json object;
    object["findings"] = std::move(list);
    // A file that is not UTF-8 is a finding too, and its bytes may stand in a message.
    return object.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace matchmark
