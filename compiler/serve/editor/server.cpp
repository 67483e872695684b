// Which function answers which question.
#include "serve/editor/server.hpp"

#include "serve/editor/completion.hpp"
#include "serve/editor/follow.hpp"
#include "serve/editor/hover.hpp"
#include "serve/editor/outline.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>

namespace matchmark::serve {

namespace {

constexpr std::array<std::string_view, 6> about_files = {
    "textDocument/documentSymbol",      "textDocument/foldingRange", "textDocument/formatting",
    "textDocument/semanticTokens/full", "textDocument/inlayHint",    "textDocument/codeAction",
};
constexpr std::array<std::string_view, 6> about_places = {
    "textDocument/completion", "textDocument/hover",         "textDocument/definition",
    "textDocument/references", "textDocument/prepareRename", "textDocument/rename",
};

template <std::size_t Size>
bool is_one_of(const std::string& word, const std::array<std::string_view, Size>& words) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

Problem invalid(std::string words) { return {ErrorCode::invalid_params, std::move(words)}; }

EditorServer::Result rename(Workspace& workspace, const std::string& path, const Followed& name,
                            const std::string& new_name) {
    auto result = renamed(workspace, path, name, new_name);
    if (const auto* problem = std::get_if<Problem>(&result))
        return *problem;
    return to_json(std::get<WorkspaceEdit>(result));
}

} // namespace

EditorServer::EditorServer(Disk& disk, std::string rules_at) : workspace_(disk) {
    publisher_.rules_at = std::move(rules_at);
}

std::string EditorServer::take(const Malformed& message) {
    return refuse(message.id, message.problem);
}

std::vector<std::string> EditorServer::take(const Message& message, bool cancelled) {
    std::vector<std::string> out;
    if (message.method.empty())
        return out; // an answer; nothing was asked
    if (!message.id) {
        notify(message);
        std::swap(out, said_);
        return out;
    }
    Result result =
        cancelled ? Result(Problem{ErrorCode::request_cancelled, "taken back"}) : request(message);
    if (const auto* problem = std::get_if<Problem>(&result)) {
        out.push_back(refuse(*message.id, *problem));
    } else {
        out.push_back(answer(*message.id, std::get<std::string>(result)));
    }
    out.insert(out.end(), said_.begin(), said_.end());
    said_.clear();
    return out;
}

std::string EditorServer::initialize(const Params& params) {
    state_ = State::running;
    for (const std::string& encoding : params.encodings) {
        if (encoding == "utf-8" || encoding == "utf-16") {
            workspace_.encoding = encoding == "utf-8" ? Encoding::utf8 : Encoding::utf16;
            break;
        }
    }
    for (const std::string& folder : params.folders)
        workspace_.add_folder(folder);
    return capabilities(workspace_.encoding);
}

EditorServer::Result EditorServer::request(const Message& message) {
    if (state_ == State::shut)
        return Problem{ErrorCode::invalid_request, "the server was asked to end"};
    if (message.method == "initialize") {
        if (state_ != State::fresh)
            return Problem{ErrorCode::invalid_request, "`initialize` comes once"};
        return initialize(message.params);
    }
    if (state_ == State::fresh)
        return Problem{ErrorCode::not_initialized, "`initialize` comes first"};
    if (message.method == "shutdown") {
        state_ = State::shut;
        asked_to_end_ = true;
        return "null";
    }
    if (message.method == "workspace/symbol")
        return to_json(find_symbols(workspace_, message.params.query));
    if (!is_one_of(message.method, about_files) && !is_one_of(message.method, about_places))
        return Problem{ErrorCode::method_not_found,
                       fmt::format("there is no `{}` here", message.method)};
    return about_file(message);
}

EditorServer::Result EditorServer::about_file(const Message& message) {
    const Params& params = message.params;
    if (params.uri.empty())
        return invalid("`textDocument.uri` is missing");
    const std::string path = beside("", path_of(params.uri));
    if (workspace_.find(path) == nullptr)
        return invalid(fmt::format("`{}` is not open", params.uri));
    if (is_one_of(message.method, about_places))
        return about_place(message, path);
    if (message.method == "textDocument/documentSymbol")
        return to_json(outline(workspace_, path));
    if (message.method == "textDocument/foldingRange")
        return to_json(folds(workspace_, path));
    if (message.method == "textDocument/formatting")
        return to_json(layout_edits(workspace_, path));
    if (message.method == "textDocument/semanticTokens/full")
        return tokens_to_json(semantic_tokens(workspace_, path));
    if (!params.range)
        return invalid("`range` is missing");
    if (message.method == "textDocument/inlayHint")
        return to_json(state_hints(workspace_, path, *params.range));
    return to_json(mends_in(workspace_, path, *params.range, publisher_.rules_at));
}

EditorServer::Result EditorServer::about_place(const Message& message, const std::string& path) {
    const Params& params = message.params;
    if (!params.position)
        return invalid("`position` is missing");
    if (message.method == "textDocument/completion")
        return to_json(completions(workspace_, path, *params.position));
    if (message.method == "textDocument/hover") {
        const auto found = hover(workspace_, path, *params.position);
        return found ? to_json(*found) : "null";
    }
    const auto name = followed(workspace_, path, *params.position);
    if (message.method == "textDocument/definition")
        return name ? to_json(declarations(workspace_, path, *name)) : "null";
    if (message.method == "textDocument/references")
        return name ? to_json(uses(workspace_, path, *name, params.include_declaration)) : "[]";
    if (!name)
        return Problem{ErrorCode::request_failed, "no name stands here"};
    if (message.method == "textDocument/rename")
        return rename(workspace_, path, *name, params.new_name);
    if (const auto problem = why_not_renamed(workspace_, path, *name))
        return *problem;
    const Analysis& analysis = workspace_.analysis(path);
    return rename_place(workspace_.lines(analysis.source().text).range(name->use.span), name->text);
}

void EditorServer::notify(const Message& message) {
    const Params& params = message.params;
    if (message.method == "exit") {
        state_ = State::ended;
        return;
    }
    if (state_ != State::running)
        return;
    const std::string path = beside("", path_of(params.uri));
    if (message.method == "textDocument/didOpen" && !params.uri.empty()) {
        workspace_.open(params.uri, params.text, params.version);
        always_.insert(path);
    } else if (message.method == "textDocument/didChange") {
        if (workspace_.change(params.uri, params.version, params.changes)) {
            always_.insert(path);
            check_users(path);
        }
    } else if (message.method == "textDocument/didClose") {
        workspace_.close(params.uri);
        publisher_.drop(path);
        always_.insert(path);
        check_users(path);
    } else if (message.method == "textDocument/didSave" ||
               message.method == "workspace/didChangeWatchedFiles") {
        workspace_.touched();
    } else if (message.method == "workspace/didChangeWorkspaceFolders") {
        for (const std::string& folder : params.removed)
            workspace_.remove_folder(folder);
        for (const std::string& folder : params.folders)
            workspace_.add_folder(folder);
    }
}

// Files that use a changed one and are not open are looked at when there is time.
void EditorServer::check_users(const std::string& path) {
    for (const std::string& user : workspace_.users_of(path)) {
        const bool known = std::find(waiting_.begin(), waiting_.end(), user) != waiting_.end();
        if (workspace_.find(user) == nullptr && !known)
            waiting_.push_back(user);
    }
}

std::vector<std::string> EditorServer::settle() {
    if (state_ != State::running)
        return {};
    for (const std::string& path : workspace_.changed())
        publisher_.set(workspace_, workspace_.analysis(path));
    auto messages = publisher_.messages(workspace_, always_);
    always_.clear();
    return messages;
}

std::vector<std::string> EditorServer::work() {
    if (waiting_.empty())
        return {};
    const std::string path = waiting_.front();
    waiting_.pop_front();
    if (workspace_.find(path) == nullptr)
        publisher_.set(workspace_, workspace_.analysis(path));
    return publisher_.messages(workspace_, {});
}

} // namespace matchmark::serve
