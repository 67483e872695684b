// The parsed files of one compilation. A file does not change once it is parsed, so compilations
// share it: the parts library is in all of them.
#pragma once

#include "syntax/tree.hpp"

#include <memory>
#include <vector>

namespace matchmark::syntax {

// Never null.
using FilePointer = std::shared_ptr<const File>;
using Files = std::vector<FilePointer>;

} // namespace matchmark::syntax
