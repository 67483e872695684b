// The parts of the program `properties`: each prints a line and says whether all is well.
#pragma once

namespace matchmark::properties {

// On the bench alone: what comes apart goes back together.
bool comes_back_together();
// Questions counted while acts are done answer as questions asked anew.
bool tallies_agree();
// Devices as text: what is planned can be done, what is drafted checks clean, what is written out
// is the same work, another layout is the same text.
bool guides_hold();
// Each kind of the parts library comes off and goes back in a guide that is drafted and written
// out.
bool kinds_hold();

} // namespace matchmark::properties
