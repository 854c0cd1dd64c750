// The picture of the paper: turned, enlarged, and lit where an entry stands. Comes after room.js.
"use strict";

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
