"use strict";
// What is ticked at the bench is written down in the browser before it is sent, and is sent again until the server answers:
// each booking has an id of its own, so that it counts once however often it arrives.
(function () {
  const KEPT = document.body.dataset.instance + "-outbox";
  const token = function () { return document.body.dataset.token; };
  const read = function () { try { return JSON.parse(localStorage.getItem(KEPT) || "[]"); } catch (e) { return []; } };
  const write = function (list) { localStorage.setItem(KEPT, JSON.stringify(list)); show(list); };
  const show = function (list) {
    const line = document.getElementById("waiting");
    line.hidden = list.length === 0;
    line.textContent = list.length === 0 ? "" : list.length + (list.length === 1 ? " booking waits" : " bookings wait") + " to be sent.";
  };
  // What was refused stays in sight until somebody has seen it: at the bench it was done all the same.
  const REFUSED = document.body.dataset.instance + "-refused";
  const refused = function () { try { return JSON.parse(localStorage.getItem(REFUSED) || "[]"); } catch (e) { return []; } };
  const refuse = function (sent, why) {
    const list = refused();
    list.push((sent.fields.piece ? sent.fields.piece + ": " : "") + why);
    localStorage.setItem(REFUSED, JSON.stringify(list));
    showRefused();
  };
  const showRefused = function () {
    const box = document.getElementById("refused");
    box.replaceChildren();
    refused().forEach(function (words, at) {
      const line = document.createElement("p");
      line.textContent = "Not booked: " + words + " ";
      const seen = document.createElement("button");
      seen.textContent = "Seen";
      seen.addEventListener("click", function () {
        const left = refused();
        left.splice(at, 1);
        localStorage.setItem(REFUSED, JSON.stringify(left));
        showRefused();
      });
      line.append(seen);
      box.append(line);
    });
    box.hidden = box.children.length === 0;
  };
  const here = function () { return window.location.pathname + window.location.search; };
  // A page that is new under the finger takes no tap at once: the next cut is where the last one was.
  let touched = false;
  let turn = 0;
  document.addEventListener("input", function () { touched = true; });
  const put = function (page) {
    const main = document.adoptNode(page.getElementById("main"));
    document.getElementById("main").replaceWith(main);
    touched = false;
    turn++;
    const ticks = main.querySelectorAll("form.tick button");
    ticks.forEach(function (button) { button.disabled = true; });
    window.setTimeout(function () { ticks.forEach(function (button) { button.disabled = false; }); }, 900);
    watch();
  };
  const waits = function (status, text) {
    const why = new DOMParser().parseFromString(text, "text/html").querySelector(".told");
    const line = document.getElementById("waiting");
    line.hidden = false;
    line.textContent = read().length + " to be sent; " + (why ? why.textContent : status === 403 ? "load this page again, or pair this device." : "the server cannot take it now.");
  };
  let sending = false;
  const send = async function () {
    if (sending) { return; }
    sending = true;
    try {
      let list = read();
      while (list.length > 0) {
        const first = list[0];
        const body = new URLSearchParams(first.fields);
        let answer;
        try {
          answer = await fetch(first.path, { method: "POST", body: body, headers: { "X-Bitterend-Token": token() }, redirect: "follow" });
        } catch (gone) { break; }
        if (answer.status >= 500 || answer.status === 403) { waits(answer.status, await answer.text()); break; }
        const booked = answer.ok;
        const text = await answer.text();
        const page = new DOMParser().parseFromString(text, "text/html");
        list = read().filter(function (each) { return each.fields.booking !== first.fields.booking; });
        write(list);
        if (!booked) {
          const why = page.querySelector(".told");
          refuse(first, why ? why.textContent : "It was not booked.");
        }
        if (first.from === here() && booked) { put(page); }
      }
    } finally { sending = false; if (read().length === 0) { show([]); } }
  };
  const watch = function () {
    document.querySelectorAll("form.tick").forEach(function (form) {
      form.addEventListener("submit", function (event) {
        event.preventDefault();
        const fields = Object.fromEntries(new FormData(form).entries());
        delete fields.token;
        const list = read();
        if (!list.some(function (each) { return each.fields.booking === fields.booking; })) {
          list.push({ path: form.getAttribute("action"), from: here(), fields: fields });
          write(list);
        }
        form.querySelectorAll("button").forEach(function (button) { button.disabled = true; });
        send();
      });
    });
  };
  // Once a plan is there its page is not asked for again.
  document.addEventListener("htmx:afterSwap", function (event) {
    if (document.querySelector("[data-done]")) { event.target.removeAttribute("hx-get"); event.target.removeAttribute("hx-trigger"); window.htmx.process(event.target); window.location.reload(); }
  });
  // Another device, or the command line, changed something: the page is read again unless somebody is typing in it.
  const busy = function () {
    const at = document.activeElement;
    const typing = (at && ["INPUT", "SELECT", "TEXTAREA"].includes(at.tagName)) || touched || document.querySelector("form.book");
    return typing || sending || read().length > 0 || document.getElementById("progress");
  };
  const news = new EventSource("/news");
  news.addEventListener("changed", async function () {
    if (busy()) { return; }
    const asked = turn;
    const answer = await fetch(window.location.href);
    const text = await answer.text();
    // What was tapped while it was on its way is newer than it.
    if (answer.ok && asked === turn && !busy()) { put(new DOMParser().parseFromString(text, "text/html")); }
  });
  watch();
  show(read());
  showRefused();
  send();
  window.addEventListener("online", send);
  window.setInterval(send, 5000);
})();
