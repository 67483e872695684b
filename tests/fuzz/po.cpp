// Any bytes may be a catalogue of translations: they are read or refused with words, and what is
// written from them is read again.
#include "fuzz/fuzz.hpp"

#include "language/catalogue.hpp"
#include "language/judging.hpp"

#include <string>

using namespace matchmark;
using namespace matchmark::language;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    SourceMap sources;
    std::vector<Diagnostic> findings;
    const std::string text(fuzz::text_of(data, size));
    const FileId file = sources.add("fuzz.de.po", text);
    const Catalogue catalogue = read_po(sources, file, findings);
    for (const Diagnostic& finding : findings) {
        fuzz::demand(!finding.message.empty() && finding.primary.end <= text.size(),
                     "a finding has words and lies in its file");
    }
    fuzz::demand(!any_error(findings) || catalogue.messages.empty(),
                 "a catalogue with an error is empty");
    if (catalogue.messages.empty())
        return 0;
    for (const Message& message : catalogue.messages) {
        fuzz::demand(message.offset <= text.size(), "a message stands in its file");
        for (const std::string& form : message.forms)
            lost_in(message.one, form, {"lid-screws"});
    }
    const FileId again = sources.add("again.de.po", write_po(merged(catalogue, catalogue)));
    std::vector<Diagnostic> second;
    read_po(sources, again, second);
    fuzz::demand(!any_error(second), "what is written is read again");
    return 0;
}
