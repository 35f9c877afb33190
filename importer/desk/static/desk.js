// Keys for what the page's own buttons and links do. Without this file everything works with mouse and Tab.
"use strict";

const OFF = "onebasis-keys-off";

function typing(target) {
  return target instanceof HTMLElement && (target.isContentEditable || /^(INPUT|SELECT|TEXTAREA)$/.test(target.tagName)
    && !/^(radio|checkbox|button|submit)$/.test(target.type));
}

function press(element) {
  const closed = element.closest("details:not([open])");
  if (closed) closed.open = true;
  if (element.matches("input[type=radio]")) {
    element.checked = true;
  } else if (element.matches("input, select, textarea")) {
    element.focus();
    if (element.select) element.select();
  } else {
    element.click();
  }
}

document.addEventListener("keydown", (event) => {
  if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing) return;
  const dialog = document.getElementById("keys");
  if (dialog.open) return;
  if (typing(event.target)) {
    if (event.key === "Escape") event.target.blur();
    // Browsers differ in what Enter does in a list of choices: here it sends the form, as it does in a field.
    if (event.key === "Enter" && event.target.matches("select") && event.target.form && !event.repeat) {
      event.preventDefault();
      event.target.form.requestSubmit();
    }
    return;
  }
  // A key that is held down must not settle one figure after another.
  if (event.repeat) return;
  if (event.key === "Enter" && event.target.closest("a, button, summary")) return;
  if (event.key !== "Enter" && event.key !== "?" && localStorage.getItem(OFF)) return;
  for (const element of document.querySelectorAll("[data-key]")) {
    if (element.disabled || !element.dataset.key.split(" ").includes(event.key)) continue;
    event.preventDefault();
    press(element);
    return;
  }
  if (event.key === "?") dialog.showModal();
});

// A form is sent once, however often its button is pressed.
document.addEventListener("submit", (event) => {
  if (event.target.method === "dialog") return;
  if (event.target.dataset.sent) event.preventDefault();
  event.target.dataset.sent = "yes";
});
window.addEventListener("pageshow", () => document.querySelectorAll("form").forEach((form) => delete form.dataset.sent));

document.addEventListener("click", (event) => {
  if (event.target.closest("[data-print]")) window.print();
  if (event.target.closest("[data-keys]")) document.getElementById("keys").showModal();
  const zoom = event.target.closest("[data-zoom]");
  if (zoom) {
    const drawing = zoom.closest("figure").querySelector("svg");
    const whole = drawing.getAttribute("viewBox") === drawing.dataset.part;
    drawing.setAttribute("viewBox", whole ? drawing.dataset.whole : drawing.dataset.part);
    zoom.firstChild.textContent = whole ? "Close up " : "Whole page ";
  }
});

document.addEventListener("DOMContentLoaded", () => {
  const box = document.getElementById("keys-on");
  box.checked = !localStorage.getItem(OFF);
  box.addEventListener("change", () => (box.checked ? localStorage.removeItem(OFF) : localStorage.setItem(OFF, "yes")));
});

// A box drawn on a page, in points of the page.
const page = document.querySelector("svg.draw");
if (page) {
  const mark = document.getElementById("drawn");
  let start = null;
  const place = (event) => new DOMPoint(event.clientX, event.clientY).matrixTransform(page.getScreenCTM().inverse());
  page.addEventListener("pointerdown", (event) => {
    start = place(event);
    page.setPointerCapture(event.pointerId);
  });
  page.addEventListener("pointermove", (event) => {
    if (!start) return;
    const now = place(event);
    const box = { x0: Math.min(start.x, now.x), top: Math.min(start.y, now.y), x1: Math.max(start.x, now.x), bottom: Math.max(start.y, now.y) };
    mark.setAttribute("x", box.x0);
    mark.setAttribute("y", box.top);
    mark.setAttribute("width", box.x1 - box.x0);
    mark.setAttribute("height", box.bottom - box.top);
    for (const [edge, value] of Object.entries(box)) document.getElementById(edge).value = value.toFixed(1);
  });
  page.addEventListener("pointerup", () => {
    start = null;
    if (mark.getAttribute("width") > 2 && mark.getAttribute("height") > 2) document.getElementById("box").requestSubmit();
  });
}
