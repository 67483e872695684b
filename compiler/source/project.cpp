// Finds the folder of a guide's project, and follows links before anything is read.
#include "source/project.hpp"

#include <algorithm>
#include <cstdlib>
#include <system_error>

namespace matchmark {

namespace fs = std::filesystem;

namespace {

bool is_below(const fs::path& folder, const fs::path& path) {
    return std::mismatch(folder.begin(), folder.end(), path.begin(), path.end()).first ==
           folder.end();
}

fs::path real_path(const fs::path& path, std::error_code& error) {
    const fs::path whole = fs::absolute(path, error);
    return error ? whole : fs::weakly_canonical(whole, error);
}

} // namespace

bool leads_into(const fs::path& folder, const fs::path& path) {
    std::error_code error;
    const fs::path real = real_path(path, error);
    return error || is_below(folder, real);
}

Projects::Projects() {
    std::error_code unknown;
    if (const char* home = std::getenv("HOME"); home != nullptr && *home != '\0') {
        home_ = real_path(home, unknown);
    }
    current_ = fs::current_path(unknown);
    if (current_ == current_.root_path() || current_ == home_) {
        current_.clear();
    }
}

void Projects::take(const std::string& folder) {
    std::error_code unknown;
    const std::scoped_lock lock(mutex_);
    taken_ = real_path(folder, unknown);
}

fs::path Projects::found_above(const fs::path& folder) const {
    std::error_code error;
    const fs::path start = real_path(folder, error);
    for (fs::path at = start; at.has_relative_path(); at = at.parent_path()) {
        if (at != home_ && fs::exists(at / ".git", error)) {
            return at;
        }
    }
    return !current_.empty() && is_below(current_, start) ? current_ : start;
}

fs::path Projects::folder_of(const std::string& file) {
    std::error_code unknown;
    const fs::path named = file == "-" ? fs::path(".") : fs::path(file);
    const fs::path folder =
        named.empty() || fs::is_directory(named, unknown) ? named : named.parent_path();
    const std::scoped_lock lock(mutex_);
    if (!taken_.empty()) {
        return taken_;
    }
    const auto [place, is_new] = known_.try_emplace(folder.string());
    if (is_new) {
        place->second = found_above(folder.empty() ? "." : folder);
    }
    return place->second;
}

} // namespace matchmark
