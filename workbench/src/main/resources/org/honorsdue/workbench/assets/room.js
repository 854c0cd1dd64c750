// The reading room's own script: the lamp, what lights up, the keys, saving. Every page works without it, except live
// reading. picture.js and desk.js come after it and share its names.
"use strict";

const all = (what, within = document) => Array.from(within.querySelectorAll(what));
const one = (what, within = document) => within.querySelector(what);
const root = document.documentElement;

// ---- the lamp --------------------------------------------------------------------------------------------------

const isDark = () =>
  root.hasAttribute("data-dark") || (!root.hasAttribute("data-light") && matchMedia("(prefers-color-scheme: dark)").matches);

const showLamp = () => {
  const lamp = one("#lamp");
  if (!lamp) return;
  lamp.textContent = isDark() ? "Lamp on" : "Lamp off";
  lamp.setAttribute("aria-pressed", String(isDark()));
  lamp.setAttribute("aria-label", isDark() ? "Lamp on: paper tones" : "Lamp off: dark tones");
};

one("#lamp")?.addEventListener("click", () => {
  const dark = !isDark();
  root.toggleAttribute("data-dark", dark);
  root.toggleAttribute("data-light", !dark);
  localStorage.setItem("lamp", dark ? "off" : "on");
  showLamp();
});
showLamp();

// ---- forms that need no button -----------------------------------------------------------------------------------

document.addEventListener("change", (event) => {
  if (event.target.matches?.("[data-submits]") && event.target.form && !event.target.form.matches(".line-form")) {
    event.target.form.requestSubmit();
  }
});

one("#bring")?.addEventListener("submit", () => {
  const bar = one("#upload");
  bar.hidden = false;
  bar.removeAttribute("value");
});

// ---- what lights up ------------------------------------------------------------------------------------------------

// A place is "paper-entry", "paper-entry:start:end" or "evidence-n".
const unlight = () => {
  all(".lit").forEach((place) => place.classList.remove("lit"));
  all("[data-text]").forEach((text) => {
    if (text.dataset.plain !== undefined) {
      text.textContent = text.dataset.plain;
      delete text.dataset.plain;
    }
  });
};

const light = (places, scroll) => {
  unlight();
  const marks = new Map();
  for (const place of (places || "").split(" ").filter(Boolean)) {
    const [where, start, end] = place.split(":");
    const spot = document.getElementById("p-" + where) || document.getElementById("e-" + where) || document.getElementById(where);
    if (!spot) continue;
    spot.classList.add("lit");
    const text = one("[data-text]", spot);
    if (text && start !== undefined) {
      if (!marks.has(text)) marks.set(text, []);
      marks.get(text).push([Number(start), Number(end)]);
    }
  }
  for (const [text, ranges] of marks) {
    const plain = text.textContent;
    text.dataset.plain = plain;
    text.textContent = "";
    let at = 0;
    for (const [start, end] of ranges.sort((a, b) => a[0] - b[0])) {
      if (start < at) continue;
      text.append(plain.slice(at, start));
      const mark = document.createElement("mark");
      mark.textContent = plain.slice(start, end);
      text.append(mark);
      at = end;
    }
    text.append(plain.slice(at));
  }
  const first = one(".as-typed .lit");
  if (first && scroll) {
    const panel = first.closest(".as-typed");
    if (panel.scrollHeight > panel.clientHeight) panel.scrollTop = first.offsetTop - panel.clientHeight / 3;
  }
};

for (const kind of ["mouseover", "focusin"]) {
  document.addEventListener(kind, (event) => {
    const source = event.target.closest?.("[data-lights]");
    if (source) light(source.dataset.lights, true);
  });
}
for (const kind of ["mouseout", "focusout"]) {
  document.addEventListener(kind, (event) => {
    if (event.target.closest?.("[data-lights]")) unlight();
  });
}

// A finding named in the address stands open.
const openNamed = () => {
  const named = location.hash.length > 1 && document.getElementById(decodeURIComponent(location.hash.slice(1)));
  if (!named) return;
  if (named.matches("details")) {
    named.open = true;
    one("summary", named)?.focus({ preventScroll: true });
    named.scrollIntoView({ block: "start" });
  }
  if (named.matches(".entry")) fieldOf(named)?.focus();
};
addEventListener("hashchange", openNamed);
// What is folded away on the screen is laid open on the printed sheet.
let folded = [];
addEventListener("beforeprint", () => {
  folded = all("details.finding:not([open])");
  folded.forEach((finding) => (finding.open = true));
});
addEventListener("afterprint", () => folded.forEach((finding) => (finding.open = false)));

// ---- keys ------------------------------------------------------------------------------------------------------------

const sheetOfKeys = one("#keys");
const single = one("#single-keys");
if (single) {
  single.checked = localStorage.getItem("single-keys") !== "no";
  single.addEventListener("change", () => localStorage.setItem("single-keys", single.checked ? "yes" : "no"));
}
one("#ask-keys")?.addEventListener("click", () => sheetOfKeys.showModal());

const inField = () => {
  const at = document.activeElement;
  return at && (at.matches("input:not([type=checkbox]):not([type=radio]), textarea, select") || at.isContentEditable);
};

const step = (by) => {
  const lines = all("[data-line]").filter((line) => line.offsetParent !== null);
  if (!lines.length) return;
  const now = lines.findIndex((line) => line.contains(document.activeElement));
  const next = lines[Math.min(lines.length - 1, Math.max(0, now + by))];
  const target = next.matches("details") ? one("summary", next) : next;
  target.focus();
  target.scrollIntoView({ block: "nearest" });
};

document.addEventListener("keydown", (event) => {
  if (sheetOfKeys?.open) return;
  if (event.key === "ArrowDown" && event.target.matches?.("[data-search]")) {
    step(1);
    event.preventDefault();
    return;
  }
  if (event.key === "Escape" && inField()) {
    document.activeElement.blur();
    return;
  }
  if (inField() || event.ctrlKey || event.metaKey || event.altKey) return;
  if (document.activeElement?.closest?.("#picture") && viewKey(event)) return;
  if (!single?.checked) return;
  const leaves = all(".leaves a");
  const number = "12345678".indexOf(event.key);
  if (number >= 0 && leaves[number]) leaves[number].click();
  else if (event.key === "?") sheetOfKeys.showModal();
  else if (event.key === "c") location.href = "/";
  else if (event.key === "n") location.href = "/new";
  else if (event.key === "/") {
    const search = one("[data-search]");
    if (search) search.focus();
    else location.href = "/";
  } else if (event.key === "j") step(1);
  else if (event.key === "k") step(-1);
  else if (event.key === "u") undo();
  else return;
  event.preventDefault();
});

const undo = async () => {
  const form = one(".folder form.stage");
  if (!form) return;
  await settle();
  const post = document.createElement("form");
  post.method = "post";
  post.action = form.action.replace(/\/stage$/, "/undo");
  const revision = document.createElement("input");
  revision.type = "hidden";
  revision.name = "revision";
  revision.value = one("[data-revision]", form).value;
  post.append(revision);
  document.body.append(post);
  post.submit();
};

// ---- saving: one request at a time, each from the state the last one left ----------------------------------------------

const SAVE_AFTER = 600;
const told = one("#saved");
let dirty = false;
let saving = null;
let timer = 0;
let stale = false;
let save = null;

const setRevision = (revision) => {
  all("[data-revision]").forEach((field) => {
    if (field.matches("input")) field.value = revision;
    else field.dataset.revision = revision;
  });
};

const tellStale = (says) => {
  stale = true;
  told.textContent = "Not saved";
  const box = one("#stale");
  box.hidden = false;
  box.replaceChildren();
  const words = document.createElement("p");
  words.textContent = says;
  const what = document.createElement("p");
  what.textContent = "What you typed still stands here. Copy what you need, then look at the newer state.";
  const open = document.createElement("button");
  open.type = "button";
  open.textContent = "Show the newer state";
  open.addEventListener("click", () => {
    dirty = false;
    location.reload();
  });
  box.append(words, what, open);
  box.scrollIntoView({ block: "nearest" });
};

const saveNow = async () => {
  clearTimeout(timer);
  timer = 0;
  if (!dirty || stale || !save) return;
  if (saving) {
    await saving;
    return saveNow();
  }
  dirty = false;
  told.textContent = "Saving";
  saving = save()
    .then(async (answer) => {
      if (answer.ok) {
        const kept = await answer.json();
        setRevision(kept.revision);
        if (kept.title) {
          const title = one(".folder h1");
          if (title && title.textContent !== kept.title) title.textContent = kept.title;
        }
        told.textContent = dirty ? "Not saved yet" : "Saved";
      } else {
        const fault = await answer.json().catch(() => ({ says: "It could not be saved." }));
        if (answer.status === 409) tellStale(fault.says);
        else {
          dirty = true;
          told.textContent = "Not saved: " + fault.says + (fault.faults || []).map((each) => " " + each.what + " " + each.remedy).join("");
        }
      }
    })
    .catch(() => {
      dirty = true;
      told.textContent = "Not saved: the reading room does not answer. It is tried again.";
      timer = setTimeout(saveNow, 3000);
    })
    .finally(() => (saving = null));
  return saving;
};

const settle = async () => {
  if (dirty) await saveNow();
  if (saving) await saving;
};

const changed = () => {
  dirty = true;
  if (stale) return;
  told.textContent = "Not saved yet";
  clearTimeout(timer);
  timer = setTimeout(saveNow, SAVE_AFTER);
};

addEventListener("beforeunload", (event) => {
  if (dirty && !stale && save) {
    save(true);
  }
});

// A form sent while something is unsaved waits for it, so that it starts from the saved state.
document.addEventListener("submit", (event) => {
  const form = event.target;
  if (!save || (!dirty && !saving) || form.dataset.ready || !one("[data-revision]", form)) return;
  event.preventDefault();
  const pressed = event.submitter;
  settle().then(() => {
    form.dataset.ready = "yes";
    form.requestSubmit(pressed || undefined);
  });
});

// Notes.
const notesForm = one("#notes-form");
if (notesForm) {
  save = (leaving) => {
    const body = new URLSearchParams(new FormData(notesForm));
    return fetch(notesForm.action, { method: "POST", body, keepalive: leaving === true, headers: { "HX-Request": "true", Accept: "application/json" } });
  };
  one("#notes").addEventListener("input", changed);
}

const openLeaf = one(".leaves a[aria-current]");
if (openLeaf) openLeaf.parentElement.scrollLeft = openLeaf.offsetLeft - openLeaf.parentElement.offsetLeft - 20;

// A list that is drawn anew under the reader's finger keeps the finger on its line.
let heldLine = "";
document.addEventListener("focusin", (event) => {
  heldLine = event.target.matches("a[data-line]") ? event.target.getAttribute("href") : "";
});
document.addEventListener("htmx:after:swap", () => {
  if (!heldLine || document.activeElement !== document.body) return;
  one('a[data-line][href="' + CSS.escape(heldLine) + '"]')?.focus();
});
