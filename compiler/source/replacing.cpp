// Writes beside a file, then renames: whoever reads it sees the old bytes or the new ones.
#include "source/replacing.hpp"

#include "source/open_file.hpp"

#include <atomic>
#include <cerrno>
#include <system_error>
#include <utility>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace matchmark {

namespace fs = std::filesystem;

namespace {

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

// ".NAME.PROCESS.COUNT~"
bool is_name_of_ours(std::string_view name) {
    if (!name.starts_with('.') || !name.ends_with('~')) {
        return false;
    }
    name.remove_suffix(1);
    for (int numbers = 0; numbers < 2; ++numbers) {
        const std::size_t dot = name.rfind('.');
        if (dot == std::string_view::npos || dot + 1 == name.size() ||
            name.find_first_not_of("0123456789", dot + 1) != std::string_view::npos) {
            return false;
        }
        name = name.substr(0, dot);
    }
    return name.size() > 1;
}

// Whoever writes such a file holds a lock on it; the system ends that lock with the process.
bool is_abandoned(const OpenFile& file) {
    return file.number() >= 0 && ::flock(file.number(), LOCK_EX | LOCK_NB) == 0;
}

void clear(const fs::path& folder) {
    std::error_code error;
    fs::directory_iterator entry(folder.empty() ? fs::path(".") : folder, error);
    for (; !error && entry != fs::directory_iterator(); entry.increment(error)) {
        std::error_code unknown;
        if (!is_name_of_ours(entry->path().filename().string()) || entry->is_symlink(unknown) ||
            !entry->is_regular_file(unknown)) {
            continue;
        }
        const OpenFile file(::open(entry->path().c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW));
        if (is_abandoned(file)) {
            static_cast<void>(::unlink(entry->path().c_str()));
        }
    }
}

// A new file in the folder of `target`; its name starts with a dot, and no other process has it.
std::pair<int, std::string> new_file_beside(const fs::path& target, mode_t mode) {
    static std::atomic<unsigned> count{0};
    for (int attempt = 0; attempt < 100; ++attempt) {
        const std::string name = "." + target.filename().string().substr(0, 200) + "." +
                                 std::to_string(::getpid()) + "." + std::to_string(count++) + "~";
        std::string path = (target.parent_path() / name).string();
        const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, mode);
        if (file < 0 && errno != EEXIST) {
            return {file, std::move(path)};
        }
        if (file < 0) {
            continue;
        }
        // Another process may have taken it for abandoned before it was locked.
        struct stat status {};
        static_cast<void>(::flock(file, LOCK_EX | LOCK_NB));
        if (::fstat(file, &status) == 0 && status.st_nlink > 0) {
            return {file, std::move(path)};
        }
        static_cast<void>(::close(file));
    }
    errno = EEXIST;
    return {-1, {}};
}

// So that the new name survives a loss of power; a disk that cannot do it is no reason to fail.
void settle_folder(const fs::path& folder) {
    const std::string name = folder.empty() ? "." : folder.string();
    const OpenFile opened(::open(name.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (opened.number() >= 0) {
        static_cast<void>(::fsync(opened.number()));
    }
}

std::optional<DiskProblem> fill(int file, const NewBytes& fresh) {
    if (auto problem = write_all(file, fresh.bytes)) {
        return problem;
    }
    if (fresh.old) {
        // Only the system's keeper may give a file away; who may not owns what they write.
        static_cast<void>(::fchown(file, fresh.old->st_uid, fresh.old->st_gid) == 0);
        if (::fchmod(file, fresh.old->st_mode & 07777U) != 0) {
            return problem_of(errno);
        }
    }
    if (fresh.settled && ::fsync(file) != 0) {
        return problem_of(errno);
    }
    return std::nullopt;
}

// At the last moment: as little time as can be passes until the file has its new name.
std::optional<DiskProblem> changed(Disk& disk, const fs::path& target, std::string_view before) {
    const auto now = disk.read(target.string());
    if (const auto* problem = std::get_if<DiskProblem>(&now)) {
        return *problem;
    }
    return std::get<std::string>(now) == before ? std::nullopt : std::optional(changed_meanwhile());
}

} // namespace

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

void Replacing::clear_once(const fs::path& folder) {
    {
        const std::scoped_lock lock(mutex_);
        if (!cleared_.insert(folder.string()).second) {
            return;
        }
    }
    clear(folder);
}

std::optional<DiskProblem> Replacing::replace(Disk& disk, const fs::path& target,
                                              const NewBytes& fresh) {
    clear_once(target.parent_path());
    // What was kept from others is never open to them, not even until it has its mode.
    auto [number, name] = new_file_beside(target, fresh.old ? 0600 : 0666);
    if (number < 0) {
        return problem_of(errno);
    }
    const OpenFile file(number);
    std::optional<DiskProblem> problem = fill(number, fresh);
    if (!problem && fresh.before) {
        problem = changed(disk, target, *fresh.before);
    }
    // Renamed while it is locked, so that nobody takes it for abandoned.
    if (!problem && ::rename(name.c_str(), target.c_str()) != 0) {
        problem = problem_of(errno);
    }
    if (problem) {
        static_cast<void>(::unlink(name.c_str()));
        return problem;
    }
    if (fresh.settled) {
        settle_folder(target.parent_path());
    }
    return std::nullopt;
}

} // namespace matchmark
