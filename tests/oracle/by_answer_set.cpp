// Lets bench.lp judge guides: writes the facts to a file, and reads the answer of clingo, which is
// gringo and clasp in one.
#include "oracle/verdict.hpp"

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fmt/core.h>
#include <fstream>
#include <memory>
#include <regex>
#include <sstream>

namespace matchmark::oracle {

namespace {

// A folder of its own that is gone when the work is done; an empty path when there is none.
class Folder {
public:
    Folder() {
        std::error_code failed;
        std::string name = std::filesystem::temp_directory_path(failed) / "matchmark-oracle-XXXXXX";
        if (!failed && ::mkdtemp(name.data()) != nullptr) {
            path_ = name;
        }
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() {
        std::error_code ignored;
        if (!path_.empty()) {
            std::filesystem::remove_all(path_, ignored);
        }
    }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

struct ClosePipe {
    void operator()(std::FILE* pipe) const { ::pclose(pipe); }
};

std::optional<std::string> output_of(const std::string& command) {
    const std::unique_ptr<std::FILE, ClosePipe> pipe(::popen(command.c_str(), "r"));
    if (!pipe) {
        return std::nullopt;
    }
    std::string output;
    std::array<char, 65536> buffer{};
    while (const std::size_t count = std::fread(buffer.data(), 1, buffer.size(), pipe.get())) {
        output.append(buffer.data(), count);
    }
    return output;
}

std::string in_quotes(const std::string& path) {
    std::string quoted = "'";
    for (const char c : path) {
        quoted += c == '\'' ? std::string("'\\''") : std::string(1, c);
    }
    return quoted + "'";
}

// "stopped(4,12,5)" or "not_back(4,"lid")"; false when it is neither.
bool read_atom(const std::string& atom, std::vector<Verdict>& verdicts) {
    static const std::regex stopped(R"re(stopped\((\d+),(\d+),(\d+)\))re");
    static const std::regex not_back(R"re(not_back\((\d+),"(.*)"\))re");
    std::smatch found;
    if (std::regex_match(atom, found, stopped)) {
        Verdict& verdict = verdicts.at(std::stoul(found[1]));
        verdict.refused = std::stoul(found[2]);
        verdict.condition = condition_names.at(std::stoul(found[3]) - 1);
        return true;
    }
    if (!std::regex_match(atom, found, not_back)) {
        return false;
    }
    verdicts.at(std::stoul(found[1])).not_back.insert(found[2]);
    return true;
}

} // namespace

std::optional<std::vector<Verdict>> by_answer_set(const std::string& facts, std::size_t scenarios) {
    const Folder folder;
    if (folder.path().empty()) {
        return std::nullopt;
    }
    const std::string file = folder.path() / "facts.lp";
    std::ofstream(file, std::ios::binary) << facts;
    const std::string rules = MATCHMARK_SOURCE_DIR "/tests/oracle/bench.lp";
    const auto output = output_of(
        fmt::format("clingo -Wno-atom-undefined -V0 {} {}", in_quotes(rules), in_quotes(file)));
    if (!output) {
        return std::nullopt;
    }
    // One line of atoms, then the line that says that they are an answer.
    const std::size_t end = output->find('\n');
    if (end == std::string::npos || output->substr(end + 1) != "SATISFIABLE\n") {
        return std::nullopt;
    }
    std::vector<Verdict> verdicts(scenarios);
    std::istringstream atoms(output->substr(0, end));
    for (std::string atom; atoms >> atom;) {
        if (!read_atom(atom, verdicts)) {
            return std::nullopt;
        }
    }
    return verdicts;
}

} // namespace matchmark::oracle
