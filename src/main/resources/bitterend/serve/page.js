"use strict";
// What is ticked at the bench is written down in the browser before it is sent, and is sent again until the server answers:
// each booking has an id of its own, so that it counts once however often it arrives.
(function () {
  const KEPT = "bitterend-outbox";
  const token = function () { return document.body.dataset.token; };
  const read = function () { try { return JSON.parse(localStorage.getItem(KEPT) || "[]"); } catch (e) { return []; } };
  const write = function (list) { localStorage.setItem(KEPT, JSON.stringify(list)); show(list); };
  const show = function (list) {
    const line = document.getElementById("waiting");
    line.hidden = list.length === 0;
    line.textContent = list.length === 0 ? "" : list.length + (list.length === 1 ? " booking waits" : " bookings wait") + " to be sent.";
  };
  // What was refused stays in sight until somebody has seen it: at the bench it was done all the same.
  const REFUSED = "bitterend-refused";
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
        if (answer.status >= 500 || answer.status === 403) { break; }
        const text = await answer.text();
        const page = new DOMParser().parseFromString(text, "text/html");
        list = read().filter(function (each) { return each.fields.booking !== first.fields.booking; });
        write(list);
        if (answer.status === 409) {
          const why = page.querySelector(".told");
          refuse(first, why ? why.textContent : "It was not booked.");
        }
        document.getElementById("main").replaceWith(document.adoptNode(page.getElementById("main")));
        watch();
      }
    } finally { sending = false; show(read()); }
  };
  const watch = function () {
    document.querySelectorAll("form.tick").forEach(function (form) {
      form.addEventListener("submit", function (event) {
        event.preventDefault();
        const fields = Object.fromEntries(new FormData(form).entries());
        delete fields.token;
        const list = read();
        if (!list.some(function (each) { return each.fields.booking === fields.booking; })) {
          list.push({ path: form.getAttribute("action"), fields: fields });
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
  const news = new EventSource("/news");
  news.addEventListener("changed", async function () {
    const at = document.activeElement;
    const typing = at && ["INPUT", "SELECT", "TEXTAREA"].includes(at.tagName);
    if (typing || sending || read().length > 0 || document.getElementById("progress")) { return; }
    const answer = await fetch(window.location.href);
    if (answer.ok) {
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      document.getElementById("main").replaceWith(document.adoptNode(page.getElementById("main")));
      watch();
    }
  });
  watch();
  show(read());
  showRefused();
  send();
  window.addEventListener("online", send);
  window.setInterval(send, 5000);
})();
