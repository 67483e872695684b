// Keeps findings beside the digests of everything that they were made from.
#include "drive/check_cache.hpp"

#include "publish/digest.hpp"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <string_view>

namespace matchmark::drive {

namespace {

using nlohmann::json;

std::string digest_of(std::string_view bytes) {
    return publish::hexadecimal(publish::sha256(bytes), 32);
}

// Lengths keep ("ab", "c") and ("a", "bc") apart.
std::string joined(const std::vector<std::string_view>& parts) {
    std::string text;
    for (const std::string_view part : parts) {
        text += fmt::format("{}:", part.size());
        text += part;
    }
    return text;
}

// A question to the disk, and the digest of its answer.
struct Asked {
    std::string sort; // "read", "list", "folder", "there", "inside"
    std::string path;
    std::string about; // the ending of a list; the file whose project is meant
    std::string answer;
};

std::string digest_of_read(const DiskResult<std::string>& answer) {
    const auto* problem = std::get_if<DiskProblem>(&answer);
    return problem != nullptr ? "none:" + digest_of(problem->reason)
                              : digest_of(std::get<std::string>(answer));
}

std::string digest_of_list(const DiskResult<std::vector<std::string>>& answer) {
    if (const auto* problem = std::get_if<DiskProblem>(&answer)) {
        return "none:" + digest_of(problem->reason);
    }
    const auto& names = std::get<std::vector<std::string>>(answer);
    return digest_of(joined({names.begin(), names.end()}));
}

std::string answer_now(Disk& disk, const Asked& asked) {
    if (asked.sort == "read") {
        return digest_of_read(disk.read(asked.path));
    }
    if (asked.sort == "list") {
        return digest_of_list(disk.list(asked.path, asked.about));
    }
    if (asked.sort == "inside") {
        return disk.lets_in(asked.path, asked.about) ? "yes" : "no";
    }
    const bool so = asked.sort == "folder" ? disk.is_folder(asked.path) : disk.exists(asked.path);
    return so ? "yes" : "no";
}

// Hands every question on, and notes it with its answer.
class NotingDisk final : public Disk {
public:
    explicit NotingDisk(Disk& below) : below_(below) {}

    [[nodiscard]] const std::vector<Asked>& asked() const { return asked_; }

    DiskResult<std::string> read(const std::string& path) override {
        auto answer = below_.read(path);
        asked_.push_back({"read", path, "", digest_of_read(answer)});
        return answer;
    }
    DiskResult<std::monostate> write(const std::string& path, std::string_view bytes) override {
        return below_.write(path, bytes);
    }
    DiskResult<std::vector<std::string>> list(const std::string& folder,
                                              std::string_view ending) override {
        auto answer = below_.list(folder, ending);
        asked_.push_back({"list", folder, std::string(ending), digest_of_list(answer)});
        return answer;
    }
    bool is_folder(const std::string& path) override {
        const bool so = below_.is_folder(path);
        asked_.push_back({"folder", path, "", so ? "yes" : "no"});
        return so;
    }
    bool exists(const std::string& path) override {
        const bool so = below_.exists(path);
        asked_.push_back({"there", path, "", so ? "yes" : "no"});
        return so;
    }

    bool lets_in(const std::string& path, const std::string& root) override {
        const bool so = below_.lets_in(path, root);
        asked_.push_back({"inside", path, root, so ? "yes" : "no"});
        return so;
    }

private:
    Disk& below_;
    std::vector<Asked> asked_;
};

json suite_json(const JunitSuite& suite) {
    json cases = json::array();
    for (const JunitCase& one : suite.cases) {
        cases.push_back({one.name, one.line, one.failures, one.others});
    }
    return {{"file", suite.file}, {"unreadable", suite.unreadable}, {"cases", std::move(cases)}};
}

JunitSuite suite_of(const json& object) {
    JunitSuite suite{object.at("file"), object.at("unreadable"), {}};
    for (const json& one : object.at("cases")) {
        suite.cases.push_back({one.at(0), one.at(1), one.at(2), one.at(3)});
    }
    return suite;
}

json checked_json(const Checked& checked) {
    json findings = json::array();
    for (const Reported& one : checked.findings) {
        findings.push_back(
            {one.key, static_cast<unsigned>(one.severity), one.line, one.text, one.json});
    }
    return {{"guides", checked.guides},           {"devices", checked.devices},
            {"unreadable", checked.unreadable},   {"findings", std::move(findings)},
            {"suite", suite_json(checked.suite)}, {"depends", checked.depends}};
}

Checked checked_of(const json& object) {
    Checked checked;
    checked.guides = object.at("guides");
    checked.devices = object.at("devices");
    checked.unreadable = object.at("unreadable");
    for (const json& one : object.at("findings")) {
        const auto severity = static_cast<Severity>(one.at(1).get<std::uint8_t>());
        checked.findings.push_back({one.at(0), severity, one.at(2), one.at(3), one.at(4)});
    }
    checked.suite = suite_of(object.at("suite"));
    checked.depends = object.at("depends").get<std::set<std::string>>();
    return checked;
}

// The digest of the rest, a line end, the rest. Nothing when a name in it is no UTF-8, which JSON
// cannot hold: such a file is checked each time.
std::optional<std::string> entry_text(const std::string& key, const std::vector<Asked>& asked,
                                      const Checked& checked) {
    json questions = json::array();
    for (const Asked& one : asked) {
        questions.push_back({one.sort, one.path, one.about, one.answer});
    }
    const json whole = {
        {"key", key}, {"asked", std::move(questions)}, {"result", checked_json(checked)}};
    try {
        const std::string rest = whole.dump();
        return digest_of(rest) + "\n" + rest;
    } catch (const json::exception&) {
        return std::nullopt;
    }
}

std::optional<Checked> still_true(Disk& disk, const std::string& key, const std::string& entry) {
    const std::size_t end = entry.find('\n');
    if (end == std::string::npos) {
        return std::nullopt;
    }
    const std::string_view rest = std::string_view(entry).substr(end + 1);
    if (entry.compare(0, end, digest_of(rest)) != 0) {
        return std::nullopt;
    }
    try {
        const json whole = json::parse(rest);
        if (whole.at("key") != key) {
            return std::nullopt;
        }
        const json& asked = whole.at("asked");
        const bool same = std::all_of(asked.begin(), asked.end(), [&](const json& one) {
            const Asked question{one.at(0), one.at(1), one.at(2), one.at(3)};
            return answer_now(disk, question) == question.answer;
        });
        return same ? std::optional(checked_of(whole.at("result"))) : std::nullopt;
    } catch (const json::exception&) {
        return std::nullopt;
    }
}

} // namespace

std::optional<std::string> program_digest(Disk& disk) {
    const auto bytes = disk.read("/proc/self/exe");
    const auto* program = std::get_if<std::string>(&bytes);
    return program != nullptr ? std::optional(digest_of(*program)) : std::nullopt;
}

Checked cached(Disk& disk, const CheckCache& cache, const Input& input, const CheckFile& check_file,
               std::string& problem) {
    Input whole = input;
    if (!whole.text) {
        auto read = disk.read(input.path);
        auto* bytes = std::get_if<std::string>(&read);
        if (bytes == nullptr) {
            return check_file(disk, input);
        }
        whole.text = std::move(*bytes);
    }
    const std::string key = digest_of(joined({cache.about, input.path, *whole.text}));
    const std::string name =
        fmt::format("{}/{}/{}.json", cache.folder, key.substr(0, 2), key.substr(2));
    if (const auto kept = disk.read(name); const auto* entry = std::get_if<std::string>(&kept)) {
        if (auto found = still_true(disk, key, *entry)) {
            return std::move(*found);
        }
    }
    NotingDisk noting(disk);
    Checked checked = check_file(noting, whole);
    if (const auto entry = entry_text(key, noting.asked(), checked)) {
        const auto written = disk.write_soon(name, *entry);
        if (const auto* reason = std::get_if<DiskProblem>(&written)) {
            problem = reason->reason;
        }
    }
    return checked;
}

} // namespace matchmark::drive
