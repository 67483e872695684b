// Reads with care: whatever a script sends, the answer is an order or nothing.
#include "serve/preview/json.hpp"

#include <nlohmann/json.hpp>

namespace matchmark::serve {

namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t most_points = 500;

std::string text_of(const Json& object, const char* key) {
    const auto found = object.find(key);
    return found != object.end() && found->is_string() ? found->get<std::string>() : "";
}

bool read_points(const Json& object, std::vector<model::Point>& points) {
    const auto found = object.find("points");
    if (found == object.end()) {
        return true;
    }
    if (!found->is_array() || found->size() > most_points) {
        return false;
    }
    for (const Json& pair : *found) {
        if (!pair.is_array() || pair.size() != 2 || !pair[0].is_number() || !pair[1].is_number()) {
            return false;
        }
        points.push_back({pair[0].get<double>(), pair[1].get<double>()});
    }
    return true;
}

std::string dumped(const Json& object) {
    return object.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace

std::string page_data(const std::string& page, const std::string& token, const Content* content) {
    Json object{{"page", page}, {"token", token}};
    for (const char* list : {"photos", "items", "faces"}) {
        object[list] = Json::array();
    }
    if (content != nullptr) {
        for (const PhotoPlace& photo : content->photos) {
            object["photos"].push_back({{"step", photo.step},
                                        {"index", photo.index},
                                        {"file", photo.file},
                                        {"line", photo.line}});
        }
        for (const ItemChoice& item : content->items) {
            object["items"].push_back({{"name", item.name},
                                       {"words", item.words},
                                       {"count", item.count},
                                       {"face", item.face},
                                       {"places", item.places},
                                       {"file", item.file}});
        }
        for (const FacePlace& face : content->faces) {
            object["faces"].push_back(
                {{"name", face.name}, {"width", face.width_mm}, {"height", face.height_mm}});
        }
        object["prints"] = content->prints;
    }
    std::string text = dumped(object);
    for (std::size_t at = text.find('<'); at != std::string::npos; at = text.find('<', at)) {
        text.replace(at, 1, "\\u003c");
    }
    return text;
}

std::optional<AskedMark> read_asked(const std::string& body) {
    const Json object = Json::parse(body, nullptr, false);
    if (!object.is_object()) {
        return std::nullopt;
    }
    AskedMark asked;
    asked.page = text_of(object, "page");
    asked.token = text_of(object, "token");
    asked.order.file = text_of(object, "file");
    asked.order.print = text_of(object, "print");
    asked.order.item = text_of(object, "item");
    asked.order.face = text_of(object, "face");
    const auto line = object.find("line");
    if (line != object.end()) {
        if (!line->is_number_unsigned() || line->get<std::uint64_t>() > 0xffffffffULL) {
            return std::nullopt;
        }
        asked.order.photo_line = line->get<std::uint32_t>();
    }
    const auto instead = object.find("instead");
    asked.order.instead = instead != object.end() && instead->is_boolean() && instead->get<bool>();
    if (!read_points(object, asked.order.points)) {
        return std::nullopt;
    }
    return asked;
}

std::string as_json(const char* key, const std::string& words) {
    return dumped(Json{{key, words}}) + "\n";
}

} // namespace matchmark::serve
