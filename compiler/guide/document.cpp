// Small questions about the guide that a reader holds.
#include "guide/document.hpp"

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

std::string plain(const Words& words) {
    std::string text;
    for (const Run& run : words) {
        if (run.kind != RunKind::item_number) {
            text += run.text;
        }
    }
    return text;
}

} // namespace matchmark::guide
