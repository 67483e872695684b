// What Cairo leaves out of a PDF for those who cannot see it: the words of each figure, the
// language.
#pragma once

#include <string>
#include <vector>

namespace matchmark::publish {

// The file with an update at its end (ISO 32000-1, 7.5.6): `figures`, in the order in which they
// were painted, become the alternative descriptions (14.9.3) of its figures; `tag` is
// the language (BCP 47), and a reader's window shows the title. A file that is not as Cairo 1.16
// writes it, or that has another number of figures, stays as it is.
std::string with_words(std::string pdf, const std::vector<std::string>& figures,
                       const std::string& tag = "en");

} // namespace matchmark::publish
