// An empty file sees the parts library and nothing else.
#include "drive/library.hpp"

#include "drive/inputs.hpp"
#include "drive/report.hpp"

#include <utility>

namespace matchmark::drive {

std::optional<Compilation> compile_library(const std::string& command, const std::string& in,
                                           Terminal& terminal) {
    Input input{"library", "", ""};
    if (!in.empty()) {
        auto files = inputs(command, {in}, terminal);
        if (!files)
            return std::nullopt;
        if (files->size() != 1) {
            fail(terminal, command, "--in asks for one file");
            return std::nullopt;
        }
        input = std::move(files->front());
    }
    Compilation done = compile(terminal.disk, input.path, input.given());
    if (done.unreadable || (any_error(done.findings) && done.model.kinds.empty())) {
        fail_with_findings(done, terminal);
        return std::nullopt;
    }
    return done;
}

} // namespace matchmark::drive
