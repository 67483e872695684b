// Between two changes of tool, goes on with what can be done on the side that is up, then turns to
// the side on which most can be done.
#include "plan/order_of_work_sides.hpp"

#include <algorithm>
#include <map>

namespace matchmark::plan {

namespace {

class Grouping {
public:
    Grouping(const TaskGraph& graph, const Risks& risks, const std::vector<std::string>& faces,
             const WorkOrder& work)
        : graph_(graph), risks_(risks), faces_(faces), work_(work), allowed_(graph.tasks.size()),
          state_(bench::assembled(*graph.bench)) {
        for (const TaskIndex task : work.order)
            allowed_[task] = true;
    }

    // False when an act cannot be done so.
    bool run();
    [[nodiscard]] WorkOrder grouped() const;

private:
    [[nodiscard]] std::vector<std::size_t> doable(const std::vector<std::size_t>& left) const;
    [[nodiscard]] std::size_t next(const std::vector<std::size_t>& ready) const;
    bool do_run(std::vector<std::size_t> left);

    const TaskGraph& graph_;
    const Risks& risks_;
    const std::vector<std::string>& faces_;
    const WorkOrder& work_;
    std::vector<bool> allowed_;
    bench::State state_;
    std::vector<std::size_t> order_; // places in the order given
    std::string face_;
    std::size_t turnings_ = 0;
};

// What may do harm keeps its place behind what stood before it.
std::vector<std::size_t> Grouping::doable(const std::vector<std::size_t>& left) const {
    std::vector<std::size_t> ready;
    for (const std::size_t place : left) {
        const TaskIndex task = work_.order[place];
        const Task& what = graph_.tasks[task];
        if (state_.slots[graph_.units[what.unit].slot] != what.from ||
            !possible(graph_, state_, task))
            continue;
        if (place == left.front() || !risky(graph_, risks_, state_, allowed_, task))
            ready.push_back(place);
    }
    return ready;
}

std::size_t Grouping::next(const std::vector<std::size_t>& ready) const {
    std::map<std::string, std::size_t> on_face;
    for (const std::size_t place : ready) {
        if (faces_[place].empty() || faces_[place] == face_)
            return place;
        ++on_face[faces_[place]];
    }
    return *std::max_element(ready.begin(), ready.end(), [&](std::size_t a, std::size_t b) {
        return on_face[faces_[a]] < on_face[faces_[b]];
    });
}

bool Grouping::do_run(std::vector<std::size_t> left) {
    while (!left.empty()) {
        const auto ready = doable(left);
        if (ready.empty())
            return false;
        const std::size_t place = next(ready);
        if (!faces_[place].empty() && faces_[place] != face_) {
            turnings_ += face_.empty() ? 0 : 1;
            face_ = faces_[place];
        }
        bench::perform(*graph_.bench, state_, graph_.tasks[work_.order[place]].act);
        order_.push_back(place);
        left.erase(std::find(left.begin(), left.end(), place));
    }
    return true;
}

bool Grouping::run() {
    std::vector<std::size_t> left;
    std::string tool;
    for (std::size_t place = 0; place < work_.order.size(); ++place) {
        if (!work_.tools[place].empty() && work_.tools[place] != tool) {
            tool = work_.tools[place];
            if (!do_run(std::move(left)))
                return false;
            left.clear();
        }
        left.push_back(place);
    }
    return do_run(std::move(left));
}

WorkOrder Grouping::grouped() const {
    WorkOrder work = work_;
    work.turnings = turnings_;
    for (std::size_t i = 0; i < order_.size(); ++i) {
        work.order[i] = work_.order[order_[i]];
        work.tools[i] = work_.tools[order_[i]];
    }
    return work;
}

std::size_t turnings_of(const std::vector<std::string>& faces) {
    std::size_t turnings = 0;
    std::string up;
    for (const std::string& face : faces) {
        if (face.empty() || face == up)
            continue;
        turnings += up.empty() ? 0 : 1;
        up = face;
    }
    return turnings;
}

} // namespace

void group_by_side(const TaskGraph& graph, const Risks& risks,
                   const std::vector<std::string>& faces, WorkOrder& work) {
    work.turnings = turnings_of(faces);
    Grouping grouping(graph, risks, faces, work);
    if (!grouping.run())
        return;
    WorkOrder grouped = grouping.grouped();
    if (grouped.turnings <= work.turnings)
        work = std::move(grouped);
}

} // namespace matchmark::plan
