// Runs the tests of capture; `--accept` records anew what the sample's notes become.
#define DOCTEST_CONFIG_IMPLEMENT
#include "support/accept.hpp"

#include <doctest/doctest.h>

int main(int argument_count, char** arguments) {
    matchmark::test::read_accept(argument_count, arguments);
    return doctest::Context(argument_count, arguments).run();
}
