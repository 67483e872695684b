// Lays the texts of an editor over the disk.
#include "serve/editor/disk.hpp"

namespace matchmark::serve {

namespace {

constexpr std::size_t most_kept = std::size_t{256} << 20U; // bytes; then all is read anew

} // namespace

void EditorDisk::forget() {
    kept_.clear();
    known_.clear();
    bytes_ = 0;
}

DiskResult<std::string> EditorDisk::read(const std::string& path) {
    const std::string folded = beside("", path);
    if (const auto found = open.find(folded); found != open.end())
        return found->second.text;
    if (const auto found = kept_.find(folded); found != kept_.end())
        return found->second;
    auto result = below_.read(path);
    if (const auto* text = std::get_if<std::string>(&result))
        bytes_ += text->size();
    if (bytes_ > most_kept) {
        forget();
        return result;
    }
    return kept_.emplace(folded, std::move(result)).first->second;
}

DiskResult<std::monostate> EditorDisk::write(const std::string& /*path*/,
                                             std::string_view /*bytes*/) {
    return DiskProblem{"files are written by the editor"};
}

DiskResult<std::vector<std::string>> EditorDisk::list(const std::string& folder,
                                                      std::string_view ending) {
    return below_.list(folder, ending);
}

bool EditorDisk::exists(const std::string& path) {
    const std::string folded = beside("", path);
    if (open.contains(folded))
        return true;
    if (const auto found = known_.find(folded); found != known_.end())
        return found->second;
    return known_.emplace(folded, below_.exists(path)).first->second;
}

} // namespace matchmark::serve
