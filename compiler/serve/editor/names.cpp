// Follows the shape of each line: which of its words are items, states, tools, kinds.
#include "serve/editor/names.hpp"

#include "syntax/reader.hpp"

#include <algorithm>
#include <unordered_set>

namespace matchmark::serve {

using syntax::Keyword;
using syntax::Line;
using syntax::LineShape;
using syntax::Term;
using syntax::TermKind;

namespace {

bool is_safety_message(Keyword keyword) {
    return keyword == Keyword::caution_on || keyword == Keyword::danger_on ||
           keyword == Keyword::warning_on || keyword == Keyword::notice_on;
}

NameSort declared_by(Keyword keyword) {
    switch (keyword) {
    case Keyword::device:
        return NameSort::device;
    case Keyword::face:
        return NameSort::face;
    case Keyword::part:
    case Keyword::fastener:
    case Keyword::connector:
    case Keyword::bond:
    case Keyword::fluid:
    case Keyword::energy:
        return NameSort::item;
    case Keyword::function:
        return NameSort::function;
    case Keyword::kind:
        return NameSort::kind;
    case Keyword::guide:
        return NameSort::guide;
    case Keyword::step:
    case Keyword::test:
        return NameSort::step;
    case Keyword::hazard:
        return NameSort::hazard;
    default:
        return is_safety_message(keyword) ? NameSort::caution : NameSort::trade;
    }
}

// What the names of a detail line are, until a fixed word changes it.
NameSort listed_in(Keyword keyword, Keyword owner) {
    switch (keyword) {
    case Keyword::in:
    case Keyword::covers:
    case Keyword::carries:
    case Keyword::blocks:
    case Keyword::behind:
    case Keyword::under:
    case Keyword::holds:
    case Keyword::joins:
    case Keyword::feeds:
    case Keyword::through:
    case Keyword::comes_with:
    case Keyword::renewed_as:
    case Keyword::mark_on_photo:
    case Keyword::proves:
    case Keyword::when:
        return NameSort::item;
    case Keyword::kind_of:
        return NameSort::kind;
    case Keyword::variant:
    case Keyword::only:
        return NameSort::variant;
    case Keyword::at:
        return NameSort::face;
    case Keyword::with:
        return NameSort::resource;
    case Keyword::states:
    case Keyword::also:
    case Keyword::binds_in:
    case Keyword::present_in:
    case Keyword::covers_in:
    case Keyword::blocks_in:
    case Keyword::live_in:
    case Keyword::may_end_in:
        return NameSort::state;
    case Keyword::needs:
        return owner == Keyword::kind ? NameSort::state : NameSort::item;
    case Keyword::hazard_until:
    case Keyword::lit_by:
        return NameSort::hazard;
    case Keyword::order:
        return NameSort::verb;
    case Keyword::driven_by:
    case Keyword::at_a_pinch:
    case Keyword::sign_of:
    case Keyword::wear:
    case Keyword::form_of:
        return NameSort::trade;
    default:
        return NameSort::other;
    }
}

// What the first name of a declaration or detail declares, if it declares something.
bool declares_first(Keyword keyword) {
    return keyword == Keyword::tool || keyword == Keyword::spare || keyword == Keyword::supply;
}

class LineReader {
public:
    LineReader(const SourceMap& sources, const syntax::File& file, std::vector<NameUse>& names)
        : sources_(sources), file_(file), names_(names) {}

    void read(std::size_t index) {
        const Line& line = file_.lines[index];
        line_ = index;
        if (line.shape == LineShape::declaration || (is_head(line) && line.depth == 0))
            open(line);
        if (line.shape != LineShape::declaration && line.shape != LineShape::detail)
            return;
        item_ = {};
        conditions_ = false;
        kind_spec_ = false;
        if (line.shape == LineShape::declaration) {
            mode_ = NameSort::other;
            first_ = declared_by(line.keyword);
            declares_ = line.keyword != Keyword::use;
        } else {
            start_detail(line);
        }
        read_terms(line);
    }

private:
    static bool is_head(const Line& line) { return line.shape == LineShape::broken; }

    void open(const Line& line) {
        owner_ = line.keyword;
        if (owner_ == Keyword::guide || owner_ == Keyword::kind || owner_ == Keyword::device)
            home_ = line_;
    }

    void start_detail(const Line& line) {
        declares_ = declares_first(line.keyword);
        first_ = NameSort::resource;
        mode_ = listed_in(line.keyword, owner_);
        conditions_ = line.keyword == Keyword::when ||
                      (line.keyword == Keyword::needs && owner_ != Keyword::kind);
        kind_spec_ = line.keyword == Keyword::kind_of || line.keyword == Keyword::count;
        if (line.keyword == Keyword::count)
            mode_ = NameSort::kind;
        if (line.keyword == Keyword::limit)
            mode_ = NameSort::other;
        if (line.keyword == Keyword::verb)
            start_verb(line.head);
        if (line.keyword == Keyword::act)
            mode_ = NameSort::kind;
        if (line.keyword == Keyword::goal || line.keyword == Keyword::before ||
            line.keyword == Keyword::act)
            verb_next_ = true;
    }

    // In a step it is an action, in a kind the definition of a verb.
    void start_verb(Span head) {
        NameUse use = named(head, NameSort::verb);
        use.declares = owner_ == Keyword::kind;
        names_.push_back(use);
        const std::string_view word = sources_.slice(head);
        mode_ = owner_ == Keyword::kind ? NameSort::state : NameSort::item;
        if (owner_ != Keyword::kind)
            action_ = names_.size();
        if (word == "do")
            mode_ = NameSort::guide;
    }

    [[nodiscard]] NameUse named(Span span, NameSort sort) const {
        NameUse use;
        use.span = span;
        use.sort = sort;
        use.line = line_;
        use.home = home_;
        return use;
    }

    void read_terms(const Line& line) {
        for (std::uint32_t i = 0; i < line.term_count; ++i) {
            const Term& term = file_.terms[line.first_term + i];
            const bool last = i + 1 == line.term_count;
            const Term* next = last ? nullptr : &file_.terms[line.first_term + i + 1];
            if (term.kind == TermKind::word) {
                read_word(sources_.slice(file_.span_of(term)), next);
            } else if (term.kind == TermKind::comma) {
                read_comma(line, i);
            } else if (term.kind == TermKind::name) {
                read_name(file_.span_of(term));
            }
        }
        verb_next_ = false;
        action_ = 0;
    }

    void read_word(std::string_view word, const Term* next) {
        conditions_ = conditions_ && word != "to";
        if (word == "kind" || word == "x") {
            kind_spec_ = kind_spec_ || word == "kind" || mode_ != NameSort::item;
            mode_ = NameSort::kind;
        } else if (word == "in") {
            const bool pattern = action_ != 0 || owner_pattern();
            mode_ = pattern ? NameSort::other : NameSort::item;
        } else if (word == "only") {
            mode_ = NameSort::variant;
        } else if (word == "when") {
            conditions_ = true;
            item_ = {};
            mode_ = NameSort::item;
        } else if (word == "with") {
            mode_ = supplied() ? NameSort::other : NameSort::resource;
        } else if (word == "to" && needs()) {
            mode_ = NameSort::verb;
        } else if (word == "by") {
            mode_ = owner_ == Keyword::kind ? NameSort::trade : NameSort::item;
        } else if (word == "else") {
            verb_next_ = true;
        } else if (word == "on" || word == "across" || word == "above") {
            mode_ = NameSort::item;
        } else if (word == "through") {
            mode_ = next != nullptr && next->kind == TermKind::number ? NameSort::other
                                                                      : NameSort::item;
        } else if (word == "for") {
            mode_ = keyword() == Keyword::size ? NameSort::trade : NameSort::item;
        } else if (word == "until") {
            mode_ = NameSort::state;
        } else if (word == "as") {
            mode_ = NameSort::other;
        }
    }

    // `goal replace cell with cell-new, grease bearing`: after the comma another action may start.
    void read_comma(const Line& line, std::uint32_t at) {
        if (conditions_) {
            item_ = {};
            mode_ = NameSort::item;
        }
        if (kind_spec_)
            mode_ = NameSort::trade;
        if (line.keyword != Keyword::goal)
            return;
        const auto is_name = [&](std::uint32_t ahead) {
            return at + ahead < line.term_count &&
                   file_.terms[line.first_term + at + ahead].kind == TermKind::name;
        };
        verb_next_ = is_name(1) && is_name(2);
    }

    void read_name(Span span) {
        if (verb_next_) {
            verb_next_ = false;
            names_.push_back(named(span, NameSort::verb));
            action_ = names_.size();
            if (keyword() != Keyword::act)
                mode_ = sources_.slice(span) == "do" ? NameSort::guide : NameSort::item;
            return;
        }
        if (declares_) {
            declares_ = false;
            NameUse use = named(span, first_);
            use.declares = true;
            names_.push_back(use);
            return;
        }
        add(span);
    }

    void add(Span span) {
        const bool measured = action_ != 0 && keyword() == Keyword::verb &&
                              sources_.slice(names_[action_ - 1].span) == "measure";
        NameUse use = named(span, mode_);
        use.item = use.sort == NameSort::state ? item_ : Span{};
        use.declares = use.sort == NameSort::variant && keyword() == Keyword::variant;
        if (use.sort == NameSort::state && owner_ == Keyword::kind) {
            use.declares = keyword() == Keyword::states || keyword() == Keyword::also;
        }
        if (use.sort == NameSort::item) {
            item_ = span;
            if (action_ != 0 && !names_[action_ - 1].item.known())
                names_[action_ - 1].item = span;
        }
        if (use.sort == NameSort::verb)
            use.item = item_;
        names_.push_back(use);
        if (use.sort == NameSort::item && (conditions_ || measured))
            mode_ = conditions_ ? NameSort::state : NameSort::other;
        if (kind_spec_ && use.sort == NameSort::kind)
            mode_ = NameSort::trade;
    }

    [[nodiscard]] Keyword keyword() const { return file_.lines[line_].keyword; }
    [[nodiscard]] bool needs() const { return keyword() == Keyword::needs; }
    [[nodiscard]] bool supplied() const { return keyword() == Keyword::supplied; }
    [[nodiscard]] bool owner_pattern() const {
        return keyword() == Keyword::torque || keyword() == Keyword::preload;
    }

    const SourceMap& sources_;
    const syntax::File& file_;
    std::vector<NameUse>& names_;
    Keyword owner_ = Keyword::none;
    std::size_t home_ = 0;
    std::size_t line_ = 0;
    NameSort mode_ = NameSort::other;
    NameSort first_ = NameSort::other; // of what the line declares
    bool declares_ = false;
    bool conditions_ = false;
    bool kind_spec_ = false;
    bool verb_next_ = false;
    std::size_t action_ = 0; // one past the verb of the action that is read; 0: none
    Span item_;              // named last
};

using Known = std::unordered_set<std::string_view>;

template <class Entry> Known known_names(const model::SharedList<Entry>& entries) {
    Known names;
    for (const Entry& entry : entries)
        names.insert(entry.name);
    return names;
}

// A spare may stand where an item does; what is proved may be a function; an item may be meant
// where a tool of that name is listed too.
void settle(const SourceMap& sources, const model::Model& model, std::vector<NameUse>& names) {
    const Known items = known_names(model.items);
    const Known functions = known_names(model.functions);
    Known resources;
    for (const NameUse& use : names) {
        if (use.declares && use.sort == NameSort::resource)
            resources.insert(sources.slice(use.span));
    }
    for (NameUse& use : names) {
        if (use.declares || use.sort != NameSort::item)
            continue;
        const std::string_view word = sources.slice(use.span);
        if (items.contains(word))
            continue;
        if (functions.contains(word)) {
            use.sort = NameSort::function;
        } else if (resources.contains(word)) {
            use.sort = NameSort::resource;
        }
    }
}

} // namespace

std::vector<NameUse> names_of(const SourceMap& sources, const syntax::File& file,
                              const model::Model& model) {
    std::vector<NameUse> names;
    LineReader reader(sources, file, names);
    for (std::size_t i = 0; i < file.lines.size(); ++i)
        reader.read(i);
    settle(sources, model, names);
    return names;
}

const NameUse* name_at(const std::vector<NameUse>& names, std::uint32_t offset) {
    const auto found = std::find_if(names.begin(), names.end(), [&](const NameUse& use) {
        return use.span.begin <= offset && offset <= use.span.end;
    });
    return found == names.end() ? nullptr : &*found;
}

bool same_thing(const NameUse& a, const NameUse& b) {
    if (a.sort != b.sort)
        return false;
    const bool local = a.sort == NameSort::resource || a.sort == NameSort::step;
    return !local || (a.span.file == b.span.file && a.home == b.home);
}

} // namespace matchmark::serve
