// The guide as a task topic of OASIS DITA 1.3, for documentation systems.
#pragma once

#include "publish/shown_picture.hpp"

namespace matchmark::publish {

// docs/forms.md says which part of a guide becomes which element. `pictures` tells where each
// picture is found beside the file.
std::string dita(const guide::Document& document, const ShownPictures& pictures);

// An author's Markdown as DITA blocks.
std::string dita_prose(std::string_view markdown);

} // namespace matchmark::publish
