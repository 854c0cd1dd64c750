// The reading room's own script: the lamp, the keys, the desk. Every page works without it, except live reading.
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

// ---- the reading desk ----------------------------------------------------------------------------------------------------

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

// ---- the picture ------------------------------------------------------------------------------------------------------------

const picture = one("#picture");
const view = { zoom: 0, turn: 0, enhance: 0 };

const drawPicture = () => {
  const image = one("img", picture);
  const floor = one(".stage-floor", picture);
  if (!image.naturalWidth) return;
  const across = view.turn % 180 === 0 ? image.naturalWidth : image.naturalHeight;
  const fit = (picture.clientWidth - 2) / across;
  const zoom = view.zoom || fit;
  const width = image.naturalWidth * zoom;
  const height = image.naturalHeight * zoom;
  const turned = view.turn % 180 !== 0;
  image.style.width = width + "px";
  image.style.height = height + "px";
  floor.style.width = (turned ? height : width) + "px";
  floor.style.height = (turned ? width : height) + "px";
  const shifts = { 0: "", 90: `translate(${height}px, 0)`, 180: `translate(${width}px, ${height}px)`, 270: `translate(0, ${width}px)` };
  image.style.transform = shifts[view.turn] + ` rotate(${view.turn}deg)`;
  image.style.filter = ["none", "contrast(1.6) brightness(1.1)", "contrast(2.4) grayscale(1)", "invert(1) contrast(1.4)"][view.enhance];
  picture.dataset.zoom = zoom.toFixed(4);
};

const zoomBy = (factor) => {
  const before = Number(picture.dataset.zoom) || 1;
  const centre = [(picture.scrollLeft + picture.clientWidth / 2) / before, (picture.scrollTop + picture.clientHeight / 2) / before];
  view.zoom = Math.min(6, Math.max(0.05, before * factor));
  drawPicture();
  picture.scrollTo(centre[0] * view.zoom - picture.clientWidth / 2, centre[1] * view.zoom - picture.clientHeight / 2);
};

const views = {
  in: () => zoomBy(1.3),
  out: () => zoomBy(1 / 1.3),
  fit: () => {
    view.zoom = 0;
    drawPicture();
  },
  left: () => {
    view.turn = (view.turn + 270) % 360;
    drawPicture();
  },
  right: () => {
    view.turn = (view.turn + 90) % 360;
    drawPicture();
  },
  enhance: () => {
    view.enhance = (view.enhance + 1) % 4;
    one('[data-view="enhance"]').setAttribute("aria-pressed", String(view.enhance > 0));
    drawPicture();
  },
};

function viewKey(event) {
  const wanted = { "+": "in", "=": "in", "-": "out", "0": "fit", "[": "left", "]": "right", e: "enhance" }[event.key];
  if (!wanted) return false;
  views[wanted]();
  event.preventDefault();
  return true;
}

// The box of the entry that is typed, on the picture it was read from.
function spotlight(entry) {
  if (!picture) return;
  const spot = one(".spot", picture);
  const image = one("img", picture);
  const from = entry.closest("[data-paper]").dataset.picture;
  if (!entry.dataset.place || !from || from !== image.dataset.sha || view.turn !== 0) {
    spot.hidden = true;
    return;
  }
  const zoom = Number(picture.dataset.zoom) || 1;
  const [x, y, width, height] = entry.dataset.place.split(",").map((part) => Number(part) * zoom);
  spot.hidden = false;
  Object.assign(spot.style, { left: x + "px", top: y + "px", width: width + "px", height: height + "px" });
  picture.scrollTo({ left: x - 20, top: y - picture.clientHeight / 3, behavior: matchMedia("(prefers-reduced-motion: reduce)").matches ? "auto" : "smooth" });
}

if (picture) {
  const image = one("img", picture);
  image.addEventListener("load", () => {
    drawPicture();
    const typed = document.activeElement?.closest?.(".entry");
    if (typed) spotlight(typed);
  });
  image.addEventListener("error", () => {
    picture.dataset.broken = "yes";
    const says = document.createElement("p");
    says.className = "broken";
    says.textContent = "This picture cannot be opened; it may be broken. The entries can be typed all the same.";
    one(".stage-floor", picture).replaceChildren(says);
  });
  if (image.complete && image.naturalWidth) drawPicture();
  else if (image.complete) image.dispatchEvent(new Event("error"));
  addEventListener("resize", drawPicture);
  document.addEventListener("click", (event) => {
    const button = event.target.closest("[data-view]");
    if (button) views[button.dataset.view]();
  });
  one("#which-picture")?.addEventListener("change", (event) => {
    const chosen = event.target.selectedOptions[0];
    image.src = chosen.value;
    image.dataset.sha = chosen.dataset.sha;
    image.alt = "The paper as photographed: " + chosen.textContent;
    view.zoom = 0;
  });
  // Dragging moves the picture, as a hand moves a sheet.
  let held = null;
  picture.addEventListener("pointerdown", (event) => {
    if (event.pointerType !== "mouse" || event.button !== 0) return;
    held = { x: event.clientX + picture.scrollLeft, y: event.clientY + picture.scrollTop };
    picture.setPointerCapture(event.pointerId);
  });
  picture.addEventListener("pointermove", (event) => {
    if (held) picture.scrollTo(held.x - event.clientX, held.y - event.clientY);
  });
  picture.addEventListener("pointerup", () => (held = null));
}

openNamed();
if (desk && location.hash.length < 2) {
  // A paper just read from its picture opens at the first entry that wants a look, an empty one at its first box.
  if (one("#just-read")) nextToSee();
  else if (!one(".entry.filled", desk)) fieldOf(entries()[0])?.focus();
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
