// Devices made at random, written in the language, and valid jobs on them, written as bench notes.
#pragma once

#include "bench/bench.hpp"
#include "drive/compilation.hpp"
#include "support/chance.hpp"

#include <string>
#include <vector>

namespace matchmark::capture_test {

using support::Chance;

// The device as it is; nobody who captures it sees this text.
std::string random_device_text(Chance& chance);

using Work = std::vector<bench::Act>;

// Acts from the assembled device that take some part out, each of them possible when it is done.
Work random_job(Chance& chance, const model::Model& truth);

// The acts as somebody would note them.
std::string notes_of(Chance& chance, const model::Model& truth, const Work& work);

} // namespace matchmark::capture_test
