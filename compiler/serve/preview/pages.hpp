// The pages of the preview, each made anew when a file that it rests on has changed.
#pragma once

#include "serve/preview/content.hpp"
#include "serve/preview/marks.hpp"

#include <chrono>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace matchmark::serve {

// A page, kept with what tells whether it still holds.
struct Page {
    std::map<std::string, Stamp> rests_on; // files asked for while it was made
    std::chrono::system_clock::time_point made;
    Shown shown;
    std::optional<Content> last_good; // with a file that has errors since
    std::string last_guide;           // whose page that was
    std::string token;                // what its script shows with each write

    // What is shown: the last good state while there are errors.
    [[nodiscard]] const Content* content() const;
    [[nodiscard]] bool is_old() const;
};

class Pages {
public:
    explicit Pages(FolderDisk& disk) : disk_(disk) {}

    // `name`: "guide/PATH", "guide/PATH?guide=NAME" or "device/PATH". The page as it is now; null
    // when there is no such file.
    const Page* page(const std::string& name);
    // A page made before; null when it never was.
    [[nodiscard]] const Page* known(const std::string& name) const;

    // The list of all guides and devices of the folder, as the body of a page.
    std::string list();

private:
    struct Listed {
        Stamp stamp;
        std::string html;
    };

    [[nodiscard]] bool holds(const Page& page) const;
    std::string entries(const std::string& path);

    FolderDisk& disk_;
    std::map<std::string, Page> pages_;
    std::map<std::string, Listed> listed_; // by path
};

// The whole page: head, style, script, and the body with its findings. `last`: what was written
// last and can be taken back; null when there is nothing.
std::string whole_page(const std::string& name, const Page& page, const Written* last);
std::string plain_page(const std::string& title, const std::string& body);

// 128 bits that nobody can guess, in hexadecimal; empty when the system gives none.
std::string new_token();

} // namespace matchmark::serve
