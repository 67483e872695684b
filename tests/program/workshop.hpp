// A folder of the test's own in which the real program is run, as a shell would run it.
#pragma once

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

namespace matchmark::test {

struct Ran {
    int code = -1; // exit code; -1: it was ended by a signal
    std::string out;
    std::string err;

    [[nodiscard]] bool told(const std::string& words) const {
        return out.find(words) != std::string::npos;
    }
    [[nodiscard]] bool complained(const std::string& words) const {
        return err.find(words) != std::string::npos;
    }
};

class Workshop {
public:
    Workshop() {
        std::string pattern =
            (std::filesystem::temp_directory_path() / "matchmark-XXXXXX").string();
        REQUIRE(::mkdtemp(pattern.data()) != nullptr);
        path_ = pattern;
        std::filesystem::create_directory(path_ + "/w");
    }
    Workshop(const Workshop&) = delete;
    Workshop& operator=(const Workshop&) = delete;
    ~Workshop() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }

    [[nodiscard]] std::string at(const std::string& name) const { return path_ + "/w/" + name; }

    void put(const std::string& name, const std::string& text) const {
        std::filesystem::create_directories(std::filesystem::path(at(name)).parent_path());
        std::ofstream(at(name), std::ios::binary) << text;
    }

    [[nodiscard]] std::string text(const std::string& name) const { return content(at(name)); }

    [[nodiscard]] bool has(const std::string& name) const {
        return std::filesystem::exists(at(name));
    }

    // Everything under the folder, sorted; to see that nothing was left behind.
    [[nodiscard]] std::vector<std::string> names() const {
        std::vector<std::string> found;
        for (const auto& entry : std::filesystem::recursive_directory_iterator(path_ + "/w")) {
            found.push_back(entry.path().lexically_relative(path_ + "/w").string());
        }
        std::sort(found.begin(), found.end());
        return found;
    }

    // Runs the program with these arguments and this standard input; the folder is its current one.
    [[nodiscard]] Ran run(const std::vector<std::string>& arguments,
                          const std::string& input = "") const {
        const char* chosen = std::getenv("MATCHMARK_BINARY");
        const std::string program = chosen != nullptr ? chosen : MATCHMARK_PROGRAM;
        std::ofstream(path_ + "/in", std::ios::binary) << input;
        Ran ran;
        const pid_t process = start(program, arguments);
        int status = 0;
        REQUIRE(::waitpid(process, &status, 0) == process);
        ran.code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
        ran.out = content(path_ + "/out");
        ran.err = content(path_ + "/err");
        return ran;
    }

private:
    static std::string content(const std::string& path) {
        std::ifstream file(path, std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }

    [[nodiscard]] pid_t start(const std::string& program,
                              const std::vector<std::string>& arguments) const {
        std::vector<std::string> words = {program};
        words.insert(words.end(), arguments.begin(), arguments.end());
        std::vector<char*> pointers;
        for (std::string& word : words) {
            pointers.push_back(word.data());
        }
        pointers.push_back(nullptr);
        posix_spawn_file_actions_t actions{};
        ::posix_spawn_file_actions_init(&actions);
        const int written = O_WRONLY | O_CREAT | O_TRUNC;
        ::posix_spawn_file_actions_addopen(&actions, 0, (path_ + "/in").c_str(), O_RDONLY, 0);
        ::posix_spawn_file_actions_addopen(&actions, 1, (path_ + "/out").c_str(), written, 0600);
        ::posix_spawn_file_actions_addopen(&actions, 2, (path_ + "/err").c_str(), written, 0600);
        ::posix_spawn_file_actions_addchdir_np(&actions, (path_ + "/w").c_str());
        pid_t process = 0;
        const int problem =
            ::posix_spawn(&process, program.c_str(), &actions, nullptr, pointers.data(), environ);
        ::posix_spawn_file_actions_destroy(&actions);
        REQUIRE(problem == 0);
        return process;
    }

    std::string path_;
};

} // namespace matchmark::test
