// Files of cases: many small texts in one file, each below a line `--- name`, each with what is
// expected of it written as a comment above the line that it is about:
//
//     # error 3-8 [still-held] would tear what holds it
//       remove lid
//
// that is severity, first and last column of the mark on that line, rule, and the label of the mark
// (or the message of a finding that has none). A case without such comments is clean. `[rule in
// eu]` names the variants.
#pragma once

#include "diagnostics/diagnostic.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace matchmark::test {

struct Case {
    std::string name;
    std::string block; // as it stands in the file, from its name line to the next
    std::string text;  // what is compiled: the block without its name line and its expectations
};

struct CaseFile {
    std::string path; // from the project's root
    std::string head; // what stands above the first case
    std::vector<Case> cases;
};

CaseFile read_cases(std::string path, std::string_view text);

// The block of a case with these findings written into it.
std::string block_with(const Case& one, const SourceMap& sources, FileId file,
                       const std::vector<Diagnostic>& findings);

// The rules named in the expectations of a text, in order, repeats kept.
std::vector<std::string> rules_expected(std::string_view text);

} // namespace matchmark::test
