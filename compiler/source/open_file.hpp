// An open file of the system that is closed when it is no longer needed.
#pragma once

#include <utility>

#include <unistd.h>

namespace matchmark {

class OpenFile {
public:
    explicit OpenFile(int number) : number_(number) {}
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;
    ~OpenFile() { static_cast<void>(close()); }

    [[nodiscard]] int number() const { return number_; }
    // The last chance of a disk to say that the bytes did not fit.
    int close() { return number_ < 0 ? 0 : ::close(std::exchange(number_, -1)); }

private:
    int number_;
};

} // namespace matchmark
