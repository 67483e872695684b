// The machine's own file system: a file is read whole or not at all, and replaced whole or not at
// all.
#include "source/disk.hpp"

#include <algorithm>
#include <atomic>
#include <cerrno>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <system_error>
#include <utility>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace matchmark {

namespace {

constexpr std::int64_t largest_file = 256LL * 1024 * 1024; // bytes; offsets are 32 bits wide

// An open file that is closed when it is no longer needed.
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

DiskProblem problem_of(int error) {
    switch (error) {
    case ENOENT:
        return {"no such file"};
    case EACCES:
    case EPERM:
        return {"permission denied"};
    case EISDIR:
        return {"it is a folder"};
    case ENOTDIR:
        return {"a part of its path is not a folder"};
    case ENOSPC:
    case EDQUOT:
        return {"the disk is full"};
    case EROFS:
        return {"the disk can only be read"};
    case ELOOP:
        return {"its links lead in a circle"};
    case ENAMETOOLONG:
        return {"its name is too long"};
    case EMFILE:
    case ENFILE:
        return {"too many files are open"};
    case EFBIG:
        return {"it is larger than the disk allows"};
    case EIO:
        return {"the disk failed"};
    default:
        return {"the system refused (error " + std::to_string(error) + ")"};
    }
}

// Why what `status` describes cannot be used as a file.
std::optional<DiskProblem> not_a_plain_file(const struct stat& status) {
    if (S_ISDIR(status.st_mode)) {
        return DiskProblem{"it is a folder"};
    }
    if (!S_ISREG(status.st_mode)) {
        return DiskProblem{"it is a device or a pipe, not a file"};
    }
    return std::nullopt;
}

std::optional<DiskProblem> unusable_name(const std::string& path) {
    if (path.empty()) {
        return DiskProblem{"its name is empty"};
    }
    if (path.find('\0') != std::string::npos) {
        return DiskProblem{"its name contains a NUL"};
    }
    return std::nullopt;
}

bool same_state(const struct stat& a, const struct stat& b) {
    return a.st_size == b.st_size && a.st_mtim.tv_sec == b.st_mtim.tv_sec &&
           a.st_mtim.tv_nsec == b.st_mtim.tv_nsec;
}

// Reads until the end of the file; a little more room than `expected` shows that it grew.
DiskResult<std::string> read_to_end(int file, std::size_t expected) {
    std::string text(expected + 1, '\0');
    std::size_t filled = 0;
    while (filled < text.size()) {
        const ssize_t got = ::read(file, text.data() + filled, text.size() - filled);
        if (got < 0 && errno == EINTR) {
            continue;
        }
        if (got < 0) {
            return problem_of(errno);
        }
        if (got == 0) {
            break;
        }
        filled += static_cast<std::size_t>(got);
    }
    text.resize(filled);
    return text;
}

std::optional<DiskProblem> write_all(int file, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t put = ::write(file, bytes.data(), bytes.size());
        if (put < 0 && errno == EINTR) {
            continue;
        }
        if (put < 0) {
            return problem_of(errno);
        }
        bytes.remove_prefix(static_cast<std::size_t>(put));
    }
    return std::nullopt;
}

// A new file in `folder`; its name starts with a dot, and no other process has it open.
std::pair<int, std::string> new_file_beside(const std::filesystem::path& target) {
    static std::atomic<unsigned> count{0};
    for (int attempt = 0; attempt < 100; ++attempt) {
        const std::string name = "." + target.filename().string().substr(0, 200) + "." +
                                 std::to_string(::getpid()) + "." + std::to_string(count++) + "~";
        std::string path = (target.parent_path() / name).string();
        const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
        if (file >= 0 || errno != EEXIST) {
            return {file, std::move(path)};
        }
    }
    return {-1, {}};
}

// So that the new name survives a loss of power; a disk that cannot do it is no reason to fail.
void settle_folder(const std::filesystem::path& folder) {
    const std::string name = folder.empty() ? "." : folder.string();
    const OpenFile opened(::open(name.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (opened.number() >= 0) {
        static_cast<void>(::fsync(opened.number()));
    }
}

// Writes `bytes` to a new file beside `target` and gives it the target's name.
std::optional<DiskProblem> replace(const std::filesystem::path& target, std::string_view bytes,
                                   std::optional<mode_t> mode) {
    auto [number, name] = new_file_beside(target);
    if (number < 0) {
        return problem_of(errno);
    }
    OpenFile file(number);
    std::optional<DiskProblem> problem = write_all(number, bytes);
    if (!problem && ((mode && ::fchmod(number, *mode) != 0) || ::fsync(number) != 0 ||
                     file.close() != 0 || ::rename(name.c_str(), target.c_str()) != 0)) {
        problem = problem_of(errno);
    }
    if (problem) {
        static_cast<void>(::unlink(name.c_str()));
        return problem;
    }
    settle_folder(target.parent_path());
    return std::nullopt;
}

class RealDisk final : public Disk {
public:
    DiskResult<std::string> read(const std::string& path) override {
        if (auto problem = unusable_name(path)) {
            return *problem;
        }
        // Without O_NONBLOCK, opening a pipe would wait for somebody to write to it.
        const OpenFile file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
        struct stat before {};
        if (file.number() < 0 || ::fstat(file.number(), &before) != 0) {
            return problem_of(errno);
        }
        if (auto problem = not_a_plain_file(before)) {
            return *problem;
        }
        if (before.st_size > largest_file) {
            return DiskProblem{"it is larger than 256 MB"};
        }
        const auto expected = static_cast<std::size_t>(before.st_size);
        DiskResult<std::string> text = read_to_end(file.number(), expected);
        struct stat after {};
        if (::fstat(file.number(), &after) != 0) {
            return problem_of(errno);
        }
        const std::string* read = std::get_if<std::string>(&text);
        if (read != nullptr && (read->size() != expected || !same_state(before, after))) {
            return DiskProblem{"it changed while it was read"};
        }
        return text;
    }

    DiskResult<std::monostate> write(const std::string& path, std::string_view bytes) override {
        if (auto problem = unusable_name(path)) {
            return *problem;
        }
        std::error_code error;
        std::filesystem::path target = path;
        std::optional<mode_t> mode;
        struct stat status {};
        if (::stat(path.c_str(), &status) == 0) {
            if (auto problem = not_a_plain_file(status)) {
                return *problem;
            }
            if (::access(path.c_str(), W_OK) != 0) {
                return problem_of(errno);
            }
            mode = status.st_mode & 07777U;
            target = std::filesystem::canonical(target, error); // a link stays a link
        } else if (target.has_parent_path()) {
            std::filesystem::create_directories(target.parent_path(), error);
        }
        if (error) {
            return problem_of(error.value());
        }
        if (auto problem = replace(target, bytes, mode)) {
            return *problem;
        }
        return std::monostate{};
    }

    DiskResult<std::vector<std::string>> list(const std::string& folder,
                                              std::string_view ending) override {
        namespace fs = std::filesystem;
        std::error_code error;
        std::vector<std::string> found;
        fs::recursive_directory_iterator entry(folder, error);
        while (!error && entry != fs::recursive_directory_iterator()) {
            const std::string name = entry->path().filename().string();
            std::error_code unknown; // a link that leads nowhere is no file
            if (!entry->is_symlink(unknown) && entry->is_directory(unknown)) {
                if (name.starts_with('.')) {
                    entry.disable_recursion_pending();
                }
            } else if (name.ends_with(ending) && entry->is_regular_file(unknown)) {
                found.push_back(entry->path().lexically_relative(folder).string());
            }
            entry.increment(error);
        }
        if (error) {
            return error.value() == ENOENT ? DiskProblem{"no such folder"}
                                           : problem_of(error.value());
        }
        std::sort(found.begin(), found.end());
        return found;
    }

    bool is_folder(const std::string& path) override {
        std::error_code unknown;
        return std::filesystem::is_directory(path, unknown);
    }

    bool exists(const std::string& path) override {
        std::error_code unknown;
        return std::filesystem::exists(path, unknown);
    }
};

} // namespace

std::unique_ptr<Disk> real_disk() { return std::make_unique<RealDisk>(); }

} // namespace matchmark
