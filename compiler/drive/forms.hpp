// The forms in which a guide is published. A new one is a line in the table of forms.cpp.
#pragma once

#include "draw/scene.hpp"
#include "drive/compilation.hpp"
#include "guide/document.hpp"

#include <span>
#include <string>
#include <vector>

namespace matchmark::drive {

struct PublishOptions;

// One guide, ready to be put into any form.
struct Job {
    const Compilation& done;
    const model::Procedure& procedure;
    const guide::Document& document;
    const guide::Document& marked; // the same, and says what stands in English for want of words
    const guide::Assets& assets;
    const std::vector<draw::Scene>& scenes; // of the document's figures, in their order
    const PublishOptions& options;
    std::string created; // "2026-01-31T12:00:00Z" or the guide's date: for files that state one
};

struct Output {
    std::string ending; // what follows the guide's name in the name of the file: ".html"
    std::string bytes;
};

struct Form {
    const char* name;
    const char* about;  // "one page for screen and print"
    bool shows_figures; // the compiler's own drawings, in the document
    std::vector<Output> (*make)(const Job&);
};

std::span<const Form> forms();

// "html, json and pdf"
std::string form_names();

} // namespace matchmark::drive
