// What the rules find, as an editor shows it; and the edits that mend it.
#pragma once

#include "serve/editor/workspace.hpp"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace matchmark::serve {

ShownFinding shown(Tables& tables, const Diagnostic& finding, const std::string& rules_at);

// The findings of one compilation, by the folded path of the file in which they stand.
std::map<std::string, std::vector<ShownFinding>>
findings_by_file(const Workspace& workspace, const Analysis& analysis, const std::string& rules_at);

// Keeps what each file was told last, and tells what is new.
class Publisher {
public:
    // The address below which the rules have their pages; empty: findings carry none.
    std::string rules_at;

    // The findings of this root from now on.
    void set(const Workspace& workspace, const Analysis& analysis);
    // This root is no longer looked at.
    void drop(const std::string& root);
    // The messages to send: of each file whose findings are others than last told. Those of files
    // in `always` are told in any case.
    std::vector<std::string> messages(const Workspace& workspace,
                                      const std::set<std::string>& always);
    // What a file shows now.
    [[nodiscard]] std::vector<ShownFinding> of_file(const std::string& path) const;

private:
    std::map<std::string, std::map<std::string, std::vector<ShownFinding>>> by_root_;
    std::set<std::string> changed_;           // files to look at
    std::map<std::string, std::string> told_; // by path: what was sent, as text
};

// --- mends ---

// The new text in place of the old one, but for the lines at both ends that stay.
TextEdit change_between(const LineTable& table, std::string_view before, std::string_view after);
// What can be mended in this part of the file, and, at the end, all that is safe to mend at once.
std::vector<CodeAction> mends_in(Workspace& workspace, const std::string& path, Range range,
                                 const std::string& rules_at);

} // namespace matchmark::serve
