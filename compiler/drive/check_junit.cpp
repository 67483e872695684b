// Findings as JUnit XML, for build servers: one test case a guide and variant.
//
// No standard defines the format. What is written is what its readers have in common: testsuites,
// testsuite, testcase, and in a case at most one failure or error, and system-out.
#include "drive/check_junit.hpp"

#include "source/markup.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::drive {

namespace {

struct GuideCases {
    const model::Guide* guide = nullptr;
    std::vector<std::string> variants; // one nameless when the device has none
    std::size_t first = 0;             // its first case
};

// The variants that the guide is for.
std::vector<std::string> variants_of(const model::Model& model, const model::Guide& guide) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < model.device.variants.size(); ++i) {
        if (((guide.variants >> i) & 1U) != 0) {
            names.push_back(model.device.variants[i]);
        }
    }
    return names.empty() ? std::vector<std::string>{""} : names;
}

class Sorting {
public:
    explicit Sorting(const Compilation& done) : done_(done) {
        suite_.file = done.sources.file(done.root).path;
        suite_.unreadable = done.unreadable;
        for (const model::Guide& guide : done.model.guides) {
            if (guide.file != done.root) {
                continue;
            }
            guides_.push_back({&guide, variants_of(done.model, guide), suite_.cases.size()});
            const std::uint32_t line = done.sources.place(done.root, guide.span.begin).line;
            for (const std::string& variant : guides_.back().variants) {
                const std::string name =
                    variant.empty() ? guide.name : fmt::format("{} ({})", guide.name, variant);
                suite_.cases.push_back({name, line, {}, {}});
            }
        }
        the_file_.name = "the file";
    }

    void sort(const Diagnostic& finding, const Reported& shown) {
        for (const GuideCases& cases : guides_) {
            const Span at = finding.primary;
            const bool inside = at.file == done_.root &&
                                at.begin >= cases.guide->declaration.begin &&
                                at.begin <= cases.guide->end.begin;
            if (!inside) {
                continue;
            }
            for (std::size_t i = 0; i < cases.variants.size(); ++i) {
                const auto& wanted = finding.variants;
                const bool here = wanted.empty() || std::find(wanted.begin(), wanted.end(),
                                                              cases.variants[i]) != wanted.end();
                if (here) {
                    add(suite_.cases[cases.first + i], shown);
                }
            }
            return;
        }
        add(the_file_, shown);
    }

    JunitSuite take() {
        const bool told = !the_file_.failures.empty() || !the_file_.others.empty();
        if (told || suite_.cases.empty()) {
            suite_.cases.insert(suite_.cases.begin(), std::move(the_file_));
        }
        return std::move(suite_);
    }

private:
    static void add(JunitCase& into, const Reported& shown) {
        (shown.severity == Severity::error ? into.failures : into.others).push_back(shown.text);
    }

    const Compilation& done_;
    JunitSuite suite_;
    std::vector<GuideCases> guides_;
    JunitCase the_file_;
};

std::string first_line(const std::string& text) { return text.substr(0, text.find('\n')); }

std::string joined_words(const std::vector<std::string>& texts) {
    std::string all;
    for (const std::string& text : texts) {
        all += (all.empty() ? "" : "\n") + text;
    }
    return all;
}

void append_case(std::string& xml, const JunitSuite& suite, const JunitCase& one) {
    xml += fmt::format("    <testcase classname=\"{}\" name=\"{}\" file=\"{}\" line=\"{}\"",
                       markup_escaped(suite.file), markup_escaped(one.name),
                       markup_escaped(suite.file), one.line);
    if (one.failures.empty() && one.others.empty()) {
        xml += "/>\n";
        return;
    }
    xml += ">\n";
    if (!one.failures.empty()) {
        const char* tag = suite.unreadable ? "error" : "failure";
        const std::string more = one.failures.size() > 1
                                     ? fmt::format(" (and {} more)", one.failures.size() - 1)
                                     : std::string();
        xml += fmt::format("      <{0} type=\"{0}\" message=\"{1}{2}\">{3}</{0}>\n", tag,
                           markup_escaped(first_line(one.failures.front())), more,
                           markup_escaped(joined_words(one.failures)));
    }
    if (!one.others.empty()) {
        xml += fmt::format("      <system-out>{}</system-out>\n",
                           markup_escaped(joined_words(one.others)));
    }
    xml += "    </testcase>\n";
}

struct Counts {
    std::size_t tests = 0;
    std::size_t failures = 0;
    std::size_t errors = 0;
};

Counts counts_of(const JunitSuite& suite) {
    Counts counts;
    for (const JunitCase& one : suite.cases) {
        ++counts.tests;
        (suite.unreadable ? counts.errors : counts.failures) += one.failures.empty() ? 0U : 1U;
    }
    return counts;
}

std::string attributes(const Counts& counts) {
    return fmt::format("tests=\"{}\" failures=\"{}\" errors=\"{}\"", counts.tests, counts.failures,
                       counts.errors);
}

} // namespace

JunitSuite junit_suite(const Compilation& done, const std::vector<Reported>& shown) {
    Sorting sorting(done);
    for (std::size_t i = 0; i < std::min(shown.size(), done.findings.size()); ++i) {
        sorting.sort(done.findings[i], shown[i]);
    }
    return sorting.take();
}

std::string junit_text(const std::vector<JunitSuite>& suites) {
    Counts all;
    std::string inner;
    for (const JunitSuite& suite : suites) {
        const Counts counts = counts_of(suite);
        all.tests += counts.tests;
        all.failures += counts.failures;
        all.errors += counts.errors;
        inner += fmt::format("  <testsuite name=\"{}\" {}>\n", markup_escaped(suite.file),
                             attributes(counts));
        for (const JunitCase& one : suite.cases) {
            append_case(inner, suite, one);
        }
        inner += "  </testsuite>\n";
    }
    return fmt::format("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                       "<testsuites name=\"matchmark\" {}>\n{}</testsuites>\n",
                       attributes(all), inner);
}

} // namespace matchmark::drive
