// Where a file named by another file is, and what every disk does in the same way.
#include "source/disk.hpp"

namespace matchmark {

namespace {

// Folds `.`, `..` and doubled slashes; `..` that climbs above a relative path's start stays.
std::string fold(std::string_view path) {
    const bool absolute = path.starts_with('/');
    std::vector<std::string_view> kept;
    while (!path.empty()) {
        const std::size_t slash = path.find('/');
        const std::string_view name = path.substr(0, slash);
        path.remove_prefix(slash == std::string_view::npos ? path.size() : slash + 1);
        if (name.empty() || name == ".") {
            continue;
        }
        if (name == ".." && !kept.empty() && kept.back() != "..") {
            kept.pop_back();
        } else if (name != ".." || !absolute) {
            kept.push_back(name);
        }
    }
    std::string folded = absolute ? "/" : "";
    for (std::size_t i = 0; i < kept.size(); ++i) {
        folded += i == 0 ? "" : "/";
        folded += kept[i];
    }
    return folded.empty() ? "." : folded;
}

} // namespace

std::string beside(std::string_view from, std::string_view path) {
    const std::size_t slash = from.rfind('/');
    if (path.starts_with('/') || slash == std::string_view::npos) {
        return fold(path);
    }
    std::string joined(from.substr(0, slash + 1));
    joined += path;
    return fold(joined);
}

DiskResult<std::monostate> Disk::write_soon(const std::string& path, std::string_view bytes) {
    return write(path, bytes);
}

DiskResult<std::monostate> Disk::replace(const std::string& path, std::string_view before,
                                         std::string_view bytes) {
    const auto now = read(path);
    if (const auto* problem = std::get_if<DiskProblem>(&now)) {
        return *problem;
    }
    if (std::get<std::string>(now) != before) {
        return changed_meanwhile();
    }
    return write(path, bytes);
}

DiskProblem changed_meanwhile() {
    return {"another program changed it in the meantime; run the command again"};
}

} // namespace matchmark
