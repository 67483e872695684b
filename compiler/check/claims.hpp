// Which obligations a test says that it proves: found from what the test names, not by asking each
// obligation.
#pragma once

#include "check/trials.hpp"

#include <optional>
#include <vector>

namespace matchmark::check {

class Claims {
public:
    // `all`: the obligations; they and the model have to stay while this is used.
    Claims(const model::Model& model, const std::vector<Proven>& all);

    // The numbers of those claimed, some perhaps twice: a part renewed is proved by name, through a
    // function on whose path it lies, or by a test that names nothing; a function by name, or by
    // every item of its path.
    [[nodiscard]] std::vector<std::size_t> of(const model::Step& test) const;

private:
    [[nodiscard]] const std::vector<model::ItemId>& path_of(model::FunctionId function) const {
        return model_.functions[function.value].through;
    }
    void add_item(model::ItemId item, std::vector<std::size_t>& claimed) const;
    void add_function(model::FunctionId function, std::vector<std::size_t>& claimed) const;

    const model::Model& model_;
    std::vector<std::size_t> renewed_;              // of parts
    std::vector<std::vector<std::size_t>> of_item_; // of each item, those that it was renewed
    std::vector<std::optional<std::size_t>> of_function_;
    std::vector<std::vector<model::FunctionId>> functions_through_; // each item
};

} // namespace matchmark::check
