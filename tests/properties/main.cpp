// What holds for every device, tried on devices made at random.
#include "properties/properties.hpp"

#include <cstdlib>

int main() {
    const bool bench = matchmark::properties::comes_back_together();
    const bool tallies = matchmark::properties::tallies_agree();
    const bool guides = matchmark::properties::guides_hold();
    return bench && tallies && guides ? EXIT_SUCCESS : EXIT_FAILURE;
}
