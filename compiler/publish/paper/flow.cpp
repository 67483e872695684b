// Boxes one below another, and their distribution over pages.
#include "publish/paper/flow.hpp"

#include <algorithm>

namespace matchmark::publish {

namespace {

constexpr int least_lines = 3; // left alone on either side of a page break

Box& add_lines(Flow& flow, const std::shared_ptr<const Setting>& setting, int first, int last,
               const char* tag) {
    Box& box = add_box(flow, height_of(*setting, first, last));
    box.pieces.emplace_back(Letters{setting, first, last, flow.left, 0, tag});
    return box;
}

// The boxes from `begin` that belong together with it, by the group that `number` gives.
template <typename Number>
std::size_t end_of_group(const std::vector<Box>& boxes, std::size_t begin, Number number) {
    std::size_t end = begin + 1;
    if (number(boxes[begin]) != 0) {
        while (end < boxes.size() && number(boxes[end]) == number(boxes[begin])) {
            ++end;
        }
    }
    return end;
}

unsigned outer_of(const Box& box) { return box.outer; }
unsigned inner_of(const Box& box) { return box.inner; }

double height_between(const std::vector<Box>& boxes, std::size_t begin, std::size_t end,
                      bool at_top) {
    double height = 0;
    for (std::size_t i = begin; i < end; ++i) {
        height += boxes[i].height + (i == begin && at_top ? 0 : boxes[i].gap);
    }
    return height;
}

// A heading keeps to what follows it: as much of that as goes on one page.
std::size_t end_of_unit(const std::vector<Box>& boxes, std::size_t begin, double room) {
    std::size_t heading = begin;
    // In the midst of a group, that group is known not to fit on one page.
    const bool in_midst =
        begin > 0 && boxes[begin].outer != 0 && boxes[begin].outer == boxes[begin - 1].outer;
    if (!in_midst) {
        while (heading + 1 < boxes.size() && boxes[heading].with_next &&
               (boxes[heading].outer == 0 || boxes[heading].outer != boxes[heading + 1].outer)) {
            ++heading;
        }
        const std::size_t outer = end_of_group(boxes, heading, outer_of);
        if (boxes[heading].outer != 0 && height_between(boxes, begin, outer, true) <= room) {
            return outer;
        }
        heading = begin;
    }
    while (heading + 1 < boxes.size() && boxes[heading].with_next) {
        ++heading;
    }
    const std::size_t inner = end_of_group(boxes, heading, inner_of);
    if (height_between(boxes, begin, inner, true) <= room) {
        return inner;
    }
    // Not even that fits: the headings and one box.
    return height_between(boxes, begin, heading + 1, true) <= room ? heading + 1 : begin + 1;
}

struct Lower {
    double by = 0;
    void operator()(Stroke& piece) const {
        piece.y1 += by;
        piece.y2 += by;
    }
    void operator()(Target&) const {}
    void operator()(auto& piece) const { piece.y += by; }
};

} // namespace

void absorb_gap(Box& box) {
    for (Piece& piece : box.pieces) {
        std::visit(Lower{box.gap}, piece);
    }
    box.height += box.gap;
    box.gap = 0;
}

Box& add_box(Flow& flow, double height) {
    Box box;
    box.height = height;
    box.gap = flow.boxes.empty() ? 0 : flow.gap;
    box.outer = flow.outer;
    box.inner = flow.inner;
    box.opens = std::move(flow.opens);
    flow.opens.clear();
    flow.gap = 0;
    flow.boxes.push_back(std::move(box));
    return flow.boxes.back();
}

void leave(Flow& flow, double gap) { flow.gap = std::max(flow.gap, gap); }

void open(Flow& flow, const char* tag) { flow.opens.push_back(tag); }

void close(Flow& flow) {
    if (!flow.opens.empty()) {
        flow.opens.pop_back(); // nothing stood in it
    } else {
        ++flow.boxes.back().closes;
    }
}

void begin_outer(Flow& flow) { flow.outer = ++flow.last_group; }
void end_outer(Flow& flow) { flow.outer = 0; }
void begin_inner(Flow& flow) { flow.inner = ++flow.last_group; }
void end_inner(Flow& flow) { flow.inner = 0; }

std::size_t add_text(Flow& flow, const Rich& rich, const Type& type, const char* tag) {
    const std::size_t index = flow.boxes.size();
    const auto setting = set_text(flow.setter, rich, type, flow.width);
    if (setting->lines <= 2 * least_lines) {
        add_lines(flow, setting, 0, setting->lines, tag);
        return index;
    }
    if (tag != nullptr) {
        open(flow, tag);
    }
    add_lines(flow, setting, 0, least_lines, nullptr);
    for (int line = least_lines; line < setting->lines - least_lines; ++line) {
        add_lines(flow, setting, line, line + 1, nullptr);
    }
    add_lines(flow, setting, setting->lines - least_lines, setting->lines, nullptr);
    if (tag != nullptr) {
        close(flow);
    }
    return index;
}

std::size_t add_text(Flow& flow, std::string_view words, const Type& type, const char* tag) {
    Rich rich;
    add(rich, words);
    return add_text(flow, rich, type, tag);
}

Letters letters(const Flow& flow, const Rich& rich, const Type& type, double x, double y,
                double width, const char* tag) {
    const auto setting = set_text(flow.setter, rich, type, width);
    return {setting, 0, setting->lines, x, y, tag};
}

Letters letters(const Flow& flow, std::string_view words, const Type& type, double x, double y,
                double width, const char* tag) {
    Rich rich;
    add(rich, words);
    return letters(flow, rich, type, x, y, width, tag);
}

std::vector<Page> pages_of(const std::vector<Box>& boxes, double room) {
    std::vector<Page> pages(1);
    double y = 0;
    const auto turn = [&](int header, double height) {
        pages.emplace_back();
        y = 0;
        if (header < 0) {
            return;
        }
        const Box& head = boxes[static_cast<std::size_t>(header)];
        if (head.height + height <= room) {
            pages.back().push_back({&head, 0, true});
            y = head.height;
        }
    };
    for (std::size_t i = 0; i < boxes.size();) {
        const std::size_t end = end_of_unit(boxes, i, room);
        const bool at_top = pages.back().empty();
        if (!at_top && y + height_between(boxes, i, end, false) > room) {
            turn(boxes[i].header, height_between(boxes, i, end, true));
        }
        for (; i < end; ++i) {
            const Box& box = boxes[i];
            y += pages.back().empty() ? 0 : box.gap;
            const double scale = box.height > room ? room / box.height : 1;
            pages.back().push_back({&box, y, false, scale});
            y += box.height * scale;
        }
    }
    return pages;
}

} // namespace matchmark::publish
