// Before anything is drawn: the lamp as it was left. Without a choice the machine's own setting decides.
(() => {
  const kept = localStorage.getItem("lamp");
  if (kept === "on") document.documentElement.setAttribute("data-light", "");
  if (kept === "off") document.documentElement.setAttribute("data-dark", "");
})();
