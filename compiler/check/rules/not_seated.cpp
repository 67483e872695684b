// A tie fastened while a part that it ties is not in its place.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

void find_not_seated(const Walk& walk, std::vector<Diagnostic>& findings) {
    each_refusal<bench::NotSeated>(
        walk, [&](const Trouble& trouble, const bench::NotSeated& reason) {
            const bench::Act& act = act_of(walk, trouble);
            const bool one = !several(walk, reason.parts);
            Diagnostic finding =
                refused(walk, trouble,
                        fmt::format("{} put on before what {} is in place", item_is(walk, act.item),
                                    several(walk, {act.item}) ? "they tie" : "it ties"));
            finding.label = "ties what is not there yet";
            finding.why = fmt::format("{} {} not in {} place", names(walk, reason.parts),
                                      one ? "is" : "are", one ? "its" : "their");
            for (const auto part : reason.parts)
                finding.related.push_back({walk.model.item(part).span, "not in its place"});
            findings.push_back(std::move(finding));
        });
}

} // namespace

extern const Rule not_seated;
const Rule not_seated{"not-seated", "not back", Severity::error,
                      "fastening or plugging in before the parts that are tied are in place",
                      find_not_seated};

} // namespace matchmark::check::rules
