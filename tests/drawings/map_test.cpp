// The fastener map is true: in the PDF's own coordinates, distances are those of the device.
#include "draw/drawings.hpp"
#include "drawings/paper.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <set>

using namespace matchmark;
using namespace matchmark::test;

namespace {

constexpr double true_to = 0.1; // mm

// Middles of the thin crosses through the heads, on one page.
std::vector<model::Point> heads_on(const PdfMarks& marks, unsigned page) {
    std::vector<model::Point> heads;
    for (const PdfLine& across : marks.lines) {
        for (const PdfLine& down : marks.lines) {
            const bool thin =
                std::abs(across.width - 0.13) < 0.01 && std::abs(down.width - 0.13) < 0.01;
            const bool cross =
                std::abs(across.y1 - across.y2) < 0.001 && std::abs(down.x1 - down.x2) < 0.001;
            const model::Point middle{(across.x1 + across.x2) / 2, (down.y1 + down.y2) / 2};
            if (across.page == page && down.page == page && thin && cross &&
                std::abs(middle.x - down.x1) < 0.01 && std::abs(middle.y - across.y1) < 0.01) {
                heads.push_back(middle);
            }
        }
    }
    return heads;
}

bool has_pair(const std::vector<model::Point>& heads, double across, double down) {
    return std::any_of(heads.begin(), heads.end(), [&](const model::Point& a) {
        return std::any_of(heads.begin(), heads.end(), [&](const model::Point& b) {
            return std::abs(b.x - a.x - across) < true_to && std::abs(b.y - a.y - down) < true_to;
        });
    });
}

std::string logger_like() {
    return R"(device box "Box"
face front 74 x 128 mm, corner 8 mm
part back "back"
part lid "lid"
fastener lid-screws "lid screw" 4 x screw M2 x 6, hexalobular 6, countersunk
  holds lid to back
  torque 0.20 N.m in star
  at front 5,5 69,5 5,123 69,123
guide open-box "Open the box"
  goal remove lid
  for competent
  tool driver-6 "hexalobular driver 6"
take-apart
step open "Open"
  undo lid-screws
  remove lid
put-back
  derived
)";
}

} // namespace

TEST_CASE("on one sheet, screws are as far apart as on the device") {
    const auto done = compiled(logger_like());
    const std::string pdf =
        draw::map_files(done.model, done.procedures.front(), draw::Paper::a4, "2024-03-01").pdf;
    const PdfMarks marks = marks_of(pdf);
    const auto heads = heads_on(marks, 0);
    CHECK(heads.size() == 4);
    CHECK(has_pair(heads, 64, 0));
    CHECK(has_pair(heads, 0, 118));
    CHECK(has_pair(heads, 64, 118));
    CHECK_FALSE(has_pair(heads, 64.5, 0));
    const auto square = std::find_if(marks.boxes.begin(), marks.boxes.end(), [](const PdfBox& b) {
        return std::abs(b.width - 50) < true_to && std::abs(b.height - 50) < true_to;
    });
    CHECK(square != marks.boxes.end());
}

TEST_CASE("over several sheets the pieces of a large face fit together, on both papers") {
    const auto done = compiled(tray_device() + tray_guide());
    for (const draw::Paper paper : {draw::Paper::a4, draw::Paper::letter}) {
        const auto scenes = draw::fastener_map(done.model, done.procedures.front(), paper);
        REQUIRE(scenes.size() >= 3);
        const PdfMarks marks =
            marks_of(draw::map_files(done.model, done.procedures.front(), paper, "2024-03-01").pdf);
        std::size_t squares = 0;
        for (const PdfBox& box : marks.boxes) {
            squares += std::abs(box.width - 50) < true_to && std::abs(box.height - 50) < true_to;
        }
        CHECK(squares == scenes.size());
        bool found = false;
        for (unsigned page = 0; page < scenes.size(); ++page) {
            found = found || has_pair(heads_on(marks, page), 0, 90);
        }
        CHECK(found); // the board's screws, 90 mm apart, stand on one sheet
    }
}

TEST_CASE("each balloon stands whole on some sheet, and fits on its paper") {
    const auto done = compiled(tray_device() + tray_guide());
    const auto words =
        ran("pdftotext {} -",
            draw::map_files(done.model, done.procedures.front(), draw::Paper::a4, "").pdf);
    for (const std::string part :
         {"Check square", "corner screw", "middle screw", "M3 x 8.5", "star: 1 4 2 3", "easily",
          "patch", "hexalobular 8, pan", "goes on: sheet 2"}) {
        INFO(part);
        CHECK(words.find(part) != std::string::npos);
    }
    for (const auto& scene :
         draw::fastener_map(done.model, done.procedures.front(), draw::Paper::letter)) {
        CHECK(scene.width <= 279.4);
        CHECK(scene.height <= 279.4);
    }
}

TEST_CASE("a PDF is sound, tagged, has its fonts in it, and is the same each time") {
    const auto done = compiled(tray_device() + tray_guide());
    const auto make = [&] {
        return draw::map_files(done.model, done.procedures.front(), draw::Paper::a4, "2024-03-01")
            .pdf;
    };
    const std::string pdf = make();
    CHECK(pdf == make());
    CHECK(ran("qpdf --check {}", pdf).find("No syntax or stream encoding errors") !=
          std::string::npos);
    CHECK(ran("pdfinfo {}", pdf).find("Tagged:          yes") != std::string::npos);
    const std::string fonts = ran("pdffonts {}", pdf);
    CHECK(fonts.find("LiberationSans") != std::string::npos);
    CHECK(fonts.find(" no  ") == std::string::npos); // not embedded
    CHECK(ran("qpdf --qdf {} -", pdf).find("/Outlines") != std::string::npos);
}

TEST_CASE("without known places there is no map") {
    const auto done = compiled("device box \"Box\"\npart lid \"lid\"\n"
                               "guide open-box \"Open\"\n  goal remove lid\n  for competent\n"
                               "take-apart\nstep open \"Open\"\n  remove lid\n"
                               "put-back\n  derived\n");
    CHECK(draw::map_files(done.model, done.procedures.front(), draw::Paper::a4, "").pdf.empty());
    CHECK(draw::map_files(done.model, done.procedures.front(), draw::Paper::a4, "").svg.empty());
}
