// Lines of the device that follow from the order of work alone, and that nobody has looked at.
//
// It looks at the device and not at a walk: the finding is made beside the walks.
#include "check/rule.hpp"

namespace matchmark::check::rules {

extern const Rule assumed;
const Rule assumed{"assumed", "device", Severity::advice,
                   "lines of the device that are assumed, and that nobody has looked at", nullptr};

} // namespace matchmark::check::rules
