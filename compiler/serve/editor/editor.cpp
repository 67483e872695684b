// `editor`: the language server on standard input and output.
#include "drive/commands.hpp"
#include "serve/editor/server.hpp"
#include "serve/editor/stream.hpp"

#include <chrono>
#include <condition_variable>
#include <deque>
#include <istream>
#include <mutex>
#include <ostream>
#include <thread>

namespace matchmark::drive {

namespace {

using serve::Malformed;
using serve::Message;

struct Incoming {
    std::variant<Message, Malformed> what;
    bool cancelled = false;
};

// What was read and is not answered yet. Reading goes on beside the work, so that a question can be
// taken back, and so that it is known when nothing waits.
class Inbox {
public:
    void put(std::variant<Message, Malformed> what) {
        const std::lock_guard<std::mutex> lock(mutex_);
        const auto* message = std::get_if<Message>(&what);
        if (message != nullptr && message->method == "$/cancelRequest") {
            cancel(message->params.cancelled);
            return;
        }
        waiting_.push_back({std::move(what), false});
        arrived_.notify_one();
    }

    void close() {
        const std::lock_guard<std::mutex> lock(mutex_);
        closed_ = true;
        arrived_.notify_one();
    }

    // The next one; nothing when none comes within that time, or ever.
    std::optional<Incoming> take(std::chrono::milliseconds time) {
        std::unique_lock<std::mutex> lock(mutex_);
        arrived_.wait_for(lock, time, [&] { return closed_ || !waiting_.empty(); });
        if (waiting_.empty())
            return std::nullopt;
        Incoming next = std::move(waiting_.front());
        waiting_.pop_front();
        return next;
    }

    [[nodiscard]] bool empty() {
        const std::lock_guard<std::mutex> lock(mutex_);
        return waiting_.empty();
    }

    [[nodiscard]] bool at_end() {
        const std::lock_guard<std::mutex> lock(mutex_);
        return closed_ && waiting_.empty();
    }

private:
    void cancel(const std::optional<serve::MessageId>& id) {
        for (Incoming& incoming : waiting_) {
            const auto* message = std::get_if<Message>(&incoming.what);
            incoming.cancelled = incoming.cancelled ||
                                 (id && message != nullptr && message->id && *message->id == *id);
        }
    }

    std::mutex mutex_;
    std::condition_variable arrived_;
    std::deque<Incoming> waiting_;
    bool closed_ = false;
};

void read_all(std::istream& in, Inbox& inbox) {
    while (auto body = serve::read_body(in)) {
        auto what =
            body->problem.empty()
                ? serve::read_message(body->text)
                : Malformed{std::nullopt, {serve::ErrorCode::invalid_request, body->problem}};
        const auto* message = std::get_if<Message>(&what);
        const bool last = message != nullptr && message->method == "exit";
        inbox.put(std::move(what));
        if (last)
            break;
    }
    inbox.close();
}

// So long must nothing come before work is done for files that nobody looks at.
constexpr std::chrono::milliseconds idle{200};
constexpr std::chrono::milliseconds long_time{60000};
// However fast the changes come, findings are told after so many of them.
constexpr int most_unsettled = 20;

void send(std::ostream& out, const std::vector<std::string>& messages) {
    for (const std::string& message : messages)
        serve::write_body(out, message);
}

void answer_all(serve::EditorServer& server, Inbox& inbox, std::ostream& out) {
    int unsettled = 0;
    while (!server.ended() && !inbox.at_end()) {
        const auto next = inbox.take(server.has_work() ? idle : long_time);
        if (!next) {
            send(out, server.work());
            continue;
        }
        if (const auto* broken = std::get_if<Malformed>(&next->what)) {
            send(out, {serve::EditorServer::take(*broken)});
            continue;
        }
        send(out, server.take(std::get<Message>(next->what), next->cancelled));
        if (inbox.empty() || ++unsettled >= most_unsettled) {
            send(out, server.settle());
            unsettled = 0;
        }
    }
}

} // namespace

int serve_editor(const EditorOptions& options, Terminal& terminal) {
    // Reading would flush what the other thread is just writing.
    terminal.in.tie(nullptr);
    serve::EditorServer server(terminal.disk, options.rules_at);
    Inbox inbox;
    std::thread reader([&] { read_all(terminal.in, inbox); });
    answer_all(server, inbox, terminal.out);
    reader.join();
    return server.ended() ? server.exit_code() : exit_findings;
}

} // namespace matchmark::drive
