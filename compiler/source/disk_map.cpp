// A disk that is a map of strings: for tests, and for text that is not saved yet.
#include "source/disk.hpp"

#include <algorithm>

namespace matchmark {

namespace {

// "a/./b/" and "a/b" are one place; the top folder is "".
std::string key_of(std::string_view path) {
    std::string folded = beside("", path);
    return folded == "." ? "" : folded;
}

// What every path below a folder starts with.
std::string prefix_of(const std::string& key) {
    return key.empty() || key == "/" ? key : key + "/";
}

// Whether a folder on the way to a file is hidden, its name starting with a dot.
bool in_hidden_folder(std::string_view below) {
    const std::size_t last = below.rfind('/');
    if (last == std::string_view::npos) {
        return false;
    }
    return below.starts_with('.') || below.substr(0, last).find("/.") != std::string_view::npos;
}

} // namespace

DiskResult<std::string> MapDisk::read(const std::string& path) {
    const auto found = files.find(key_of(path));
    if (found != files.end()) {
        return found->second;
    }
    return DiskProblem{is_folder(path) ? "it is a folder" : "no such file"};
}

DiskResult<std::monostate> MapDisk::write(const std::string& path, std::string_view bytes) {
    if (is_folder(path)) {
        return DiskProblem{"it is a folder"};
    }
    files.insert_or_assign(key_of(path), std::string(bytes));
    return std::monostate{};
}

DiskResult<std::vector<std::string>> MapDisk::list(const std::string& folder,
                                                   std::string_view ending) {
    if (!is_folder(folder)) {
        return DiskProblem{exists(folder) ? "it is not a folder" : "no such folder"};
    }
    const std::string prefix = prefix_of(key_of(folder));
    std::vector<std::string> found;
    for (auto entry = files.lower_bound(prefix); entry != files.end(); ++entry) {
        const std::string_view path = entry->first;
        if (!path.starts_with(prefix)) {
            break;
        }
        const std::string_view below = path.substr(prefix.size());
        if (below.ends_with(ending) && !in_hidden_folder(below)) {
            found.emplace_back(below);
        }
    }
    std::sort(found.begin(), found.end());
    return found;
}

bool MapDisk::is_folder(const std::string& path) {
    const std::string key = key_of(path);
    if (key.empty()) {
        return true;
    }
    const std::string prefix = prefix_of(key);
    const auto first = files.lower_bound(prefix);
    return first != files.end() && first->first.starts_with(prefix) &&
           first->first.size() > prefix.size();
}

bool MapDisk::exists(const std::string& path) {
    return files.contains(key_of(path)) || is_folder(path);
}

bool MapDisk::lets_in(const std::string& path, const std::string& /*root*/) {
    const std::string folded = beside("", path);
    return folded != ".." && !folded.starts_with("../");
}

} // namespace matchmark
