// Finds what the command line means by a path.
#include "drive/inputs.hpp"

#include "diagnostics/nearest.hpp"
#include "drive/gather.hpp"

#include <fmt/core.h>

#include <istream>
#include <iterator>
#include <ostream>
#include <set>

namespace matchmark::drive {

namespace {

std::string below(const std::string& folder, const std::string& name) {
    if (folder == ".") {
        return name;
    }
    return folder.ends_with('/') ? folder + name : folder + "/" + name;
}

class InputCollector {
public:
    InputCollector(const std::string& command, Terminal& terminal)
        : command_(command), terminal_(terminal) {}

    bool add(const std::string& path) {
        if (path == "-") {
            return add_standard_input();
        }
        if (path.empty()) {
            return refuse("an empty path names no file");
        }
        if (terminal_.disk.is_folder(path)) {
            return add_folder(path);
        }
        if (!terminal_.disk.exists(path)) {
            const std::string near = nearest_file(terminal_.disk, path);
            return refuse(fmt::format("there is no file `{}`{}", path,
                                      near.empty() ? "" : "; did you mean `" + near + "`?"));
        }
        add_file({path, std::nullopt, ""});
        return true;
    }

    std::vector<Input> take() { return std::move(found_); }

private:
    bool refuse(const std::string& what) {
        fail(terminal_, command_, what);
        return false;
    }

    bool add_standard_input() {
        std::string text{std::istreambuf_iterator<char>(terminal_.in), {}};
        if (terminal_.in.bad()) {
            return refuse("standard input cannot be read");
        }
        add_file({"-", std::move(text), ""});
        return true;
    }

    bool add_folder(const std::string& path) {
        const auto listed = terminal_.disk.list(path, ".mmk");
        if (const auto* problem = std::get_if<DiskProblem>(&listed)) {
            return refuse(fmt::format("folder `{}` cannot be read: {}", path, problem->reason));
        }
        const auto& names = std::get<std::vector<std::string>>(listed);
        if (names.empty()) {
            return refuse(
                fmt::format("folder `{}` holds no guides: no file in it ends in .mmk", path));
        }
        for (const std::string& name : names) {
            if (!terminal_.disk.lets_in(below(path, name), path)) {
                return refuse(fmt::format("`{}` is a link that leads out of the project's folder; "
                                          "widen that with `--root FOLDER`",
                                          below(path, name)));
            }
            add_file({below(path, name), std::nullopt, name.substr(0, name.rfind('/') + 1)});
        }
        return true;
    }

    void add_file(Input input) {
        if (seen_.insert(beside("", input.path)).second) {
            found_.push_back(std::move(input));
        }
    }

    const std::string& command_;
    Terminal& terminal_;
    std::vector<Input> found_;
    std::set<std::string> seen_;
};

} // namespace

std::optional<std::vector<Input>>
inputs(const std::string& command, const std::vector<std::string>& paths, Terminal& terminal) {
    if (paths.empty()) {
        fail(terminal, command, "name a file or a folder, or `-` for standard input");
        return std::nullopt;
    }
    InputCollector collector(command, terminal);
    for (const std::string& path : paths) {
        if (!collector.add(path)) {
            return std::nullopt;
        }
    }
    return collector.take();
}

int fail(Terminal& terminal, const std::string& command, const std::string& what) {
    terminal.err << "matchmark " << command << ": " << what << '\n';
    return exit_failed;
}

std::string did_you_mean(const std::string& word, const std::vector<std::string>& candidates) {
    const std::string near = nearest(word, candidates);
    return near.empty() ? "" : "; did you mean `" + near + "`?";
}

} // namespace matchmark::drive
