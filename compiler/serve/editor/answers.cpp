// Writes what an editor is told.
#include "serve/editor/protocol.hpp"

#include <nlohmann/json.hpp>

#include <array>

namespace matchmark::serve {

std::span<const std::string_view> token_types() {
    static constexpr std::array<std::string_view, 10> types = {
        "keyword",  "type",      "variable", "method", "enumMember",
        "property", "namespace", "string",   "number", "comment"};
    return types;
}

namespace {

using nlohmann::ordered_json;

// Bytes that are no text must not end the server; they come out as U+FFFD.
std::string written(const ordered_json& value) {
    return value.dump(-1, ' ', false, ordered_json::error_handler_t::replace);
}

ordered_json json_of(const Position& position) {
    return {{"line", position.line}, {"character", position.character}};
}

ordered_json json_of(const Range& range) {
    return {{"start", json_of(range.start)}, {"end", json_of(range.end)}};
}

ordered_json json_of(const Location& location) {
    return {{"uri", location.uri}, {"range", json_of(location.range)}};
}

ordered_json json_of(const TextEdit& edit) {
    return {{"range", json_of(edit.range)}, {"newText", edit.text}};
}

ordered_json json_of(const WorkspaceEdit& edit) {
    ordered_json changes = ordered_json::object();
    for (const auto& [uri, edits] : edit) {
        ordered_json list = ordered_json::array();
        for (const TextEdit& one : edits)
            list.push_back(json_of(one));
        changes[uri] = std::move(list);
    }
    return {{"changes", std::move(changes)}};
}

ordered_json json_of(const MessageId& id) {
    if (const auto* number = std::get_if<std::int64_t>(&id))
        return *number;
    return std::get<std::string>(id);
}

ordered_json json_of(const ShownFinding& finding) {
    ordered_json value = {{"range", json_of(finding.range)},
                          {"severity", static_cast<int>(finding.severity)},
                          {"code", finding.code},
                          {"source", "matchmark"},
                          {"message", finding.message}};
    if (!finding.href.empty())
        value["codeDescription"] = {{"href", finding.href}};
    if (!finding.related.empty()) {
        ordered_json related = ordered_json::array();
        for (const RelatedPlace& place : finding.related)
            related.push_back({{"location", json_of(place.at)}, {"message", place.message}});
        value["relatedInformation"] = std::move(related);
    }
    if (finding.unnecessary)
        value["tags"] = {1};
    return value;
}

ordered_json json_of(const Completion& completion) {
    ordered_json value = {{"label", completion.label}, {"kind", static_cast<int>(completion.sort)}};
    if (!completion.detail.empty())
        value["detail"] = completion.detail;
    if (!completion.documentation.empty())
        value["documentation"] = {{"kind", "markdown"}, {"value", completion.documentation}};
    value["sortText"] = completion.order;
    value["filterText"] = completion.text;
    value["textEdit"] = json_of(TextEdit{completion.range, completion.text});
    return value;
}

ordered_json json_of(const Symbol& symbol) {
    ordered_json value = {{"name", symbol.name},
                          {"detail", symbol.detail},
                          {"kind", static_cast<int>(symbol.sort)},
                          {"range", json_of(symbol.range)},
                          {"selectionRange", json_of(symbol.selection)}};
    if (!symbol.children.empty()) {
        ordered_json children = ordered_json::array();
        for (const Symbol& child : symbol.children)
            children.push_back(json_of(child));
        value["children"] = std::move(children);
    }
    return value;
}

ordered_json json_of(const FoundSymbol& symbol) {
    return {{"name", symbol.name},
            {"kind", static_cast<int>(symbol.sort)},
            {"containerName", symbol.container},
            {"location", json_of(symbol.at)}};
}

ordered_json json_of(const Fold& fold) {
    return {{"startLine", fold.first},
            {"endLine", fold.last},
            {"kind", fold.comment ? "comment" : "region"}};
}

ordered_json json_of(const CodeAction& action) {
    ordered_json mends = ordered_json::array();
    for (const ShownFinding& finding : action.mends)
        mends.push_back(json_of(finding));
    return {{"title", action.title},
            {"kind", action.kind},
            {"diagnostics", std::move(mends)},
            {"isPreferred", action.preferred},
            {"edit", json_of(action.edit)}};
}

ordered_json json_of(const InlayHint& hint) {
    return {{"position", json_of(hint.position)},
            {"label", hint.label},
            {"tooltip", hint.tooltip},
            {"paddingLeft", true}};
}

template <class Entry> std::string list_to_json(const std::vector<Entry>& entries) {
    ordered_json list = ordered_json::array();
    for (const Entry& entry : entries)
        list.push_back(json_of(entry));
    return written(list);
}

// A result stands in its message as it is: it is JSON already.
std::string with_id(const ordered_json& id, const char* key, const std::string& value) {
    return R"({"jsonrpc":"2.0","id":)" + written(id) + ",\"" + key + "\":" + value + "}";
}

} // namespace

std::string to_json(const std::vector<Location>& locations) { return list_to_json(locations); }
std::string to_json(const WorkspaceEdit& edit) { return written(json_of(edit)); }
std::string to_json(const std::vector<TextEdit>& edits) { return list_to_json(edits); }
std::string to_json(const std::vector<Completion>& completions) {
    return list_to_json(completions);
}
std::string to_json(const Hover& hover) {
    return written({{"contents", {{"kind", "markdown"}, {"value", hover.markdown}}},
                    {"range", json_of(hover.range)}});
}
std::string to_json(const std::vector<Symbol>& symbols) { return list_to_json(symbols); }
std::string to_json(const std::vector<FoundSymbol>& symbols) { return list_to_json(symbols); }
std::string to_json(const std::vector<Fold>& folds) { return list_to_json(folds); }
std::string to_json(const std::vector<CodeAction>& actions) { return list_to_json(actions); }
std::string to_json(const std::vector<InlayHint>& hints) { return list_to_json(hints); }

std::string tokens_to_json(const std::vector<std::uint32_t>& numbers) {
    return written({{"data", numbers}});
}

std::string rename_place(const Range& range, const std::string& name) {
    return written({{"range", json_of(range)}, {"placeholder", name}});
}

std::string capabilities(Encoding encoding) {
    ordered_json able;
    able["positionEncoding"] = encoding == Encoding::utf8 ? "utf-8" : "utf-16";
    able["textDocumentSync"] = {{"openClose", true},
                                {"change", 2}, // only what changed
                                {"save", {{"includeText", false}}}};
    able["completionProvider"] = {{"triggerCharacters", {" ", ",", "\""}}};
    able["hoverProvider"] = true;
    able["definitionProvider"] = true;
    able["referencesProvider"] = true;
    able["documentHighlightProvider"] = false;
    able["renameProvider"] = {{"prepareProvider", true}};
    able["documentSymbolProvider"] = true;
    able["workspaceSymbolProvider"] = true;
    able["foldingRangeProvider"] = true;
    able["documentFormattingProvider"] = true;
    able["codeActionProvider"] = {{"codeActionKinds", {"quickfix", "source.fixAll"}}};
    able["inlayHintProvider"] = true;
    able["semanticTokensProvider"] = {
        {"legend", {{"tokenTypes", token_types()}, {"tokenModifiers", ordered_json::array()}}},
        {"full", true}};
    able["workspace"] = {
        {"workspaceFolders", {{"supported", true}, {"changeNotifications", true}}}};
    return written({{"capabilities", std::move(able)},
                    {"serverInfo", {{"name", "matchmark"}, {"version", "1.0.0"}}}});
}

std::string answer(const MessageId& id, const std::string& result) {
    return with_id(json_of(id), "result", result);
}

std::string refuse(const std::optional<MessageId>& id, const Problem& problem) {
    const ordered_json error = {{"code", static_cast<int>(problem.code)},
                                {"message", problem.message}};
    return with_id(id ? json_of(*id) : ordered_json(nullptr), "error", written(error));
}

std::string publish(const std::string& uri, std::optional<std::int64_t> version,
                    const std::vector<ShownFinding>& findings) {
    ordered_json params = {{"uri", uri}};
    if (version)
        params["version"] = *version;
    params["diagnostics"] = ordered_json::array();
    for (const ShownFinding& finding : findings)
        params["diagnostics"].push_back(json_of(finding));
    return written({{"jsonrpc", "2.0"},
                    {"method", "textDocument/publishDiagnostics"},
                    {"params", std::move(params)}});
}

std::string log_message(const std::string& words) {
    return written({{"jsonrpc", "2.0"},
                    {"method", "window/logMessage"},
                    {"params", {{"type", 3}, {"message", words}}}});
}

} // namespace matchmark::serve
