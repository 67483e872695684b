// One pass over the bytes, whatever stands in them.
#include "drive/importing/table.hpp"

#include "source/text.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace matchmark::drive {

namespace {

std::string clean(std::string cell) {
    for (char& c : cell) {
        const auto byte = static_cast<unsigned char>(c);
        c = byte < 0x20 || byte == 0x7f ? ' ' : c;
    }
    const auto begin = cell.find_first_not_of(' ');
    if (begin == std::string::npos) {
        return {};
    }
    return cell.substr(begin, cell.find_last_not_of(' ') + 1 - begin);
}

// The sign that parts most cells of the first line that holds any; a comma where none does.
char separator_of(std::string_view text) {
    constexpr std::array<char, 3> signs{',', ';', '\t'};
    std::array<std::size_t, 3> counts{};
    bool quoted = false;
    bool any = false;
    for (const char c : text) {
        if (c == '"') {
            quoted = !quoted;
        } else if (!quoted && (c == '\n' || c == '\r') && any) {
            break;
        }
        any = any || (c != '\n' && c != '\r');
        for (std::size_t i = 0; i < signs.size() && !quoted; ++i) {
            counts[i] += c == signs[i] ? 1U : 0U;
        }
    }
    const auto most = std::max_element(counts.begin(), counts.end());
    return signs[static_cast<std::size_t>(most - counts.begin())];
}

class TableReader {
public:
    TableReader(std::string_view text, Table& table) : text_(text), table_(table) {}

    void read() {
        begin_row();
        while (at_ < text_.size() && table_.problem.empty()) {
            step();
        }
        if (table_.problem.empty() && (!cell_.empty() || !row_.cells.empty())) {
            end_row();
        }
    }

private:
    void step() {
        const char c = text_[at_];
        if (c == '"' && cell_.find_first_not_of(' ') == std::string::npos) {
            cell_.clear();
            quoted();
        } else if (c == table_.separator) {
            end_cell();
            ++at_;
        } else if (c == '\n' || c == '\r') {
            at_ += c == '\r' && text_.substr(at_ + 1, 1) == "\n" ? 2U : 1U;
            end_row();
            ++line_;
            begin_row();
        } else {
            cell_ += c;
            ++at_;
        }
    }

    // What stands behind the closing quote belongs to the cell too: some programs write so.
    void quoted() {
        const std::uint32_t opened = line_;
        for (++at_; at_ < text_.size(); ++at_) {
            const char c = text_[at_];
            line_ += c == '\n' ? 1U : 0U;
            if (c != '"') {
                cell_ += c;
            } else if (text_.substr(at_ + 1, 1) == "\"") {
                cell_ += c;
                ++at_;
            } else {
                ++at_;
                return;
            }
        }
        fail(opened, "a quote opens here and is not closed");
    }

    void begin_row() { row_ = {line_, {}}; }

    void end_cell() {
        if (row_.cells.size() >= most_cells) {
            fail(row_.line, "there are more than 500 cells in one row");
            return;
        }
        row_.cells.push_back(clean(std::exchange(cell_, {})));
    }

    void end_row() {
        end_cell();
        const bool any = std::any_of(row_.cells.begin(), row_.cells.end(),
                                     [](const std::string& cell) { return !cell.empty(); });
        if (any && table_.rows.size() >= most_rows) {
            fail(row_.line, "there are more than 20000 rows");
        } else if (any && table_.problem.empty()) {
            table_.rows.push_back(std::move(row_));
        }
        row_ = {};
    }

    void fail(std::uint32_t line, const char* what) {
        table_.problem = what;
        table_.problem_line = line;
        table_.rows.clear();
    }

    std::string_view text_;
    Table& table_;
    std::size_t at_ = 0;
    std::uint32_t line_ = 1;
    std::string cell_;
    TableRow row_;
};

} // namespace

Table read_table(std::string_view text) {
    Table table;
    if (text.starts_with("\xff\xfe") || text.starts_with("\xfe\xff")) {
        table.problem = "it is written in UTF-16; save it as CSV in UTF-8";
        return table;
    }
    if (text.starts_with("\xef\xbb\xbf")) {
        text.remove_prefix(3);
    }
    if (const std::size_t bad = first_unreadable_byte(text); bad != std::string::npos) {
        table.problem = "it is not text in UTF-8; save it as CSV in UTF-8";
        table.problem_line = static_cast<std::uint32_t>(
            std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(bad), '\n') + 1);
        return table;
    }
    std::uint32_t passed = 0; // lines passed over
    if (text.starts_with("sep=") && text.size() > 4) {
        table.separator = text[4];
        const auto end = text.find('\n');
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        passed = 1;
    } else {
        table.separator = separator_of(text);
    }
    TableReader(text, table).read();
    for (TableRow& row : table.rows) {
        row.line += passed;
    }
    table.problem_line += table.problem_line == 0 ? 0 : passed;
    return table;
}

} // namespace matchmark::drive
