// Without this script the form works by its button. With it, the pattern follows
// the form: a moment after the last change the script sends the form as the
// button would, and takes over from the page that comes back what has changed.
"use strict";
const form = document.getElementById("brief");
const pattern = document.getElementById("pattern");
const status = document.getElementById("status");
let timer, running;

// Fields that the layout, or the way to the quantity of yarn, has no use for are
// not shown. They are sent all the same, and come back when they are wanted.
function fit() {
  for (const field of form.querySelectorAll("[data-when]")) {
    const use = field.dataset.is.split("|").includes(form.elements.namedItem(field.dataset.when).value);
    field.hidden = !use;
  }
}

function swap(here, fresh) {
  if (here.innerHTML !== fresh.innerHTML) here.replaceChildren(...fresh.childNodes);
}

function take(page) {
  for (const control of form.elements) {
    const fresh = control.id && page.getElementById(control.id);
    if (!fresh) continue;
    if (fresh.hasAttribute("aria-invalid")) control.setAttribute("aria-invalid", "true");
    else control.removeAttribute("aria-invalid");
    swap(document.getElementById(control.id + "-error"), page.getElementById(control.id + "-error"));
  }
  const holds = page.querySelector("#pattern .title") !== null;
  if (holds) swap(pattern, page.getElementById("pattern"));
  pattern.classList.toggle("stale", !holds);
  swap(status, page.getElementById("status"));
  document.title = page.title;
}

async function work() {
  clearTimeout(timer);
  running?.abort();
  running = new AbortController();
  try {
    const answer = await fetch(form.action, { method: "POST", body: new URLSearchParams(new FormData(form)), signal: running.signal });
    const text = await answer.text();
    if (!answer.ok && answer.status !== 422) throw new Error(text.slice(0, 200));
    take(new DOMParser().parseFromString(text, "text/html"));
    return true;
  } catch (err) {
    if (err.name === "AbortError") return false;
    pattern.classList.add("stale");
    status.textContent = "No answer: " + err.message;
    return false;
  }
}

form.addEventListener("input", () => {
  fit();
  clearTimeout(timer);
  timer = setTimeout(work, 400);
});
form.addEventListener("submit", async (event) => {
  if (event.submitter?.name === "as") return; // a page or file of its own
  event.preventDefault();
  if (await work()) (form.querySelector("[aria-invalid]") ?? document.getElementById("result")).focus();
});
