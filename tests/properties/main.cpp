// What holds for every device, tried on devices made at random.
#include "properties/properties.hpp"

#include <cstdlib>

int main() {
    const bool bench = matchmark::properties::comes_back_together();
    const bool tallies = matchmark::properties::tallies_agree();
    const bool guides = matchmark::properties::guides_hold();
    const bool kinds = matchmark::properties::kinds_hold();
    return bench && tallies && guides && kinds ? EXIT_SUCCESS : EXIT_FAILURE;
}
