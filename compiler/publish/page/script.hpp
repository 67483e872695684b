// What a page does when scripts are allowed: boxes to tick that stay ticked, progress, keys.
#pragma once

namespace matchmark::publish {

// Every use of the store may fail (a private window, a full or a locked store): the page then
// forgets, and works on.
inline constexpr const char* page_script = R"js(
(function () {
"use strict";
var root = document.documentElement, work = document.getElementById("work");
if (!work) { return; }
var key = "matchmark:" + document.body.getAttribute("data-guide"), kept = {};
try {
  var read = JSON.parse(localStorage.getItem(key));
  if (read && typeof read === "object" && !Array.isArray(read)) { kept = read; }
} catch (e) { kept = {}; }
function keep(id, value) {
  if (value) { kept[id] = value; } else { delete kept[id]; }
  try { localStorage.setItem(key, JSON.stringify(kept)); } catch (e) { return; }
}
function make(tag, name, text) {
  var one = document.createElement(tag);
  if (name) { one.className = name; }
  if (text) { one.textContent = text; }
  return one;
}
function box(id) {
  var one = make("input", "tick");
  one.type = "checkbox";
  one.id = id;
  one.checked = kept[id] === 1;
  one.addEventListener("change", function () { keep(id, one.checked ? 1 : 0); });
  return one;
}
function every(list, what) { Array.prototype.forEach.call(list, what); }
root.className = "js";

every(document.querySelectorAll(".do .line"), function (line, i) {
  var label = make("label", "line");
  label.appendChild(box("line-" + i));
  var said = make("span");
  while (line.firstChild) { said.appendChild(line.firstChild); }
  label.appendChild(said);
  line.parentNode.replaceChild(label, line);
});
every(document.querySelectorAll(".record"), function (place, i) {
  var field = make("input", "written"), asked = place.querySelector(".asked");
  field.type = "text";
  field.value = typeof kept["record-" + i] === "string" ? kept["record-" + i] : "";
  asked.id = "asked-" + i;
  field.setAttribute("aria-labelledby", asked.id);
  field.autocomplete = "off";
  field.addEventListener("change", function () { keep("record-" + i, field.value); });
  place.replaceChild(field, place.querySelector(".blank"));
});

var steps = [];
every(work.querySelectorAll(".step"), function (section, i) {
  var label = make("label", "finished"), all = box("step-done-" + i);
  label.appendChild(all);
  label.appendChild(make("span", "", "Done"));
  label.lastChild.appendChild(make("span", "unseen", ": step " + (i + 1)));
  section.querySelector("header").appendChild(label);
  section.tabIndex = -1;
  var step = { section: section, all: all, lines: section.querySelectorAll(".do .tick"),
               seconds: Number(section.getAttribute("data-seconds")) || 0 };
  all.addEventListener("change", function () {
    every(step.lines, function (line) {
      if (line.checked !== all.checked) {
        line.checked = all.checked;
        keep(line.id, all.checked ? 1 : 0);
      }
    });
    show();
  });
  every(step.lines, function (line) {
    line.addEventListener("change", function () { settle(step); show(); });
  });
  steps.push(step);
});
function ticked(step) {
  var count = 0;
  every(step.lines, function (line) { count += line.checked ? 1 : 0; });
  return count;
}
function settle(step) {
  if (step.lines.length > 0) {
    var done = ticked(step) === step.lines.length;
    if (done !== step.all.checked) { step.all.checked = done; keep(step.all.id, done ? 1 : 0); }
  }
}

var bar = make("div", "bar"), line = make("progress"), told = make("span", "told");
bar.setAttribute("role", "region");
bar.setAttribute("aria-label", "Progress");
line.setAttribute("aria-label", "Steps done");
told.setAttribute("role", "status");
bar.appendChild(told);
bar.appendChild(line);
document.body.insertBefore(bar, document.body.firstChild);
function words(seconds) {
  var minutes = Math.ceil(seconds / 60), hours = Math.floor(minutes / 60);
  return hours > 0 ? hours + " h " + (minutes % 60) + " min" : minutes + " min";
}
function show() {
  var done = 0, left = 0, unknown = false;
  steps.forEach(function (step) {
    step.section.classList.toggle("over", step.all.checked);
    if (step.all.checked) { done += 1; return; }
    var lines = step.lines.length;
    left += lines > 0 ? step.seconds * (1 - ticked(step) / lines) : step.seconds;
    unknown = unknown || step.seconds === 0;
  });
  line.max = steps.length || 1;
  line.value = done;
  var text = done + " of " + steps.length + (steps.length === 1 ? " step" : " steps") + " done";
  if (left > 0) {
    text += ", " + (unknown ? "at least " : "about ") + words(left) + " of handling left";
  }
  if (told.textContent !== text) { told.textContent = text; }
}

var panel = make("div", "means"), keysLabel = make("label", "keys"), keys = make("input", "tick");
var clear = make("button", "", "Clear all ticks");
keys.type = "checkbox";
keys.checked = kept["keys-off"] !== 1;
keys.addEventListener("change", function () { keep("keys-off", keys.checked ? 0 : 1); });
keysLabel.appendChild(keys);
keysLabel.appendChild(make("span", "", "Keys: j and k, or the arrows right and left, go from " +
  "step to step; space ticks the next line"));
clear.type = "button";
clear.addEventListener("click", function () {
  every(document.querySelectorAll(".tick"), function (one) {
    if (one !== keys && one.checked) { one.checked = false; keep(one.id, 0); }
  });
  show();
});
panel.appendChild(keysLabel);
panel.appendChild(clear);
work.insertBefore(panel, work.firstChild);

function here() {
  var active = document.activeElement, edge = bar.getBoundingClientRect().bottom + 8, i;
  for (i = 0; i < steps.length; i += 1) {
    if (steps[i].section.contains(active)) { return i; }
  }
  for (i = steps.length - 1; i >= 0; i -= 1) {
    if (steps[i].section.getBoundingClientRect().top < edge) { return i; }
  }
  return -1;
}
function go(by) {
  var to = Math.max(0, Math.min(steps.length - 1, here() + by));
  steps[to].section.focus({ preventScroll: true });
  steps[to].section.scrollIntoView({ block: "start" });
}
document.addEventListener("keydown", function (event) {
  var at = event.target;
  if (!keys.checked || event.ctrlKey || event.altKey || event.metaKey || steps.length === 0 ||
      at.type === "text" || (at.closest && at.closest(".drawing"))) { return; }
  if (event.key === "j" || event.key === "ArrowRight") { go(1); event.preventDefault(); }
  if (event.key === "k" || event.key === "ArrowLeft") { go(-1); event.preventDefault(); }
  if (event.key === " " && at.classList.contains("step")) {
    var step = steps[here()], next = step.all;
    every(step.lines, function (one) {
      if (next === step.all && !one.checked) { next = one; }
    });
    if (!next.checked) { next.click(); }
    event.preventDefault();
  }
});
show();
}());
)js";

} // namespace matchmark::publish
