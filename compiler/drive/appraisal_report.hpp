// An appraisal on the terminal: for people, and for programs.
#pragma once

#include "guide/appraisal.hpp"

#include <iosfwd>

namespace matchmark::drive {

void write_appraisal(const guide::Appraisal& appraisal, std::ostream& out);
// One object; docs/appraising.md lists its fields.
void write_appraisal_json(const guide::Appraisal& appraisal, std::ostream& out);

} // namespace matchmark::drive
