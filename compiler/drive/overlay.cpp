// Reads what was changed from memory, and all the rest from the disk below.
#include "drive/overlay.hpp"

namespace matchmark::drive {

DiskResult<std::string> OverlayDisk::read(const std::string& path) {
    const auto found = changed_.find(beside("", path));
    return found == changed_.end() ? below_.read(path) : DiskResult<std::string>(found->second);
}

DiskResult<std::monostate> OverlayDisk::write(const std::string& path, std::string_view bytes) {
    changed_.insert_or_assign(beside("", path), std::string(bytes));
    return std::monostate{};
}

DiskResult<std::vector<std::string>> OverlayDisk::list(const std::string& folder,
                                                       std::string_view ending) {
    return below_.list(folder, ending);
}

bool OverlayDisk::exists(const std::string& path) {
    return changed_.contains(beside("", path)) || below_.exists(path);
}

} // namespace matchmark::drive
