// The display case: pieces are taken up by pointer or by keys and put down where they are wished.
"use strict";

(() => {
  const drawing = document.querySelector(".case .drawing");
  const svg = drawing?.querySelector("svg");
  if (!svg) return;

  const form = document.querySelector("#wish");
  const STEP = 1 / 8; // inches, as a rule is marked
  const HELD = "case-piece";
  // The drawing is the opening with its moulding round it, in inches of true size.
  const view = svg.viewBox.baseVal;
  const scale = view.width / Number(drawing.dataset.width);
  const moulding = Number(drawing.dataset.moulding);
  const toStep = (inches) => Math.round(inches / STEP) * STEP;

  const asOnARule = (inches) => {
    const sign = inches < 0 ? "-" : "";
    const eighths = Math.round(Math.abs(inches) * 8);
    const whole = Math.floor(eighths / 8);
    let over = eighths % 8;
    let under = 8;
    while (over && over % 2 === 0) {
      over /= 2;
      under /= 2;
    }
    const fraction = over ? `${over}/${under}` : "";
    return sign + ([whole || (fraction ? "" : 0), fraction].filter((part) => part !== "").join(" "));
  };

  // The drawing is one picture with one description; what can be taken hold of lies over it.
  const grips = document.createElementNS("http://www.w3.org/2000/svg", "svg");
  grips.setAttribute("viewBox", svg.getAttribute("viewBox"));
  grips.setAttribute("role", "group");
  grips.setAttribute("aria-label", "Pieces that can be moved");
  grips.classList.add("grips");
  drawing.append(grips);

  const gripOf = (row) => {
    const piece = { x: Number(row.dataset.x), y: Number(row.dataset.y) };
    const grip = document.createElementNS("http://www.w3.org/2000/svg", "rect");
    grip.classList.add("grip");
    grip.setAttribute("tabindex", "0");
    grip.setAttribute("role", "button");
    grip.setAttribute("width", Number(row.dataset.width) * scale);
    grip.setAttribute("height", Number(row.dataset.height) * scale);
    const put = () => {
      grip.setAttribute("x", (moulding + piece.x) * scale);
      grip.setAttribute("y", (moulding + piece.y) * scale);
      grip.setAttribute("aria-label", `${row.dataset.name}, ${asOnARule(piece.x)} from the left, ${asOnARule(piece.y)} from the top`);
    };
    const moveTo = (x, y) => {
      piece.x = Math.max(0, toStep(x));
      piece.y = Math.max(0, toStep(y));
      row.querySelector("[name=x]").value = asOnARule(piece.x);
      row.querySelector("[name=y]").value = asOnARule(piece.y);
      grip.classList.add("moved");
      put();
    };
    const letGo = () => {
      sessionStorage.setItem(HELD, row.dataset.piece);
      form.requestSubmit();
    };

    let held = null;
    const onSvg = (event) => new DOMPoint(event.clientX, event.clientY).matrixTransform(grips.getScreenCTM().inverse());
    grip.addEventListener("pointerdown", (event) => {
      if (event.button !== 0) return;
      const at = onSvg(event);
      held = { x: at.x / scale - piece.x, y: at.y / scale - piece.y, moved: false };
      grip.setPointerCapture(event.pointerId);
      event.preventDefault();
      grip.focus();
    });
    grip.addEventListener("pointermove", (event) => {
      if (!held) return;
      const at = onSvg(event);
      moveTo(at.x / scale - held.x, at.y / scale - held.y);
      held.moved = true;
    });
    grip.addEventListener("pointerup", () => {
      if (held?.moved) letGo();
      held = null;
    });
    grip.addEventListener("pointercancel", () => (held = null));

    grip.addEventListener("keydown", (event) => {
      if (event.ctrlKey || event.altKey || event.metaKey) return;
      const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
      if (way) {
        const by = event.shiftKey ? 1 : STEP;
        moveTo(piece.x + way[0] * by, piece.y + way[1] * by);
      } else if (event.key === "Enter" && grip.classList.contains("moved")) letGo();
      else return;
      event.preventDefault();
    });
    put();
    return grip;
  };

  const rows = Array.from(document.querySelectorAll(".pieces tr[data-piece]"));
  rows.forEach((row) => grips.append(gripOf(row)));

  // After the plan is drawn anew the hand is still at the piece it moved.
  const last = sessionStorage.getItem(HELD);
  sessionStorage.removeItem(HELD);
  const index = rows.findIndex((row) => row.dataset.piece === last);
  if (index >= 0) {
    grips.children[index].focus({ preventScroll: true });
    drawing.scrollIntoView({ block: "nearest" });
  }
})();
