// Spoils a guide in small ways, the same ways each time.
#include "oracle/mutants.hpp"

#include "model/spelling.hpp"

#include <algorithm>
#include <fmt/core.h>
#include <utility>

namespace matchmark::oracle {

using model::Action;
using model::Procedure;

namespace {

// So many of each sort for one variant of a guide: enough that its sections all get some.
constexpr std::size_t most_left_out = 10;
constexpr std::size_t most_swapped = 8;
constexpr std::size_t most_brought_forward = 8;
constexpr std::size_t most_bare = 4;

struct Position {
    std::size_t step = 0;
    std::size_t action = 0;
};

Action& action_at(Procedure& procedure, Position at) {
    return procedure.steps[at.step].actions.edit(at.action);
}

const Action& action_at(const Procedure& procedure, Position at) {
    return procedure.steps[at.step].actions[at.action];
}

std::vector<Position> positions_of(const Procedure& procedure, unsigned variant) {
    std::vector<Position> all;
    for (std::size_t s = 0; s < procedure.steps.size(); ++s) {
        const model::Step& step = procedure.steps[s];
        if (((step.variants >> variant) & 1U) == 0) {
            continue;
        }
        for (std::size_t a = 0; a < step.actions.size(); ++a) {
            if (((step.actions[a].variants >> variant) & 1U) != 0) {
                all.push_back({s, a});
            }
        }
    }
    return all;
}

// At most `most` of the numbers from `first` to below `end`, evenly spread.
std::vector<std::size_t> spread(std::size_t first, std::size_t end, std::size_t most) {
    std::vector<std::size_t> chosen;
    const std::size_t count = end > first ? end - first : 0;
    const std::size_t wanted = std::min(count, most);
    for (std::size_t i = 0; i < wanted; ++i) {
        chosen.push_back(first + i * count / wanted);
    }
    return chosen;
}

class Maker {
public:
    Maker(const model::Model& model, const Procedure& procedure, unsigned variant)
        : model_(model), procedure_(procedure), positions_(positions_of(procedure, variant)) {}

    std::vector<Mutant> all() {
        const std::size_t count = positions_.size();
        for (const std::size_t i : spread(0, count, most_left_out)) {
            leave_out(i);
        }
        for (const std::size_t i : spread(1, count, most_swapped)) {
            swap_with_last(i);
        }
        for (const std::size_t i : spread(2, count, most_brought_forward)) {
            bring_forward(i);
        }
        std::vector<std::size_t> armed;
        for (std::size_t i = 0; i < count; ++i) {
            if (!action_at(procedure_, positions_[i]).with.empty()) {
                armed.push_back(i);
            }
        }
        for (const std::size_t i : spread(0, armed.size(), most_bare)) {
            make_bare(armed[i]);
        }
        return std::move(mutants_);
    }

private:
    [[nodiscard]] std::string written(std::size_t i) const {
        return model::as_source(model_, procedure_.resources, action_at(procedure_, positions_[i]));
    }

    void leave_out(std::size_t i) {
        Procedure changed = procedure_;
        auto& actions = changed.steps[positions_[i].step].actions.edit();
        actions.erase(actions.begin() + static_cast<std::ptrdiff_t>(positions_[i].action));
        mutants_.push_back({fmt::format("without `{}`", written(i)), std::move(changed)});
    }

    void swap_with_last(std::size_t i) {
        Procedure changed = procedure_;
        std::swap(action_at(changed, positions_[i - 1]), action_at(changed, positions_[i]));
        mutants_.push_back(
            {fmt::format("`{}` after `{}`", written(i - 1), written(i)), std::move(changed)});
    }

    void bring_forward(std::size_t i) {
        Procedure changed = procedure_;
        for (std::size_t j = i; j > i / 2; --j) {
            std::swap(action_at(changed, positions_[j - 1]), action_at(changed, positions_[j]));
        }
        mutants_.push_back({fmt::format("`{}` already before `{}`", written(i), written(i / 2)),
                            std::move(changed)});
    }

    void make_bare(std::size_t i) {
        Procedure changed = procedure_;
        action_at(changed, positions_[i]).with.clear();
        mutants_.push_back({fmt::format("bare `{}`", written(i)), std::move(changed)});
    }

    const model::Model& model_;
    const Procedure& procedure_;
    std::vector<Position> positions_;
    std::vector<Mutant> mutants_;
};

} // namespace

std::vector<Mutant> mutants(const model::Model& model, const Procedure& procedure,
                            unsigned variant) {
    return Maker(model, procedure, variant).all();
}

} // namespace matchmark::oracle
