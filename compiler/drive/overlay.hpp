// Texts that are changed but not yet written, laid over a disk: so that nothing is written until
// all is right.
#pragma once

#include "source/disk.hpp"

#include <map>
#include <string>
#include <utility>

namespace matchmark::drive {

class OverlayDisk final : public Disk {
public:
    explicit OverlayDisk(Disk& below) : below_(below) {}

    // Back to what `changed` said earlier.
    void restore(std::map<std::string, std::string> changed) { changed_ = std::move(changed); }

    // By folded path; the text that stands in place of the file's.
    [[nodiscard]] const std::map<std::string, std::string>& changed() const { return changed_; }

    DiskResult<std::string> read(const std::string& path) override;
    // Into memory alone.
    DiskResult<std::monostate> write(const std::string& path, std::string_view bytes) override;
    DiskResult<std::vector<std::string>> list(const std::string& folder,
                                              std::string_view ending) override;
    bool is_folder(const std::string& path) override { return below_.is_folder(path); }
    bool exists(const std::string& path) override;
    bool lets_in(const std::string& path, const std::string& root) override {
        return below_.lets_in(path, root);
    }

private:
    Disk& below_;
    std::map<std::string, std::string> changed_;
};

} // namespace matchmark::drive
