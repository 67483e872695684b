// Follows `use` and `photo` lines, without looking into what the files say else.
#include "drive/touched.hpp"

#include "parse/parse.hpp"
#include "syntax/reader.hpp"

#include <map>
#include <set>

namespace matchmark::drive {

namespace {

// The files that one file names, by folded path.
struct Named {
    std::vector<std::string> uses;
    std::vector<std::string> pictures;
};

class Graph {
public:
    Graph(Disk& disk, const std::set<std::string>& touched) : disk_(disk), touched_(touched) {}

    // Is the file, or anything that it leads to, among the touched ones?
    bool reaches(const std::string& path, const std::string* text) {
        std::set<std::string> seen{path};
        std::vector<std::string> open{path};
        while (!open.empty()) {
            const std::string next = open.back();
            open.pop_back();
            if (touched_.contains(next)) {
                return true;
            }
            const Named& named = named_by(next, next == path ? text : nullptr);
            for (const std::string& picture : named.pictures) {
                if (touched_.contains(picture)) {
                    return true;
                }
            }
            for (const std::string& use : named.uses) {
                if (seen.insert(use).second) {
                    open.push_back(use);
                }
            }
        }
        return false;
    }

private:
    const Named& named_by(const std::string& path, const std::string* text) {
        const auto known = known_.find(path);
        if (known != known_.end()) {
            return known->second;
        }
        Named named;
        if (text != nullptr) {
            named = read(path, *text);
        } else {
            auto bytes = disk_.read(path);
            if (auto* content = std::get_if<std::string>(&bytes)) {
                named = read(path, std::move(*content));
            }
        }
        return known_.emplace(path, std::move(named)).first->second;
    }

    static Named read(const std::string& path, std::string text) {
        Named named;
        if (first_unreadable_byte(text) != std::string::npos) {
            return named;
        }
        SourceMap sources;
        sources.add(path, std::move(text));
        std::vector<Diagnostic> ignored;
        const syntax::File file = syntax::parse(sources, 0, ignored);
        for (const syntax::Line& line : file.lines) {
            const bool use = line.keyword == syntax::Keyword::use;
            if (!use && line.keyword != syntax::Keyword::photo) {
                continue;
            }
            syntax::Reader reader{sources, file, line};
            if (const auto written = reader.take_text()) {
                (use ? named.uses : named.pictures).push_back(beside(path, *written));
            }
        }
        return named;
    }

    Disk& disk_;
    const std::set<std::string>& touched_;
    std::map<std::string, Named> known_;
};

// "\303\244\"" -> the bytes; what git writes between quotes.
std::string without_quotes(const std::string& quoted) {
    std::string name;
    for (std::size_t i = 1; i + 1 < quoted.size(); ++i) {
        if (quoted[i] != '\\' || i + 2 >= quoted.size()) {
            name += quoted[i];
            continue;
        }
        const char next = quoted[++i];
        if (next >= '0' && next <= '7' && i + 2 < quoted.size()) {
            const int value = (next - '0') * 64 + (quoted[i + 1] - '0') * 8 + (quoted[i + 2] - '0');
            name += static_cast<char>(value);
            i += 2;
        } else {
            name += next == 'n' ? '\n' : next == 't' ? '\t' : next;
        }
    }
    return name;
}

} // namespace

std::vector<std::string> listed_names(const std::string& text) {
    const char end = text.find('\0') == std::string::npos ? '\n' : '\0';
    std::vector<std::string> names;
    std::string name;
    const auto finish = [&] {
        if (end == '\n' && name.ends_with('\r')) {
            name.pop_back();
        }
        const bool quoted =
            end == '\n' && name.size() >= 2 && name.starts_with('"') && name.ends_with('"');
        if (!name.empty()) {
            names.push_back(quoted ? without_quotes(name) : name);
        }
        name.clear();
    };
    for (const char c : text) {
        if (c == end) {
            finish();
        } else {
            name += c;
        }
    }
    finish();
    return names;
}

std::vector<Input> touched_by(Disk& disk, const std::vector<Input>& files,
                              const std::vector<std::string>& touched) {
    std::set<std::string> folded;
    for (const std::string& name : touched) {
        folded.insert(beside("", name));
    }
    Graph graph(disk, folded);
    std::vector<Input> found;
    for (const Input& file : files) {
        if (graph.reaches(beside("", file.path), file.given())) {
            found.push_back(file);
        }
    }
    return found;
}

} // namespace matchmark::drive
