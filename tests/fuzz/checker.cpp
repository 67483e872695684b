// Guides that are grammatical and make no sense: they are checked to the end, what `mend` writes
// still reads, and a guide that is allowed can be written out and handed to a reader.
#include "fuzz/device_text.hpp"

#include "diagnostics/mend.hpp"
#include "plan/reader/guide.hpp"
#include "plan/written_out.hpp"

using namespace matchmark;

namespace {

bool has_slip(const drive::Compilation& done) {
    for (const Diagnostic& finding : done.findings) {
        if (finding.rule == "syntax")
            return true;
    }
    return false;
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
    for (const bool all : {false, true}) {
        const Mended mended = mend(done.sources, done.findings, all);
        const auto text = mended.texts.find(done.root);
        if (text != mended.texts.end())
            fuzz::demand(!has_slip(compiled(text->second)), "a mended guide reads without slips");
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string text = fuzz::DeviceText(fuzz::text_of(data, size)).written();
    const drive::Compilation done = compiled(text);
    demand_told(done);
    if (!has_slip(done) && !done.findings.empty())
        demand_mends_read(done);
    for (const model::Procedure& procedure : done.procedures) {
        plan::reader_guide(done.sources, done.model, procedure);
        plan::written_out(done.sources, done.model, procedure, {"thing.mmk"});
    }
    return 0;
}
