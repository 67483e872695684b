// Loads librsvg, and lets it read and paint.
#include "publish/paper/svg_painter.hpp"

#include <dlfcn.h>
#include <librsvg/rsvg.h>

namespace matchmark::publish {

namespace {

struct DrawingPainter {
    decltype(&rsvg_handle_new_from_data) read = nullptr;
    decltype(&rsvg_handle_render_document) paint = nullptr;
};

template <class Function> void look_up(void* library, const char* name, Function& function) {
    function = reinterpret_cast<Function>(dlsym(library, name));
}

// Never closed: GLib keeps what its types are made of.
const DrawingPainter* painter() {
    static const DrawingPainter loaded = [] {
        DrawingPainter found;
        if (void* library = dlopen("librsvg-2.so.2", RTLD_LAZY)) {
            look_up(library, "rsvg_handle_new_from_data", found.read);
            look_up(library, "rsvg_handle_render_document", found.paint);
        }
        return found;
    }();
    return loaded.read == nullptr || loaded.paint == nullptr ? nullptr : &loaded;
}

} // namespace

std::shared_ptr<void> read_drawing(const std::string& bytes) {
    const DrawingPainter* with = painter();
    if (with == nullptr)
        return nullptr;
    // It comes without a place, so that nothing is beside it.
    RsvgHandle* handle =
        with->read(reinterpret_cast<const guint8*>(bytes.data()), bytes.size(), nullptr);
    return handle == nullptr ? nullptr : std::shared_ptr<void>(handle, &g_object_unref);
}

void paint_drawing(cairo_t* paper, void* drawing, const PicturePiece& piece) {
    const RsvgRectangle place{piece.x, piece.y, piece.width, piece.height};
    cairo_save(paper);
    painter()->paint(static_cast<RsvgHandle*>(drawing), paper, &place, nullptr);
    cairo_restore(paper);
}

} // namespace matchmark::publish
