// Dependency files: what a result was made from, for Make and for Ninja.
#include "drive/depfile.hpp"

#include "source/disk.hpp"

#include <algorithm>

namespace matchmark::drive {

namespace {

void add_pictures(std::set<std::string>& files, const Compilation& done,
                  const std::vector<model::Photo>& photos) {
    for (const model::Photo& photo : photos) {
        if (photo.span.known()) {
            files.insert(beside(done.sources.file(photo.span.file).path, photo.path));
        }
    }
}

// As the compiler's own -MD option of GCC writes names: a backslash before a space and a number
// sign, those before it doubled; a dollar twice. A colon with a backslash is read by both.
std::string escaped(const std::string& name) {
    std::string text;
    std::size_t backslashes = 0;
    for (const char c : name) {
        if (c == ' ' || c == '\t') {
            text += std::string(backslashes, '\\') + "\\";
        } else if (c == '#' || c == ':') {
            text += '\\';
        } else if (c == '$') {
            text += '$';
        }
        backslashes = c == '\\' ? backslashes + 1 : 0;
        text += c;
    }
    return text;
}

bool writable(const std::string& name) { return name.find_first_of("\r\n") == std::string::npos; }

} // namespace

std::set<std::string> files_read(const Compilation& done) {
    std::set<std::string> files;
    for (FileId id = 0; id < done.sources.size(); ++id) {
        const SourceFile& file = done.sources.file(id);
        if (!file.built_in && file.path != "-") {
            files.insert(file.path);
        }
    }
    for (const model::Procedure& procedure : done.procedures) {
        add_pictures(files, done, done.model.guide(procedure.guide).photos);
        for (const model::Step& step : procedure.steps) {
            add_pictures(files, done, step.photos);
        }
    }
    return files;
}

std::string depfile_text(const std::vector<std::string>& targets,
                         const std::set<std::string>& files) {
    if (!std::all_of(targets.begin(), targets.end(), writable) ||
        !std::all_of(files.begin(), files.end(), writable)) {
        return {};
    }
    std::string text;
    for (const std::string& target : targets) {
        text += (text.empty() ? "" : " ") + escaped(target);
    }
    text += ":";
    for (const std::string& file : files) {
        text += " \\\n  " + escaped(file);
    }
    text += "\n";
    for (const std::string& file : files) {
        text += escaped(file) + ":\n";
    }
    return text;
}

} // namespace matchmark::drive
