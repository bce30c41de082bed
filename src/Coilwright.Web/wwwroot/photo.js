// Her photo, opened and looked at in the browser alone: what leaves it are the few dots in the ring. Works out no colour.

const mostMegapixels = 64;
const mostSide = 1600;
const radii = [6, 12, 24];
const aliases = { jpg: 'jpeg', jpe: 'jpeg', jfif: 'jpeg', apng: 'png' };

const text = (bytes, from, length) => String.fromCharCode(...bytes.subarray(from, from + length));

// What a file is by what stands in it, before anything of it is decoded: kind, size, whether it moves, is in printing inks, and is whole.
async function look(file) {
  const head = new Uint8Array(await file.slice(0, 1 << 20).arrayBuffer());
  const tailFrom = Math.max(0, file.size - (1 << 16));
  const tail = new Uint8Array(await file.slice(tailFrom).arrayBuffer());
  const view = new DataView(head.buffer);
  const ends = (...with_) => {
    for (let i = tail.length - with_.length; i >= 0; i--) if (with_.every((b, k) => tail[i + k] === b)) return tailFrom + i;
    return -1;
  };
  try {
    if (head[0] === 0xff && head[1] === 0xd8 && head[2] === 0xff) return jpeg(head, view, ends(0xff, 0xd9));
    if (text(head, 1, 3) === 'PNG') return { kind: 'png', wide: view.getUint32(16), high: view.getUint32(20), moves: moving(head, view), whole: ends(0x49, 0x45, 0x4e, 0x44) > 0 };
    if (text(head, 0, 4) === 'GIF8') return { kind: 'gif', wide: view.getUint16(6, true), high: view.getUint16(8, true), moves: text(head, 0, Math.min(head.length, 2000)).includes('NETSCAPE2.0'), whole: tail.at(-1) === 0x3b };
    if (text(head, 0, 4) === 'RIFF' && text(head, 8, 4) === 'WEBP') return { ...webp(head, view), kind: 'webp', whole: file.size >= view.getUint32(4, true) + 8 };
    if (text(head, 4, 4) === 'ftyp' && /^(hei|hev|mif1|msf1)/.test(text(head, 8, 4))) return { refused: 'heic' };
  } catch (e) {
    // Ends before its own head does.
    if (e instanceof RangeError) return { refused: 'cut-short' };
    throw e;
  }
  return { refused: 'no-picture' };
}

function jpeg(head, view, end) {
  let at = 2, size = null;
  while (at + 4 < head.length) {
    if (head[at] !== 0xff) break;
    const marker = head[at + 1];
    if (marker === 0xff) { at++; continue; }
    if (marker === 0xda) break;
    if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)) size = { high: view.getUint16(at + 5), wide: view.getUint16(at + 7), parts: head[at + 9] };
    at += 2 + view.getUint16(at + 2);
  }
  if (!size) return { refused: at >= head.length - 4 ? 'cut-short' : 'broken' };
  return { kind: 'jpeg', ...size, inks: size.parts === 4, whole: end > at };
}

function moving(head, view) {
  for (let at = 8; at + 8 < head.length; at += 12 + view.getUint32(at)) {
    const chunk = text(head, at + 4, 4);
    if (chunk === 'acTL') return true;
    if (chunk === 'IDAT') return false;
  }
  return false;
}

function webp(head, view) {
  const u24 = at => head[at] | head[at + 1] << 8 | head[at + 2] << 16;
  switch (text(head, 12, 4)) {
    case 'VP8X': return { wide: u24(24) + 1, high: u24(27) + 1, moves: (head[20] & 2) !== 0 };
    case 'VP8L': { const bits = view.getUint32(21, true); return { wide: (bits & 0x3fff) + 1, high: (bits >> 14 & 0x3fff) + 1 }; }
    default: return { wide: view.getUint16(26, true) & 0x3fff, high: view.getUint16(28, true) & 0x3fff };
  }
}

export function open(root, component) {
  const part = name => root.querySelector(`[data-photo="${name}"]`);
  const stage = part('stage'), canvas = part('canvas'), ring = part('ring'), input = part('file');
  const paper = canvas.getContext('2d', { willReadFrequently: true, colorSpace: 'srgb' });
  let x = 0, y = 0, size = 1, busy = 0;

  const place = () => {
    const scale = canvas.clientWidth / (canvas.width || 1);
    ring.style.left = `${canvas.offsetLeft + x * scale}px`;
    ring.style.top = `${canvas.offsetTop + y * scale}px`;
    ring.style.width = ring.style.height = `${2 * Math.max(3, radii[size] * scale)}px`;
  };
  const move = (toX, toY) => {
    x = Math.min(canvas.width - 1, Math.max(0, Math.round(toX)));
    y = Math.min(canvas.height - 1, Math.max(0, Math.round(toY)));
    canvas.dataset.at = `${x},${y}`;
    place();
  };
  const resize = to => { size = Math.min(radii.length - 1, Math.max(0, to)); part('size').value = `${size}`; place(); };

  const take = () => {
    if (root.dataset.photoState !== 'open') return;
    const r = radii[size], from = { x: Math.max(0, x - r), y: Math.max(0, y - r) };
    const wide = Math.min(canvas.width, x + r + 1) - from.x, high = Math.min(canvas.height, y + r + 1) - from.y;
    const dots = paper.getImageData(from.x, from.y, wide, high).data;
    const disc = [];
    for (let row = 0; row < high; row++)
      for (let column = 0; column < wide; column++) {
        const at = 4 * (row * wide + column);
        if ((from.x + column - x) ** 2 + (from.y + row - y) ** 2 <= r * r && dots[at + 3] > 127) disc.push(dots[at], dots[at + 1], dots[at + 2]);
      }
    component.invokeMethodAsync('Took', new Uint8Array(disc));
  };

  const load = async () => {
    const file = input.files[0];
    if (!file) return;
    const mine = ++busy;
    root.dataset.photoState = 'opening';
    const refuse = (code, megapixels = 0) => {
      if (mine !== busy) return;
      root.dataset.photoState = 'none';
      component.invokeMethodAsync('Refuse', code, megapixels, mostMegapixels);
    };
    const found = await look(file);
    if (found.refused) return refuse(found.refused);
    if (found.inks) return refuse('inks');
    const megapixels = found.wide * found.high / 1e6;
    if (megapixels > mostMegapixels) return refuse('too-large', Math.ceil(megapixels));
    if (!found.whole) return refuse('cut-short');
    let picture;
    try {
      picture = await createImageBitmap(file);
    } catch {
      return refuse('broken');
    }
    if (mine !== busy) return picture.close();
    const scale = Math.min(1, mostSide / Math.max(picture.width, picture.height));
    canvas.width = Math.max(1, Math.round(picture.width * scale));
    canvas.height = Math.max(1, Math.round(picture.height * scale));
    paper.imageSmoothingQuality = 'high';
    paper.drawImage(picture, 0, 0, canvas.width, canvas.height);
    const [wide, high] = [picture.width, picture.height];
    picture.close();
    root.dataset.photoState = 'open';
    move(canvas.width / 2, canvas.height / 2);
    const ending = file.name.toLowerCase().match(/\.([a-z0-9]+)$/)?.[1] ?? found.kind;
    await component.invokeMethodAsync('Opened', wide, high, canvas.width, canvas.height, found.kind, (aliases[ending] ?? ending) !== found.kind, found.moves === true);
    canvas.focus({ preventScroll: true });
  };

  const steps = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  const key = e => {
    if (e.ctrlKey || e.metaKey || e.altKey || root.dataset.photoState !== 'open') return;
    const step = steps[e.key];
    if (step) {
      const by = e.shiftKey ? 1 : Math.max(1, Math.round(canvas.width / 80));
      move(x + by * step[0], y + by * step[1]);
    } else if (e.key === 'Enter' || e.key === ' ') take();
    else if (e.key === '+') resize(size + 1);
    else if (e.key === '-') resize(size - 1);
    else return;
    e.preventDefault();
  };
  const tap = e => {
    const box = canvas.getBoundingClientRect();
    move((e.clientX - box.left) * canvas.width / box.width, (e.clientY - box.top) * canvas.height / box.height);
    take();
  };
  const sized = e => resize(Number(e.target.value));

  input.addEventListener('change', load);
  canvas.addEventListener('keydown', key);
  canvas.addEventListener('click', tap);
  part('size').addEventListener('change', sized);
  part('take').addEventListener('click', take);
  const watch = new ResizeObserver(place);
  watch.observe(stage);
  // Chosen before this script was there.
  load();
  return {
    end() {
      busy++;
      watch.disconnect();
      input.removeEventListener('change', load);
      canvas.width = canvas.height = 1;
    },
  };
}
