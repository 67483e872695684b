// The rows by subject.
#pragma once

#include "model/model.hpp"
#include "published/table.hpp"

namespace matchmark::published {

void add_threads(Table& table, const model::Model& library);
void add_strengths(Table& table, const model::Model& library);
void add_torques(Table& table, const model::Model& library);
void add_drives(Table& table, const model::Model& library);
void add_units(Table& table);
void add_energy(Table& table, const model::Model& library);
void add_orders(Table& table);
void add_safety(Table& table, const model::Model& library);
void add_work(Table& table, const model::Model& library);
void add_times(Table& table);
void add_repair(Table& table);

} // namespace matchmark::published
