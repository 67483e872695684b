// Requests and replies over HTTP, on this machine alone. The one door to libmicrohttpd.
#pragma once

#include <map>
#include <memory>
#include <string>
#include <vector>

namespace matchmark::serve {

constexpr std::size_t largest_body = 64UL * 1024; // of a request, in bytes

struct Request {
    std::string method;
    std::string path;                           // as sent: percent signs and all
    std::map<std::string, std::string> query;   // as sent
    std::map<std::string, std::string> headers; // names in small letters
    std::string body;
    bool too_large = false; // its body was longer than `largest_body`, and is left out
};

struct Reply {
    int status = 200;
    std::string type = "text/plain; charset=utf-8";
    std::string body;
    std::map<std::string, std::string> headers;
};

struct Exchange; // a request that waits for its reply

// Moves the bytes in a thread of its own, so that a slow client holds nobody up; what is answered
// is decided by who takes the requests.
class Server {
public:
    // On 127.0.0.1. Port 0: any that is free. Null when the port cannot be had.
    static std::unique_ptr<Server> start(unsigned port);
    Server(const Server&) = delete;
    Server& operator=(const Server&) = delete;
    virtual ~Server() = default;

    [[nodiscard]] virtual unsigned port() const = 0;
    // To be polled; readable when there are requests.
    [[nodiscard]] virtual int file() const = 0;
    // The requests that have come in since. Each must be replied to, some time, once.
    virtual std::vector<Exchange*> take() = 0;
    [[nodiscard]] static const Request& request(const Exchange& exchange);
    virtual void reply(Exchange& exchange, Reply reply) = 0;

protected:
    Server() = default;
};

} // namespace matchmark::serve
