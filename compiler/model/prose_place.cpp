// Where the author's words stand among the actions of their step.
#include "model/prose_place.hpp"

namespace matchmark::model {

std::size_t actions_above(const Step& step, const Prose& passage) {
    std::size_t above = 0;
    for (std::size_t i = 0; i < step.actions.size(); ++i) {
        const Action& action = step.actions[i];
        const bool beside = !action.derived && action.line.file == passage.span.file;
        if (beside && action.line.begin < passage.span.begin) {
            above = i + 1;
        }
    }
    return above;
}

} // namespace matchmark::model
