"use strict";
// What a page shows while bookings wait, and after they are answered.
(function () {
  const REST_MILLIS = 900;
  const outbox = window.outbox;
  const here = function () { return window.location.pathname + window.location.search; };
  let touched = false;
  let turn = 0;

  // A cut that is new under the finger takes no tap at once: it is where the last one was.
  let shown = "";
  let calm = 0;
  const ticks = function () { return document.querySelectorAll("#main form.tick button"); };
  const rest = function (piece) {
    if (piece !== shown) { shown = piece; calm = Date.now() + REST_MILLIS; }
    const wait = calm - Date.now();
    if (wait > 0) { window.setTimeout(function () { advance(); }, wait + 10); }
    return wait > 0;
  };

  const set = function (form, name, value) {
    const field = form.querySelector("input[name=" + name + "]");
    if (field) { field.value = value; }
  };

  // The next cut that is not yet ticked: so a reel is cut on while nothing can be sent. Only as planned: what came out otherwise
  // changes what is next, and that the server says.
  const advance = function () {
    const mine = outbox.of(here());
    const ids = mine.map(function (each) { return each.fields.booking; });
    const bench = document.getElementById("cutting");
    const otherwise = bench && mine.some(function (each) { return each.fields.what !== "cut"; });
    const cut = mine.filter(function (each) { return each.fields.what === "cut"; }).map(function (each) { return each.fields.piece; });
    let next = null;
    document.querySelectorAll("#cutting .nextcut").forEach(function (section, at) {
      const isNext = next === null && !cut.includes(section.dataset.piece);
      section.hidden = !isNext;
      if (!isNext) { return; }
      next = section;
      document.querySelectorAll("#ticks form").forEach(function (form) {
        set(form, "piece", section.dataset.piece);
        set(form, "after", section.dataset.after);
        set(form, "booking", bench.dataset.booking + form.dataset.mark + (at === 0 ? "" : "-" + at));
      });
    });
    const hide = function (id, isHidden) { const part = document.getElementById(id); if (part) { part.hidden = isHidden; } };
    document.querySelectorAll("#cutting .cardof").forEach(function (card) {
      card.hidden = next === null || card.dataset.card !== next.dataset.card;
    });
    hide("tag", next === null);
    if (next !== null && document.getElementById("tag")) { document.getElementById("tag").href = next.dataset.tag; }
    hide("ticks", next === null || otherwise);
    hide("held", !otherwise);
    hide("allcut", next !== null);
    document.querySelectorAll("#cutting .state").forEach(function (state) {
      const isNext = next !== null && state.dataset.piece === next.dataset.piece;
      if (cut.includes(state.dataset.piece)) { state.textContent = "cut, waits to be sent"; } else if (state.textContent !== "cut") { state.textContent = isNext ? "next" : ""; }
    });
    const resting = bench ? rest(next === null ? "" : next.dataset.piece) : false;
    ticks().forEach(function (button) {
      const form = button.form;
      const waits = ids.includes(form.querySelector("input[name=booking]").value);
      button.disabled = resting || waits || (bench && mine.length > 0 && !form.closest("#ticks"));
    });
    return next;
  };

  // What was refused is typed in its form again, so that the mistake alone is changed.
  const refill = function () {
    outbox.refusedOf(here()).forEach(function (entry) {
      document.querySelectorAll("#main form.tick").forEach(function (form) {
        const hidden = Array.from(form.querySelectorAll("input[type=hidden]"));
        const isIts = form.getAttribute("action") === entry.path && hidden.every(function (field) {
          return !["what", "reel", "piece"].includes(field.name) || field.value === entry.fields[field.name];
        });
        const boxes = Array.from(form.querySelectorAll("input:not([type=hidden]), select"));
        const isBlank = boxes.every(function (field) { return field.tagName === "SELECT" || field.value === ""; });
        if (!isIts || !isBlank || boxes.length === 0 || form.contains(document.activeElement)) { return; }
        boxes.forEach(function (field) { if (entry.fields[field.name] !== undefined) { field.value = entry.fields[field.name]; } });
        if (form.closest("details")) { form.closest("details").open = true; }
      });
    });
  };

  const say = function (words) { document.getElementById("said").textContent = words; };
  const nextInWords = function (next) {
    return next === null ? "" : " Next: " + next.dataset.piece + ", counter " + next.dataset.reading + ".";
  };

  // A table that is wider than the screen is moved with the keys, too.
  const widen = function () {
    document.querySelectorAll("#main .scroll, #main .picture").forEach(function (box) {
      if (box.scrollWidth > box.clientWidth) {
        box.tabIndex = 0;
        box.setAttribute("role", "region");
        box.setAttribute("aria-label", "Wider than the screen");
      }
    });
  };

  const put = function (page) {
    const old = document.getElementById("main");
    const main = document.adoptNode(page.getElementById("main"));
    const focused = old.contains(document.activeElement);
    // What somebody has opened stays open.
    ["details:not(.cardof)", "details.cardof"].forEach(function (kind) {
      const opened = Array.from(old.querySelectorAll(kind), function (each) { return each.open; });
      main.querySelectorAll(kind).forEach(function (each, at) { each.open = opened[at] === true; });
    });
    old.replaceWith(main);
    if (focused) { main.focus({ preventScroll: true }); }
    touched = false;
    turn++;
    watch();
    widen();
    const next = advance();
    refill();
    return next;
  };

  const isTyping = function () {
    const at = document.activeElement;
    return (at && ["INPUT", "SELECT", "TEXTAREA"].includes(at.tagName)) || touched;
  };

  const watch = function () {
    document.querySelectorAll("#main form.tick").forEach(function (form) {
      form.addEventListener("submit", function (event) {
        const fields = Object.fromEntries(new FormData(form).entries());
        delete fields.token;
        const entry = { path: form.getAttribute("action"), from: here(), by: document.body.dataset.who, fields: fields };
        if (!outbox.put(entry)) { return; }
        event.preventDefault();
        if (form.contains(document.activeElement)) { document.activeElement.blur(); }
        form.querySelectorAll("input:not([type=hidden])").forEach(function (field) { field.value = field.defaultValue; });
        const opened = form.closest("details");
        if (opened) { opened.open = false; }
        touched = false;
        turn++;
        const next = advance();
        say("Ticked" + (fields.piece ? ": " + fields.piece : "") + "." + nextInWords(next));
        outbox.send();
      });
    });
  };

  const answered = async function (done) {
    const mine = done.filter(function (each) { return each.entry.from === here(); });
    if (mine.length === 0) { return; }
    const last = mine[mine.length - 1];
    const booked = mine.filter(function (each) { return each.booked; }).length;
    const words = (booked > 0 ? booked + " booked." : "") + (booked < mine.length ? " " + (mine.length - booked) + " not booked." : "");
    let next = null;
    if (outbox.of(here()).length > 0 || isTyping()) {
      next = advance();
      refill();
    } else {
      const asked = turn;
      const isHere = last.answer.ok && last.answer.url.pathname + last.answer.url.search === here();
      const page = isHere ? last.answer.page : await outbox.load(here());
      next = page && asked === turn ? put(page) : advance();
    }
    say(words + nextInWords(next));
  };

  document.addEventListener("input", function () { touched = true; });
  // What is opened may be wider than what was closed.
  document.addEventListener("toggle", function () { widen(); }, true);
  // Once a plan is there its page is not asked for again.
  document.addEventListener("htmx:afterSwap", function (event) {
    if (document.querySelector("[data-done]")) { event.target.removeAttribute("hx-get"); event.target.removeAttribute("hx-trigger"); window.htmx.process(event.target); window.location.reload(); }
  });
  // Another device, or the command line, changed something: the page is read again unless somebody is typing in it.
  const isBusy = function () {
    return isTyping() || document.querySelector("form.book") || outbox.isBusy() || document.getElementById("progress");
  };
  new EventSource("/news").addEventListener("changed", async function () {
    if (isBusy()) { return; }
    const asked = turn;
    const page = await outbox.load(here());
    // What was tapped while it was on its way is newer than it.
    if (page && asked === turn && !isBusy()) { put(page); }
  });
  watch();
  widen();
  advance();
  refill();
  outbox.begin(answered);
})();
