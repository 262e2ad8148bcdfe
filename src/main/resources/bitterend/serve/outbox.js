"use strict";
// What is ticked at the bench is written down in the browser before it is sent, with who ticked it, and is sent again until the
// server answers: each booking has an id of its own, so that it counts once however often it arrives. What is refused is set
// aside in sight, and those behind it are sent.
window.outbox = (function () {
  const MOST_TRIES = 3;
  const PATIENCE_MILLIS = 20000;
  const instance = document.body.dataset.instance;
  const list = function (name) {
    const key = instance + "-" + name;
    return {
      read: function () { try { return JSON.parse(localStorage.getItem(key) || "[]"); } catch (broken) { return []; } },
      write: function (all) { localStorage.setItem(key, JSON.stringify(all)); }
    };
  };
  const waiting = list("outbox");
  const refused = list("refused");
  let reason = "";
  let answered = function () {};

  const isSame = function (one, other) { return one.fields.booking === other.fields.booking; };
  // The same deed at the same piece or reel: typed anew it takes the place of the one that was refused.
  const isSameDeed = function (one, other) {
    return one.path === other.path && ["what", "reel", "piece"].every(function (name) { return one.fields[name] === other.fields[name]; });
  };
  const without = function (entry) { return waiting.read().filter(function (each) { return !isSame(each, entry); }); };

  const show = function () {
    const line = document.getElementById("waiting");
    const many = waiting.read().length;
    line.hidden = many === 0;
    line.textContent = many === 0 ? "" : many + (many === 1 ? " booking waits" : " bookings wait") + " to be sent." + (reason ? " " + reason : "");
    const box = document.getElementById("refused");
    box.replaceChildren();
    refused.read().forEach(function (each, at) { box.append(lineOf(each, at)); });
    box.hidden = box.children.length === 0;
  };

  // What was refused stays in sight until somebody has seen it: at the bench it was done all the same.
  const lineOf = function (each, at) {
    const line = document.createElement("p");
    const entry = each.entry;
    line.textContent = "Not booked: " + [entry.by, entry.fields.piece].filter(Boolean).join(", ") + ": " + each.why + " ";
    const button = function (words, act) {
      const made = document.createElement("button");
      made.textContent = words;
      made.addEventListener("click", function () {
        const left = refused.read();
        left.splice(at, 1);
        refused.write(left);
        act();
        show();
      });
      line.append(made);
    };
    if (each.so) { button("It is so: book it", function () { entry.fields.sure = "yes"; entry.tries = 0; waiting.write(waiting.read().concat([entry])); send(); }); }
    button("Send it again", function () { entry.tries = 0; waiting.write(waiting.read().concat([entry])); send(); });
    button("Seen", function () {});
    return line;
  };

  const parsed = async function (path, asked) {
    const stop = new AbortController();
    const timer = window.setTimeout(function () { stop.abort(); }, PATIENCE_MILLIS);
    try {
      const answer = await fetch(path, Object.assign({ signal: stop.signal }, asked));
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      return { status: answer.status, ok: answer.ok, sentOn: answer.redirected, url: new URL(answer.url), page: page, ours: page.body.dataset.instance === instance };
    } catch (gone) {
      return null;
    } finally {
      window.clearTimeout(timer);
    }
  };

  const post = function (entry) {
    const body = new URLSearchParams(entry.fields);
    if (entry.by) { body.set("by", entry.by); }
    return parsed(entry.path, { method: "POST", body: body, headers: { "X-Bitterend-Token": document.body.dataset.token } });
  };

  const words = function (answer) {
    const told = answer.page.querySelector(".told");
    return told ? told.textContent : "";
  };

  // A token is one browser's: one that lost its cookie is given another with the next page.
  const renewed = async function () {
    const answer = await parsed(window.location.pathname + window.location.search, {});
    if (answer === null || !answer.ours) { return false; }
    document.body.dataset.token = answer.page.body.dataset.token;
    return true;
  };

  // Sent on to a page, it is booked, whatever that page is by now.
  const isBooked = function (answer) { return answer.ours && (answer.ok || answer.sentOn); };
  // Something is in the way of all: nobody has said a name, the files have errors, the device is not paired, somebody else answers.
  const holdsUp = function (answer) {
    return [403, 408, 429, 503].includes(answer.status) || (!answer.ours && answer.status < 500);
  };

  // Why it is to wait; empty once it is done with.
  const settled = function (entry, answer) {
    if (isBooked(answer)) { waiting.write(without(entry)); return ""; }
    if (holdsUp(answer)) {
      return words(answer) || (answer.status === 403 ? "Load this page again, or pair this device." : "The server cannot take it now.");
    }
    const tries = (entry.tries || 0) + 1;
    if (answer.status >= 500 && tries < MOST_TRIES) {
      waiting.write(waiting.read().map(function (each) { return isSame(each, entry) ? Object.assign(each, { tries: tries }) : each; }));
      return words(answer) || "The server cannot take it now.";
    }
    refused.write(refused.read().concat([{ entry: entry, why: words(answer) || "It was not booked.", so: answer.page.querySelector(".told[data-so]") !== null }]));
    waiting.write(without(entry));
    return "";
  };

  let sending = false;
  const send = async function () {
    if (sending) { return; }
    sending = true;
    const done = [];
    let asked = false;
    reason = "";
    try {
      for (let all = waiting.read(); all.length > 0 && !reason; all = waiting.read()) {
        const answer = await post(all[0]);
        if (answer !== null && answer.status === 403 && !asked) {
          asked = true;
          if (await renewed()) { continue; }
        }
        reason = answer === null ? "The server is not reached." : settled(all[0], answer);
        if (!reason) { done.push({ entry: all[0], answer: answer, booked: isBooked(answer) }); }
      }
    } finally {
      sending = false;
      show();
    }
    if (done.length > 0) { answered(done); }
  };

  return {
    // Writes a booking down; false where this browser keeps nothing.
    put: function (entry) {
      try {
        if (!waiting.read().some(function (each) { return isSame(each, entry); })) { waiting.write(waiting.read().concat([entry])); }
        refused.write(refused.read().filter(function (each) { return !isSameDeed(each.entry, entry); }));
      } catch (full) {
        return false;
      }
      show();
      return true;
    },
    send: send,
    // What waits of one page.
    of: function (from) { return waiting.read().filter(function (each) { return each.from === from; }); },
    // What was refused of one page and nobody has seen to.
    refusedOf: function (from) {
      return refused.read().map(function (each) { return each.entry; }).filter(function (each) { return each.from === from; });
    },
    isBusy: function () { return sending || waiting.read().length > 0; },
    load: async function (path) {
      const answer = await parsed(path, {});
      return answer !== null && answer.ok && answer.ours ? answer.page : null;
    },
    begin: function (whenAnswered) {
      answered = whenAnswered;
      show();
      send();
      window.addEventListener("online", send);
      window.setInterval(send, 5000);
    }
  };
})();
