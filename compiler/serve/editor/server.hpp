// The language server: takes the messages of an editor one by one and answers them.
#pragma once

#include "serve/editor/findings.hpp"
#include "serve/editor/protocol.hpp"
#include "serve/editor/workspace.hpp"

#include <deque>
#include <set>
#include <string>
#include <variant>
#include <vector>

namespace matchmark::serve {

class EditorServer {
public:
    // `rules_at`: the address below which the rules have their pages; may be empty.
    EditorServer(Disk& disk, std::string rules_at);

    // What to send in answer, in order. `cancelled`: the editor has taken the question back.
    std::vector<std::string> take(const Message& message, bool cancelled = false);
    static std::string take(const Malformed& message);

    // Findings of files that changed; asked for when no message waits.
    std::vector<std::string> settle();
    // Something is left to do for files that are not open: one of them.
    [[nodiscard]] bool has_work() const { return !waiting_.empty(); }
    std::vector<std::string> work();

    // After `exit`; the code is 0 when the editor had asked for the end before.
    [[nodiscard]] bool ended() const { return state_ == State::ended; }
    [[nodiscard]] int exit_code() const { return asked_to_end_ ? 0 : 1; }

    // A request's result as JSON, or why there is none. An editor's last question is answered from
    // what was compiled for the one before, if nothing changed between them.
    using Result = std::variant<std::string, Problem>;

private:
    enum class State : unsigned char { fresh, running, shut, ended };

    Result request(const Message& message);
    void notify(const Message& message);
    std::string initialize(const Params& params);
    Result about_file(const Message& message);
    Result about_place(const Message& message, const std::string& path);
    void check_users(const std::string& path);

    Workspace workspace_;
    Publisher publisher_;
    State state_ = State::fresh;
    bool asked_to_end_ = false;
    std::set<std::string> always_;    // open files whose findings are to be told in any case
    std::deque<std::string> waiting_; // files to check that are not open
    std::vector<std::string> said_;   // beside the answer
};

} // namespace matchmark::serve
