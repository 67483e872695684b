// The thread of libmicrohttpd reads a request, sets its connection to rest, and hands the request
// over; the reply wakes the connection again.
#include "serve/preview/server.hpp"

#include <mutex>
#include <optional>
#include <utility>

#include <arpa/inet.h>
#include <microhttpd.h>
#include <netinet/in.h>
#include <sys/eventfd.h>
#include <unistd.h>

namespace matchmark::serve {

struct Exchange {
    MHD_Connection* connection = nullptr;
    Request request;
    std::optional<Reply> reply;
    bool handed_over = false;
};

namespace {

constexpr unsigned most_connections = 500;
constexpr unsigned patience = 60; // seconds without a byte, after which a connection is closed

std::string small(std::string_view text) {
    std::string result(text);
    for (char& c : result) {
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return result;
}

MHD_Result keep(void* into, MHD_ValueKind kind, const char* name, const char* value) {
    auto& request = *static_cast<Request*>(into);
    if (kind == MHD_HEADER_KIND) {
        // Two of one name are joined, and so are equal to nothing that is allowed.
        std::string& kept = request.headers[small(name)];
        kept += (kept.empty() ? "" : ", ") + std::string(value == nullptr ? "" : value);
    } else {
        request.query[name] = value == nullptr ? "" : value;
    }
    return MHD_YES;
}

// Percent signs are undone by who knows what the path is for.
std::size_t as_it_is(void* /*unused*/, MHD_Connection* /*unused*/, char* text) {
    return std::char_traits<char>::length(text);
}

class HttpServer final : public Server {
public:
    explicit HttpServer(unsigned port) : wake_(::eventfd(0, EFD_NONBLOCK | EFD_CLOEXEC)) {
        sockaddr_in address{};
        address.sin_family = AF_INET;
        address.sin_port = htons(static_cast<std::uint16_t>(port));
        address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
        daemon_ = MHD_start_daemon(
            MHD_USE_AUTO_INTERNAL_THREAD | MHD_ALLOW_SUSPEND_RESUME,
            static_cast<std::uint16_t>(port), nullptr, nullptr, &HttpServer::on_request, this,
            MHD_OPTION_SOCK_ADDR, &address, MHD_OPTION_CONNECTION_LIMIT, most_connections,
            MHD_OPTION_CONNECTION_TIMEOUT, patience, MHD_OPTION_NOTIFY_COMPLETED,
            &HttpServer::on_end, this, MHD_OPTION_UNESCAPE_CALLBACK, &as_it_is, nullptr,
            MHD_OPTION_END);
    }
    HttpServer(const HttpServer&) = delete;
    HttpServer& operator=(const HttpServer&) = delete;
    ~HttpServer() override {
        if (daemon_ != nullptr) {
            // What was not taken must not rest for ever, or the thread would never end.
            {
                const std::lock_guard lock(mutex_);
                ending_ = true;
            }
            for (Exchange* exchange : HttpServer::take()) {
                HttpServer::reply(*exchange, ended());
            }
            MHD_stop_daemon(daemon_);
        }
        static_cast<void>(::close(wake_));
    }

    [[nodiscard]] bool runs() const { return daemon_ != nullptr && wake_ >= 0; }

    [[nodiscard]] unsigned port() const override {
        const MHD_DaemonInfo* info = MHD_get_daemon_info(daemon_, MHD_DAEMON_INFO_BIND_PORT);
        return info == nullptr ? 0 : info->port;
    }

    [[nodiscard]] int file() const override { return wake_; }

    std::vector<Exchange*> take() override {
        eventfd_t count = 0;
        static_cast<void>(::eventfd_read(wake_, &count));
        const std::lock_guard lock(mutex_);
        return std::exchange(come_in_, {});
    }

    void reply(Exchange& exchange, Reply reply) override {
        exchange.reply = std::move(reply);
        MHD_resume_connection(exchange.connection);
    }

private:
    static MHD_Result on_request(void* self, MHD_Connection* connection, const char* path,
                                 const char* method, const char* /*version*/, const char* bytes,
                                 std::size_t* size, void** kept) {
        auto* exchange = static_cast<Exchange*>(*kept);
        if (exchange == nullptr) {
            auto made = std::make_unique<Exchange>();
            made->connection = connection;
            made->request.method = method;
            made->request.path = path;
            MHD_get_connection_values(connection, MHD_HEADER_KIND, &keep, &made->request);
            MHD_get_connection_values(connection, MHD_GET_ARGUMENT_KIND, &keep, &made->request);
            *kept = made.release();
            return MHD_YES;
        }
        if (*size != 0) {
            std::string& body = exchange->request.body;
            exchange->request.too_large =
                exchange->request.too_large || body.size() + *size > largest_body;
            if (exchange->request.too_large) {
                body.clear();
            } else {
                body.append(bytes, *size);
            }
            *size = 0;
            return MHD_YES;
        }
        if (!exchange->handed_over) {
            exchange->handed_over = true;
            if (static_cast<HttpServer*>(self)->hand_over(exchange)) {
                return MHD_YES; // the exchange may be replied to, even gone, by now
            }
        }
        return exchange->reply ? send(connection, *exchange->reply) : MHD_YES;
    }

    // True when the connection rests until it is replied to.
    bool hand_over(Exchange* exchange) {
        const std::lock_guard lock(mutex_);
        if (ending_) {
            exchange->reply = ended();
            return false;
        }
        MHD_suspend_connection(exchange->connection);
        come_in_.push_back(exchange);
        static_cast<void>(::eventfd_write(wake_, 1));
        return true;
    }

    static Reply ended() { return {503, "text/plain; charset=utf-8", "", {}}; }

    static MHD_Result send(MHD_Connection* connection, Reply& reply) {
        MHD_Response* response = MHD_create_response_from_buffer(
            reply.body.size(), reply.body.data(), MHD_RESPMEM_MUST_COPY);
        if (response == nullptr) {
            return MHD_NO;
        }
        MHD_add_response_header(response, MHD_HTTP_HEADER_CONTENT_TYPE, reply.type.c_str());
        for (const auto& [name, value] : reply.headers) {
            MHD_add_response_header(response, name.c_str(), value.c_str());
        }
        const MHD_Result queued =
            MHD_queue_response(connection, static_cast<unsigned>(reply.status), response);
        MHD_destroy_response(response);
        return queued;
    }

    static void on_end(void* /*self*/, MHD_Connection* /*connection*/, void** kept,
                       MHD_RequestTerminationCode /*code*/) {
        const std::unique_ptr<Exchange> over(static_cast<Exchange*>(*kept));
        *kept = nullptr;
    }

    MHD_Daemon* daemon_ = nullptr;
    int wake_ = -1;
    std::mutex mutex_;
    std::vector<Exchange*> come_in_;
    bool ending_ = false;
};

} // namespace

std::unique_ptr<Server> Server::start(unsigned port) {
    auto server = std::make_unique<HttpServer>(port);
    return server->runs() ? std::move(server) : nullptr;
}

const Request& Server::request(const Exchange& exchange) { return exchange.request; }

} // namespace matchmark::serve
