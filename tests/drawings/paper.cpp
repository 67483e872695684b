// A device of a few parts with a large face, and the lines of a PDF in its own coordinates.
#include "drawings/paper.hpp"

#include "source/disk.hpp"

#include <doctest/doctest.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include <unistd.h>

namespace matchmark::test {

drive::Compilation compiled(const std::string& text) {
    MapDisk disk;
    disk.files["tray.mmk"] = text;
    drive::Compilation done = drive::compile(disk, "tray.mmk");
    for (const Diagnostic& finding : done.findings) {
        INFO(finding.message);
        CHECK(finding.severity != Severity::error);
    }
    return done;
}

std::string tray_device() {
    return R"(device tray "Tray <b>&\"1\"</b>"

face top 320 x 210 mm, corner 12 mm

part base "base"
energy mains "mains supply" kind mains-cord 230 V
  feeds board
part cover "cover <script>alert(1)</script> & co"
  covers board, board-screws, board-plug
fastener corner-screws "corner screw" 4 x screw M3 x 8, hexalobular 10, pan
  holds cover to base
  torque 0.50 N.m in star
  at top 10,10 310,10 10,200 310,200
fastener middle-screws "middle screw" 2 x screw M3 x 8.5, hexalobular 10, pan
  holds cover to base
  torque 0.50 N.m
  told by "the blue patch"
  at top 160,10 160,200
part board "board"
  carries fuse
fastener board-screws "board screw" 4 x screw M2.5 x 6, hexalobular 8, pan
  holds board to base
  torque 0.25 N.m
  at top 100,60 220,60 100,150 220,150
connector board-plug "board plug" kind locking-tab-plug
  joins board to base
part fuse "fuse"
)";
}

std::string tray_guide() {
    return R"(
guide renew-board "Renew the board"
  goal replace board with board-new
  for competent
  date 2024-03-01
  spare board-new "board" for board
  tool driver-8 "hexalobular driver 8"
  tool driver-10 "hexalobular driver 10"

take-apart

step isolate "Isolate it"
  unplug mains

step open "Take the cover off"
  undo corner-screws, middle-screws
  remove cover

step board-out "Take the board out"
  disconnect board-plug
  undo board-screws
  remove board

work

step renew "Take the new one"
  replace board with board-new

put-back
  derived

test works "It works"
  when board in
  proves board
)";
}

std::string ran(const std::string& line, const std::string& bytes) {
    const std::filesystem::path folder = std::filesystem::temp_directory_path();
    const std::string path = (folder / ("drawing-" + std::to_string(::getpid()))).string();
    std::ofstream(path, std::ios::binary) << bytes;
    std::string command = line;
    command.replace(command.find("{}"), 2, path);
    FILE* pipe = ::popen((command + " 2>&1").c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::string told;
    char piece[4096];
    for (std::size_t n = 0; (n = std::fread(piece, 1, sizeof piece, pipe)) > 0;) {
        told.append(piece, n);
    }
    ::pclose(pipe);
    std::filesystem::remove(path);
    return told;
}

namespace {

constexpr double mm = 25.4 / 72;

// Each page starts with the matrix that turns it top down; no other scales or turns it.
void read_line(PdfMarks& marks, unsigned page, const std::vector<std::string>& words,
               double& width) {
    const auto value = [&](std::size_t at) { return std::strtod(words[at].c_str(), nullptr) * mm; };
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i] == "w" && i >= 1) {
            width = value(i - 1);
        } else if (words[i] == "re" && i >= 4) {
            marks.boxes.push_back({page, value(i - 4), value(i - 3), value(i - 2), value(i - 1)});
        } else if (words[i] == "l" && i >= 5 && words[i - 3] == "m") {
            marks.lines.push_back(
                {page, value(i - 5), value(i - 4), value(i - 2), value(i - 1), width});
        }
    }
}

} // namespace

PdfMarks marks_of(const std::string& pdf) {
    const std::string content = ran("qpdf --qdf --object-streams=disable {} -", pdf);
    PdfMarks marks;
    std::istringstream lines(content);
    std::string line;
    double width = 1;
    bool inside = false;
    unsigned pages = 0;
    while (std::getline(lines, line)) {
        inside = (inside || line == "stream") && line != "endstream";
        pages += line.starts_with("1 0 0 -1 0 ") ? 1 : 0;
        std::vector<std::string> words;
        std::istringstream split(line);
        for (std::string word; split >> word;) {
            words.push_back(word);
        }
        if (inside && pages > 0) {
            read_line(marks, pages - 1, words, width);
        }
    }
    return marks;
}

} // namespace matchmark::test
