// Runs clingo, which is gringo and clasp in one, on a program of this folder, and z3 on a formula.
#include "plans/solver.hpp"

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fmt/core.h>
#include <fstream>
#include <memory>
#include <sstream>

namespace matchmark::plans {

namespace {

// A file of its own, gone when the work is done.
class Scratch {
public:
    Scratch() {
        std::error_code failed;
        std::string name = std::filesystem::temp_directory_path(failed) / "matchmark-plans-XXXXXX";
        if (!failed && ::mkdtemp(name.data()) != nullptr)
            folder_ = name;
    }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    ~Scratch() {
        std::error_code ignored;
        if (!folder_.empty())
            std::filesystem::remove_all(folder_, ignored);
    }
    [[nodiscard]] std::string file() const { return folder_ / "input"; }

private:
    std::filesystem::path folder_;
};

struct ClosePipe {
    void operator()(std::FILE* pipe) const { ::pclose(pipe); }
};

} // namespace

std::string output_of(const std::string& command, const std::string& input) {
    static const Scratch scratch;
    std::ofstream(scratch.file(), std::ios::binary) << input;
    const std::string with_file = fmt::format(fmt::runtime(command), scratch.file());
    const std::unique_ptr<std::FILE, ClosePipe> pipe(::popen(with_file.c_str(), "r"));
    std::string output;
    if (!pipe)
        return output;
    std::array<char, 65536> buffer{};
    while (const std::size_t count = std::fread(buffer.data(), 1, buffer.size(), pipe.get()))
        output.append(buffer.data(), count);
    return output;
}

std::optional<Answer> solve(const std::string& program, const std::string& facts) {
    // What an order costs is soonest proved from below.
    const char* const strategy = program == "orders.lp" ? "usc" : "bb";
    const std::string command =
        fmt::format("clingo -Wnone -V0 --opt-mode=opt --opt-strategy={} --time-limit=60 "
                    "'{}/tests/plans/{}' '{{}}'",
                    strategy, MATCHMARK_SOURCE_DIR, program);
    std::istringstream lines(output_of(command, facts));
    Answer answer;
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with("Optimization: "))
            answer.cost = std::stoll(line.substr(14));
        if (line == "OPTIMUM FOUND" || line == "SATISFIABLE") {
            answer.possible = true;
            return answer;
        }
        if (line == "UNSATISFIABLE")
            return answer;
    }
    return std::nullopt;
}

} // namespace matchmark::plans
