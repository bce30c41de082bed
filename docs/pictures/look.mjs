// Takes pictures of the bench as a browser shows it. No library: chromium is spoken to over a pipe, in the Chrome DevTools Protocol.
// node look.mjs ADDRESS FILE WIDTH HEIGHT light|dark
import { spawn } from 'node:child_process';
import { writeFileSync } from 'node:fs';

const [address, file, width, height, scheme] = process.argv.slice(2);
const chromium = spawn(process.env.COILWRIGHT_CHROMIUM ?? '/usr/bin/chromium',
  ['--headless', '--no-sandbox', '--disable-background-networking', '--hide-scrollbars', '--remote-debugging-pipe'],
  { stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'] });
const [to, from] = [chromium.stdio[3], chromium.stdio[4]];

// Each message ends in a zero byte.
const asked = new Map();
let rest = '';
from.setEncoding('utf8').on('data', text => {
  const whole = (rest + text).split('\0');
  rest = whole.pop();
  for (const message of whole.map(m => JSON.parse(m))) {
    const { done, failed } = asked.get(message.id) ?? {};
    if (message.error) failed?.(new Error(message.error.message));
    else done?.(message.result);
  }
});
let last = 0;
const ask = (method, params = {}, sessionId = undefined) => new Promise((done, failed) => {
  asked.set(++last, { done, failed });
  to.write(JSON.stringify({ id: last, method, params, sessionId }) + '\0');
});

try {
  const { targetId } = await ask('Target.createTarget', { url: 'about:blank' });
  const { sessionId } = await ask('Target.attachToTarget', { targetId, flatten: true });
  const page = (method, params) => ask(method, params, sessionId);
  await page('Emulation.setDeviceMetricsOverride', { width: Number(width), height: Number(height), deviceScaleFactor: 1, mobile: Number(width) < 500 });
  await page('Emulation.setEmulatedMedia', { features: [{ name: 'prefers-color-scheme', value: scheme }, { name: 'prefers-reduced-motion', value: 'reduce' }] });
  await page('Page.navigate', { url: address });
  // Until the page answers to a hand, has told how wide it is, and has its letters.
  const ready = `new Promise(done => {
    const look = () => document.querySelector('html[data-live]') && document.readyState === 'complete' && document.cookie.includes('coilwright-width=')
      ? document.fonts.ready.then(() => requestIdleCallback(() => requestAnimationFrame(() => done(true)), { timeout: 2000 }))
      : setTimeout(look, 50);
    look();
  })`;
  const comeToLife = async () => {
    // The page may be another by the time that it is asked.
    for (let tries = 0; tries < 20; tries++) {
      const { result } = await page('Runtime.evaluate', { expression: ready, awaitPromise: true }).catch(() => ({ result: {} }));
      if (result.value === true) return;
    }
    throw new Error(`The page at ${address} did not come to life.`);
  };
  await comeToLife();
  // The second time it is drawn for its own width from the first.
  await page('Runtime.evaluate', { expression: 'delete document.documentElement.dataset.live' });
  await page('Page.reload');
  await comeToLife();
  const { data } = await page('Page.captureScreenshot', { format: 'png' });
  writeFileSync(file, Buffer.from(data, 'base64'));
} finally {
  chromium.kill();
}
