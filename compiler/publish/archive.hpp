// Files packed into one. The one door to libzip.
#pragma once

#include <string>
#include <vector>

namespace matchmark::publish {

struct Packed {
    std::string name;
    std::string bytes;
    bool stored = false; // as it is, not compressed
};

// A ZIP archive of the files in this order, all dated 1980-01-01, the first date that ZIP knows.
// Empty when it could not be made.
std::string archive(const std::vector<Packed>& files);

} // namespace matchmark::publish
