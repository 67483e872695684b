// Guides that are grammatical and make no sense: they are checked to the end, what `mend` writes
// still reads, and a guide that is allowed can be written out and handed to a reader.
#include "fuzz/device_text.hpp"

#include "diagnostics/mend.hpp"
#include "drive/gather.hpp"
#include "plan/reader/guide.hpp"
#include "plan/written_out.hpp"

#include <algorithm>

using namespace matchmark;

namespace {

bool has_slip(const std::vector<Diagnostic>& findings) {
    return std::any_of(findings.begin(), findings.end(),
                       [](const Diagnostic& finding) { return finding.rule == "syntax"; });
}

drive::Compilation compiled(const std::string& text) {
    MapDisk disk;
    return drive::compile(disk, "thing.mmk", &text);
}

void demand_told(const drive::Compilation& done) {
    for (const Diagnostic& finding : done.findings) {
        fuzz::demand(!finding.message.empty() && !finding.rule.empty(), "a finding has words");
        fuzz::demand(finding.primary.known() &&
                         finding.primary.end <= done.sources.file(finding.primary.file).text.size(),
                     "a finding lies in its file");
    }
}

void demand_mends_read(const drive::Compilation& done) {
    std::string before;
    for (const bool all : {false, true}) {
        const Mended mended = mend(done.sources, done.findings, all);
        const auto text = mended.texts.find(done.root);
        if (text == mended.texts.end() || text->second == before)
            continue;
        MapDisk disk;
        fuzz::demand(!has_slip(drive::gather(disk, "thing.mmk", &text->second).findings),
                     "a mended guide reads without slips");
        before = text->second;
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string text = fuzz::DeviceText(fuzz::text_of(data, size)).written();
    const drive::Compilation done = compiled(text);
    demand_told(done);
    if (!has_slip(done.findings) && !done.findings.empty())
        demand_mends_read(done);
    for (const model::Procedure& procedure : done.procedures) {
        plan::reader_guide(done.sources, done.model, procedure);
        plan::written_out(done.sources, done.model, procedure, {"thing.mmk"});
    }
    return 0;
}
