// Applies what `check` offers to a drafted guide until it offers nothing more.
#include "drive/mended_draft.hpp"

#include "diagnostics/mend.hpp"
#include "drive/new_text.hpp"
#include "drive/overlay.hpp"

#include <map>
#include <utility>

namespace matchmark::drive {

namespace {

constexpr int most_rounds = 8; // of mending what the draft does not foresee

// Two mends may each have written a step of the same name.
std::string with_names_apart(std::string text) {
    std::map<std::string, int> seen;
    for (std::size_t at = text.find("\nstep "); at != std::string::npos;
         at = text.find("\nstep ", at + 1)) {
        const std::size_t begin = at + 6;
        const std::size_t end = text.find_first_of(" \n", begin);
        const std::string name = text.substr(begin, end - begin);
        const int count = ++seen[name];
        if (count > 1 && end != std::string::npos) {
            text.insert(end, "-" + std::to_string(count));
        }
    }
    return text;
}

} // namespace

MendedDraft mended_draft(Disk& disk, const std::string& path, std::string text) {
    for (int round = 0;; ++round) {
        OverlayDisk overlay(disk);
        static_cast<void>(overlay.write(path, text));
        Compilation done = compile(overlay, path);
        const Mended mended =
            round < most_rounds ? mend(done.sources, done.findings, true) : Mended{};
        const auto edited = mended.texts.find(done.root);
        if (edited == mended.texts.end()) {
            return {std::move(text), std::move(done)};
        }
        text = tidied_text(with_names_apart(edited->second));
    }
}

} // namespace matchmark::drive
