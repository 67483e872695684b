// Goes through a guide's pictures in the order in which a reader meets them.
#include "model/picture_numbers.hpp"

namespace matchmark::model {

std::map<ItemId, unsigned> picture_numbers(const Model& model, const Procedure& procedure) {
    std::map<ItemId, unsigned> numbers;
    const auto number_in = [&](const std::vector<Photo>& photos) {
        for (const Photo& photo : photos) {
            for (const PhotoMark& mark : photo.marks) {
                numbers.try_emplace(mark.item.item, static_cast<unsigned>(numbers.size() + 1));
            }
        }
    };
    number_in(model.guide(procedure.guide).photos);
    for (const Step& step : procedure.steps) {
        number_in(step.photos);
    }
    return numbers;
}

} // namespace matchmark::model
