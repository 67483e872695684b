// Where the cases start; `--accept` rewrites what they expect.
#define DOCTEST_CONFIG_IMPLEMENT
#include <doctest/doctest.h>

#include "support/accept.hpp"

int main(int argument_count, char** arguments) {
    matchmark::test::read_accept(argument_count, arguments);
    return doctest::Context(argument_count, arguments).run();
}
