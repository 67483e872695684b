// Writes messages as an editor does and reads the answers.
#include "editor/client.hpp"

#include <doctest/doctest.h>
#include <fmt/core.h>
#include <nlohmann/json.hpp>

namespace editor_test {

using matchmark::serve::Malformed;
using matchmark::serve::Message;
using nlohmann::json;

namespace {

std::string uri(const std::string& path) { return "file://" + path; }

json position(const std::string& place) {
    const std::size_t colon = place.find(':');
    return {{"line", std::stoul(place.substr(0, colon))},
            {"character", std::stoul(place.substr(colon + 1))}};
}

std::string written(const json& place) {
    return fmt::format("{}:{}", place["line"].get<int>(), place["character"].get<int>());
}

} // namespace

json about(const std::string& path) { return {{"textDocument", {{"uri", uri(path)}}}}; }

json at(const std::string& path, std::size_t line, std::size_t character) {
    json params = about(path);
    params["position"] = {{"line", line}, {"character", character}};
    return params;
}

void Client::start(const std::string& folder) {
    ask("initialize", {{"processId", nullptr},
                       {"capabilities", json::object()},
                       {"workspaceFolders", {{{"uri", folder}, {"name", "desk"}}}}});
    tell("initialized", json::object());
}

void Client::open(const std::string& path, const std::string& text) {
    versions_[path] = 1;
    tell("textDocument/didOpen",
         {{"textDocument",
           {{"uri", uri(path)}, {"languageId", "matchmark"}, {"version", 1}, {"text", text}}}});
}

void Client::change(const std::string& path, const std::string& from, const std::string& to,
                    const std::string& text) {
    tell("textDocument/didChange",
         {{"textDocument", {{"uri", uri(path)}, {"version", ++versions_[path]}}},
          {"contentChanges",
           {{{"range", {{"start", position(from)}, {"end", position(to)}}}, {"text", text}}}}});
}

void Client::replace_all(const std::string& path, const std::string& text) {
    tell("textDocument/didChange",
         {{"textDocument", {{"uri", uri(path)}, {"version", ++versions_[path]}}},
          {"contentChanges", {{{"text", text}}}}});
}

void Client::close(const std::string& path) { tell("textDocument/didClose", about(path)); }

void Client::settle() { take(server_.settle()); }

void Client::work() {
    while (server_.has_work())
        take(server_.work());
}

void Client::tell(const std::string& method, const json& params) {
    const json message = {{"jsonrpc", "2.0"}, {"method", method}, {"params", params}};
    auto read = matchmark::serve::read_message(message.dump());
    REQUIRE(std::holds_alternative<Message>(read));
    take(server_.take(std::get<Message>(read)));
}

json Client::answer_to(const std::string& method, const json& params) {
    const json message = {
        {"jsonrpc", "2.0"}, {"id", next_++}, {"method", method}, {"params", params}};
    auto read = matchmark::serve::read_message(message.dump());
    REQUIRE(std::holds_alternative<Message>(read));
    auto messages = server_.take(std::get<Message>(read));
    REQUIRE(!messages.empty());
    json answer = json::parse(messages.front());
    messages.erase(messages.begin());
    take(messages);
    CHECK(answer["id"] == next_ - 1);
    return answer;
}

json Client::ask(const std::string& method, const json& params) {
    const json answer = answer_to(method, params);
    INFO(answer.dump());
    REQUIRE(answer.contains("result"));
    return answer["result"];
}

void Client::ask_at(const std::string& method, const std::string& path, std::size_t line,
                    std::size_t character) {
    json params = at(path, line, character);
    params["range"] = {{"start", params["position"]},
                       {"end", {{"line", line + 20}, {"character", 0}}}};
    params["newName"] = "another-name";
    answer_to("textDocument/" + method, params);
}

void Client::take(const std::vector<std::string>& messages) {
    for (const std::string& message : messages) {
        const json value = json::parse(message);
        if (value["method"] != "textDocument/publishDiagnostics")
            continue;
        told_[value["params"]["uri"]] = value["params"]["diagnostics"].dump();
    }
}

std::set<std::string> Client::findings() const {
    std::set<std::string> all;
    for (const auto& [uri, list] : told_) {
        for (const json& finding : json::parse(list)) {
            const std::string message = finding["message"];
            all.insert(
                fmt::format("{} {}-{} {} {} {}", uri.substr(7), written(finding["range"]["start"]),
                            written(finding["range"]["end"]), finding["code"].get<std::string>(),
                            finding["severity"].get<int>(), message.substr(0, message.find('\n'))));
        }
    }
    return all;
}

std::vector<std::string> Client::rules(const std::string& path) const {
    std::vector<std::string> rules;
    const auto list = told_.find(uri(path));
    if (list == told_.end())
        return rules;
    for (const json& finding : json::parse(list->second))
        rules.push_back(finding["code"]);
    return rules;
}

} // namespace editor_test
