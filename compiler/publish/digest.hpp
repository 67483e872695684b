// Fingerprints of bytes.
#pragma once

#include <string>
#include <string_view>

namespace matchmark::publish {

// SHA-256 (FIPS 180-4): 32 bytes.
std::string sha256(std::string_view bytes);

// The first `count` bytes in hexadecimal.
std::string hexadecimal(std::string_view bytes, std::size_t count);

} // namespace matchmark::publish
