// Photos and drawings on paper, with their balloons.
#include "publish/paper/picture.hpp"

#include "publish/page/picture.hpp"
#include "publish/paper/svg_painter.hpp"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <numbers>

namespace matchmark::publish {

namespace {

// More than any camera in a workshop takes; a header that lies must not take the memory.
constexpr double most_pixels = 120e6;
// The picture for which the places of balloons are worked out, as on the page of HTML, in points.
constexpr double least_width = 330 * 0.75;

using Surface = std::shared_ptr<cairo_surface_t>;

Surface owned(cairo_surface_t* surface) { return {surface, &cairo_surface_destroy}; }

unsigned two_bytes(const std::string& bytes, std::size_t at) {
    const auto byte = [&](std::size_t i) {
        return i < bytes.size() ? static_cast<unsigned char>(bytes[i]) : 0U;
    };
    return byte(at) << 8U | byte(at + 1);
}

struct Pixels {
    unsigned width = 0;
    unsigned height = 0;
};

// ITU-T T.81, B.1.1.4: segments until a start of frame. Only whole files, with their end of image.
Pixels jpeg_pixels(const std::string& bytes) {
    std::size_t at = 2;
    while (at + 9 < bytes.size() && static_cast<unsigned char>(bytes[at]) == 0xff) {
        const unsigned marker = static_cast<unsigned char>(bytes[at + 1]);
        if (marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 &&
            marker != 0xcc) {
            const bool ends = bytes.rfind("\xff\xd9") != std::string::npos;
            return ends ? Pixels{two_bytes(bytes, at + 7), two_bytes(bytes, at + 5)} : Pixels{};
        }
        at += 2U + std::max(2U, two_bytes(bytes, at + 2));
    }
    return {};
}

bool bearable(Pixels pixels) {
    return pixels.width > 0 && pixels.height > 0 &&
           static_cast<double>(pixels.width) * pixels.height <= most_pixels;
}

// The bytes of the photo go into the file as they are; the surface says its size alone, and its
// memory is never touched.
Surface read_jpeg(const std::string& bytes) {
    const Pixels pixels = jpeg_pixels(bytes);
    if (!bearable(pixels)) {
        return nullptr;
    }
    Surface surface = owned(cairo_image_surface_create(
        CAIRO_FORMAT_RGB24, static_cast<int>(pixels.width), static_cast<int>(pixels.height)));
    auto copy = std::make_unique<std::string>(bytes);
    const auto* data = reinterpret_cast<const unsigned char*>(copy->data());
    const auto free_copy = [](void* held) { delete static_cast<std::string*>(held); };
    const cairo_status_t status = cairo_surface_set_mime_data(
        surface.get(), CAIRO_MIME_TYPE_JPEG, data, copy->size(), free_copy, copy.get());
    if (status != CAIRO_STATUS_SUCCESS) {
        return nullptr;
    }
    static_cast<void>(copy.release()); // the surface holds it now
    return surface;
}

struct Reading {
    const std::string* bytes = nullptr;
    std::size_t at = 0;
};

cairo_status_t read_some(void* closure, unsigned char* into, unsigned length) {
    auto* reading = static_cast<Reading*>(closure);
    if (reading->bytes->size() - reading->at < length) {
        return CAIRO_STATUS_READ_ERROR;
    }
    std::memcpy(into, reading->bytes->data() + reading->at, length);
    reading->at += length;
    return CAIRO_STATUS_SUCCESS;
}

Surface read_png(const std::string& bytes) {
    // The header chunk has width and height in 4 bytes each.
    if (two_bytes(bytes, 16) != 0 || two_bytes(bytes, 20) != 0 ||
        !bearable({two_bytes(bytes, 18), two_bytes(bytes, 22)})) {
        return nullptr;
    }
    Reading reading{&bytes, 0};
    Surface surface = owned(cairo_image_surface_create_from_png_stream(&read_some, &reading));
    return cairo_surface_status(surface.get()) == CAIRO_STATUS_SUCCESS ? surface : nullptr;
}

void paint_photo(cairo_t* paper, cairo_surface_t* photo, const PicturePiece& piece) {
    cairo_save(paper);
    cairo_translate(paper, piece.x, piece.y);
    cairo_scale(paper, piece.width / cairo_image_surface_get_width(photo),
                piece.height / cairo_image_surface_get_height(photo));
    cairo_set_source_surface(paper, photo, 0, 0);
    cairo_paint(paper);
    cairo_restore(paper);
}

double bounded(double fraction) {
    return std::clamp(std::isfinite(fraction) ? fraction : 0.0, 0.0, 1.0);
}

struct Balloon {
    model::Point point;
    model::Point centre;
    unsigned number = 0;
};

void stroke_leader(cairo_t* paper, const Balloon& balloon, double width, double ink) {
    cairo_set_source_rgb(paper, ink, ink, ink);
    cairo_set_line_width(paper, width);
    cairo_move_to(paper, balloon.point.x, balloon.point.y);
    cairo_line_to(paper, balloon.centre.x, balloon.centre.y);
    cairo_stroke(paper);
}

void paint_point(cairo_t* paper, const Balloon& balloon, double radius, double ink) {
    cairo_set_source_rgb(paper, ink, ink, ink);
    cairo_arc(paper, balloon.point.x, balloon.point.y, radius, 0, 2 * std::numbers::pi);
    cairo_fill(paper);
}

// A white edge round everything keeps it legible on a dark photo.
void paint_balloon(cairo_t* paper, const Setter& setter, const Balloon& balloon, double scale) {
    const double radius = 13 * scale;
    stroke_leader(paper, balloon, 4 * scale, 1);
    paint_point(paper, balloon, 5.5 * scale, 1);
    stroke_leader(paper, balloon, 2 * scale, 0);
    paint_point(paper, balloon, 4 * scale, 0);
    cairo_set_source_rgb(paper, 1, 1, 1);
    cairo_arc(paper, balloon.centre.x, balloon.centre.y, radius + 1.5 * scale, 0,
              2 * std::numbers::pi);
    cairo_fill(paper);
    cairo_set_source_rgb(paper, 0, 0, 0);
    paint_ring(paper, balloon.centre.x, balloon.centre.y, radius - scale, 2 * scale);
    Rich number;
    add(number, std::to_string(balloon.number));
    Type type; // its usual size, which is set already, brought to the balloon's
    type.bold = true;
    const auto setting = set_text(setter, number, type, 80);
    const double zoom = 15 * scale / type.size;
    cairo_save(paper);
    cairo_translate(paper, balloon.centre.x - setting->width * zoom / 2,
                    balloon.centre.y - setting->height * zoom / 2);
    cairo_scale(paper, zoom, zoom);
    paint_lines(paper, *setting, 0, setting->lines, 0, 0);
    cairo_restore(paper);
}

// On a larger picture the balloons stay as large and stand farther apart.
double scale_for(double width) { return 0.75 * std::min(1.0, width / least_width); }

std::vector<Balloon> balloons_of(const guide::Picture& picture, double width, double height) {
    std::vector<model::Point> points;
    std::vector<Balloon> balloons;
    for (const guide::Mark& mark : picture.marks) {
        for (const model::Point& point : mark.points) {
            points.push_back({bounded(point.x), bounded(point.y)});
            balloons.push_back(
                {{points.back().x * width, points.back().y * height}, {}, mark.number});
        }
    }
    const auto offsets = balloon_offsets(points, width / height);
    for (std::size_t i = 0; i < balloons.size(); ++i) {
        balloons[i].centre = {balloons[i].point.x + offsets[i].x * scale_for(width),
                              balloons[i].point.y + offsets[i].y * scale_for(width)};
    }
    return balloons;
}

void paint_marks(cairo_t* paper, const Setter& setter, const PicturePiece& piece) {
    cairo_save(paper);
    cairo_translate(paper, piece.x, piece.y);
    for (const Balloon& balloon : balloons_of(*piece.picture, piece.width, piece.height)) {
        paint_balloon(paper, setter, balloon, scale_for(piece.width));
    }
    cairo_restore(paper);
}

} // namespace

bool read_picture(Gallery& gallery, const ShownPicture& shown) {
    if (shown.type == "image/svg+xml") {
        auto& drawing = gallery.drawings[&shown];
        drawing = drawing ? drawing : read_drawing(shown.bytes);
        return drawing != nullptr;
    }
    auto& photo = gallery.photos[&shown];
    if (!photo && shown.type == "image/jpeg") {
        photo = read_jpeg(shown.bytes);
    } else if (!photo && shown.type == "image/png") {
        photo = read_png(shown.bytes);
    }
    return photo != nullptr && cairo_surface_status(photo.get()) == CAIRO_STATUS_SUCCESS;
}

void paint_picture(cairo_t* paper, const Setter& setter, const Gallery& gallery,
                   const PicturePiece& piece) {
    const auto photo = gallery.photos.find(piece.shown);
    const auto drawing = gallery.drawings.find(piece.shown);
    if (photo != gallery.photos.end() && photo->second) {
        paint_photo(paper, photo->second.get(), piece);
    } else if (drawing != gallery.drawings.end() && drawing->second) {
        paint_drawing(paper, drawing->second.get(), piece);
    }
    if (piece.picture != nullptr) {
        paint_marks(paper, setter, piece);
    }
}

Overhang overhang_of(const guide::Picture& picture, double width, double height) {
    Overhang over;
    const double reach = 15 * scale_for(width);
    for (const Balloon& balloon : balloons_of(picture, width, height)) {
        over.left = std::max(over.left, reach - balloon.centre.x);
        over.top = std::max(over.top, reach - balloon.centre.y);
        over.right = std::max(over.right, balloon.centre.x + reach - width);
        over.bottom = std::max(over.bottom, balloon.centre.y + reach - height);
    }
    return over;
}

void paint_ring(cairo_t* paper, double x, double y, double radius, double line) {
    cairo_set_line_width(paper, line);
    cairo_new_sub_path(paper);
    cairo_arc(paper, x, y, radius, 0, 2 * std::numbers::pi);
    cairo_close_path(paper);
    cairo_stroke(paper);
}

} // namespace matchmark::publish
