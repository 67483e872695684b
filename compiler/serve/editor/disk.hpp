// The disk as an editor sees it: files that are open there stand as they are in it, saved or not.
#pragma once

#include "source/disk.hpp"

#include <cstdint>
#include <map>
#include <optional>
#include <string>

namespace matchmark::serve {

struct OpenFile {
    std::string uri; // as the editor spells it
    std::string text;
    std::optional<std::int64_t> version;
};

class EditorDisk final : public Disk {
public:
    explicit EditorDisk(Disk& below) : below_(below) {}

    std::map<std::string, OpenFile> open; // by folded path

    // What was read of files that are not open is kept until then: an editor tells of changes.
    void forget();

    DiskResult<std::string> read(const std::string& path) override;
    // Never: what is changed here goes to the editor.
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
    std::map<std::string, DiskResult<std::string>> kept_;
    std::map<std::string, bool> known_;
    std::size_t bytes_ = 0;
};

} // namespace matchmark::serve
