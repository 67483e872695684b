// The planner and the drafter against judges that share no line with them; prints a table of each.
#include "plans/plans.hpp"

#include "source/disk.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <fmt/core.h>
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

// `plans drafts least` does these sections alone; without a word all are done but `speed`.
int main(int count, char** words) {
    using namespace matchmark::plans;
    const std::vector<std::string> only(words + 1, words + count);
    if (samples().empty()) {
        fmt::print("no device was found in samples/\n");
        return EXIT_FAILURE;
    }
    struct Section {
        const char* name;
        bool (*run)();
    };
    constexpr std::array sections{
        Section{"least", least_ways},       Section{"samples", least_ways_of_samples},
        Section{"second", second_opinions}, Section{"changes", fewest_changes},
        Section{"orders", counted_orders},  Section{"what-if", what_if_holds},
        Section{"jobs", jobs_in_turn_hold}, Section{"drafts", drafts},
    };
    bool well = true;
    bool known = only.empty();
    if (only == std::vector<std::string>{"speed"})
        return speed() ? EXIT_SUCCESS : EXIT_FAILURE;
    for (const Section& section : sections) {
        const bool named = std::find(only.begin(), only.end(), section.name) != only.end();
        known = known || named;
        if (only.empty() || named)
            well = section.run() && well;
    }
    return well && known ? EXIT_SUCCESS : EXIT_FAILURE;
}
