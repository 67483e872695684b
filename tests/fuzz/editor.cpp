// An editor's messages, whole and broken: each request has one answer, and no bytes end the server.
//
// The first byte decides: even, the rest is the stream itself; odd, it is choices of well-formed
// messages about one open guide.
#include "fuzz/device_text.hpp"

#include "serve/editor/server.hpp"
#include "serve/editor/stream.hpp"

#include <nlohmann/json.hpp>

#include <array>
#include <sstream>

using namespace matchmark;
using nlohmann::json;

namespace {

constexpr const char* guide_uri = "file:///desk/thing.mmk";

constexpr std::array<const char*, 14> questions = {
    "completion", "hover",          "definition",   "references",      "prepareRename",
    "rename",     "documentSymbol", "foldingRange", "formatting",      "semanticTokens/full",
    "inlayHint",  "codeAction",     "completion",   "nothingOfTheSort"};

std::string framed(const json& message) {
    const std::string body = message.dump(-1, ' ', false, json::error_handler_t::replace);
    return "Content-Length: " + std::to_string(body.size()) + "\r\n\r\n" + body;
}

json place(fuzz::Choices& choose) {
    return {{"line", choose.below(64)}, {"character", choose.below(48)}};
}

json change(fuzz::Choices& choose) {
    constexpr std::array<const char*, 8> typed = {"x",  "\n",       "  ", "undo ",
                                                  "i1", "\xc3\xa9", "",   "part q \"q\"\n"};
    json one = {{"text", typed[choose.below(typed.size())]}};
    if (!choose.one_in(16))
        one["range"] = {{"start", place(choose)}, {"end", place(choose)}};
    return one;
}

std::string talk(fuzz::Choices choose) {
    const std::size_t half = choose.bytes.size() / 2;
    const std::string text = fuzz::DeviceText(choose.bytes.substr(0, half)).written();
    choose.bytes.remove_prefix(half);
    std::string said = framed({{"id", 1},
                               {"method", "initialize"},
                               {"params", {{"workspaceFolders", {{{"uri", "file:///desk"}}}}}}});
    said += framed(
        {{"method", "textDocument/didOpen"},
         {"params", {{"textDocument", {{"uri", guide_uri}, {"version", 1}, {"text", text}}}}}});
    for (int id = 2; choose.more() && id < 12; ++id) {
        json params = {{"textDocument", {{"uri", guide_uri}, {"version", id}}}};
        if (choose.one_in(3)) {
            params["contentChanges"] = json::array({change(choose)});
            said += framed({{"method", "textDocument/didChange"}, {"params", params}});
            continue;
        }
        params["position"] = place(choose);
        params["range"] = {{"start", params["position"]}, {"end", place(choose)}};
        params["newName"] = "another";
        said += framed(
            {{"id", id},
             {"method", std::string("textDocument/") + questions[choose.below(questions.size())]},
             {"params", params}});
    }
    return said;
}

void demand_messages(const std::vector<std::string>& messages) {
    for (const std::string& message : messages)
        fuzz::demand(json::accept(message), "what is sent is JSON");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0)
        return 0;
    const std::string_view rest = fuzz::text_of(data + 1, size - 1);
    std::istringstream in(data[0] % 2 == 0 ? std::string(rest) : talk({rest}));
    MapDisk disk;
    serve::EditorServer server(disk, "");
    while (const auto body = serve::read_body(in)) {
        const auto message = serve::read_message(body->text);
        if (const auto* broken = std::get_if<serve::Malformed>(&message)) {
            demand_messages({serve::EditorServer::take(*broken)});
            continue;
        }
        const auto& whole = std::get<serve::Message>(message);
        const auto said = server.take(whole);
        fuzz::demand(!whole.id || whole.method.empty() || !said.empty(),
                     "a question has an answer");
        demand_messages(said);
    }
    demand_messages(server.settle());
    for (int i = 0; i < 5 && server.has_work(); ++i)
        demand_messages(server.work());
    return 0;
}
