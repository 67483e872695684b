// Fingerprints of bytes. The one door to GLib's checksums.
#include "publish/digest.hpp"

#include <array>
#include <glib.h>
#include <memory>

namespace matchmark::publish {

std::string sha256(std::string_view bytes) {
    const std::unique_ptr<GChecksum, decltype(&g_checksum_free)> sum(
        g_checksum_new(G_CHECKSUM_SHA256), &g_checksum_free);
    g_checksum_update(sum.get(), reinterpret_cast<const guchar*>(bytes.data()),
                      static_cast<gssize>(bytes.size()));
    std::array<guint8, 32> digest{};
    gsize length = digest.size();
    g_checksum_get_digest(sum.get(), digest.data(), &length);
    return {digest.begin(), digest.end()};
}

std::string hexadecimal(std::string_view bytes, std::size_t count) {
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    for (const char c : bytes.substr(0, count)) {
        const auto byte = static_cast<unsigned char>(c);
        text += digits[byte >> 4U];
        text += digits[byte & 15U];
    }
    return text;
}

} // namespace matchmark::publish
