// The words for how grave a finding is.
#pragma once

#include "diagnostics/diagnostic.hpp"

#include <string_view>

namespace matchmark {

[[nodiscard]] constexpr std::string_view severity_word(Severity severity) {
    switch (severity) {
    case Severity::error:
        return "error";
    case Severity::warning:
        return "warning";
    case Severity::advice:
        return "advice";
    }
    return "error";
}

} // namespace matchmark
