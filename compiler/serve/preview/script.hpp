// How the preview's pages take in what has changed.
#pragma once

namespace matchmark::serve {

// Waits for changes in one tab for all, and puts the new page in the place of the old one: where it
// is read, what is ticked, written, open or in focus stays. `pageScript` is the page's own.
inline constexpr const char* preview_live_script = R"js(
var matchmarkPreview = (function () {
"use strict";
var pristine = document.body.innerHTML, listeners = [], version = 0, busy = false, again = false;
var mounted = [];

function every(list, what) { Array.prototype.forEach.call(list, what); }
function tell(words) {
  var place = document.querySelector(".told-by-preview");
  if (place) { place.textContent = words; }
}
// The page's own script adds its keys to the document: those of the page before go first.
function runPage() {
  listeners.forEach(function (one) { document.removeEventListener(one[0], one[1]); });
  listeners = [];
  var add = document.addEventListener;
  document.addEventListener = function (what, act) {
    listeners.push([what, act]);
    add.call(document, what, act);
  };
  try { pageScript(); } finally { delete document.addEventListener; }
  mounted.forEach(function (mount) { mount(); });
}

function headingOf(one) {
  var section = one.closest(".step, section"), heading = section && section.querySelector("h2, h3");
  if (!heading) { return ""; }
  return heading.textContent.replace(/^Step \d+: /, "");
}
// Each of a sort under a name that outlives a change of the lines above it.
function named(sort, name) {
  var seen = {}, all = new Map();
  every(document.querySelectorAll(sort), function (one) {
    var key = headingOf(one) + "|" + name(one);
    seen[key] = (seen[key] || 0) + 1;
    all.set(key + "|" + seen[key], one);
  });
  return all;
}
function ticks() {
  return named("#work .tick, .do .tick", function (one) {
    var label = one.closest("label");
    return label && label.classList.contains("finished") ? "done" : label ? label.textContent : "";
  });
}
function records() {
  return named(".written", function (one) { return one.parentNode.textContent; });
}
function folds() {
  return named("details", function (one) { return one.querySelector("summary").textContent; });
}
function headings() {
  return named("main h1, main h2, main h3", function (one) {
    return one.textContent.replace(/^Step \d+: /, "");
  });
}
function placeInView() {
  var found = null;
  if (window.scrollY > 0) {
    headings().forEach(function (one, key) {
      var top = one.getBoundingClientRect().top;
      if (found === null || top < window.innerHeight / 2) { found = { key: key, top: top }; }
    });
  }
  return { heading: found, y: window.scrollY };
}
function remember() {
  var kept = { ticked: [], written: [], open: [], focus: null, id: "", view: placeInView() };
  var active = document.activeElement;
  ticks().forEach(function (one, key) {
    if (one.checked) { kept.ticked.push(key); }
    if (one === active) { kept.focus = key; }
  });
  records().forEach(function (one, key) { kept.written.push([key, one.value]); });
  folds().forEach(function (one, key) { if (one.open) { kept.open.push(key); } });
  kept.id = active && active.id ? active.id : "";
  return kept;
}
function restore(kept) {
  var all = ticks(), fields = records(), open = folds(), place;
  [false, true].forEach(function (finished) { // lines first: they may settle their step
    kept.ticked.forEach(function (key) {
      var one = all.get(key);
      if (one && /\|done\|\d+$/.test(key) === finished && !one.checked) {
        one.checked = true;
        one.dispatchEvent(new Event("change"));
      }
    });
  });
  kept.written.forEach(function (pair) {
    var one = fields.get(pair[0]);
    if (one && one.value !== pair[1]) {
      one.value = pair[1];
      one.dispatchEvent(new Event("change"));
    }
  });
  kept.open.forEach(function (key) { if (open.get(key)) { open.get(key).open = true; } });
  place = kept.view.heading && headings().get(kept.view.heading.key);
  window.scrollTo({ top: kept.view.y, behavior: "instant" });
  if (place) {
    window.scrollBy({ top: place.getBoundingClientRect().top - kept.view.heading.top,
                      behavior: "instant" });
  }
  place = (kept.focus && ticks().get(kept.focus)) ||
          (kept.id && document.getElementById(kept.id));
  if (place) { place.focus({ preventScroll: true }); }
}
// Ticks are stored by their number, and the numbers change; they come back by their words.
function forgetNumbers() {
  var key = "matchmark:" + document.body.getAttribute("data-guide"), kept = {};
  try {
    kept = JSON.parse(localStorage.getItem(key)) || {};
    localStorage.setItem(key, JSON.stringify(kept["keys-off"] ? { "keys-off": 1 } : {}));
  } catch (e) { return; }
}
function replace(text) {
  var page = new DOMParser().parseFromString(text, "text/html"), kept;
  if (page.body.innerHTML === pristine) { return; }
  pristine = page.body.innerHTML;
  kept = remember();
  document.title = page.title;
  forgetNumbers();
  document.body.replaceChildren.apply(document.body,
    Array.prototype.map.call(page.body.childNodes, function (one) {
      return document.importNode(one, true);
    }));
  runPage();
  restore(kept);
}
function update() {
  if (busy) { again = true; return Promise.resolve(); }
  busy = true;
  return fetch(location.pathname + location.search, { cache: "no-store" }).then(function (reply) {
    if (reply.status === 404) { tell("The file of this page is not there any more."); }
    return reply.ok ? reply.text().then(replace) : null;
  }).catch(function () { return null; }).then(function () {
    busy = false;
    if (again) { again = false; return update(); }
    return null;
  });
}

var channel = typeof BroadcastChannel === "function" ? new BroadcastChannel("preview") : null;
function watch() {
  fetch("/changes?since=" + version, { cache: "no-store" }).then(function (reply) {
    return reply.json();
  }).then(function (told) {
    var now = Number(told.version);
    if (now !== version) {
      version = now;
      if (channel) { channel.postMessage(version); }
      update();
    }
    tell("");
    watch();
  }).catch(function () {
    tell("The preview does not answer. Has it ended?");
    setTimeout(watch, 1000);
  });
}
if (channel) { channel.onmessage = update; }
// A browser keeps few connections to one address: one tab asks for all.
if (channel && navigator.locks) {
  navigator.locks.request("preview", function () { watch(); return new Promise(function () {}); });
} else {
  watch();
}
window.addEventListener("pageshow", function () { update(); });

return {
  tell: tell,
  update: update,
  // To be done with every new page; the first time at once.
  onPage: function (mount) { mounted.push(mount); },
  start: runPage
};
}());
)js";

} // namespace matchmark::serve
