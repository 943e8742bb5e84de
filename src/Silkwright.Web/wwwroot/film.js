// A film to move and enlarge, tile by tile; a tap asks how wide it is there. Without this file a form, links and a still picture do the same.
"use strict";

const lookAtFilm = () => {
  const box = document.querySelector("[data-zoom]");
  if (!box || box.querySelector(".film-sheet")) return;
  const [width, height, deepest, side, mm, shown] = ["width", "height", "deepest", "tile", "mm", "side"].map((name) => Number(box.dataset[name]));
  const sheet = document.createElement("div"), disc = document.createElement("i");
  sheet.className = "film-sheet"; disc.className = "disc"; disc.hidden = true;
  box.replaceChildren(sheet, disc);

  // The film's pixel in the middle of the box, and how many of the page's pixels one of its pixels is wide.
  const view = { x: width / 2, y: height / 2, scale: 1 };
  const tiles = new Map();
  let spot = null, asked = 0, drawing = false;
  const clamp = (value, least, most) => Math.min(Math.max(value, least), most);
  const wholeScale = () => Math.min(box.clientWidth / width, box.clientHeight / height);

  const drawSoon = () => { if (!drawing) { drawing = true; requestAnimationFrame(draw); } };
  const draw = () => {
    drawing = false;
    const [across, down] = [box.clientWidth, box.clientHeight];
    view.scale = clamp(view.scale, Math.min(wholeScale(), 1), 32);
    [view.x, view.y] = [clamp(view.x, 0, width), clamp(view.y, 0, height)];
    const level = clamp(deepest + Math.ceil(Math.log2(view.scale * devicePixelRatio) - 0.01), 0, deepest);
    const factor = 2 ** (deepest - level), span = side * factor;
    const [left, top] = [view.x - across / 2 / view.scale, view.y - down / 2 / view.scale];
    const last = (at, size) => Math.min(Math.floor(at / span), Math.ceil(size / span) - 1);
    // The whole film lies beneath, so that nothing is ever blank.
    const wanted = new Set(["0/0/0"]);
    for (let row = Math.max(0, Math.floor(top / span)); row <= last(top + down / view.scale, height); row++)
      for (let column = Math.max(0, Math.floor(left / span)); column <= last(left + across / view.scale, width); column++)
        wanted.add(`${level}/${column}/${row}`);
    for (const key of wanted) {
      if (tiles.has(key)) continue;
      const tile = new Image();
      tile.alt = ""; tile.draggable = false; tile.onload = drawSoon; tile.src = `${box.dataset.zoom}/${key}.png`;
      tile.style.zIndex = key.split("/")[0];
      tiles.set(key, tile); sheet.append(tile);
    }
    const settled = [...wanted].every((key) => tiles.get(key).complete);
    for (const [key, tile] of tiles) {
      if (settled && !wanted.has(key)) { tile.remove(); tiles.delete(key); continue; }
      const [own, column, row] = key.split("/").map(Number), step = 2 ** (deepest - own), size = side * step;
      tile.style.left = `${(column * size - left) * view.scale}px`;
      tile.style.top = `${(row * size - top) * view.scale}px`;
      tile.style.width = `${Math.min(size, Math.ceil((width - column * size) / step) * step) * view.scale}px`;
      tile.style.height = `${Math.min(size, Math.ceil((height - row * size) / step) * step) * view.scale}px`;
    }
    sheet.classList.toggle("enlarged", view.scale > 1);
    disc.hidden = !spot;
    if (spot) {
      const [, , x, y, wide] = spot, drawn = wide * view.scale;
      disc.style.left = `${(x - left) * view.scale - drawn / 2}px`; disc.style.top = `${(y - top) * view.scale - drawn / 2}px`;
      disc.style.width = disc.style.height = `${drawn}px`;
    }
  };

  const readSpot = () => { const told = document.getElementById("film-spot")?.dataset.spot; spot = told ? told.split(" ").map(Number) : null; };
  const zoom = (by, x = box.clientWidth / 2, y = box.clientHeight / 2) => {
    const [fromX, fromY, scale] = [x - box.clientWidth / 2, y - box.clientHeight / 2, view.scale];
    view.scale = clamp(scale * by, Math.min(wholeScale(), 1), 32);
    view.x += fromX / scale - fromX / view.scale; view.y += fromY / scale - fromY / view.scale;
    drawSoon();
  };
  const move = (x, y) => { view.x += x / view.scale; view.y += y / view.scale; drawSoon(); };
  const whole = () => { Object.assign(view, { x: width / 2, y: height / 2, scale: wholeScale() }); drawSoon(); };

  // The words come from the page itself, so that they are the same with and without script.
  const ask = async (x, y) => {
    if (x < 0 || y < 0 || x >= width || y >= height) return;
    const turn = ++asked;
    const address = box.dataset.look.replace("x=X", `x=${(x * mm).toFixed(4)}mm`).replace("y=Y", `y=${(y * mm).toFixed(4)}mm`);
    try {
      const answer = await fetch(address, { headers: { Accept: "text/html" } });
      const told = new DOMParser().parseFromString(await answer.text(), "text/html").getElementById("film-spot");
      if (turn !== asked) return;
      if (!told) { location.assign(address); return; }
      document.getElementById("film-spot").replaceWith(document.adoptNode(told));
      history.replaceState(history.state, "", address);
      readSpot(); drawSoon();
    } catch { location.assign(address); }
  };
  const place = (event) => {
    const frame = box.getBoundingClientRect();
    return [event.clientX - frame.left - box.clientLeft, event.clientY - frame.top - box.clientTop];
  };
  const filmPlace = (x, y) => [view.x + (x - box.clientWidth / 2) / view.scale, view.y + (y - box.clientHeight / 2) / view.scale];

  const fingers = new Map();
  let moved = 0;
  box.addEventListener("pointerdown", (event) => {
    if (event.button !== 0) return;
    box.setPointerCapture(event.pointerId);
    if (fingers.size === 0) moved = 0;
    fingers.set(event.pointerId, place(event));
  });
  box.addEventListener("pointermove", (event) => {
    const was = fingers.get(event.pointerId);
    if (!was) return;
    const now = place(event), other = [...fingers].find(([id]) => id !== event.pointerId)?.[1];
    fingers.set(event.pointerId, now);
    moved += Math.hypot(now[0] - was[0], now[1] - was[1]);
    if (other) {
      moved = Infinity;
      const apart = (finger) => Math.max(8, Math.hypot(finger[0] - other[0], finger[1] - other[1]));
      zoom(apart(now) / apart(was), (now[0] + other[0]) / 2, (now[1] + other[1]) / 2);
      move((was[0] - now[0]) / 2, (was[1] - now[1]) / 2);
    } else if (moved > 8) move(was[0] - now[0], was[1] - now[1]);
  });
  const lift = (event) => {
    const was = fingers.get(event.pointerId);
    fingers.delete(event.pointerId);
    if (was && event.type === "pointerup" && fingers.size === 0 && moved <= 8) ask(...filmPlace(...place(event)));
  };
  box.addEventListener("pointerup", lift);
  box.addEventListener("pointercancel", lift);
  // A wheel scrolls the page unless the film was chosen first.
  box.addEventListener("wheel", (event) => {
    if (!event.ctrlKey && document.activeElement !== box) return;
    event.preventDefault();
    zoom(2 ** (-event.deltaY / 240), ...place(event));
  }, { passive: false });
  const step = () => Math.min(box.clientWidth, box.clientHeight) / 4;
  const keys = {
    ArrowLeft: () => move(-step(), 0), ArrowRight: () => move(step(), 0), ArrowUp: () => move(0, -step()), ArrowDown: () => move(0, step()),
    "+": () => zoom(2), "=": () => zoom(2), "-": () => zoom(0.5), Home: whole, Enter: () => ask(view.x, view.y),
  };
  box.addEventListener("keydown", (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey || !keys[event.key]) return;
    event.preventDefault();
    keys[event.key]();
  });

  const buttons = document.createElement("div");
  buttons.className = "film-buttons";
  for (const [words, act] of [["Enlarge", () => zoom(2)], ["Smaller", () => zoom(0.5)], ["Whole film", whole], ["Every pixel", () => { view.scale = 1 / devicePixelRatio; drawSoon(); }]]) {
    const button = document.createElement("button");
    button.type = "button"; button.className = "button quiet"; button.textContent = words;
    button.addEventListener("click", act);
    buttons.append(button);
  }
  box.after(buttons);
  box.closest(".film-look").classList.add("scripted");

  // A tap on the small film leads there too.
  const small = document.querySelector(".film-overlay[data-whole] svg");
  small?.addEventListener("click", (event) => {
    if (event.target.closest("a")) return;
    const frame = small.getBoundingClientRect();
    [view.x, view.y] = [(event.clientX - frame.left) / frame.width * width, (event.clientY - frame.top) / frame.height * height];
    view.scale = Math.max(view.scale, 1 / devicePixelRatio);
    drawSoon();
    ask(view.x, view.y);
  });

  readSpot();
  if (spot) Object.assign(view, { x: spot[0], y: spot[1], scale: box.clientWidth / shown });
  else whole();
  draw();
  new ResizeObserver(drawSoon).observe(box);
};

lookAtFilm();
document.addEventListener("bench", lookAtFilm);
