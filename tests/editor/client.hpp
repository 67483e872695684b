// An editor in the same program: it talks to the server in JSON, and keeps what it is told.
#pragma once

#include "serve/editor/server.hpp"

#include <nlohmann/json_fwd.hpp>

#include <map>
#include <set>
#include <string>
#include <vector>

namespace editor_test {

class Client {
public:
    explicit Client(matchmark::Disk& disk) : server_(disk, "") {}

    void start(const std::string& folder);
    void open(const std::string& path, const std::string& text);
    // Places as "LINE:CHARACTER", from 0.
    void change(const std::string& path, const std::string& from, const std::string& to,
                const std::string& text);
    void replace_all(const std::string& path, const std::string& text);
    void close(const std::string& path);
    void settle();
    // Also of the files that are not open.
    void work();

    // The result; fails the test when the server refuses.
    nlohmann::json ask(const std::string& method, const nlohmann::json& params);
    // The whole answer.
    nlohmann::json answer_to(const std::string& method, const nlohmann::json& params);
    // About a place; whatever the answer is.
    void ask_at(const std::string& method, const std::string& path, std::size_t line,
                std::size_t character);
    void tell(const std::string& method, const nlohmann::json& params);

    // "PATH LINE:CHARACTER-LINE:CHARACTER RULE SEVERITY MESSAGE", of all files; of the message the
    // first line.
    [[nodiscard]] std::set<std::string> findings() const;
    // Of one file, their rules.
    [[nodiscard]] std::vector<std::string> rules(const std::string& path) const;

private:
    void take(const std::vector<std::string>& messages);

    matchmark::serve::EditorServer server_;
    std::map<std::string, std::string> told_; // by URI: a list of diagnostics, as JSON
    std::map<std::string, int> versions_;
    int next_ = 1;
};

// {"textDocument": {"uri": ...}, "position": ...}
nlohmann::json at(const std::string& path, std::size_t line, std::size_t character);
nlohmann::json about(const std::string& path);

} // namespace editor_test
