// The reading desk: entries in the order of the paper, read while they are typed. Comes after room.js and picture.js.
"use strict";

const desk = one("#desk");

const fieldsOf = (entry) => all("textarea, .leg input", entry);
function fieldOf(entry) {
  return fieldsOf(entry)[0];
}
const shown = (entry) => entry.offsetParent !== null;
const entries = () => all(".entry", desk || document).filter(shown);
const placeOf = (entry) => entry.closest("[data-paper]").dataset.paper + "-" + entry.dataset.entry;

const textOf = (entry) => {
  const field = one("textarea", entry);
  if (field) return field.value;
  return legsOf(entry).map((leg) => leg.join(" ").trim()).join("\n");
};
const legsOf = (entry) =>
  all(".leg", entry)
    .map((leg) => all("input", leg).map((input) => input.value))
    .filter((leg) => leg.some((part) => part.trim()));

const stateOf = (touched) => {
  const value = (what) => one('[data-soldier="' + what + '"]', desk).value;
  const state = { revision: Number(desk.dataset.revision), name: value("name"), sex: value("sex"), papers: [] };
  for (const section of all("[data-paper]", desk)) {
    const paper = { form: section.dataset.form, entries: {}, blank: [], illegible: [], legs: [] };
    for (const entry of all(".entry", section)) {
      const key = entry.dataset.entry;
      if (one(".legs", entry)) {
        paper.legs = legsOf(entry);
        if (paper.legs.length) continue;
      } else if (one("textarea", entry).value.trim()) {
        paper.entries[key] = one("textarea", entry).value;
        continue;
      }
      if (entry.dataset.kind === "blank") paper.blank.push(key);
      if (entry.dataset.kind === "illegible") paper.illegible.push(key);
    }
    state.papers.push(paper);
  }
  state.at = [...touched].map((entry) => ({ paper: Number(entry.closest("[data-paper]").dataset.paper), entry: entry.dataset.entry }));
  return state;
};

// Kinds of nothing: an empty entry was not shown to us until somebody says what stands there.
const showKind = (entry) => {
  const filled = textOf(entry).trim() !== "";
  entry.classList.toggle("filled", filled);
  if (filled) entry.dataset.kind = "text";
  else if (entry.dataset.kind === "text") entry.dataset.kind = "none";
  all("[data-nothing]", entry).forEach((button) =>
    button.setAttribute("aria-pressed", String(!filled && entry.dataset.kind === button.dataset.nothing)),
  );
};

const setNothing = (entry, kind) => {
  if (textOf(entry).trim()) return;
  entry.dataset.kind = entry.dataset.kind === kind ? "none" : kind;
  showKind(entry);
  touch(entry);
};

// Looking: the newest state is asked for, never two at a time; what was touched meanwhile is asked for next.
let looking = false;
let lookAgain = false;
let typedAt = 0;
const touched = new Set();

const look = async () => {
  if (looking) {
    lookAgain = true;
    return;
  }
  looking = true;
  lookAgain = false;
  const since = typedAt;
  const asked = new Set(touched);
  touched.clear();
  try {
    const answer = await fetch("/cases/" + desk.dataset.case + "/look", {
      method: "POST",
      body: JSON.stringify(stateOf(asked)),
      headers: { "Content-Type": "application/json", Accept: "application/json" },
    });
    if (answer.ok) {
      const seen = await answer.json();
      show(seen);
      root.dataset.lookMs = (performance.now() - since).toFixed(1);
      root.dataset.lookMicros = seen.micros;
      root.dataset.looks = Number(root.dataset.looks || 0) + 1;
    }
  } catch {
    // The room does not answer; saving says so already.
    asked.forEach((entry) => touched.add(entry));
  } finally {
    looking = false;
    if (lookAgain) look();
  }
};

const awardsIn = (margin) => new Map(all("[data-award]", margin).map((line) => [line.dataset.award, line.textContent.replace(/\s+/g, " ").trim()]));

const show = (seen) => {
  for (const [place, html] of Object.entries(seen.readings)) {
    const reading = document.getElementById("r-" + place);
    if (reading) reading.innerHTML = html;
  }
  const margin = one("#margin");
  const before = awardsIn(margin);
  if (margin.innerHTML !== seen.margin) {
    margin.innerHTML = seen.margin;
    const news = [];
    for (const [award, words] of awardsIn(margin)) {
      if (before.get(award) !== words) {
        one('[data-award="' + award + '"]', margin).classList.add("new");
        news.push(words);
      }
      before.delete(award);
    }
    if (news.length) one("#told").textContent = "In the margin now: " + news.slice(0, 3).join("; ");
  }
};

// What the machine read with a doubt wants a person's look, one entry after the other.
const lookedAt = (entry) => {
  if (!entry.classList.contains("unseen-yet")) return;
  entry.classList.remove("unseen-yet", "in-doubt");
  one(".machine", entry)?.remove();
  const left = all(".unseen-yet", desk).length;
  const count = one("#to-see-count");
  if (count) count.textContent = left ? (left === 1 ? "1 entry wants" : left + " entries want") + " a look beside the picture." : "Every entry has been looked at.";
  if (!left) one("#next-to-see")?.remove();
};

const nextToSee = (after) => {
  const inDoubt = all(".unseen-yet.in-doubt", desk).filter(shown);
  const waiting = inDoubt.length ? inDoubt : all(".unseen-yet", desk).filter(shown);
  const next = waiting.find((entry) => after && after.compareDocumentPosition(entry) & Node.DOCUMENT_POSITION_FOLLOWING) || waiting[0];
  if (next) fieldOf(next).focus();
  return Boolean(next);
};

const readsRight = async (entry) => {
  if (!entry.classList.contains("unseen-yet")) return;
  const paper = entry.closest("[data-paper]").dataset.paper;
  const answer = await fetch("/cases/" + desk.dataset.case + "/papers/" + paper + "/seen", {
    method: "POST",
    body: new URLSearchParams({ entry: entry.dataset.entry }),
  }).catch(() => null);
  if (!answer?.ok) {
    told.textContent = "Not kept: the reading room does not answer. Try again.";
    return;
  }
  lookedAt(entry);
  if (!nextToSee(entry)) fieldOf(entry).focus();
};

const touch = (entry) => {
  typedAt = performance.now();
  lookedAt(entry);
  touched.add(entry);
  look();
  changed();
};

const grow = (field) => {
  if (CSS.supports("field-sizing", "content") || !field.matches("textarea")) return;
  field.style.height = "auto";
  field.style.height = field.scrollHeight + "px";
};

const move = (entry, by) => {
  const list = entries();
  const next = list[list.indexOf(entry) + by];
  if (!next) return false;
  const field = fieldOf(next);
  field.focus();
  field.select?.();
  return true;
};

const nextField = (field) => {
  const entry = field.closest(".entry");
  const fields = fieldsOf(entry);
  const leg = field.closest(".leg");
  if (leg) {
    const rowEmpty = all("input", leg).every((input) => !input.value.trim());
    const next = fields[fields.indexOf(field) + 1];
    if (!rowEmpty && next) {
      next.focus();
      next.select();
      return true;
    }
  }
  return move(entry, 1);
};

const moreLegs = (entry) => {
  const legs = all(".leg", entry);
  const last = legs[legs.length - 1];
  if (legs.length < 40 && all("input", last).some((input) => input.value.trim())) {
    const row = last.cloneNode(true);
    all("input", row).forEach((input) => {
      input.value = "";
      input.removeAttribute("value");
    });
    last.after(row);
  }
};

const goToBox = () => {
  const asked = prompt("Which box?");
  if (!asked) return;
  const here = document.activeElement?.closest?.("[data-paper]") || one("[data-paper]", desk);
  const entry = one('.entry[data-box="' + CSS.escape(asked.trim()) + '"]', here);
  if (!entry) return;
  if (!shown(entry)) {
    const whole = one("[data-whole]", here);
    whole.checked = true;
    whole.dispatchEvent(new Event("change", { bubbles: true }));
  }
  fieldOf(entry).focus();
};

if (desk) {
  save = (leaving) =>
    fetch("/cases/" + desk.dataset.case + "/papers", {
      method: "POST",
      body: JSON.stringify(stateOf([])),
      keepalive: leaving === true,
      headers: { "Content-Type": "application/json", Accept: "application/json" },
    });

  all(".entry", desk).forEach(showKind);
  all("textarea", desk).forEach(grow);

  desk.addEventListener("input", (event) => {
    const entry = event.target.closest(".entry");
    if (entry) {
      grow(event.target);
      showKind(entry);
      if (event.target.closest(".leg")) moreLegs(entry);
      touch(entry);
    } else if (event.target.matches("[data-soldier]")) {
      typedAt = performance.now();
      look();
      changed();
    }
  });

  desk.addEventListener("keydown", (event) => {
    const entry = event.target.closest(".entry");
    if (!entry || !event.target.matches("textarea, input")) return;
    if (event.key === "Enter" && !event.shiftKey && !event.altKey && !event.ctrlKey) {
      nextField(event.target);
    } else if (event.altKey && (event.key === "ArrowDown" || event.key === "ArrowUp")) {
      move(entry, event.key === "ArrowDown" ? 1 : -1);
    } else if (event.altKey && event.code === "KeyB") {
      setNothing(entry, "blank");
    } else if (event.altKey && event.code === "KeyY") {
      readsRight(entry);
    } else if (event.altKey && event.code === "KeyI") {
      setNothing(entry, "illegible");
    } else return;
    event.preventDefault();
  });

  document.addEventListener("keydown", (event) => {
    if (!event.altKey || event.ctrlKey) return;
    if (event.code === "KeyG") goToBox();
    else if (event.code === "KeyJ") nextToSee(document.activeElement?.closest?.(".entry"));
    else if (event.code === "KeyM") (one("#margin a") || one("#margin")).focus();
    else return;
    event.preventDefault();
  });

  one("#next-to-see")?.addEventListener("click", () => nextToSee(document.activeElement?.closest?.(".entry")));

  desk.addEventListener("click", (event) => {
    const right = event.target.closest("[data-reads-right]");
    if (right) {
      readsRight(right.closest(".entry"));
      return;
    }
    const nothing = event.target.closest("[data-nothing]");
    if (nothing) {
      const entry = nothing.closest(".entry");
      setNothing(entry, nothing.dataset.nothing);
      fieldOf(entry).focus();
      return;
    }
    const pick = event.target.closest(".pick");
    if (pick) {
      const entry = pick.closest(".entry");
      const field = one("textarea", entry);
      if (!field) return;
      // The words typed so far stay in the history; this is a new text.
      if (pick.dataset.wholePick !== undefined) field.value = pick.dataset.wholePick;
      else field.setRangeText(pick.dataset.pick, Number(pick.dataset.start), Number(pick.dataset.end), "end");
      field.dispatchEvent(new Event("input", { bubbles: true }));
      field.focus();
      return;
    }
    const token = event.target.closest(".token");
    if (token) {
      const field = one("textarea", token.closest(".entry"));
      if (field) {
        field.focus();
        field.setSelectionRange(Number(token.dataset.start), Number(token.dataset.end));
      }
      return;
    }
    if (event.target.closest("[data-all-blank]")) {
      const paper = event.target.closest("[data-paper]");
      const empty = all(".entry", paper).filter((entry) => shown(entry) && !textOf(entry).trim() && entry.dataset.kind !== "illegible");
      empty.forEach((entry) => {
        entry.dataset.kind = "blank";
        showKind(entry);
      });
      if (empty.length) touch(empty[0]);
    }
  });

  // Every box of the form, or those that findings and letters rest on.
  const whole = (paper, every) => paper.classList.toggle("every-box", every);
  all("[data-whole]", desk).forEach((box) => {
    box.checked = localStorage.getItem("every-box") === "yes";
    whole(box.closest("[data-paper]"), box.checked);
    box.addEventListener("change", () => {
      localStorage.setItem("every-box", box.checked ? "yes" : "no");
      all("[data-whole]", desk).forEach((other) => {
        other.checked = box.checked;
        whole(other.closest("[data-paper]"), box.checked);
      });
    });
  });

  desk.addEventListener("focusin", (event) => {
    const entry = event.target.closest(".entry");
    if (entry) spotlight(entry);
  });
}

openNamed();
if (desk && location.hash.length < 2) {
  // A paper just read from its picture opens at the first entry that wants a look, an empty one at its first box.
  if (one("#just-read")) nextToSee();
  else if (!one(".entry.filled", desk)) fieldOf(entries()[0])?.focus();
}
