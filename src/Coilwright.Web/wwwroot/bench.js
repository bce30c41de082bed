// What the browser must do by itself: everything else is drawn by the program. No library, no network.
(() => {
  'use strict';

  window.coilwright = {
    // The page is no longer only a picture of itself: it answers.
    live() { document.documentElement.dataset.live = ''; },

    // Tells a component how wide its box is, now and whenever that changes by more than a hair. The box says when it is drawn as wide as it is.
    watchWidth(box, component) {
      let told = 0;
      const tell = async () => {
        const px = Math.round(box.clientWidth);
        if (Math.abs(px - told) >= 2) {
          told = px;
          delete box.dataset.fits;
          document.cookie = `coilwright-width=${document.documentElement.clientWidth}; path=/; max-age=31536000; SameSite=Strict`;
          await component.invokeMethodAsync('Wide', px);
        }
        box.dataset.fits = '';
      };
      const observer = new ResizeObserver(tell);
      observer.observe(box);
      tell();
      return { stop() { observer.disconnect(); } };
    },

    // Puts a text where it can be pasted from. At an address that the browser does not trust there is no clipboard for pages: then by a selection.
    async copy(text) {
      try {
        await navigator.clipboard.writeText(text);
        return true;
      } catch {
        const had = document.activeElement;
        const box = document.createElement('textarea');
        box.value = text;
        box.className = 'aside';
        document.body.append(box);
        box.select();
        const done = document.execCommand('copy');
        box.remove();
        had?.focus();
        return done;
      }
    },

    // Brings a part of the page into sight.
    show(selector) { document.querySelector(selector)?.scrollIntoView({ block: 'nearest', inline: 'nearest' }); },

    // Scrolls what is too wide for the page to its middle.
    centre(selector) {
      const box = document.querySelector(selector);
      if (box) box.scrollLeft = (box.scrollWidth - box.clientWidth) / 2;
    },

    // Settled once what the page was told so far is to be seen: what is posted in a frame's own callback comes after it is painted.
    painted() {
      return new Promise(seen => requestAnimationFrame(() => {
        const after = new MessageChannel();
        after.port1.onmessage = () => seen();
        after.port2.postMessage(0);
      }));
    },

    // Keeps the screen from going dark while her hands are full, where the browser can; it gives that up by itself while another page is looked at.
    stayAwake() {
      let held = null;
      let over = false;
      const hold = async () => {
        if (over || !navigator.wakeLock || document.visibilityState !== 'visible') return;
        try {
          held = await navigator.wakeLock.request('screen');
          if (over) held.release();
        } catch {
          // A nearly empty battery comes first.
        }
      };
      document.addEventListener('visibilitychange', hold);
      hold();
      return { stop() { over = true; document.removeEventListener('visibilitychange', hold); held?.release(); } };
    },

    // Reads a text aloud, in place of one that is still being read. False where the browser has no voice: one that has begins within seconds.
    speak(text, language) {
      const speech = window.speechSynthesis;
      if (!speech) return false;
      speech.cancel();
      return new Promise(told => {
        const said = new SpeechSynthesisUtterance(text);
        said.lang = language;
        said.onstart = () => told(true);
        said.onerror = e => told(e.error === 'canceled' || e.error === 'interrupted');
        setTimeout(() => told(speech.speaking && speech.getVoices().length > 0), 4000);
        speech.speak(said);
      });
    },

    hush() { window.speechSynthesis?.cancel(); },

    // A look round: its step has the focus, and what it looks at is marked and in sight above it. With nothing to look at it is over.
    lookAt(selector) {
      document.querySelector('[data-looked-at]')?.removeAttribute('data-looked-at');
      const target = selector && document.querySelector(selector);
      const words = document.querySelector(selector ? '#tour-head' : 'h1');
      if (words) {
        words.tabIndex = -1;
        words.focus({ preventScroll: true });
      }
      if (!target) return;
      target.setAttribute('data-looked-at', '');
      target.scrollIntoView({ block: target.getBoundingClientRect().height > innerHeight / 2 ? 'start' : 'center' });
    },

    // Kept for the next page, which is drawn with it.
    keepCookie(cookie, text) { document.cookie = `${cookie}=${text}; path=/; max-age=${365 * 24 * 3600}; SameSite=Strict`; },

    // Settings are shown at once and kept, so that the next page is drawn with them.
    keepLook(cookie, text, light, textSize, language) {
      this.keepCookie(cookie, text);
      const page = document.documentElement;
      page.dataset.light = light;
      page.dataset.text = textSize;
      page.lang = language;
    },
  };

  // Pages that a word of the head opened are put away by a tap elsewhere and by Escape, which gives the word the focus again.
  document.addEventListener('pointerdown', e => {
    const inside = e.target instanceof Element ? e.target.closest('.nav-group') : null;
    for (const group of document.querySelectorAll('.nav-group[open]')) if (group !== inside) group.open = false;
  });
  document.addEventListener('keydown', e => {
    const group = e.key === 'Escape' ? document.querySelector('.nav-group[open]') : null;
    if (!group) return;
    group.open = false;
    group.querySelector('summary').focus();
  });

  // A tap on a bead. The bead is named by data-index on the tapped mark or on what it stands in.
  Blazor.registerCustomEventType('beadtap', {
    browserEventName: 'click',
    createEventArgs: e => {
      const bead = e.target instanceof Element ? e.target.closest('[data-index]') : null;
      return { bead: bead ? Number(bead.getAttribute('data-index')) : -1, adds: e.ctrlKey || e.metaKey, extends: e.shiftKey };
    },
  });

  // Keys on the rows. Those that the bench takes must not scroll the page as well.
  const taken = new Set(['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End', 'Escape', ' ', 'Enter', 'Delete', 'Backspace']);
  Blazor.registerCustomEventType('rowkey', {
    browserEventName: 'keydown',
    createEventArgs: e => {
      const all = (e.ctrlKey || e.metaKey) && e.key.toLowerCase() === 'a';
      const letter = /^[A-Za-z2-9]$/.test(e.key) && !e.ctrlKey && !e.metaKey;
      const moves = e.altKey && (e.key === 'ArrowLeft' || e.key === 'ArrowRight');
      if (moves || (!e.altKey && (all || letter || taken.has(e.key)))) e.preventDefault();
      // A letter with Ctrl or Alt belongs to the browser, and is no bead.
      const key = all ? 'All' : /^.$/.test(e.key) && e.key !== ' ' && (!letter || e.altKey) ? '' : e.key;
      return { key, adds: e.ctrlKey || e.metaKey, extends: e.shiftKey, moves };
    },
  });

  // Taking back and taking again by the keys that everyone's hands know, wherever on the bench they are; a box that is typed in has its own.
  document.addEventListener('keydown', e => {
    if (!(e.ctrlKey || e.metaKey) || e.altKey || (e.target instanceof Element && e.target.closest('input:not([type=radio], [type=checkbox], [type=range]), textarea, select'))) return;
    const key = e.key.toLowerCase();
    const wanted = key === 'z' ? (e.shiftKey ? 'redo' : 'undo') : key === 'y' ? 'redo' : null;
    const button = wanted && document.querySelector(`button[data-key="${wanted}"]`);
    if (!button) return;
    e.preventDefault();
    button.click();
  });

  // Stringing: on and back by the keys that a pedal sends too. Held down it does not run on; what is focused keeps its own keys.
  const pedal = new Map([[' ', 'next'], ['Enter', 'next'], ['ArrowRight', 'next'], ['ArrowDown', 'next'], ['PageDown', 'next'], ['ArrowLeft', 'back'], ['ArrowUp', 'back'], ['PageUp', 'back']]);
  document.addEventListener('keydown', e => {
    const way = pedal.get(e.key);
    if (!way || e.ctrlKey || e.metaKey || e.altKey || !document.querySelector('[data-pedal]')) return;
    const focused = e.target instanceof Element ? e.target : document.body;
    if (focused.closest('input, select, textarea') || ((e.key === ' ' || e.key === 'Enter') && focused.closest('a, button'))) return;
    e.preventDefault();
    if (!e.repeat) document.querySelector(`button[data-pedal="${way}"]:enabled`)?.click();
  });
  // After a tap on a button the keys go on and back again, and do not press it once more.
  document.addEventListener('click', e => {
    const button = e.detail > 0 && e.target instanceof Element && document.querySelector('[data-pedal]') ? e.target.closest('.stringing button') : null;
    button?.blur();
  });

  // The page lost the program. The framework tells by this event; a page that it cannot take up again is loaded anew, with what was kept.
  const lost = document.getElementById('components-reconnect-modal');
  const look = async () => {
    document.removeEventListener('visibilitychange', lookWhenSeen);
    try {
      if (!await Blazor.reconnect() && !await Blazor.resumeCircuit()) location.reload();
      else lost.close();
    } catch {
      document.addEventListener('visibilitychange', lookWhenSeen);
    }
  };
  const lookWhenSeen = () => { if (document.visibilityState === 'visible') look(); };
  lost.addEventListener('components-reconnect-state-changed', e => {
    switch (e.detail.state) {
      case 'show': lost.showModal(); break;
      case 'hide': lost.close(); break;
      case 'failed': document.addEventListener('visibilitychange', lookWhenSeen); break;
      case 'rejected': location.reload(); break;
    }
  });
  lost.querySelector('[data-lost="again"]').addEventListener('click', look);
})();
