// Compares what the compiler and its parts library say with published numbers, and prints the
// table. Fails when a row is outside what is allowed, or when the table has shrunk.
#include "published/library.hpp"
#include "published/subjects.hpp"

#include <cstdlib>
#include <fmt/core.h>

using namespace matchmark::published;

namespace {

constexpr std::size_t fewest_rows = 200;
constexpr std::size_t fewest_sources = 15;

} // namespace

int main() {
    const matchmark::model::Model library = model_of("device none \"Nothing\"\n");
    Table table;
    add_threads(table, library);
    add_strengths(table, library);
    add_torques(table, library);
    add_drives(table, library);
    add_units(table);
    add_energy(table, library);
    add_orders(table);
    add_safety(table, library);
    add_work(table, library);
    add_times(table);
    add_repair(table);
    print(table);
    const Counts counts = count(table);
    if (counts.rows < fewest_rows || counts.sources < fewest_sources) {
        fmt::print("{} rows of {} sources are asked for\n", fewest_rows, fewest_sources);
        return EXIT_FAILURE;
    }
    return counts.failed == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
