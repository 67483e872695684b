// Takes the translations of an older catalogue over into a newer one.
#include "language/catalogue.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <set>

namespace matchmark::language {

bool is_translated(const Message& message) {
    return !message.forms.empty() &&
           std::none_of(message.forms.begin(), message.forms.end(),
                        [](const std::string& form) { return form.empty(); });
}

namespace {

std::vector<std::string> words_in(const std::string& text) {
    std::vector<std::string> words;
    std::string word;
    for (const char c : text + " ") {
        if (c == ' ' || c == '\n') {
            if (!word.empty()) {
                words.push_back(word);
            }
            word.clear();
        } else {
            word += c;
        }
    }
    std::sort(words.begin(), words.end());
    return words;
}

// The share of words that two texts have in common, of the longer one's: 0 to 1.
double likeness(const std::string& left, const std::string& right) {
    const auto one = words_in(left);
    const auto other = words_in(right);
    std::vector<std::string> common;
    std::set_intersection(one.begin(), one.end(), other.begin(), other.end(),
                          std::back_inserter(common));
    const std::size_t longer = std::max(one.size(), other.size());
    return longer == 0 ? 0 : static_cast<double>(common.size()) / static_cast<double>(longer);
}

// The unused old message most like this one, of its own context if that will do; null when none is
// half like it.
const Message* nearest_old(const Catalogue& old, const std::set<const Message*>& used,
                           const Message& message) {
    const Message* best = nullptr;
    double most = 0.5; // half of the words: common practice, no source
    for (const Message& candidate : old.messages) {
        const bool same_sort = candidate.many.empty() == message.many.empty();
        if (used.contains(&candidate) || !is_translated(candidate) || !same_sort) {
            continue;
        }
        const double like = likeness(candidate.one, message.one) +
                            (candidate.context == message.context ? 0.25 : 0);
        if (like > most) {
            most = like;
            best = &candidate;
        }
    }
    return best;
}

} // namespace

void add_to(Table& table, const Catalogue& catalogue) {
    for (const Message& message : catalogue.messages) {
        if (!is_translated(message) || message.fuzzy || message.obsolete) {
            continue;
        }
        std::vector<Entry>& entries = table[message.one];
        const auto same = std::find_if(entries.begin(), entries.end(), [&](const Entry& entry) {
            return entry.context == message.context;
        });
        if (same == entries.end()) {
            entries.push_back({message.context, message.forms});
        } else {
            same->forms = message.forms; // the later catalogue has the say
        }
    }
}

Catalogue merged(const Catalogue& old, const Catalogue& found) {
    Catalogue result = found;
    if (!old.header.empty()) {
        result.header = old.header;
        result.language = old.language;
    }
    std::set<const Message*> used;
    std::vector<Message*> open;
    for (Message& message : result.messages) {
        const auto same =
            std::find_if(old.messages.begin(), old.messages.end(), [&](const Message& other) {
                return other.context == message.context && other.one == message.one;
            });
        if (same == old.messages.end()) {
            open.push_back(&message);
            continue;
        }
        used.insert(&*same);
        message.forms = same->forms;
        message.comments = same->comments;
        message.fuzzy = same->fuzzy;
        message.previous = same->previous;
        if (same->many.empty() != message.many.empty()) {
            message.fuzzy = true;
            message.forms.resize(message.many.empty() ? 1 : 2, message.forms.front());
        }
    }
    for (Message* message : open) {
        if (const Message* near = nearest_old(old, used, *message)) {
            used.insert(near);
            message->forms = near->forms;
            message->comments = near->comments;
            message->fuzzy = true;
            message->previous = near->one;
        }
    }
    for (const Message& message : old.messages) {
        if (!used.contains(&message) && is_translated(message)) {
            result.messages.push_back(message);
            result.messages.back().obsolete = true;
            result.messages.back().references.clear();
        }
    }
    return result;
}

std::string po_header(const std::string& project, const std::string& tag) {
    const Traits* traits = find_traits(tag);
    return fmt::format(
        "Project-Id-Version: {}\nReport-Msgid-Bugs-To: \nPO-Revision-Date: YEAR-MO-DA HO:MI+ZONE\n"
        "Last-Translator: \nLanguage-Team: \nLanguage: {}\nMIME-Version: 1.0\n"
        "Content-Type: text/plain; charset=UTF-8\nContent-Transfer-Encoding: 8bit\n"
        "Plural-Forms: {}\n",
        project, tag, traits == nullptr ? "nplurals=2; plural=(n != 1);" : plural_forms(*traits));
}

} // namespace matchmark::language
