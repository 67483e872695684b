// The forms in which a guide is published. A new one is a line in the table below.
#include "drive/forms.hpp"

#include "draw/drawings.hpp"
#include "drive/commands.hpp"
#include "model/describe.hpp"
#include "publish/dita.hpp"
#include "publish/epub.hpp"
#include "publish/how_to.hpp"
#include "publish/html.hpp"
#include "publish/json.hpp"
#include "publish/markdown.hpp"
#include "publish/marked_picture.hpp"
#include "publish/pdf.hpp"
#include "publish/sheet.hpp"

#include <array>

namespace matchmark::drive {

namespace {

using Outputs = std::vector<Output>;

Outputs html(const Job& job) { return {{".html", publish::html(job.marked, job.assets)}}; }

publish::Paper paper(const Job& job) {
    return job.options.paper == "letter" ? publish::Paper::letter : publish::Paper::a4;
}

Outputs pdf(const Job& job) {
    const publish::FigurePainter painter = [&](cairo_t* onto, std::size_t figure) {
        draw::paint_on(onto, job.scenes[figure]);
    };
    return {{".pdf", publish::pdf(job.document, job.assets, paper(job), job.created, painter)}};
}

Outputs sheet(const Job& job) {
    return {{".sheet.pdf", publish::sheet_pdf(job.document, paper(job), job.created)},
            {".sheet.html", publish::sheet_html(job.marked)}};
}

// Nothing for a guide that undoes no fastener whose place is known.
Outputs map(const Job& job) {
    const draw::Paper size = job.options.paper == "letter" ? draw::Paper::letter : draw::Paper::a4;
    draw::MapFiles files =
        draw::map_files(job.done.model, job.procedure, size, job.created, job.document.language);
    if (files.svg.empty()) {
        return {};
    }
    Outputs outputs = {{".map.pdf", std::move(files.pdf)}};
    for (std::size_t i = 0; i < files.svg.size(); ++i) {
        const std::string number = files.svg.size() == 1 ? "" : "-" + std::to_string(i + 1);
        outputs.push_back({".map" + number + ".svg", std::move(files.svg[i])});
    }
    return outputs;
}

Outputs epub(const Job& job) {
    return {{".epub", publish::epub(job.marked, job.assets, job.created)}};
}

// A text with the pictures that it shows as files beside it.
Outputs with_pictures(const Job& job, const char* ending,
                      std::string (*make)(const guide::Document&, const publish::ShownPictures&)) {
    publish::ShownPictures pictures = publish::marked_pictures(job.document, job.assets);
    Outputs outputs;
    std::size_t number = 0;
    for (auto& [path, picture] : pictures) {
        const std::string beside =
            ".picture-" + std::to_string(++number) + publish::picture_ending(picture.type);
        picture.source = job.done.model.guide(job.procedure.guide).name + beside;
        outputs.push_back({beside, std::move(picture.bytes)});
    }
    outputs.insert(outputs.begin(), {ending, make(job.document, pictures)});
    return outputs;
}

Outputs markdown(const Job& job) { return with_pictures(job, ".md", publish::markdown); }
Outputs dita(const Job& job) { return with_pictures(job, ".dita", publish::dita); }
Outputs how_to(const Job& job) { return {{".how-to.jsonld", publish::how_to(job.document)}}; }

// One file for each variant that the guide is for: the states differ between them.
Outputs model_json(const Job& job) {
    const model::Model& model = job.done.model;
    const std::vector<std::string>& variants = model.device.variants;
    const std::string& wanted = job.options.variant;
    Outputs outputs;
    for (unsigned variant = 0; variant < model::variant_count(model); ++variant) {
        const std::string name = variant < variants.size() ? variants[variant] : "";
        const bool is_for = ((model.guide(job.procedure.guide).variants >> variant) & 1U) != 0;
        if (is_for && (wanted.empty() || name == wanted)) {
            outputs.push_back({(name.empty() ? "" : "." + name) + ".json",
                               publish::json(job.done.sources, model, job.procedure, variant)});
        }
    }
    return outputs;
}

constexpr std::array form_table{
    Form{"html", "one page for screen and print", true, html},
    Form{"pdf", "the same, as a PDF", true, pdf},
    Form{"sheet", "the bench sheet: a line and a box for each action", false, sheet},
    Form{"map", "where each fastener sits, at true scale", false, map},
    Form{"epub", "a book for tablets and readers", true, epub},
    Form{"markdown", "for wikis and repositories", true, markdown},
    Form{"dita", "a task topic of OASIS DITA", true, dita},
    Form{"how-to", "a HowTo of schema.org in JSON-LD", false, how_to},
    Form{"json", "the model and every act, for programs", false, model_json},
};

} // namespace

std::span<const Form> forms() { return form_table; }

std::string form_names() {
    std::vector<std::string> names;
    for (const Form& form : form_table) {
        names.emplace_back(form.name);
    }
    return model::list(names);
}

} // namespace matchmark::drive
