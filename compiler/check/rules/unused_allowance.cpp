// A comment that allows what is not found, names no rule, or gives no reason.
//
// The finding itself is made where allowances are applied, after all other rules.
#include "check/rule.hpp"

namespace matchmark::check::rules {

extern const Rule unused_allowance;
const Rule unused_allowance{"unused-allowance", "prose", Severity::warning,
                            "an `allow` comment that silences nothing, or gives no reason",
                            nullptr};

} // namespace matchmark::check::rules
