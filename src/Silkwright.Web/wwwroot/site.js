// Everything works without this file: it swaps the bench in place and keeps progress fresh.
"use strict";

// A link inside the bench fetches its page and replaces the bench alone, so that the eye keeps its place.
const swap = async (address, push) => {
  const answer = await fetch(address, { headers: { Accept: "text/html" } });
  if (!answer.ok) { location.assign(address); return; }
  const fresh = new DOMParser().parseFromString(await answer.text(), "text/html");
  const now = document.getElementById("bench"), next = fresh.getElementById("bench");
  if (!now || !next) { location.assign(address); return; }
  const focused = document.activeElement?.getAttribute("href");
  now.replaceWith(document.adoptNode(next));
  document.title = fresh.title;
  document.dispatchEvent(new Event("bench"));
  if (push) history.pushState({ bench: true }, "", address);
  if (focused) document.querySelector(`#bench [href="${CSS.escape(focused)}"]`)?.focus({ preventScroll: true });
};

document.addEventListener("click", (event) => {
  const link = event.target.closest?.("a[data-swap]");
  if (!link || event.defaultPrevented || event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey) return;
  event.preventDefault();
  swap(link.getAttribute("href"), true).catch(() => location.assign(link.getAttribute("href")));
});
addEventListener("popstate", () => { if (document.getElementById("bench")) swap(location.href, false).catch(() => location.reload()); });

// Films being measured: ask now and then, and show the page again once all are done.
const measuring = document.querySelector("[data-progress]");
if (measuring) {
  const ask = async () => {
    const answer = await fetch(measuring.dataset.progress);
    if (!answer.ok) throw new Error(answer.statusText);
    const films = (await answer.json()).films;
    for (const film of films) {
      const row = document.getElementById(film.id);
      if (!row) continue;
      row.querySelector(".share").textContent = film.words;
      row.querySelector(".meter i").style.width = `${film.percent}%`;
      row.querySelector(".meter").setAttribute("aria-valuenow", film.percent);
      if (!film.canStop) row.querySelector("form")?.remove();
    }
    if (films.some((film) => film.busy)) again(400); else location.reload();
  };

  // Where the line drops, the last that was told stands, and it is asked again.
  const again = (wait) => setTimeout(() => ask().catch(() => again(3000)), wait);
  again(300);
}

// Films take a while to send: the button says so, and is not pressed twice.
for (const button of document.querySelectorAll("button[data-sending]")) {
  const words = button.textContent;
  button.form.addEventListener("submit", () => {
    if (![...button.form.querySelectorAll("input[type=file]")].some((input) => input.files.length > 0)) return;
    setTimeout(() => { button.disabled = true; button.textContent = button.dataset.sending; });
  });
  addEventListener("pageshow", () => { button.disabled = false; button.textContent = words; });
}

for (const button of document.querySelectorAll("[data-print]")) button.addEventListener("click", () => print());

// One exposure's outline at a time, as the slider stands.
for (const box of document.querySelectorAll("[data-exposure]")) {
  const slider = box.querySelector("input"), said = box.querySelector("output");
  const show = () => {
    said.textContent = document.querySelector(`#exposures option[value="${slider.value}"]`).label;
    for (const line of document.querySelectorAll("[data-outline]")) line.setAttribute("visibility", line.dataset.outline === slider.value ? "visible" : "hidden");
  };
  slider.addEventListener("input", show);
  box.hidden = false;
  show();
}
