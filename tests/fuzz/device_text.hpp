// A device and its guides written from choices: grammatical for the most part, so that what comes
// after the grammar is reached, and senseless in its facts, so that all of it is tried.
#pragma once

#include "drive/compilation.hpp"
#include "fuzz/fuzz.hpp"

#include <string>
#include <vector>

namespace matchmark::fuzz {

inline const model::Model& library() {
    static const model::Model read = [] {
        MapDisk disk;
        const std::string nothing;
        return drive::compile(disk, "none.mmk", &nothing).model;
    }();
    return read;
}

class DeviceText {
public:
    explicit DeviceText(std::string_view bytes) : choose_{bytes} {}

    std::string written() {
        text_ = "device thing \"Thing\"\n";
        if (choose_.one_in(3))
            text_ += "  variant eu, uk, us\n";
        items_ = 2 + choose_.below(8);
        for (std::size_t i = 0; i < items_; ++i)
            kinds_.push_back(i < 2 ? nullptr : &kind());
        for (std::size_t i = 0; i < items_; ++i)
            declare(i);
        if (choose_.one_in(3))
            text_ += "function f \"It runs\"\n  through " + list() + "\n";
        const std::size_t guides = 1 + choose_.below(3);
        for (std::size_t i = 0; i < guides; ++i)
            guide(i);
        return std::move(text_);
    }

private:
    const model::Kind& kind() {
        const auto& kinds = library().kinds;
        const std::size_t high = choose_.below(256);
        return kinds[(high * 256 + choose_.below(256)) % kinds.size()];
    }

    static std::string name(std::size_t item) { return "i" + std::to_string(item); }
    std::string item() { return name(choose_.below(items_)); }

    std::string list() {
        std::string names = item();
        while (choose_.one_in(3))
            names += (choose_.one_in(4) ? " or " : ", ") + item();
        return names;
    }

    static std::string_view role(const model::Kind* kind) {
        if (kind == nullptr)
            return "part";
        switch (kind->role) {
        case model::Role::part:
            return "part";
        case model::Role::fastener:
            return "fastener";
        case model::Role::connector:
            return "connector";
        case model::Role::bond:
            return "bond";
        case model::Role::fluid:
            return "fluid";
        case model::Role::energy:
            return "energy";
        }
        return "part";
    }

    // A state of the item's kind, as a condition names it.
    std::string condition() {
        const std::size_t at = choose_.below(items_);
        if (kinds_[at] == nullptr)
            return name(at) + (choose_.one_in(2) ? " out" : " in");
        const auto& states = kinds_[at]->states;
        return name(at) + " " + states[choose_.below(states.size())];
    }

    // One of two states, for one verb alone or for the one that leads back, too.
    std::string need(std::size_t at) {
        std::string text = condition();
        if (choose_.one_in(4))
            text += choose_.one_in(2) ? " or in" : " or out";
        text += " to " + verb(at);
        return text + (choose_.one_in(4) ? " alone\n" : "\n");
    }

    std::string verb(std::size_t at) {
        if (kinds_[at] == nullptr || kinds_[at]->verbs.empty())
            return choose_.one_in(2) ? "fit" : "remove";
        const auto& verbs = kinds_[at]->verbs;
        return verbs[choose_.below(verbs.size())].name;
    }

    void declare(std::size_t at) {
        const std::string_view what = role(kinds_[at]);
        text_ += std::string(what) + " " + name(at) + " \"thing " + std::to_string(at) + "\"";
        if (kinds_[at] != nullptr && what == "fastener") {
            text_ += " " + std::to_string(1 + choose_.below(6)) + " x " + kinds_[at]->name;
            if (choose_.one_in(2))
                text_ += " M3 x 8, hexalobular 10, pan";
        } else if (kinds_[at] != nullptr) {
            text_ += " kind " + kinds_[at]->name;
            if (choose_.one_in(4))
                text_ += " 300 mAh 3.85 V";
        }
        text_ += "\n";
        while (choose_.more() && !choose_.one_in(3))
            detail(at);
    }

    void detail(std::size_t at) {
        switch (choose_.below(20)) {
        case 0:
            text_ += "  holds " + list() + " to " + item() + "\n";
            break;
        case 1:
            text_ += "  joins " + item() + " to " + item() + "\n";
            break;
        case 2:
            text_ += "  covers " + list() + "\n";
            break;
        case 3:
            text_ += "  blocks " + list() + (choose_.one_in(3) ? " assumed\n" : "\n");
            break;
        case 4:
            text_ += "  behind " + list() + "\n";
            break;
        case 5:
            text_ += "  under " + item() + (choose_.one_in(2) ? " 1\n" : "\n");
            break;
        case 6:
            text_ += "  in " + item() + "\n";
            break;
        case 7:
            text_ += "  feeds " + list() + " through " + item() + "\n";
            break;
        case 8:
            text_ += "  needs " + need(at);
            break;
        case 9:
            text_ +=
                choose_.one_in(2) ? "  torque 0.20 N.m\n" : "  torque 9999999 N.m + 2 lbf.in\n";
            break;
        case 10:
            text_ += choose_.one_in(2) ? "  one use\n" : "  used again\n";
            break;
        case 11:
            text_ += choose_.one_in(2) ? "  only eu\n" : "  only uk, us\n";
            break;
        case 12:
            text_ += choose_.one_in(2) ? "  warning: Hot. *Wait*.\n" : "  danger: Live.\n";
            break;
        case 13:
            text_ += "  preload 18 kN\n";
            break;
        case 14:
            text_ += "  renewed as " + item() + "\n";
            break;
        case 15:
            text_ += "  keep order, face\n";
            break;
        case 16:
            text_ += "  limit length at least 5 mm when " + condition() + "\n";
            break;
        case 17:
            text_ += "  price 14.50 EUR\n";
            break;
        case 18:
            text_ += "  depth 6 mm above " + item() + "\n";
            break;
        default:
            text_ += "  told by \"the blue patch\"\n";
            break;
        }
    }

    void guide(std::size_t at) {
        text_ += "guide g" + std::to_string(at) + " \"Work " + std::to_string(at) + "\"\n";
        text_ += choose_.one_in(3) ? "  for licensed\n" : "  for competent\n";
        if (choose_.one_in(2)) {
            const std::size_t goal = choose_.below(items_);
            text_ += "  goal " + verb(goal) + " " + name(goal) + "\n";
        }
        if (choose_.one_in(2))
            text_ += "  tool t1 \"hexalobular driver 10\"\n";
        if (choose_.one_in(3))
            text_ += "  spare s1 for " + item() + "\n";
        text_ += "take-apart\n";
        steps("a");
        if (choose_.one_in(2)) {
            text_ += "work\n";
            steps("w");
        }
        if (choose_.one_in(8))
            return;
        text_ += "put-back\n";
        if (!choose_.one_in(3))
            text_ += "  derived\n";
        else
            steps("p");
        if (choose_.one_in(3))
            text_ += "test t \"Try it\"\n  when " + condition() + "\n  proves " + item() + "\n";
    }

    void steps(const std::string& prefix) {
        const std::size_t count = 1 + choose_.below(4);
        for (std::size_t i = 0; i < count; ++i) {
            text_ += "step " + prefix + std::to_string(i) + " \"Step\"\n";
            if (choose_.one_in(8)) {
                text_ += "  do g" + std::to_string(choose_.below(3)) + "\n";
                continue;
            }
            const std::size_t actions = 1 + choose_.below(5);
            for (std::size_t k = 0; k < actions; ++k)
                action();
        }
    }

    void action() {
        const std::size_t at = choose_.below(items_);
        text_ += "  " + verb(at) + " " + name(at);
        if (choose_.one_in(6))
            text_ += " " + std::to_string(1 + choose_.below(6));
        if (choose_.one_in(6))
            text_ += ", " + item();
        if (choose_.one_in(4))
            text_ += " with t1";
        text_ += choose_.one_in(10) ? "  # allow still-held: tried\n" : "\n";
    }

    Choices choose_;
    std::string text_;
    std::size_t items_ = 0;
    std::vector<const model::Kind*> kinds_;
};

} // namespace matchmark::fuzz
