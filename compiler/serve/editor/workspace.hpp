// What the server knows while an editor works: the files that are open, and what each of them
// means.
#pragma once

#include "drive/compilation.hpp"
#include "serve/editor/disk.hpp"
#include "serve/editor/places.hpp"
#include "serve/editor/protocol.hpp"

#include <map>
#include <memory>
#include <set>
#include <string>
#include <vector>

namespace matchmark::serve {

// One file compiled, with all that it uses.
struct Analysis {
    std::string path; // folded
    drive::Compilation done;
    std::set<std::string> files; // folded paths of all that was read for it

    [[nodiscard]] const syntax::File& root() const { return *done.files.back(); }
    [[nodiscard]] const SourceFile& source() const { return done.sources.file(done.root); }
};

class Workspace {
public:
    explicit Workspace(Disk& disk) : disk_(disk) {}

    Encoding encoding = Encoding::utf16;

    // --- files that are open ---
    void open(const std::string& uri, std::string text, std::optional<std::int64_t> version);
    // False when the file is not open.
    bool change(const std::string& uri, std::optional<std::int64_t> version,
                const std::vector<ContentChange>& changes);
    void close(const std::string& uri);
    [[nodiscard]] const OpenFile* find(const std::string& path) const;
    // Something changed outside the editor, or was saved.
    void touched();

    // --- folders ---
    void add_folder(const std::string& uri);
    void remove_folder(const std::string& uri);
    // Every .mmk file below the folders, by folded path; none when there are more than
    // `most_files`.
    std::vector<std::string> files_in_folders();
    static constexpr std::size_t most_files = 2000;
    // Those of them, and of the open files, that use this file, if only by way of others.
    std::vector<std::string> users_of(const std::string& path);

    // --- what they mean ---
    // Compiled when it is first asked for after a change.
    const Analysis& analysis(const std::string& path);
    // The same with another text in place of the file's.
    Analysis analysis_with(const std::string& path, const std::string& text);
    // With these texts laid over all, for a trial; nothing is kept.
    std::vector<Diagnostic> findings_with(const std::string& path,
                                          const std::map<std::string, std::string>& texts);
    // Open files that may mean something else since this was asked last.
    std::vector<std::string> changed();

    [[nodiscard]] std::string uri(const std::string& path) const;
    [[nodiscard]] LineTable lines(std::string_view text) const { return {text, encoding}; }
    [[nodiscard]] EditorDisk& disk() { return disk_; }

private:
    void forget_users_of(const std::string& path);
    drive::Memory* memory_of(const std::string& path);

    EditorDisk disk_;
    std::map<std::string, std::unique_ptr<Analysis>> analyses_; // by path; those that still hold
    std::map<std::string, drive::Memory> memories_;             // of the open files
    std::set<std::string> changed_;
    std::set<std::string> folders_;
    std::optional<std::map<std::string, std::vector<std::string>>> uses_; // by path: what it uses
};

// The lines of the files of one compilation, each counted once.
class Tables {
public:
    Tables(const Workspace& workspace, const SourceMap& sources)
        : workspace_(workspace), sources_(sources) {}

    [[nodiscard]] const SourceMap& sources() const { return sources_; }
    const LineTable& of(FileId file);
    Location location(Span span);

private:
    const Workspace& workspace_;
    const SourceMap& sources_;
    std::map<FileId, LineTable> tables_;
};

} // namespace matchmark::serve
