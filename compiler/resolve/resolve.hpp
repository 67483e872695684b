// Trees to model: names found, quantities given their measure, kinds and items tied together.
#pragma once

#include "diagnostics/diagnostic.hpp"
#include "model/model.hpp"
#include "syntax/files.hpp"

#include <cstddef>
#include <memory>
#include <vector>

namespace matchmark::resolve {

// `files`: the parts library first, then what is used, in dependency order, the file asked about
// last. What cannot be resolved is reported and left out, so that the model is always whole; an
// unknown name silences what follows from it.
model::Model resolve(const SourceMap& sources, const syntax::Files& files,
                     std::vector<Diagnostic>& findings);

// The first files of several compilations, resolved once for all of them. It can be read by several
// threads at a time.
struct Base;
using BasePointer = std::shared_ptr<const Base>;

// The first `count` files. Nothing when something in them cannot be resolved: files that follow
// might declare what they lack.
BasePointer resolve_base(const SourceMap& sources, const syntax::Files& files, std::size_t count,
                         const BasePointer& below = nullptr);

// May these files follow the base? Upon a base that has items, only guides may be put: what follows
// could change the items otherwise.
bool may_follow(const Base& base, const syntax::Files& files);

// The same model and findings as without the base. The files of the base have to be the first ones
// here, with the same ids and the same text.
model::Model resolve(const SourceMap& sources, const syntax::Files& files,
                     std::vector<Diagnostic>& findings, const Base& base);

} // namespace matchmark::resolve
