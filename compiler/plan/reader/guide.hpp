// Makes of an unfolded procedure the guide that a reader holds.
#pragma once

#include "guide/document.hpp"
#include "model/model.hpp"

namespace matchmark::plan {

// `sources` tells from which file's folder a photo's path counts. All is said in `language`; what
// it has no translation of stands in English.
guide::Document reader_guide(const SourceMap& sources, const model::Model& model,
                             const model::Procedure& procedure,
                             const language::Language& language = language::english());

} // namespace matchmark::plan
