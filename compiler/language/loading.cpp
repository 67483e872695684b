// A language made of the catalogues inside the program and those that are handed to it.
#include "language/loading.hpp"

#include "source/embedded.hpp"

namespace matchmark::language {

Catalogue built_in(std::string_view tag) {
    Catalogue all;
    const std::string ending = "/" + std::string(tag) + ".po";
    for (const EmbeddedText& file : catalogues()) {
        if (!file.name.ends_with(ending)) {
            continue;
        }
        SourceMap sources;
        std::vector<Diagnostic> findings;
        const FileId id = sources.add(std::string(file.name), std::string(file.text), true);
        Catalogue one = read_po(sources, id, findings);
        all.language = one.language;
        all.messages.insert(all.messages.end(), std::make_move_iterator(one.messages.begin()),
                            std::make_move_iterator(one.messages.end()));
    }
    return all;
}

Language language_of(std::string_view tag, const std::vector<const Catalogue*>& own) {
    Language language;
    language.tag = tag;
    auto table = std::make_shared<Table>();
    add_to(*table, built_in(tag));
    for (const Catalogue* catalogue : own) {
        add_to(*table, *catalogue);
    }
    language.table = std::move(table);
    return language;
}

} // namespace matchmark::language
