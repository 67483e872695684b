// Any bytes may be a table of parts or an outline: the device or guide made of them reads without
// slips.
#include "fuzz/fuzz.hpp"

#include "drive/compilation.hpp"
#include "drive/importing/device.hpp"
#include "drive/importing/outline.hpp"
#include "drive/importing/parts.hpp"
#include "drive/importing/settle.hpp"

#include <string>

using namespace matchmark;
using namespace matchmark::drive;

namespace {

const model::Model& library() {
    static const model::Model read = [] {
        MapDisk disk;
        const std::string nothing;
        return compile(disk, "none.mmk", &nothing).model;
    }();
    return read;
}

const model::Model& cabinet() {
    static const model::Model read = [] {
        MapDisk disk;
        const std::string text =
            "device cabinet \"Cabinet\"\npart frame \"frame\"\npart lid \"lid\"\n"
            "fastener lid-screws \"lid screw\" 4 x screw M4 x 12, hexalobular 20, pan\n"
            "  holds lid to frame\n";
        return compile(disk, "cabinet.mmk", &text).model;
    }();
    return read;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text = fuzz::text_of(data, size);
    const Table table = read_table(text);
    fuzz::demand(table.rows.size() <= most_rows + 1, "a table has at most so many rows");
    for (const TableRow& row : table.rows)
        fuzz::demand(row.cells.size() <= most_cells + 1, "a row has at most so many cells");
    if (table.problem.empty()) {
        const PartsTable parts = read_parts(table);
        if (parts.problem.empty()) {
            static const KindWords known(library());
            fuzz::demand(reads_well(device_from(parts, known, "fuzz", "fuzz.csv")),
                         "a device from a table reads without slips");
        }
    }
    if (size > 4096 || first_unreadable_byte(text) != std::string_view::npos)
        return 0;
    const std::string guide =
        guide_from({std::string(text), "fuzz", "fuzz.md", "cabinet.mmk"}, cabinet());
    fuzz::demand(reads_well(guide), "a guide from an outline reads without slips");
    return 0;
}
