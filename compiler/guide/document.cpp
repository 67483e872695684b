// Small questions about the guide that a reader holds.
#include "guide/document.hpp"

#include <algorithm>
#include <set>

namespace matchmark::guide {

std::vector<std::string> picture_paths(const Document& document) {
    std::set<std::string> paths;
    const auto gather = [&](const std::vector<Picture>& pictures) {
        for (const Picture& picture : pictures) {
            paths.insert(picture.path);
        }
    };
    gather(document.pictures);
    for (const Section& section : document.sections) {
        for (const Step& step : section.steps) {
            gather(step.pictures);
        }
    }
    return {paths.begin(), paths.end()};
}

std::vector<Passage> passages_after(const Step& step, std::size_t instructions) {
    std::vector<Passage> found;
    for (const Passage& passage : step.passages) {
        if (std::min(passage.after, step.instructions.size()) == instructions) {
            found.push_back(passage);
        }
    }
    return found;
}

const char* signal_word(Signal signal) {
    switch (signal) {
    case Signal::notice:
        return "NOTICE";
    case Signal::caution:
        return "CAUTION";
    case Signal::warning:
        return "WARNING";
    case Signal::danger:
        return "DANGER";
    }
    return "NOTICE";
}

// The words of ANSI Z535.6 and ISO 3864-2; in other languages as their catalogues say.
std::string signal_word(Signal signal, const language::Language& spoken) {
    using language::text;
    switch (signal) {
    case Signal::notice:
        return text(spoken, "NOTICE");
    case Signal::caution:
        return text(spoken, "CAUTION");
    case Signal::warning:
        return text(spoken, "WARNING");
    case Signal::danger:
        return text(spoken, "DANGER");
    }
    return text(spoken, "NOTICE");
}

} // namespace matchmark::guide
