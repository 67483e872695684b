// Which fasteners a map shows, under which number and mark, and what its key says of them.
#pragma once

#include "draw/scene.hpp"
#include "language/spoken.hpp"
#include "model/model.hpp"

#include <string>
#include <vector>

namespace matchmark::draw {

// The outline of a balloon. A ring is usual; fasteners that differ from each other in length alone
// each have another of the rest.
enum class Mark : unsigned char { ring, square, triangle, diamond, hexagon };

struct MapPlace {
    Point at;            // on the face
    unsigned member = 0; // from 1
    bool undone = false; // by the guide
};

struct MapGroup {
    model::ItemId item;
    unsigned number = 0; // in the balloon: as on the pictures of the guide
    Mark mark = Mark::ring;
    double head = 0;  // diameter of its bearing face in mm; 0: not known
    double shank = 0; // nominal diameter of its thread in mm; 0: not known
    std::vector<MapPlace> places;
    std::vector<std::string> resembles; // "like 4 but for its length: 8 mm, not 12 mm"
};

struct FaceMap {
    const model::Face* face = nullptr;
    std::vector<MapGroup> groups;
};

// A group without its number, mark and places.
MapGroup group_of(const model::Model& model, model::ItemId item);

// The faces on which the guide undoes fasteners whose places are known, in the order of the device;
// groups in the order in which they are undone.
std::vector<FaceMap> face_maps(const model::Model& model, const model::Procedure& procedure,
                               const language::Language& in = language::english());

// What the key says of a group, a cell for each heading.
struct KeyRow {
    std::string name;    // "Top cover screw"
    std::string count;   // "4"
    std::string thread;  // "M3 x 8"
    std::string drive;   // "hexalobular 10, pan"
    std::string torque;  // "0.5 N·m, 3 passes"
    std::string remarks; // the order of tightening, what it resembles, how it is told
};
KeyRow key_row(const language::Language& in, const model::Model& model, const MapGroup& group);

} // namespace matchmark::draw
