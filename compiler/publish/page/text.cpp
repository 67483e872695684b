// Text and bytes made safe to stand in a page.
#include "publish/page/text.hpp"

#include <algorithm>

namespace matchmark::publish {

std::string without_controls(std::string_view page) {
    constexpr std::string_view replacement = "\uFFFD";
    std::string clean;
    clean.reserve(page.size());
    for (std::size_t i = 0; i < page.size(); ++i) {
        const auto byte = static_cast<unsigned char>(page[i]);
        const bool low = (byte < 0x20 && byte != '\n' && byte != '\t') || byte == 0x7f;
        // U+0080 to U+009F in UTF-8
        const bool high =
            byte == 0xc2 && i + 1 < page.size() && static_cast<unsigned char>(page[i + 1]) < 0xa0;
        if (byte == '\r' && i + 1 < page.size() && page[i + 1] == '\n') {
            continue;
        }
        if (low || high) {
            clean += byte == '\r' ? "\n" : replacement;
            i += high ? 1 : 0;
        } else {
            clean += page[i];
        }
    }
    return clean;
}

namespace {

// An SVG file begins with its root element, after an XML declaration, comments or a document type.
bool is_svg(std::string_view bytes) {
    if (bytes.starts_with("\xef\xbb\xbf")) {
        bytes.remove_prefix(3);
    }
    for (;;) {
        const auto begin = bytes.find_first_not_of(" \t\r\n");
        if (begin == std::string_view::npos) {
            return false;
        }
        bytes.remove_prefix(begin);
        std::string_view close;
        if (bytes.starts_with("<?")) {
            close = "?>";
        } else if (bytes.starts_with("<!--")) {
            close = "-->";
        } else if (bytes.starts_with("<!")) {
            // A document type may hold declarations in brackets.
            const bool bracketed = bytes.find('[') < bytes.find('>');
            close = bracketed ? "]>" : ">";
        } else {
            return bytes.starts_with("<svg") &&
                   (bytes.size() == 4 ||
                    std::string_view(" \t\r\n>/").find(bytes[4]) != std::string_view::npos);
        }
        const auto end = bytes.find(close);
        if (end == std::string_view::npos) {
            return false;
        }
        bytes.remove_prefix(end + close.size());
    }
}

} // namespace

std::string_view picture_type(std::string_view bytes) {
    if (bytes.starts_with("\x89PNG\r\n\x1a\n")) {
        return "image/png";
    }
    if (bytes.starts_with("\xff\xd8\xff")) {
        return "image/jpeg";
    }
    if (bytes.starts_with("GIF87a") || bytes.starts_with("GIF89a")) {
        return "image/gif";
    }
    if (bytes.starts_with("RIFF") && bytes.substr(0, 12).ends_with("WEBP")) {
        return "image/webp";
    }
    return is_svg(bytes) ? "image/svg+xml" : "";
}

// RFC 4648, section 4.
std::string base64(std::string_view bytes) {
    constexpr std::string_view digits =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string text;
    text.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        const std::size_t taken = std::min<std::size_t>(3, bytes.size() - i);
        unsigned group = 0;
        for (std::size_t k = 0; k < 3; ++k) {
            group = group << 8U | (k < taken ? static_cast<unsigned char>(bytes[i + k]) : 0U);
        }
        for (std::size_t k = 0; k < 4; ++k) {
            text += k <= taken ? digits[(group >> (18U - 6U * k)) & 63U] : '=';
        }
    }
    return text;
}

} // namespace matchmark::publish
