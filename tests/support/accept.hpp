// What a test keeps in a file and compares with what the compiler says today. Run with `--accept`,
// the program writes today's words into the file instead.
#pragma once

#include <string>

namespace matchmark::test {

// Takes `--accept` out of the arguments, before doctest reads the rest. Call once, from main.
void read_accept(int& argument_count, char** arguments);

// Was `--accept` given?
bool accepting();

// Fails the test, with the difference and the command that accepts it, when the file (a path from
// the project's root) does not hold `now`; accepting, writes it and says so.
void expect_recorded(const std::string& path, const std::string& recorded, const std::string& now);

} // namespace matchmark::test
