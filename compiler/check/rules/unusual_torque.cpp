// A torque that the fastener bears, and that is far from the usual one.
//
// Published tables differ by a tenth, so no less counts above. What is far below is the project's
// own rule: a fifth, where the author has said what the screw is made of.
#include "check/torques.hpp"
#include "check/troubles.hpp"

#include "model/bolting.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

constexpr double far_above = 1.1;
constexpr double far_below = 0.2;

std::optional<double> usual_for(const StatedTorque& stated, const model::Friction* friction) {
    if (stated.grade == nullptr || friction == nullptr)
        return std::nullopt;
    return model::usual_torque(*stated.thread, *stated.grade, friction->coefficient);
}

void find_unusual_torque(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const StatedTorque& stated : stated_torques(walk)) {
        const auto* friction = model::friction_of(walk.model, walk.model.item(stated.item));
        const auto usual = usual_for(stated, friction);
        if (!usual)
            continue;
        const auto breaking = model::breaking_torque(*stated.thread, *stated.grade);
        const bool breaks = breaking && stated.torque.base > *breaking;
        const bool high = stated.torque.base > far_above * *usual && !breaks;
        const bool low = stated.torque.base < far_below * *usual &&
                         !walk.model.item(stated.item).bolt->grade.empty();
        if (!high && !low)
            continue;
        Diagnostic finding = torque_finding(walk, stated,
                                            fmt::format("{} is {} for {}", to_text(stated.torque),
                                                        high ? "much" : "little",
                                                        model::with_kind(walk.model, stated.item)));
        finding.label = high ? "more than usual" : "less than a fifth of the usual";
        finding.why = fmt::format("{}, {}, is usually tightened to {}", what_bears(walk, stated),
                                  friction->title, to_text(torque_shown(*usual)));
        if (high && walk.model.item(stated.item).bolt->grade.empty())
            finding.help += "; if it is right, name the grade of the screw";
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule unusual_torque;
const Rule unusual_torque{"unusual-torque", "torque", Severity::warning,
                          "a torque far from the usual one for thread, grade and friction",
                          find_unusual_torque};

} // namespace matchmark::check::rules
