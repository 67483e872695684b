// What the preview answers to each request, and what it refuses.
#pragma once

#include "serve/preview/pages.hpp"
#include "serve/preview/server.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace matchmark::serve {

// Only requests that name this machine as their host are answered, and only those of its own pages
// may write. Nothing outside the folder is read, written or told.
class Preview {
public:
    Preview(Disk& disk, const std::string& folder, unsigned port);

    // Does the request ask to wait for a change that is still to come?
    [[nodiscard]] bool waits(const Request& request) const;
    Reply answer(const Request& request);

    // Something in the folder has changed.
    void changed() { ++version_; }
    [[nodiscard]] std::uint64_t version() const { return version_; }
    [[nodiscard]] const std::string& root() const { return disk_.root(); }

private:
    [[nodiscard]] std::optional<Reply> refusal(const Request& request) const;
    Reply get(const Request& request);
    Reply page(const std::string& name, const Request& request);
    Reply picture(const std::string& path);
    Reply post(const Request& request, const std::string& path);
    Reply mark(MarkOrder order, const Content& content);
    Reply undo();
    [[nodiscard]] const Written* last_that_stands();

    FolderDisk disk_;
    Pages pages_;
    std::vector<std::string> hosts_; // "127.0.0.1:8137"
    std::uint64_t version_ = 1;
    std::vector<Written> written_; // the last one at the end
};

// A path as sent, without percent signs; nothing when it is not one below the folder: it holds
// `..`, a hidden name, a NUL, or is malformed.
std::optional<std::string> plain_path(const std::string& sent);

} // namespace matchmark::serve
