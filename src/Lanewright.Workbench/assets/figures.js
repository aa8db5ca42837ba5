// Drawings on a page: a name leads to what is known of the thing, and the keyboard goes wherever the pointer does.
// @ts-check

/** Names that are no links by themselves: the server tells which texts of a drawing are names of things. */
export async function figures(root) {
  const drawings = [...document.querySelectorAll('figure svg.lw')];
  fit();
  for (const drawing of drawings) stops(drawing);
  const texts = drawings.flatMap(d => [...d.querySelectorAll('text')]).filter(t => !t.closest('a, .title-block'));
  const names = [...new Set(texts.map(t => t.textContent))].filter(n => n && /\p{L}/u.test(n)).slice(0, 4000);
  if (names.length === 0) return;
  const answer = await fetch(`${root}known`, { method: 'POST', body: names.join('\n') });
  if (!answer.ok) return;
  const known = await answer.json();
  for (const text of texts) {
    const address = known[text.textContent];
    if (!address || text.closest('a')) continue;
    const way = document.createElementNS('http://www.w3.org/2000/svg', 'a');
    way.setAttribute('href', address);
    way.setAttribute('class', 'way');
    text.replaceWith(way);
    way.append(text);
  }
  for (const drawing of drawings) stops(drawing);
}

const isWhole = () => sessionStorage.getItem('whole') === 'yes';

/** Shows drawings as wide as the sheet, or small enough to be seen whole. */
export function turn() {
  sessionStorage.setItem('whole', isWhole() ? 'no' : 'yes');
  fit();
}

/** A button on every drawing that is higher than the window. */
function fit() {
  document.body.classList.toggle('whole', isWhole());
  const words = isWhole() ? 'as wide as the sheet' : 'the whole drawing';
  for (const drawing of document.querySelectorAll('figure > svg.lw')) {
    const figure = drawing.parentElement;
    const [, , width, height] = (drawing.getAttribute('viewBox') ?? '0 0 1 1').split(' ').map(Number);
    const isHigh = figure.clientWidth * height / width > window.innerHeight - 60;
    let button = figure.querySelector('.fit');
    if (!isHigh) {
      button?.remove();
      continue;
    }
    if (!button) {
      button = document.createElement('button');
      button.type = 'button';
      button.className = 'fit';
      button.title = 'key w';
      button.addEventListener('click', turn);
      figure.append(button);
    }
    button.textContent = words;
  }
}
window.addEventListener('resize', fit);

/** One stop of the tab key a drawing; arrow keys go from there to what lies next in their direction. */
function stops(drawing) {
  const ways = [...drawing.querySelectorAll('a')];
  if (ways.length === 0) return;
  // What leads somewhere inside a picture is there for those who do not see it, too.
  drawing.setAttribute('role', 'group');
  const at = ways.find(w => w === document.activeElement) ?? ways[0];
  for (const way of ways) way.setAttribute('tabindex', way === at ? '0' : '-1');
  if (drawing.dataset.stops) return;
  drawing.dataset.stops = 'yes';
  drawing.addEventListener('keydown', event => {
    const here = event.target instanceof Element ? event.target.closest('a') : null;
    if (!here || event.ctrlKey || event.metaKey || event.altKey) return;
    const next = nextTo(drawing, here, event.key);
    if (!next) return;
    event.preventDefault();
    here.setAttribute('tabindex', '-1');
    next.setAttribute('tabindex', '0');
    next.focus();
  });
  drawing.addEventListener('focusin', event => {
    const here = event.target instanceof Element ? event.target.closest('a') : null;
    if (!here) return;
    for (const way of drawing.querySelectorAll('a[tabindex="0"]')) way.setAttribute('tabindex', '-1');
    here.setAttribute('tabindex', '0');
  });
}

function nextTo(drawing, here, key) {
  const ways = [...drawing.querySelectorAll('a')];
  if (key === 'Home') return ways[0];
  if (key === 'End') return ways.at(-1);
  const step = { ArrowRight: [1, 0], ArrowLeft: [-1, 0], ArrowDown: [0, 1], ArrowUp: [0, -1] }[key];
  if (!step) return null;
  const from = middle(here);
  let best = null;
  let least = Infinity;
  for (const way of ways) {
    if (way === here) continue;
    const to = middle(way);
    const along = ((to.x - from.x) * step[0]) + ((to.y - from.y) * step[1]);
    const across = Math.abs(((to.x - from.x) * step[1]) + ((to.y - from.y) * step[0]));
    if (along < 1) continue;
    const far = along + (2.5 * across);
    if (far < least) [best, least] = [way, far];
  }
  return best;
}

function middle(element) {
  const box = element.getBoundingClientRect();
  return { x: box.left + (box.width / 2), y: box.top + (box.height / 2) };
}

/** Points at what the address asks for, on drawings and in tables. */
export function point() {
  const wanted = new URLSearchParams(location.search).getAll('q').concat(new URLSearchParams(location.search).getAll('mark'));
  if (wanted.length === 0) return;
  let first = null;
  for (const text of document.querySelectorAll('figure svg.lw text, #sheet td')) {
    const words = text.textContent.trim();
    // A port that is split stands in a row for each of its parts.
    if (!wanted.some(w => words === w || words.startsWith(`${w}/`))) continue;
    text.classList.add('picked');
    first ??= text;
  }
  if (first && !point.done.has(location.href)) first.scrollIntoView({ block: 'center' });
  point.done.add(location.href);
}
point.done = new Set();
