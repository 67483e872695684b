// Any bytes are a file: every line is accounted for, every span lies in the file, and the canonical
// layout of a layout is itself.
#include "fuzz/fuzz.hpp"

#include "parse/parse.hpp"
#include "tidy/tidy.hpp"

#include <algorithm>
#include <string>

using namespace matchmark;

namespace {

struct Read {
    SourceMap sources;
    syntax::File file;
    std::vector<Diagnostic> findings;
};

Read read(std::string text) {
    Read result;
    const FileId id = result.sources.add("fuzz.mmk", std::move(text));
    result.file = syntax::parse(result.sources, id, result.findings);
    return result;
}

void demand_inside(Span span, std::size_t size) {
    fuzz::demand(!span.known() || (span.file == 0 && span.begin <= span.end && span.end <= size),
                 "a span lies in its file");
}

void demand_whole(const Read& read) {
    const SourceFile& source = read.sources.file(0);
    const std::size_t size = source.text.size();
    for (const syntax::Line& line : read.file.lines) {
        for (const Span span : {line.whole, line.head, line.prose, line.comment})
            demand_inside(span, size);
        fuzz::demand(line.first_term + line.term_count <= read.file.terms.size(),
                     "a line's terms are the file's");
    }
    for (const syntax::Term& term : read.file.terms)
        demand_inside(read.file.span_of(term), size);
    for (const Diagnostic& finding : read.findings) {
        demand_inside(finding.primary, size);
        fuzz::demand(!finding.message.empty(), "a finding has words");
        for (const Mark& mark : finding.related)
            demand_inside(mark.span, size);
        for (const Edit& edit : finding.edits)
            demand_inside(edit.span, size);
    }
    const bool broken =
        std::any_of(read.file.lines.begin(), read.file.lines.end(),
                    [](const auto& line) { return line.shape == syntax::LineShape::broken; });
    fuzz::demand(!broken || !read.findings.empty(), "a broken line is told");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const Read first = read(std::string(fuzz::text_of(data, size)));
    demand_whole(first);
    const std::string tidied = tidy(first.sources, first.file);
    if (!first.findings.empty())
        return 0;
    const Read second = read(tidied);
    fuzz::demand(second.findings.empty(), "what is tidied still reads");
    fuzz::demand(tidy(second.sources, second.file) == tidied, "tidying twice changes nothing more");
    return 0;
}
