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
    // As `write`, without waiting until the disk has it: a loss of power may leave the file cut
    // short. For what can be made again, and is known to be cut short when it is read.
    virtual DiskResult<std::monostate> write_soon(const std::string& path, std::string_view bytes);
    // As `write`, for bytes that were made out of `before`: when the file holds something else by
    // now, another program has changed it, and that is a problem; its change is kept.
    virtual DiskResult<std::monostate> replace(const std::string& path, std::string_view before,
                                               std::string_view bytes);
    // Whether a path that a guide names may be read: whether it lies, links followed, in the
    // folder of the project to which the file (or folder) `root` belongs. A path that leads
    // nowhere lies where it would.
    virtual bool lets_in(const std::string& path, const std::string& root) = 0;
    // From now on the project of every file is this folder.
    virtual void take_as_project(const std::string& /*folder*/) {}
    // Every file under a folder whose name ends so, as paths below `folder` ("b/c.mmk" for
    // a/b/c.mmk in a), sorted bytewise. Hidden folders, and folders that are links, are left out.
    virtual DiskResult<std::vector<std::string>> list(const std::string& folder,
                                                      std::string_view ending) = 0;
    virtual bool is_folder(const std::string& path) = 0;
    virtual bool exists(const std::string& path) = 0;
};

// Why `replace` did not.
DiskProblem changed_meanwhile();

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
    // All but what `..` leads out of.
    bool lets_in(const std::string& path, const std::string& root) override;
};

// `path` as seen from the folder of `from`, with `.` and `..` folded: ("a/b.mmk", "../c.mmk") ->
// "c.mmk".
std::string beside(std::string_view from, std::string_view path);

} // namespace matchmark
