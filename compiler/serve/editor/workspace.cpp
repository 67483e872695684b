// Keeps what was compiled until something that it was made from changes.
#include "serve/editor/workspace.hpp"

#include "drive/pictures.hpp"
#include "syntax/reader.hpp"

#include <algorithm>
#include <utility>

namespace matchmark::serve {

namespace {

std::string folded_path(const std::string& uri) { return beside("", path_of(uri)); }

Analysis analysed(Disk& disk, const std::string& path, const std::string* text,
                  drive::Memory* memory) {
    Analysis result;
    result.path = path;
    result.done = drive::compile(disk, path, text, memory);
    drive::report_pictures(disk, result.done);
    for (FileId id = 0; id < result.done.sources.size(); ++id) {
        const SourceFile& file = result.done.sources.file(id);
        if (!file.built_in)
            result.files.insert(beside("", file.path));
    }
    return result;
}

// The paths that a text uses; read off its lines without a parse, for there may be many files.
std::vector<std::string> uses_in(const std::string& path, std::string_view text) {
    std::vector<std::string> uses;
    constexpr std::string_view word = "use";
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        const std::string_view line = text.substr(at, end - at);
        const std::size_t open = line.find('"');
        const std::size_t close = line.rfind('"');
        if (line.starts_with(word) && open != std::string_view::npos && close > open)
            uses.push_back(beside(path, syntax::unquoted(line.substr(open, close - open + 1))));
        at = end + 1;
    }
    return uses;
}

} // namespace

void Workspace::open(const std::string& uri, std::string text,
                     std::optional<std::int64_t> version) {
    const std::string path = folded_path(uri);
    disk_.open.insert_or_assign(path, OpenFile{uri, std::move(text), version});
    disk_.forget();
    uses_.reset();
    forget_users_of(path);
}

bool Workspace::change(const std::string& uri, std::optional<std::int64_t> version,
                       const std::vector<ContentChange>& changes) {
    const std::string path = folded_path(uri);
    const auto file = disk_.open.find(path);
    if (file == disk_.open.end())
        return false;
    std::string& text = file->second.text;
    for (const ContentChange& change : changes) {
        if (!change.range) {
            text = change.text;
            continue;
        }
        const LineTable table = lines(text);
        const std::uint32_t begin = table.offset(change.range->start);
        const std::uint32_t end = std::max(begin, table.offset(change.range->end));
        text.replace(begin, end - begin, change.text);
    }
    file->second.version = version;
    if (uses_)
        uses_->insert_or_assign(path, uses_in(path, text));
    forget_users_of(path);
    return true;
}

void Workspace::close(const std::string& uri) {
    const std::string path = folded_path(uri);
    disk_.open.erase(path);
    memories_.erase(path);
    disk_.forget();
    uses_.reset();
    forget_users_of(path);
}

const OpenFile* Workspace::find(const std::string& path) const {
    const auto file = disk_.open.find(path);
    return file == disk_.open.end() ? nullptr : &file->second;
}

void Workspace::touched() {
    disk_.forget();
    uses_.reset();
    analyses_.clear();
    for (const auto& entry : disk_.open)
        changed_.insert(entry.first);
}

void Workspace::add_folder(const std::string& uri) {
    folders_.insert(folded_path(uri));
    uses_.reset();
}

void Workspace::remove_folder(const std::string& uri) {
    folders_.erase(folded_path(uri));
    uses_.reset();
}

std::vector<std::string> Workspace::files_in_folders() {
    std::set<std::string> paths;
    for (const std::string& folder : folders_) {
        const auto listed = disk_.list(folder, ".mmk");
        const auto* names = std::get_if<std::vector<std::string>>(&listed);
        if (names == nullptr)
            continue;
        for (const std::string& name : *names)
            paths.insert(beside("", folder + "/" + name));
        if (paths.size() > most_files)
            return {};
    }
    return {paths.begin(), paths.end()};
}

std::vector<std::string> Workspace::users_of(const std::string& path) {
    if (!uses_) {
        uses_.emplace();
        for (const std::string& file : files_in_folders()) {
            const auto text = disk_.read(file);
            if (const auto* bytes = std::get_if<std::string>(&text))
                uses_->emplace(file, uses_in(file, *bytes));
        }
        for (const auto& [file, open] : disk_.open)
            uses_->insert_or_assign(file, uses_in(file, open.text));
    }
    std::set<std::string> users = {path};
    for (bool grown = true; grown;) {
        grown = false;
        for (const auto& [file, used] : *uses_) {
            const bool user = std::any_of(used.begin(), used.end(), [&](const std::string& other) {
                return users.contains(other);
            });
            grown = (user && users.insert(file).second) || grown;
        }
    }
    users.erase(path);
    return {users.begin(), users.end()};
}

// Only an open file will be compiled again soon.
drive::Memory* Workspace::memory_of(const std::string& path) {
    return disk_.open.contains(path) ? &memories_[path] : nullptr;
}

const Analysis& Workspace::analysis(const std::string& path) {
    std::unique_ptr<Analysis>& kept = analyses_[path];
    if (kept == nullptr)
        kept = std::make_unique<Analysis>(analysed(disk_, path, nullptr, memory_of(path)));
    return *kept;
}

Analysis Workspace::analysis_with(const std::string& path, const std::string& text) {
    return analysed(disk_, path, &text, memory_of(path));
}

std::vector<Diagnostic> Workspace::findings_with(const std::string& path,
                                                 const std::map<std::string, std::string>& texts) {
    EditorDisk trial(disk_);
    for (const auto& [file, text] : texts)
        trial.open.insert_or_assign(file, OpenFile{"", text, std::nullopt});
    return drive::compile(trial, path).findings;
}

std::vector<std::string> Workspace::changed() {
    std::vector<std::string> paths;
    for (const std::string& path : changed_) {
        if (disk_.open.contains(path))
            paths.push_back(path);
    }
    changed_.clear();
    return paths;
}

std::string Workspace::uri(const std::string& path) const {
    const OpenFile* file = find(beside("", path));
    return file != nullptr ? file->uri : uri_of(path);
}

// A file that could not be read may be there now.
void Workspace::forget_users_of(const std::string& path) {
    changed_.insert(path);
    std::erase_if(analyses_, [&](const auto& entry) {
        const bool holds = entry.second != nullptr && !entry.second->files.contains(path) &&
                           !entry.second->done.unreadable;
        if (!holds)
            changed_.insert(entry.first);
        return !holds;
    });
}

const LineTable& Tables::of(FileId file) {
    const auto known = tables_.find(file);
    if (known != tables_.end())
        return known->second;
    return tables_.emplace(file, workspace_.lines(sources_.file(file).text)).first->second;
}

Location Tables::location(Span span) {
    return {workspace_.uri(sources_.file(span.file).path), of(span.file).range(span)};
}

} // namespace matchmark::serve
