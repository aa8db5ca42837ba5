// The pages' script: follows changes of the plan, and hands the sheets that need one their own script.
// @ts-check
import { linksSheet } from './links.js';
import { editorSheet } from './editor.js';
import { figures, point, turn } from './figures.js';
import { sliders } from './sliders.js';
import { whatIf } from './whatif.js';
import { onPaper } from './paper.js';
import { ahead, buttons, waiting } from './waiting.js';

const body = document.body;
const root = body.dataset.root ?? '/';
const fresh = { seen: Number(body.dataset.seen), isReading: false, again: false };
/** The one door by which markup enters a page; it came from this server, which escapes every name. */
const door = window.trustedTypes?.createPolicy('sheet', { createHTML: markup => markup }) ?? { createHTML: markup => markup };
/** What the server wrote for each part of the sheet, to tell whether it wrote the same again. */
const written = new WeakMap();
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

/** Tells those who do not see the page what has changed on the title block. */
const teller = document.createElement('p');
teller.className = 'unseen';
teller.setAttribute('role', 'status');
body.append(teller);

function cells() {
  return new Map([...document.querySelectorAll('#block dl > *')].map(c => [c.querySelector('dt')?.textContent, c.querySelector('dd')?.textContent]));
}

function tell(before) {
  const changed = [...cells()].filter(([name, value]) => before.get(name) !== value).map(([name, value]) => `${name} ${value}`);
  if (changed.length > 0) teller.textContent = changed.join('; ');
}

/** Reads this page again and puts what is new in place; what is being typed or scrolled stays where it is. */
async function refresh() {
  if (fresh.isReading) {
    fresh.again = true;
    return;
  }
  fresh.isReading = true;
  try {
    const ahead = Promise.resolve(sheet?.read());
    // Where the page itself does not come, nobody waits for the rows or the text.
    ahead.catch(() => {});
    const have = document.getElementById('sheet')?.dataset.print ?? '';
    const answer = await fetch(location.pathname + location.search, { headers: { accept: 'text/html', 'x-have': have } });
    const page = new DOMParser().parseFromString(door.createHTML(await answer.text()), 'text/html');
    if (!page.getElementById('sheet')) return;
    const before = cells();
    swap('block', page);
    swapRegister(page);
    document.title = page.title;
    const main = document.getElementById('sheet');
    const next = page.getElementById('sheet');
    if (next?.dataset.print === have) {
      // The sheet is as it was, and only what is around it came anew.
      await ahead;
    } else if (sheet && main?.querySelector('#editor, #links') && next?.querySelector('#editor, #links')) {
      sheet.dress(next);
      await ahead;
    } else if (main && next) {
      settle(main, next);
      start();
    }
    if (main && next) main.dataset.print = next.dataset.print;
    tell(before);
    document.dispatchEvent(new CustomEvent('refreshed'));
  } finally {
    fresh.isReading = false;
    if (fresh.again) {
      fresh.again = false;
      void refresh();
    }
  }
}

/** Puts in place the parts of a sheet that are not as they were. The others keep their focus, scroll and opened parts. */
function settle(main, next) {
  const held = wayTo(main, document.activeElement);
  const [old, parts] = [[...main.children], [...next.children]];
  const markups = parts.map(part => part.outerHTML);
  const isSame = old.map((part, i) => written.get(part) === markups[i]);
  if (old.length !== parts.length) {
    main.replaceChildren(...parts);
    parts.forEach((part, i) => written.set(part, markups[i]));
  } else {
    parts.forEach((part, i) => {
      if (isSame[i]) return;
      old[i].replaceWith(part);
      written.set(part, markups[i]);
      // A part that is put in place whole is not told by itself.
      if (part.hasAttribute('aria-live')) teller.textContent = part.textContent;
    });
  }
  if (held.length > 0 && !main.contains(document.activeElement)) at(main, held)?.focus({ preventScroll: true });
}

/** The way from a sheet down to an element of it: which child, and which child of that. */
function wayTo(main, element) {
  const way = [];
  for (let here = element; here && here !== main; here = here.parentElement) {
    if (!here.parentElement) return [];
    way.unshift([...here.parentElement.children].indexOf(here));
  }
  return main.contains(element) ? way : [];
}

function at(main, way) {
  return way.reduce((here, i) => here?.children[i] ?? null, main);
}

function swap(id, page) {
  const [old, next] = [document.getElementById(id), page.getElementById(id)];
  if (!old || !next || old.outerHTML === next.outerHTML) return;
  const held = wayTo(old, document.activeElement);
  old.replaceWith(next);
  if (held.length > 0) at(next, held)?.focus({ preventScroll: true });
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
  sliders();
  waiting(root);
  ahead(root, address => {
    history.replaceState(null, '', address);
    void refresh();
  });
  point();
  void figures(root);
}

/** A way that stays on the sheet: the address changes, what is new is put in place, and nothing scrolls. */
document.addEventListener('click', event => {
  const way = event.target instanceof Element ? event.target.closest('a.stay') : null;
  if (!way || event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
  event.preventDefault();
  history.pushState(null, '', way.getAttribute('href'));
  void refresh();
});
let path = location.pathname + location.search;
window.addEventListener('popstate', () => {
  // A step within the page changes nothing on it.
  if (path !== location.pathname + location.search) void refresh();
});
document.addEventListener('refreshed', () => {
  path = location.pathname + location.search;
});

/** What to say while the workbench does not answer. */
function wordsWhenGone() {
  return 'The workbench does not answer. ' + (sheet?.isUnkept?.()
    ? 'What was typed last is in this window alone: leave it open, or copy the text. '
    : 'What was typed is kept beside the plan. ') + 'Run lanewright open again, and open the address it prints.';
}

/** Waits for changes while the page is looked at. */
async function follow() {
  let [isGone, told] = [false, ''];
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
      const words = wordsWhenGone();
      if (!isGone || words !== told) say(words, true);
      [isGone, told] = [true, words];
      body.classList.add('gone');
      await new Promise(done => setTimeout(done, 1000));
    }
  }
}

document.addEventListener('keydown', event => {
  const place = event.target;
  if (event.ctrlKey || event.metaKey || event.altKey || (place instanceof HTMLElement && place.matches('input, textarea'))) return;
  if (event.key === '/') {
    event.preventDefault();
    document.getElementById('q')?.focus();
  } else if (/^[0-9]$/.test(event.key)) {
    document.querySelectorAll('#register li a')[(Number(event.key) + 9) % 10]?.click();
  } else if (event.key === 'n' || event.key === 'p') {
    const ways = [...document.querySelectorAll('#register li a')];
    const here = ways.findIndex(way => way.getAttribute('aria-current') === 'page');
    ways.at((here + (event.key === 'n' ? 1 : -1) + ways.length) % ways.length)?.click();
  } else if (event.key === 'w') {
    turn();
  } else if (event.key === 'g') {
    location.href = root + 'plan';
  }
});

for (const part of document.getElementById('sheet')?.children ?? []) written.set(part, part.outerHTML);
whatIf(root, say);
onPaper(() => sheet);
buttons(root, say);
start();
void follow();
