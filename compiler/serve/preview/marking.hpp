// How the preview's pages place marks on photos and faces.
#pragma once

namespace matchmark::serve {

// Marks are buttons: the mouse places and drags them, the arrow keys move them, Delete removes
// them.
inline constexpr const char* preview_marking_script = R"js(
(function () {
"use strict";
var drafts = {}, lastItem = "", data = {};

function every(list, what) { Array.prototype.forEach.call(list, what); }
function make(tag, name, text) {
  var one = document.createElement(tag);
  if (name) { one.className = name; }
  if (text) { one.textContent = text; }
  return one;
}
function button(name, text, act) {
  var one = make("button", name, text);
  one.type = "button";
  one.addEventListener("click", act);
  return one;
}
function send(address, order) {
  order.page = data.page;
  order.token = data.token;
  return fetch(address, { method: "POST", headers: { "Content-Type": "application/json" },
                          body: JSON.stringify(order) }).then(function (reply) {
    return reply.text().then(function (text) {
      var told = {};
      try { told = JSON.parse(text); } catch (e) { told = { refused: text.trim() }; }
      return told;
    });
  }).catch(function () { return { refused: "the preview does not answer" }; });
}
function limited(value) { return Math.min(1, Math.max(0, value)); }
// Fractions of the surface, rounded as they will be written.
function rounded(target, point) {
  return [0, 1].map(function (i) {
    var size = target.size[i] * target.steps;
    return Math.round(limited(point[i]) * size) / size;
  });
}
function words(target, point) {
  return point.map(function (value, i) {
    return target.face ? (value * target.size[i]).toFixed(1) + " mm"
                       : (value * 100).toFixed(1) + " %";
  }).join(", ");
}

function Placing(target) {
  var draft = drafts[target.key], layer = make("div", "layer"), panel = make("div", "placing");
  var select = make("select"), said = make("p"), instead = make("input"), label;
  said.setAttribute("role", "status");
  panel.setAttribute("role", "group");
  panel.setAttribute("aria-label", "Marks on this " + (target.face ? "face" : "photo"));
  panel.addEventListener("keydown", function (event) { event.stopPropagation(); });

  label = make("label", "", "Item ");
  select.id = target.key + "-item";
  data.items.forEach(function (item) {
    var text = item.words + " (" + item.name + ")", option;
    if (target.face && item.places) { text += ", " + item.places + " of " + item.count; }
    option = make("option", "", text);
    option.value = item.name;
    select.appendChild(option);
  });
  select.value = draft.item;
  if (select.selectedIndex < 0) { select.selectedIndex = 0; }
  draft.item = select.value;
  select.addEventListener("change", function () { draft.item = lastItem = select.value; });
  label.appendChild(select);
  panel.appendChild(label);
  panel.appendChild(make("p", "", "Click on the picture to place a mark and drag it, or add one " +
    "and move it with the arrow keys, finely with Shift. Delete removes it."));

  function show(focus) {
    every(layer.querySelectorAll(".new-mark"), function (one) { one.remove(); });
    draft.points.forEach(function (point, i) {
      var mark = button("new-mark", String(i + 1), function (event) { event.stopPropagation(); });
      mark.style.left = point[0] * 100 + "%";
      mark.style.top = point[1] * 100 + "%";
      mark.setAttribute("aria-label", "Mark " + (i + 1) + " at " + words(target, point));
      mark.id = target.key + "-mark-" + i;
      mark.addEventListener("keydown", function (event) { key(event, i); });
      mark.addEventListener("pointerdown", function (event) { drag(event, mark, i); });
      layer.appendChild(mark);
      if (focus === i) { mark.focus({ preventScroll: true }); }
    });
    write.disabled = draft.points.length === 0;
  }
  function move(i, point) { draft.points[i] = rounded(target, point); }
  function key(event, i) {
    var by = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
    var step = event.shiftKey ? 1 : target.face ? 10 : 5, one = by[event.key];
    event.stopPropagation();
    if (one) {
      move(i, draft.points[i].map(function (value, n) {
        return value + one[n] * step / (target.size[n] * target.steps);
      }));
      show(i);
      said.textContent = "Mark " + (i + 1) + " at " + words(target, draft.points[i]);
      event.preventDefault();
    } else if (event.key === "Delete" || event.key === "Backspace") {
      draft.points.splice(i, 1);
      show(Math.min(i, draft.points.length - 1));
      if (draft.points.length === 0) { add.focus(); }
      event.preventDefault();
    }
  }
  function at(event, offset) {
    var box = layer.getBoundingClientRect();
    return [(event.clientX - offset[0] - box.left) / box.width,
            (event.clientY - offset[1] - box.top) / box.height];
  }
  function drag(event, mark, i) {
    var box = layer.getBoundingClientRect(), point = draft.points[i];
    var offset = [event.clientX - box.left - point[0] * box.width,
                  event.clientY - box.top - point[1] * box.height];
    function follow(moved) {
      move(i, at(moved, offset));
      mark.style.left = draft.points[i][0] * 100 + "%";
      mark.style.top = draft.points[i][1] * 100 + "%";
    }
    function end() {
      mark.removeEventListener("pointermove", follow);
      show(i);
    }
    mark.setPointerCapture(event.pointerId);
    mark.addEventListener("pointermove", follow);
    mark.addEventListener("pointerup", end, { once: true });
    mark.addEventListener("pointercancel", end, { once: true });
  }
  layer.addEventListener("click", function (event) {
    if (event.target !== layer) { return; }
    draft.points.push(rounded(target, at(event, [0, 0])));
    show(draft.points.length - 1);
  });

  var add = button("", "Add a mark", function () {
    draft.points.push(rounded(target, [0.5, 0.5]));
    show(draft.points.length - 1);
  });
  label = make("label");
  instead.type = "checkbox";
  instead.className = "tick";
  instead.checked = draft.instead;
  instead.id = target.key + "-instead";
  instead.addEventListener("change", function () { draft.instead = instead.checked; });
  label.appendChild(instead);
  label.appendChild(make("span", "", "Instead of those that the item has there"));
  var write = button("", "Write", function () {
    var order = { item: draft.item, instead: draft.instead, points: draft.points };
    if (target.face) {
      order.face = target.face;
      order.print = (data.prints || {})[fileOf(draft.item)];
      order.points = draft.points.map(function (point) {
        return [point[0] * target.size[0], point[1] * target.size[1]];
      });
    } else {
      order.file = target.file;
      order.line = target.line;
      order.print = (data.prints || {})[target.file];
    }
    write.disabled = true;
    send("/mark", order).then(function (told) {
      write.disabled = false;
      if (told.refused) { said.textContent = "Not written: " + told.refused; return; }
      close();
      matchmarkPreview.tell("");
      matchmarkPreview.update();
    });
  });
  function close() {
    delete drafts[target.key];
    layer.remove();
    panel.remove();
    target.button.hidden = false;
    target.button.focus({ preventScroll: true });
  }
  [add, label, write, button("", "Cancel", close), said].forEach(function (one) {
    panel.appendChild(one);
  });
  add.id = target.key + "-add";
  target.surface.appendChild(layer);
  target.button.insertAdjacentElement("afterend", panel);
  target.button.hidden = true;
  show(-1);
  return select;
}
function fileOf(name) {
  var found = data.items.filter(function (item) { return item.name === name; });
  return found.length > 0 ? found[0].file : "";
}

function offer(target, after) {
  if (data.items.length === 0) { return; }
  target.button = button("place", "Place marks", function () {
    drafts[target.key] = { item: lastItem || firstItem(target), points: [], instead: false };
    Placing(target).focus({ preventScroll: true });
  });
  target.button.id = target.key;
  after.insertAdjacentElement("afterend", target.button);
  if (drafts[target.key]) { Placing(target); }
}
// What is wanted most likely: an item that has no place yet.
function firstItem(target) {
  var wanting = data.items.filter(function (item) {
    return target.face && item.count > 1 && item.places < item.count;
  });
  return (wanting[0] || data.items[0]).name;
}
function figuresOf(step) {
  var heading = step ? document.getElementById(step) : null;
  if (step) { return heading ? heading.closest(".step").querySelectorAll("figure") : []; }
  return Array.prototype.filter.call(document.querySelectorAll("main figure"), function (one) {
    return !one.closest(".step");
  });
}
function mount() {
  var text = document.getElementById("preview-data");
  data = text ? JSON.parse(text.textContent) : { items: [], photos: [], faces: [] };
  data.photos.forEach(function (photo) {
    var figure = figuresOf(photo.step)[photo.index];
    var picture = figure && figure.querySelector(".picture");
    if (picture) {
      offer({ key: "place-" + (photo.step || "head") + "-" + photo.index, surface: picture,
              file: photo.file, line: photo.line, size: [1, 1], steps: 1000 }, picture);
    }
  });
  data.faces.forEach(function (face) {
    var surface = document.querySelector('.surface[data-face="' + CSS.escape(face.name) + '"]');
    if (surface) {
      offer({ key: "place-on-" + face.name, surface: surface, face: face.name,
              size: [face.width, face.height], steps: 10 }, surface.parentNode);
    }
  });
  every(document.querySelectorAll(".undo"), function (one) {
    one.addEventListener("click", function () {
      one.disabled = true;
      send("/undo", {}).then(function (told) {
        one.disabled = false;
        matchmarkPreview.tell(told.refused ? "Not undone: " + told.refused : "");
        matchmarkPreview.update();
      });
    });
  });
}
matchmarkPreview.onPage(mount);
matchmarkPreview.start();
}());
)js";

} // namespace matchmark::serve
