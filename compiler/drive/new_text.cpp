// Lays out text that the program has written itself.
#include "drive/new_text.hpp"

#include "parse/parse.hpp"
#include "source/disk.hpp"
#include "tidy/tidy.hpp"

#include <filesystem>
#include <system_error>

namespace matchmark::drive {

std::string tidied_text(const std::string& text) {
    SourceMap sources;
    sources.add("new", text);
    std::vector<Diagnostic> findings;
    const syntax::File file = syntax::parse(sources, 0, findings);
    return any_error(findings) ? text : matchmark::tidy(sources, file);
}

std::string seen_from(const std::string& output, const std::string& path) {
    namespace fs = std::filesystem;
    const std::string folder = beside(output.find('/') == std::string::npos ? "" : output, ".");
    const std::string folded = beside("", path);
    const bool alike = folder.starts_with('/') == folded.starts_with('/');
    fs::path seen = alike ? fs::path(folded).lexically_relative(folder) : fs::path();
    if (seen.empty()) { // one of the two climbs out of folders whose names only the disk knows
        std::error_code unknown;
        const fs::path from = fs::absolute(folder, unknown).lexically_normal();
        seen = fs::absolute(folded, unknown).lexically_normal().lexically_relative(from);
    }
    return seen.string();
}

} // namespace matchmark::drive
