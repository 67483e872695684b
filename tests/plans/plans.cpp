// The planner and the drafter against judges that share no line with them; prints a table of each.
#include "plans/plans.hpp"

#include "source/disk.hpp"

#include <cstdlib>
#include <fmt/format.h>
#include <string>

namespace matchmark::plans {

const std::vector<Sample>& samples() {
    static const std::vector<Sample> all = [] {
        std::vector<Sample> found;
        const auto disk = real_disk();
        const auto listed = disk->list(MATCHMARK_SOURCE_DIR "/samples", ".mmk");
        const auto* files = std::get_if<std::vector<std::string>>(&listed);
        for (const std::string& file : files == nullptr ? std::vector<std::string>{} : *files) {
            const std::string path = std::string(MATCHMARK_SOURCE_DIR "/samples/") + file;
            auto done = drive::compile(*disk, path);
            if (done.model.device.span.file == done.root)
                found.push_back({path, std::move(done)});
        }
        return found;
    }();
    return all;
}

} // namespace matchmark::plans

// `plans drafts` does that part alone; without a word all is done.
int main(int count, char** words) {
    using namespace matchmark::plans;
    const std::string only = count > 1 ? words[1] : "";
    if (samples().empty()) {
        fmt::print("no device was found in samples/\n");
        return EXIT_FAILURE;
    }
    struct Section {
        const char* name;
        bool (*run)();
    };
    bool well = true;
    for (const Section& section : {Section{"least", least_ways}, Section{"changes", fewest_changes},
                                   Section{"orders", counted_orders}, Section{"drafts", drafts}}) {
        if (only.empty() || only == section.name)
            well = section.run() && well;
    }
    return well ? EXIT_SUCCESS : EXIT_FAILURE;
}
