// Pages of the project, and what the program says of the examples in them.
#pragma once

#include "drive/commands.hpp"
#include "drive/compilation.hpp"

#include <map>
#include <string>
#include <vector>

namespace matchmark::test {

// By its path from the project's root; fails the test when it is not there.
std::string read_page(const std::string& path);

// The pages of the project outside the rules, by path: README.md, DEVELOPERS.md and those of docs/
// and grammar/.
std::vector<std::string> written_pages();

// The example as a file of its own, example.mmk.
drive::Compilation compile_example(const std::string& text);

// What `matchmark check example.mmk` prints; `beside`: other files, by name, that it may use.
std::string printed(const std::string& text, const std::map<std::string, std::string>& beside = {});

} // namespace matchmark::test
