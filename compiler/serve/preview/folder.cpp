// Follows each path to where it leads before anything is read, and stops at the folder's edge.
#include "serve/preview/folder.hpp"

#include "source/project.hpp"

#include <filesystem>
#include <system_error>

#include <sys/stat.h>

namespace matchmark::serve {

namespace fs = std::filesystem;

namespace {

DiskProblem outside() { return {"it lies outside the folder that is served"}; }

} // namespace

FolderDisk::FolderDisk(Disk& below, const std::string& root) : below_(below) {
    std::error_code error;
    root_ = fs::canonical(root, error).string();
}

std::optional<std::string> FolderDisk::real_path(const std::string& path) const {
    if (root_.empty() || path.find('\0') != std::string::npos) {
        return std::nullopt;
    }
    std::error_code error;
    const fs::path full = fs::path(path).is_absolute() ? fs::path(path) : fs::path(root_) / path;
    std::string real = fs::canonical(full, error).string();
    const std::string edge = root_.ends_with('/') ? root_ : root_ + "/";
    if (error || (real != root_ && !real.starts_with(edge))) {
        return std::nullopt;
    }
    return real;
}

Stamp FolderDisk::stamp(const std::string& path) const {
    const auto real = real_path(path);
    struct stat status {};
    if (!real || ::stat(real->c_str(), &status) != 0) {
        return {};
    }
    return {true, status.st_size, status.st_mtim.tv_sec, status.st_mtim.tv_nsec, status.st_ino};
}

DiskResult<std::string> FolderDisk::read(const std::string& path) {
    note(path);
    const auto real = real_path(path);
    return real ? below_.read(*real) : DiskResult<std::string>(outside());
}

// Only a file that is there is ever written: the preview makes none.
DiskResult<std::monostate> FolderDisk::write(const std::string& path, std::string_view bytes) {
    const auto real = real_path(path);
    return real ? below_.write(*real, bytes) : DiskResult<std::monostate>(outside());
}

DiskResult<std::vector<std::string>> FolderDisk::list(const std::string& folder,
                                                      std::string_view ending) {
    const auto real = real_path(folder);
    return real ? below_.list(*real, ending) : DiskResult<std::vector<std::string>>(outside());
}

bool FolderDisk::is_folder(const std::string& path) {
    const auto real = real_path(path);
    return real && below_.is_folder(*real);
}

bool FolderDisk::exists(const std::string& path) {
    note(path);
    const auto real = real_path(path);
    return real && below_.exists(*real);
}

bool FolderDisk::lets_in(const std::string& path, const std::string& /*root*/) {
    const fs::path full = fs::path(path).is_absolute() ? fs::path(path) : fs::path(root_) / path;
    return leads_into(root_, full);
}

} // namespace matchmark::serve
