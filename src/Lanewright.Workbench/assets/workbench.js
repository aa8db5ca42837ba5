// The pages' script: follows changes of the plan, and hands the sheets that need one their own script.
// @ts-check
import { linksSheet } from './links.js';
import { editorSheet } from './editor.js';
import { buttons, waiting } from './waiting.js';

const body = document.body;
const root = body.dataset.root ?? '/';
const fresh = { seen: Number(body.dataset.seen), isReading: false, again: false };
/** The one door by which markup enters a page; it came from this server, which escapes every name. */
const door = window.trustedTypes?.createPolicy('sheet', { createHTML: markup => markup }) ?? { createHTML: markup => markup };
let sheet = null;

/** Says something to the person for a while. */
export function say(words, isLasting = false) {
  document.getElementById('said')?.remove();
  if (!words) return;
  const told = document.createElement('div');
  told.id = 'said';
  told.setAttribute('role', 'status');
  told.textContent = words;
  body.append(told);
  if (!isLasting) setTimeout(() => told.remove(), 6000);
}

/** Reads this page again and puts what is new in place; what is being typed or scrolled stays where it is. */
async function refresh() {
  if (fresh.isReading) {
    fresh.again = true;
    return;
  }
  fresh.isReading = true;
  try {
    const ahead = sheet?.read();
    const answer = await fetch(location.pathname + location.search, { headers: { accept: 'text/html' } });
    const page = new DOMParser().parseFromString(door.createHTML(await answer.text()), 'text/html');
    if (!page.getElementById('sheet')) return;
    swap('block', page);
    swapRegister(page);
    document.title = page.title;
    const main = document.getElementById('sheet');
    const next = page.getElementById('sheet');
    if (sheet && main?.querySelector('#editor, #links') && next?.querySelector('#editor, #links')) {
      sheet.dress(next);
      await ahead;
    } else {
      main?.replaceChildren(...(next?.childNodes ?? []));
      start();
    }
    document.dispatchEvent(new CustomEvent('refreshed'));
  } finally {
    fresh.isReading = false;
    if (fresh.again) {
      fresh.again = false;
      void refresh();
    }
  }
}

function swap(id, page) {
  const next = page.getElementById(id);
  if (next) document.getElementById(id)?.replaceWith(next);
}

/** The search in the register may be in use. */
function swapRegister(page) {
  const next = page.querySelector('#register ol');
  if (next && !document.querySelector('#register ol:focus-within')) document.querySelector('#register ol')?.replaceWith(next);
}

function start() {
  const main = document.getElementById('sheet');
  if (main?.querySelector('#links')) sheet = linksSheet(root);
  else if (main?.querySelector('#editor')) sheet = editorSheet(root, say);
  else sheet = null;
  waiting(root);
  point();
}

/** Points at what was searched for on a drawing; a name on a drawing leads to what is known of it. */
function point() {
  const wanted = new URLSearchParams(location.search).get('q');
  let first = null;
  for (const text of document.querySelectorAll('figure svg.lw text')) {
    if (!/^[\p{L}\p{N}][^ ]*$/u.test(text.textContent) || /^[\d.,%]+$/.test(text.textContent)) continue;
    text.classList.add('way');
    if (text.textContent !== wanted) continue;
    text.classList.add('picked');
    first ??= text;
  }
  first?.scrollIntoView({ block: 'center' });
}

document.addEventListener('click', event => {
  const text = event.target instanceof Element ? event.target.closest('figure svg.lw text.way') : null;
  if (text) location.href = `${root}find?q=${encodeURIComponent(text.textContent)}`;
});

/** Waits for changes while the page is looked at. */
async function follow() {
  let isGone = false;
  for (;;) {
    if (document.hidden) await new Promise(done => document.addEventListener('visibilitychange', done, { once: true }));
    try {
      const answer = await fetch(`${root}state?seen=${fresh.seen}`);
      if (!answer.ok) throw new Error('another workbench');
      const { ticks } = await answer.json();
      if (isGone) say('The workbench is there again.');
      body.classList.remove('gone');
      if (ticks !== fresh.seen || isGone) {
        fresh.seen = ticks;
        isGone = false;
        await refresh();
      }
    } catch {
      if (!isGone) say('The workbench does not answer. What was typed is kept beside the plan. Run lanewright open again, and open the '
        + 'address it prints.', true);
      isGone = true;
      body.classList.add('gone');
      await new Promise(done => setTimeout(done, 1000));
    }
  }
}

document.addEventListener('keydown', event => {
  const at = event.target;
  if (event.ctrlKey || event.metaKey || event.altKey || (at instanceof HTMLElement && at.matches('input, textarea'))) return;
  if (event.key === '/') {
    event.preventDefault();
    document.getElementById('q')?.focus();
  } else if (event.key >= '1' && event.key <= '9') {
    document.querySelectorAll('#register li a')[Number(event.key) - 1]?.click();
  } else if (event.key === 'g') {
    location.href = root + 'plan';
  }
});

buttons(root, say);
start();
void follow();
