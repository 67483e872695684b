// What programs that are not ours say of a PDF: poppler's and qpdf's.
#pragma once

#include <string>

namespace matchmark::test {

// A file that is there until the end of the scope, in the system's folder for such.
class PdfFile {
public:
    explicit PdfFile(const std::string& bytes);
    ~PdfFile();
    PdfFile(const PdfFile&) = delete;
    PdfFile& operator=(const PdfFile&) = delete;
    const std::string& path() const { return path_; }

private:
    std::string path_;
};

struct Said {
    int status = -1; // of the program's exit
    std::string text;
};

// Runs `command` with FILE in it replaced by the file's path, and takes down what it says.
Said ask(const std::string& command, const PdfFile& file);

// Without blanks of any sort, so that line breaks do not matter.
std::string pressed(const std::string& text);

} // namespace matchmark::test
