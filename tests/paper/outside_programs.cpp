// What programs that are not ours say of a PDF: poppler's and qpdf's.
#include "paper/outside_programs.hpp"

#include <array>
#include <cstdio>
#include <cstdlib>
#include <doctest/doctest.h>
#include <filesystem>
#include <sys/wait.h>
#include <unistd.h>

namespace matchmark::test {

PdfFile::PdfFile(const std::string& bytes) {
    std::string name = std::filesystem::temp_directory_path() / "matchmark-paper-XXXXXX";
    const int file = mkstemp(name.data());
    REQUIRE(file >= 0);
    std::size_t written = 0;
    while (written < bytes.size()) {
        const ssize_t more = write(file, bytes.data() + written, bytes.size() - written);
        REQUIRE(more > 0);
        written += static_cast<std::size_t>(more);
    }
    close(file);
    path_ = name;
}

PdfFile::~PdfFile() { unlink(path_.c_str()); }

Said ask(const std::string& command, const PdfFile& file) {
    std::string line = command;
    line.replace(line.find("FILE"), 4, file.path());
    FILE* pipe = popen((line + " 2>&1").c_str(), "r");
    REQUIRE(pipe != nullptr);
    Said said;
    std::array<char, 4096> some{};
    for (std::size_t got = 0; (got = fread(some.data(), 1, some.size(), pipe)) > 0;)
        said.text.append(some.data(), got);
    said.status = WEXITSTATUS(pclose(pipe));
    return said;
}

std::string pressed(const std::string& text) {
    std::string result;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const std::string three = text.substr(i, 3);
        const bool space = text[i] == ' ' || text[i] == '\n' || text[i] == '\t' ||
                           text[i] == '\f' || text[i] == '\r';
        const bool no_break = text.compare(i, 2, "\u00a0") == 0;
        const bool wide = three >= "\u2000" && three <= "\u200a";
        if (wide || three == "\u202f") {
            i += 2;
        } else if (no_break) {
            i += 1;
        } else if (!space) {
            result += text[i];
        }
    }
    return result;
}

} // namespace matchmark::test
