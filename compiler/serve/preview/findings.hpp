// Findings as parts of a page: beside the step in which each is, or on top.
#pragma once

#include "drive/compilation.hpp"
#include "model/guide_source.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::serve {

// Where a step of the source stands on the page.
struct StepPlace {
    model::Section section = model::Section::take_apart;
    std::string name;
    std::string anchor;
};

// The step in whose lines a place of the source lies, as far as its lines can be read.
struct SourceStep {
    std::string guide;
    model::Section section = model::Section::take_apart;
    std::string name;
};
std::optional<SourceStep> step_at(const SourceMap& sources, const syntax::Files& files, Span span);

struct FindingOnPage {
    Severity severity = Severity::error;
    std::string brief; // its message, as HTML
    std::string html;  // all of it
    std::optional<SourceStep> step;
};

std::vector<FindingOnPage> shown_findings(const drive::Compilation& done);

// The body of a page with each finding under the heading of its step. What is left stands in the
// list on top, with a way to each of the others. `is_old`: the page is as it was before its errors.
std::string with_findings(std::string body, const std::vector<FindingOnPage>& findings,
                          const std::vector<StepPlace>& steps, const std::string& guide,
                          bool is_old);

} // namespace matchmark::serve
