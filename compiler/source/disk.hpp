// The one door to the file system. Everything that reads or writes files takes a Disk, so that
// tests can hand it a map of strings.
#pragma once

#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace matchmark {

// Why a file could not be read or written, as a sentence fragment for people ("no such file").
struct DiskProblem {
    std::string reason;
};

template <class T> using DiskResult = std::variant<T, DiskProblem>;

class Disk {
public:
    virtual ~Disk() = default;
    // The whole file. A file that grows or shrinks while it is read is a problem, never half a
    // text.
    virtual DiskResult<std::string> read(const std::string& path) = 0;
    // Replaces a file in one step: the old bytes stay whole until the new ones are. Keeps the mode.
    // Makes the folders that are missing.
    virtual DiskResult<std::monostate> write(const std::string& path, std::string_view bytes) = 0;
    // Every file under a folder whose name ends so, as paths below `folder` ("b/c.mmk" for
    // a/b/c.mmk in a), sorted bytewise. Hidden folders, and folders that are links, are left out.
    virtual DiskResult<std::vector<std::string>> list(const std::string& folder,
                                                      std::string_view ending) = 0;
    virtual bool is_folder(const std::string& path) = 0;
    virtual bool exists(const std::string& path) = 0;
};

// The machine's own file system.
std::unique_ptr<Disk> real_disk();

// Files held in memory; for tests and for text that is not saved yet.
class MapDisk final : public Disk {
public:
    std::map<std::string, std::string> files;

    DiskResult<std::string> read(const std::string& path) override;
    DiskResult<std::monostate> write(const std::string& path, std::string_view bytes) override;
    DiskResult<std::vector<std::string>> list(const std::string& folder,
                                              std::string_view ending) override;
    bool is_folder(const std::string& path) override;
    bool exists(const std::string& path) override;
};

// `path` as seen from the folder of `from`, with `.` and `..` folded: ("a/b.mmk", "../c.mmk") ->
// "c.mmk".
std::string beside(std::string_view from, std::string_view path);

} // namespace matchmark
