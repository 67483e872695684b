// The one door to libgettextpo, which reads and writes files alone: the bytes go through files in
// memory.
#include "language/catalogue.hpp"

#include <fmt/core.h>
#include <gettext-po.h>

#include <algorithm>
#include <array>
#include <csetjmp>
#include <cstdlib>
#include <mutex>
#include <sys/mman.h>
#include <unistd.h>

namespace matchmark::language {

namespace {

constexpr std::size_t most_bytes = 16UL << 20U;

struct Complaint {
    int severity = 0;
    std::size_t line = 0; // 0: not known
    std::string words;
};

// What the library reports; its handlers take no argument of ours, so this stands beside them for
// one reading, under the lock.
struct Reading {
    std::mutex lock;
    std::vector<Complaint> complaints;
    std::jmp_buf out; // a fatal error must not return to the library
};

Reading& reading() {
    static Reading one;
    return one;
}

void complain(int severity, const char* file, std::size_t line, const char* words) {
    constexpr std::size_t most_told = 20;
    Complaint told{severity, file == nullptr || line == static_cast<std::size_t>(-1) ? 0 : line,
                   words};
    std::replace(told.words.begin(), told.words.end(), '\n', ' ');
    while (told.words.ends_with(' ')) {
        told.words.pop_back();
    }
    if (reading().complaints.size() < most_told) {
        reading().complaints.push_back(std::move(told));
    }
}

void on_error(int severity, po_message_t /*message*/, const char* file, std::size_t line,
              std::size_t /*column*/, int /*multiline*/, const char* words) {
    complain(severity, file, line, words);
    if (severity == PO_SEVERITY_FATAL_ERROR) {
        std::longjmp(reading().out, 1);
    }
}

void on_two_errors(int severity, po_message_t message, const char* file, std::size_t line,
                   std::size_t column, int multiline, const char* words, po_message_t /*second*/,
                   const char* /*file*/, std::size_t /*line*/, std::size_t /*column*/,
                   int /*multiline*/, const char* /*words*/) {
    on_error(severity, message, file, line, column, multiline, words);
}

constexpr po_xerror_handler handler{on_error, on_two_errors};

// A file in memory, by a name under which a library can open it.
class MemoryFile {
public:
    MemoryFile() : number_(memfd_create("catalogue", MFD_CLOEXEC)) {}
    ~MemoryFile() {
        if (number_ >= 0) {
            close(number_);
        }
    }
    MemoryFile(const MemoryFile&) = delete;
    MemoryFile& operator=(const MemoryFile&) = delete;
    MemoryFile(MemoryFile&&) = delete;
    MemoryFile& operator=(MemoryFile&&) = delete;

    [[nodiscard]] std::string path() const { return fmt::format("/proc/self/fd/{}", number_); }

    [[nodiscard]] bool put(std::string_view bytes) const {
        while (number_ >= 0 && !bytes.empty()) {
            const ssize_t written = write(number_, bytes.data(), bytes.size());
            if (written <= 0) {
                return false;
            }
            bytes.remove_prefix(static_cast<std::size_t>(written));
        }
        return number_ >= 0;
    }

    [[nodiscard]] std::string all() const {
        std::string bytes;
        std::array<char, 65536> buffer{};
        for (off_t at = 0; number_ >= 0;) {
            const ssize_t got = pread(number_, buffer.data(), buffer.size(), at);
            if (got <= 0) {
                break;
            }
            bytes.append(buffer.data(), static_cast<std::size_t>(got));
            at += got;
        }
        return bytes;
    }

private:
    int number_;
};

// No object with a destructor may live here: a fatal error jumps out.
po_file_t read_file(const char* path) {
    if (setjmp(reading().out) != 0) { // NOLINT(cert-err52-cpp): the library offers no other way out
        return nullptr;
    }
    return po_file_read(path, &handler);
}

bool write_file(po_file_t file, const char* path) {
    if (setjmp(reading().out) != 0) { // NOLINT(cert-err52-cpp)
        return false;
    }
    return po_file_write(file, path, &handler) != nullptr;
}

std::string string_of(const char* text) { return text == nullptr ? "" : text; }

std::vector<std::string> lines_of(const char* text) {
    std::vector<std::string> lines;
    const std::string all = string_of(text);
    for (std::size_t at = 0; at < all.size();) {
        const std::size_t end = std::min(all.find('\n', at), all.size());
        lines.push_back(all.substr(at, end - at));
        at = end + 1;
    }
    return lines;
}

constexpr auto no_line = static_cast<std::size_t>(-1); // as the library says it

// A backslash at the end of a line, even of a comment, takes the next line away from whoever reads.
std::string text_of(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines) {
        text += line + (line.ends_with('\\') ? " \n" : "\n");
    }
    return text;
}

std::string file_of(const Reference& place) {
    std::string file = place.file;
    while (place.line == 0 && file.ends_with('\\')) {
        file.pop_back();
    }
    return file;
}

Message message_of(po_message_t from) {
    Message message;
    message.context = string_of(po_message_msgctxt(from));
    message.one = string_of(po_message_msgid(from));
    message.many = string_of(po_message_msgid_plural(from));
    if (message.many.empty()) {
        message.forms.push_back(string_of(po_message_msgstr(from)));
    }
    for (int i = 0; !message.many.empty(); ++i) {
        const char* form = po_message_msgstr_plural(from, i);
        if (form == nullptr) {
            break;
        }
        message.forms.emplace_back(form);
    }
    message.fuzzy = po_message_is_fuzzy(from) != 0;
    message.obsolete = po_message_is_obsolete(from) != 0;
    message.comments = lines_of(po_message_comments(from));
    message.explained = lines_of(po_message_extracted_comments(from));
    message.previous = string_of(po_message_prev_msgid(from));
    for (int i = 0;; ++i) {
        po_filepos_t place = po_message_filepos(from, i);
        if (place == nullptr) {
            break;
        }
        const std::size_t line = po_filepos_start_line(place);
        message.references.push_back(
            {string_of(po_filepos_file(place)), line == no_line ? 0 : line});
    }
    return message;
}

// Where the msgid of each message stands, in the order of the file; the library does not say.
std::vector<std::uint32_t> offsets_of(std::string_view text) {
    std::vector<std::uint32_t> offsets;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        std::string_view line = text.substr(at, end - at);
        std::size_t skipped = 0;
        if (line.starts_with("#~ ")) {
            skipped = 3;
        }
        line.remove_prefix(skipped);
        if (line.starts_with("msgid ") || line.starts_with("msgid\"")) {
            offsets.push_back(static_cast<std::uint32_t>(at + skipped));
        }
        at = end + 1;
    }
    return offsets;
}

Diagnostic fault(FileId file, std::uint32_t begin, std::uint32_t end, std::string message) {
    Diagnostic finding;
    finding.rule = "broken-catalogue";
    finding.message = std::move(message);
    finding.primary = {file, begin, end};
    finding.label = "here";
    finding.help = "write `msgctxt`, `msgid` and `msgstr`, each with its text in double quotes";
    return finding;
}

// What the library would stumble over, or take for something else than it is.
bool is_readable(const SourceMap& sources, FileId file, std::vector<Diagnostic>& findings) {
    const std::string& text = sources.file(file).text;
    if (text.size() > most_bytes) {
        findings.push_back(fault(file, 0, 0, "the catalogue is larger than 16 MB"));
        findings.back().help = "give each guide a catalogue of its own";
        return false;
    }
    if (const std::size_t bad = first_unreadable_byte(text); bad != std::string::npos) {
        const auto at = static_cast<std::uint32_t>(bad);
        findings.push_back(fault(file, at, at, "the catalogue is not UTF-8 from here on"));
        findings.back().help = "save it as UTF-8, or turn it with `msgconv -t UTF-8`";
        return false;
    }
    const std::size_t charset = text.find("charset=");
    if (charset != std::string::npos && text.compare(charset + 8, 5, "UTF-8") != 0 &&
        text.compare(charset + 8, 5, "utf-8") != 0) {
        const auto at = static_cast<std::uint32_t>(charset);
        findings.push_back(fault(file, at, at + 8, "its header names another charset than UTF-8"));
        findings.back().help = "turn it with `msgconv -t UTF-8`";
        return false;
    }
    return true;
}

void tell_complaints(const SourceMap& sources, FileId file, std::vector<Diagnostic>& findings) {
    for (const Complaint& complaint : reading().complaints) {
        const auto line = static_cast<std::uint32_t>(complaint.line);
        const std::uint32_t begin = line == 0 ? 0 : sources.line_start(file, line);
        const auto length =
            static_cast<std::uint32_t>(line == 0 ? 0 : sources.line(file, line).size());
        findings.push_back(fault(file, begin, begin + length, complaint.words));
        if (complaint.severity == PO_SEVERITY_WARNING) {
            findings.back().severity = Severity::warning;
        }
    }
    reading().complaints.clear();
}

void take_messages(po_file_t file, std::string_view text, Catalogue& catalogue) {
    catalogue.header = string_of(po_file_domain_header(file, nullptr));
    char* tag = po_header_field(catalogue.header.c_str(), "Language");
    catalogue.language = string_of(tag);
    std::free(tag); // NOLINT(cppcoreguidelines-no-malloc): the library's memory
    const std::vector<std::uint32_t> offsets = offsets_of(text);
    std::size_t number = 0;
    po_message_iterator_t iterator = po_message_iterator(file, nullptr);
    while (po_message_t next = po_next_message(iterator)) {
        Message message = message_of(next);
        message.offset = number < offsets.size() ? offsets[number] : 0;
        ++number;
        const bool is_header = message.one.empty() && message.context.empty();
        if (!is_header) {
            catalogue.messages.push_back(std::move(message));
        }
    }
    po_message_iterator_free(iterator);
}

// Without a charset in the header the library loses every letter that is not of ASCII.
std::string with_charset(std::string header) {
    if (header.find("charset=") != std::string::npos) {
        return header;
    }
    if (!header.empty() && !header.ends_with('\n')) {
        header += '\n';
    }
    return header + "Content-Type: text/plain; charset=UTF-8\n";
}

void insert(po_message_iterator_t iterator, const Message& message) {
    po_message_t to = po_message_create();
    if (!message.context.empty()) {
        po_message_set_msgctxt(to, message.context.c_str());
    }
    po_message_set_msgid(to, message.one.c_str());
    po_message_set_msgstr(to, "");
    if (message.many.empty()) {
        po_message_set_msgstr(to, message.forms.empty() ? "" : message.forms.front().c_str());
    } else {
        po_message_set_msgid_plural(to, message.many.c_str());
        for (std::size_t i = 0; i < std::max<std::size_t>(message.forms.size(), 2); ++i) {
            po_message_set_msgstr_plural(to, static_cast<int>(i),
                                         i < message.forms.size() ? message.forms[i].c_str() : "");
        }
    }
    po_message_set_comments(to, text_of(message.comments).c_str());
    po_message_set_extracted_comments(to, text_of(message.explained).c_str());
    for (const Reference& place : message.references) {
        po_message_add_filepos(to, file_of(place).c_str(), place.line == 0 ? no_line : place.line);
    }
    po_message_set_fuzzy(to, message.fuzzy ? 1 : 0);
    po_message_set_obsolete(to, message.obsolete ? 1 : 0);
    if (!message.previous.empty() && message.fuzzy) {
        po_message_set_prev_msgid(to, message.previous.c_str());
    }
    po_message_insert(iterator, to);
}

} // namespace

Catalogue read_po(const SourceMap& sources, FileId file, std::vector<Diagnostic>& findings) {
    Catalogue catalogue;
    if (!is_readable(sources, file, findings)) {
        return catalogue;
    }
    const std::string& text = sources.file(file).text;
    const std::scoped_lock locked(reading().lock);
    const MemoryFile memory;
    if (!memory.put(text)) {
        findings.push_back(fault(file, 0, 0, "no file in memory can be made to read it from"));
        findings.back().help = "close other programs, and try again";
        return catalogue;
    }
    const std::string path = memory.path();
    po_file_t read = read_file(path.c_str());
    const std::size_t before = findings.size();
    tell_complaints(sources, file, findings);
    const bool wrong =
        std::any_of(findings.begin() + static_cast<std::ptrdiff_t>(before), findings.end(),
                    [](const Diagnostic& finding) { return finding.severity == Severity::error; });
    if (read == nullptr) {
        if (!wrong) {
            findings.push_back(fault(file, 0, 0, "it cannot be read as a PO file"));
        }
        return catalogue;
    }
    if (!wrong) {
        take_messages(read, text, catalogue);
    }
    po_file_free(read);
    return catalogue;
}

std::string write_po(const Catalogue& catalogue) {
    const std::scoped_lock locked(reading().lock);
    const MemoryFile memory;
    po_file_t file = po_file_create();
    po_message_iterator_t iterator = po_message_iterator(file, nullptr);
    Message header;
    header.forms = {with_charset(catalogue.header)};
    header.fuzzy = catalogue.language.empty();
    insert(iterator, header);
    for (const Message& message : catalogue.messages) {
        insert(iterator, message);
    }
    po_message_iterator_free(iterator);
    const std::string path = memory.path();
    const bool written = write_file(file, path.c_str());
    po_file_free(file);
    reading().complaints.clear();
    return written ? memory.all() : std::string();
}

} // namespace matchmark::language
