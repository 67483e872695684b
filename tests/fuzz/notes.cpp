// Any text may be notes at a bench: they are read, and the device that is made of them is text that
// reads without slips.
#include "fuzz/fuzz.hpp"

#include "capture/write.hpp"
#include "drive/capturing.hpp"
#include "drive/importing/device.hpp"

#include <string>

using namespace matchmark;
using namespace matchmark::drive;

namespace {

// The compiler's own text, and not the author's, may be wrong in no case.
void demand_reads(const std::string& text) {
    fuzz::demand(text.empty() || reads_well(text), "what is captured reads without slips");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string text(fuzz::text_of(data, size));
    SourceMap sources;
    const FileId file = sources.add("notes.txt", text);
    for (const capture::NotedLine& line : capture::read_notes(sources, file).lines)
        fuzz::demand(line.span.end <= text.size(), "a noted line lies in its file");
    if (size > 1024 || first_unreadable_byte(text) != std::string::npos)
        return 0;
    MapDisk disk;
    const std::string nothing;
    const Captured all =
        captured(disk, compile(disk, "none.mmk", &nothing), {{"notes.txt", text}}, "out");
    if (all.refused)
        return 0;
    demand_reads(all.device_text);
    for (const CapturedGuide& guide : all.guides)
        demand_reads(guide.text);
    return 0;
}
