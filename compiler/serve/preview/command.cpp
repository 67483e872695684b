// `serve`: one thread answers all, so that nothing is ever half changed while it is read; the bytes
// move in another.
#include "drive/commands.hpp"
#include "drive/inputs.hpp"
#include "serve/preview/preview.hpp"
#include "serve/preview/watch.hpp"

#include <fmt/core.h>

#include <array>
#include <chrono>
#include <csignal>
#include <ostream>

#include <poll.h>
#include <sys/signalfd.h>
#include <unistd.h>

namespace matchmark::serve {

namespace {

constexpr const char* command = "serve";

// How long a page is kept waiting for a change before it is told that there was none.
constexpr std::chrono::seconds longest_wait{25};
// A save in several files comes in one piece.
constexpr std::chrono::milliseconds settling{4};
constexpr int most_rounds = 5;

using Clock = std::chrono::steady_clock;

// The signals that end the program, as something to be polled.
class EndSignals {
public:
    EndSignals() {
        sigset_t signals;
        ::sigemptyset(&signals);
        ::sigaddset(&signals, SIGINT);
        ::sigaddset(&signals, SIGTERM);
        ::pthread_sigmask(SIG_BLOCK, &signals, &before_);
        file_ = ::signalfd(-1, &signals, SFD_NONBLOCK | SFD_CLOEXEC);
    }
    EndSignals(const EndSignals&) = delete;
    EndSignals& operator=(const EndSignals&) = delete;
    ~EndSignals() {
        signalfd_siginfo taken{};
        while (file_ >= 0 && ::read(file_, &taken, sizeof taken) > 0) {
        }
        static_cast<void>(::close(file_));
        ::pthread_sigmask(SIG_SETMASK, &before_, nullptr);
    }
    [[nodiscard]] int file() const { return file_; }

private:
    sigset_t before_{};
    int file_ = -1;
};

struct Waiting {
    Exchange* exchange = nullptr;
    Clock::time_point since;
};

class Desk {
public:
    Desk(Server& server, Preview& preview, Watch& watch)
        : server_(server), preview_(preview), watch_(watch) {}

    // Answers until a signal ends it.
    void work(int end_file) {
        for (;;) {
            std::array<pollfd, 3> files{
                {{end_file, POLLIN, 0}, {server_.file(), POLLIN, 0}, {watch_.file(), POLLIN, 0}}};
            const int ready = ::poll(files.data(), files.size(), 1000);
            if (ready > 0 && files[0].revents != 0) {
                break;
            }
            if (ready > 0 && files[2].revents != 0) {
                take_changes();
            }
            for (Exchange* exchange : server_.take()) {
                take(*exchange);
            }
            let_go(preview_.version() != told_);
        }
        let_go(true);
    }

private:
    void take_changes() {
        bool changed = watch_.take();
        pollfd more{watch_.file(), POLLIN, 0};
        for (int round = 0; changed && round < most_rounds; ++round) {
            if (::poll(&more, 1, static_cast<int>(settling.count())) <= 0) {
                break;
            }
            watch_.take();
        }
        if (changed) {
            preview_.changed();
        }
    }

    void take(Exchange& exchange) {
        const Request& request = Server::request(exchange);
        if (preview_.waits(request)) {
            waiting_.push_back({&exchange, Clock::now()});
        } else {
            server_.reply(exchange, preview_.answer(request));
        }
    }

    // Those who have waited long enough, or all.
    void let_go(bool all) {
        told_ = preview_.version();
        std::vector<Waiting> still;
        for (const Waiting& one : waiting_) {
            if (all || Clock::now() - one.since >= longest_wait) {
                server_.reply(*one.exchange, preview_.answer(Server::request(*one.exchange)));
            } else {
                still.push_back(one);
            }
        }
        waiting_ = std::move(still);
    }

    Server& server_;
    Preview& preview_;
    Watch& watch_;
    std::vector<Waiting> waiting_;
    std::uint64_t told_ = 0; // the version of which those who wait know
};

} // namespace

} // namespace matchmark::serve

namespace matchmark::drive {

int serve_folder(const ServeOptions& options, Terminal& terminal) {
    using namespace matchmark::serve;
    if (!terminal.disk.is_folder(options.folder)) {
        return fail(terminal, command,
                    fmt::format("there is no folder `{}`; a folder of guides is served, not a file",
                                options.folder));
    }
    const EndSignals end;
    const auto server = Server::start(options.port);
    if (server == nullptr) {
        return fail(terminal, command,
                    fmt::format("port {} cannot be had; is a preview running already? Choose "
                                "another with --port, or 0 for any that is free",
                                options.port));
    }
    Preview preview(terminal.disk, options.folder, server->port());
    Watch watch(preview.root());
    terminal.out << fmt::format("Preview of `{}`: http://127.0.0.1:{}/ (Ctrl-C ends it)\n",
                                options.folder, server->port())
                 << std::flush;
    if (watch.file() < 0 || watch.is_partial()) {
        terminal.err << "matchmark serve: not every folder can be watched; reload a page by hand "
                        "where it stays as it was\n";
    }
    Desk(*server, preview, watch).work(end.file());
    terminal.out << "The preview has ended.\n";
    return exit_clean;
}

} // namespace matchmark::drive
