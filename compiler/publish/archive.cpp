// Files packed into one. The one door to libzip.
#include "publish/archive.hpp"

#include <memory>
#include <zip.h>

namespace matchmark::publish {

namespace {

constexpr zip_uint16_t first_day = 1U << 5U | 1U; // 1980-01-01 in MS-DOS form
constexpr zip_uint32_t best = 9;

struct ZipFree {
    void operator()(zip_t* file) const { zip_discard(file); }
    void operator()(zip_source_t* source) const { zip_source_free(source); }
};
using Source = std::unique_ptr<zip_source_t, ZipFree>;

bool add(zip_t* into, const Packed& file) {
    zip_source_t* source = zip_source_buffer(into, file.bytes.data(), file.bytes.size(), 0);
    if (source == nullptr) {
        return false;
    }
    const zip_int64_t index = zip_file_add(into, file.name.c_str(), source, ZIP_FL_ENC_UTF_8);
    if (index < 0) {
        zip_source_free(source);
        return false;
    }
    const auto at = static_cast<zip_uint64_t>(index);
    const zip_int32_t method = file.stored ? ZIP_CM_STORE : ZIP_CM_DEFLATE;
    return zip_set_file_compression(into, at, method, file.stored ? 0 : best) == 0 &&
           zip_file_set_dostime(into, at, 0, first_day, 0) == 0;
}

std::string packed_content(zip_source_t* source) {
    zip_stat_t size;
    if (zip_source_open(source) != 0) {
        return {};
    }
    std::string bytes;
    if (zip_source_stat(source, &size) == 0 && (size.valid & ZIP_STAT_SIZE) != 0) {
        bytes.resize(size.size);
        const zip_int64_t read = zip_source_read(source, bytes.data(), bytes.size());
        bytes.resize(read < 0 ? 0 : static_cast<std::size_t>(read));
    }
    zip_source_close(source);
    return bytes;
}

} // namespace

std::string archive(const std::vector<Packed>& files) {
    const Source source(zip_source_buffer_create(nullptr, 0, 0, nullptr));
    if (source == nullptr) {
        return {};
    }
    zip_source_keep(source.get()); // the archive below gives up one hold on it
    std::unique_ptr<zip_t, ZipFree> zip(zip_open_from_source(source.get(), ZIP_TRUNCATE, nullptr));
    if (zip == nullptr) {
        zip_source_free(source.get());
        return {};
    }
    for (const Packed& file : files) {
        if (!add(zip.get(), file)) {
            return {};
        }
    }
    if (zip_close(zip.get()) != 0) {
        return {};
    }
    (void)zip.release(); // closed, and gone with that
    return packed_content(source.get());
}

} // namespace matchmark::publish
