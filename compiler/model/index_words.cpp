// The words of an index of repair.
#include "model/index_words.hpp"

namespace matchmark::model {

const std::vector<std::string>& index_part_words() {
    static const std::vector<std::string> words{
        "battery",     "display-assembly", "back-cover",        "front-camera",
        "rear-camera", "charging-port",    "mechanical-button", "main-microphone",
        "speaker",     "folding-mechanism"};
    return words;
}

const std::vector<std::string>& product_words() {
    static const std::vector<std::string> words{"smartphone", "slate-tablet", "folding"};
    return words;
}

const std::vector<std::string>& information_words() {
    static const std::vector<std::string> words{"end-users", "repairers", "paid"};
    return words;
}

const std::vector<std::string>& supplied_with_words() {
    static const std::vector<std::string> words{"spare", "product"};
    return words;
}

} // namespace matchmark::model
