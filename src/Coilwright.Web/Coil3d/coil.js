// The coil in space: loads the piece's model, lets it be turned, and tells which bead is which. Bundled at build; see Coilwright.Web.csproj.
import { zipSync } from 'fflate';
import { Stage } from './stage.js';

// Radians for one press of an arrow, and how much nearer for one of plus.
const TURN = Math.PI / 18;
const NEARER = 0.88;

/** Brings a page's coil to life. The page holds all words; here is only what happens. */
export async function open(root) {
  const find = name => root.querySelector(`[data-coil="${name}"]`);
  const box = find('stage');
  const canvas = find('canvas');
  const told = find('told');
  const tag = find('tag');
  const list = find('list');
  const options = () => [...list.querySelectorAll('[role="option"]')];
  const began = performance.now();
  const stop = new AbortController();
  const on = (target, type, does, more) => target.addEventListener(type, does, { signal: stop.signal, ...more });
  let stage = null;
  let selected = 0;

  const say = text => { told.textContent = text; };

  // One bead is selected, here and there; 0 for none.
  function select(bead, { reveal = true, focus = false } = {}) {
    selected = bead;
    let active = null;
    for (const option of options()) {
      const is = Number(option.dataset.bead) === bead;
      option.setAttribute('aria-selected', String(is));
      if (is) active = option;
    }
    if (active) list.setAttribute('aria-activedescendant', active.id); else list.removeAttribute('aria-activedescendant');
    for (const mark of root.querySelectorAll('.coil-drawn .is-picked')) mark.classList.remove('is-picked');
    if (bead) root.querySelector(`.coil-drawn #drawn-coil-bead-${bead}`)?.classList.add('is-picked');
    stage?.pick(bead);
    say(active ? active.getAttribute('aria-label') : told.dataset.none);
    // Only the list scrolls: the page stays where it is.
    if (active && reveal) {
      const [top, bottom] = [active.offsetTop - list.offsetTop, active.offsetTop - list.offsetTop + active.offsetHeight];
      if (top < list.scrollTop) list.scrollTop = top - 8;
      else if (bottom > list.scrollTop + list.clientHeight) list.scrollTop = bottom - list.clientHeight + 8;
    }
    if (focus) list.focus();
    root.dataset.picked = String(bead);
  }

  const step = by => {
    const all = options().length;
    select(Math.min(all, Math.max(1, (selected || (by > 0 ? 0 : all + 1)) + by)));
    stage?.face(selected);
  };

  on(list, 'click', e => {
    const option = e.target instanceof Element ? e.target.closest('[role="option"]') : null;
    if (!option) return;
    select(Number(option.dataset.bead), { focus: true });
    stage?.face(selected);
  });
  on(list, 'keydown', e => {
    if (e.ctrlKey || e.metaKey || e.altKey) return;
    const by = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1, PageDown: 10, PageUp: -10, Home: -1e9, End: 1e9 }[e.key];
    if (by) step(by);
    else if (e.key === 'Escape') select(0);
    else return;
    e.preventDefault();
  });

  on(root, 'click', e => {
    const button = e.target instanceof Element ? e.target.closest('[data-coil-do]') : null;
    if (button) does[button.dataset.coilDo]?.(button);
  });
  on(root, 'change', e => {
    // How it sits is worked out first: the page says when it is there to be shown.
    if (e.target instanceof HTMLInputElement && e.target.name === 'coil-pose' && e.target.value !== 'sits') show(e.target.value);
  });

  const does = {
    left: () => stage?.turn(-TURN, 0),
    right: () => stage?.turn(TURN, 0),
    up: () => stage?.turn(0, -TURN),
    down: () => stage?.turn(0, TURN),
    nearer: () => stage?.zoom(NEARER),
    farther: () => stage?.zoom(1 / NEARER),
    first: () => stage?.first(),
    next: () => step(1),
    back: () => step(-1),
    still: button => making(button, async () => save(await stage.still(...size()), `${root.dataset.name}-${size().join('x')}.png`)),
    turntable: button => making(button, async () => {
      const [width, height] = size();
      const count = number('count');
      const files = {};
      for (let i = 0; i < count; i++) {
        button.textContent = button.dataset.count.replace('{at}', i + 1).replace('{of}', count);
        const picture = await stage.still(width, height, 2 * Math.PI * i / count);
        files[`${root.dataset.name}-${String(i + 1).padStart(3, '0')}.png`] = new Uint8Array(await picture.arrayBuffer());
      }
      // Pictures are packed already.
      save(new Blob([zipSync(files, { level: 0 })], { type: 'application/zip' }), `${root.dataset.name}-${count}.zip`);
    }),
  };

  const number = name => {
    const field = find(name);
    const value = Math.round(Number(field.value));
    const sound = Number.isFinite(value) ? Math.min(Number(field.max), Math.max(Number(field.min), value)) : Number(field.defaultValue);
    field.value = String(sound);
    return sound;
  };

  const size = () => [number('width'), number('height')];

  // Tells that it works, and that it could not.
  async function making(button, work) {
    const words = button.textContent;
    const trouble = find('trouble');
    trouble.hidden = true;
    button.disabled = true;
    try {
      await work();
    } catch {
      trouble.hidden = false;
    } finally {
      button.textContent = words;
      button.disabled = false;
    }
  }

  function save(blob, name) {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(blob);
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  }

  async function show(pose, url = root.dataset[pose]) {
    root.dataset.pose = pose;
    for (const choice of root.querySelectorAll('[name="coil-pose"]')) choice.checked = choice.value === pose;
    if (!stage) return;
    await stage.load(url);
    root.dataset.shown = pose;
    stage.pick(selected);
  }

  try {
    stage = new Stage(canvas, box, {
      picked: bead => select(bead),
      moved: at => {
        tag.hidden = !at;
        if (!at) return;
        tag.textContent = at.letter;
        tag.style.transform = `translate(${at.x}px, ${at.y}px) translate(-50%, -50%)`;
      },
    });
  } catch {
    // Without WebGL the drawn picture stays where it is, and the list answers all the same.
    root.dataset.coilState = 'drawn';
    find('drawn-only').hidden = false;
  }
  if (stage) {
    try {
      await show(root.dataset.pose);
    } catch {
      stage.end();
      stage = null;
      root.dataset.coilState = 'drawn';
      find('trouble').hidden = false;
    }
  }
  select(0, { reveal: false });

  // For whoever measures it: when it began, one frame drawn and read back, and where a bead is seen.
  root.coil = { began, frame: () => stage?.frame(), seen: bead => stage?.seen(bead), faces: bead => stage?.faces(bead) };
  if (stage) root.dataset.coilState = 'turning';
  return {
    show,
    // The list counts by another shape: what is selected is marked and told anew.
    listed: () => select(selected),
    // What was chosen cannot be shown.
    back() {
      for (const choice of root.querySelectorAll('[name="coil-pose"]')) choice.checked = choice.value === root.dataset.pose;
    },
    // On white, whatever light the page is in: it is for paper.
    still: (width, height) => stage ? stage.still(width, height, 0, '#ffffff') : null,
    end() {
      stop.abort();
      stage?.end();
    },
  };
}
