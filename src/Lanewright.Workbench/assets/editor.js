// The editor of the plan's text: sends what is typed to the desk at once, and marks what was found in it.
// @ts-check
import { steps } from './undo.js';
import { placeAt, wordsOf, written } from './words.js';

const lineHeight = 21;
const padding = 6;
/** Milliseconds until a text that could not be sent is sent again: longer from time to time. */
const [firstWait, longestWait] = [1000, 10_000];

/** Brings the editor to life. */
export function editorSheet(root, say) {
  const box = document.getElementById('editor');
  const file = box.dataset.file;
  const area = box.querySelector('textarea');
  const gutter = box.querySelector('.gutter');
  const marks = box.querySelector('.marks');
  const list = box.querySelector('.found');
  const said = box.querySelector('.said');
  const torn = box.querySelector('.torn');
  const offer = box.querySelector('.words');
  const told = box.querySelector('.unseen.here');
  const state = { version: 0, sent: '', findings: [], timer: 0, busy: null, isReady: false, schema: null, typed: false, other: null,
    wait: 0, notBefore: 0, refused: null, isCutOff: false, isKept: true };
  const ruler = document.createElement('canvas').getContext('2d');
  const name = encodeURIComponent(file);
  const own = steps(area);

  const plain = text => text.replaceAll('\r\n', '\n');

  /** Takes the text and what was found in it; a text in hand is not touched. */
  async function read() {
    const answer = await fetch(`${root}text?file=${name}&have=${state.isReady ? state.version : -1}`);
    if (!answer.ok) return;
    const found = await answer.json();
    const isIdle = area.value === state.sent && !state.busy;
    if (state.other) {
      if (found.text !== undefined) state.other = { text: plain(found.text), version: found.version };
    } else if (found.text !== undefined && (!state.isReady || (isIdle && found.version > state.version))) {
      const text = plain(found.text);
      put(text);
      state.version = found.version;
      state.sent = text;
    }
    if (!state.isReady) {
      state.isReady = true;
      const line = /^#L(\d+)$/.exec(location.hash);
      if (line) goTo(Number(line[1]), 1);
      else area.focus({ preventScroll: true });
    }
    state.findings = found.findings;
    state.typed = found.typed;
    torn.hidden = !found.torn && !state.other;
    paint();
    tellFindings();
  }

  /** Replaces the text and keeps the caret at the same words where it can. What this person did themselves may be undone. */
  function put(text, isOwn = false) {
    if (area.value === text) return;
    const [start, top, left] = [area.selectionStart, area.scrollTop, area.scrollLeft];
    const before = area.value;
    let same = 0;
    while (same < start && before[same] === text[same]) same++;
    area.value = text;
    const at = same < start ? Math.max(same, start + text.length - before.length) : start;
    area.setSelectionRange(at, at);
    [area.scrollTop, area.scrollLeft] = [top, left];
    if (isOwn) own.typed();
    else own.elsewhere();
  }

  /** Takes a step back, or takes it again. */
  function step(isBack) {
    if (!(isBack ? own.undo() : own.redo())) {
      said.textContent = isBack ? 'Nothing more to undo in this window.' : 'Nothing to do again.';
      return;
    }
    offer.hidden = true;
    said.textContent = '';
    schedule();
    paint();
  }

  /** Sends what is typed. One text is on its way at a time; the next one follows it. */
  async function send() {
    if (!state.busy) await alone(post);
  }

  /** Sends the text; whether the workbench has it. */
  async function post() {
    if (!state.isReady) return false;
    const text = area.value;
    if (text === state.sent) return true;
    try {
      const answer = await fetch(`${root}type?file=${name}&version=${state.version}`, { method: 'POST', body: text });
      if (answer.status === 200 || answer.status === 409) return taken(await answer.json(), text);
      said.textContent = await answer.text();
      // A text that is refused for what it is would be refused again; one that is not taken just now may be taken later.
      if (answer.status >= 500) later();
      else state.refused = text;
    } catch {
      said.textContent = 'Not kept yet: the workbench does not answer.';
      later();
    }
    state.isCutOff = true;
    return false;
  }

  /** Takes the answer to a text; whether the text was taken. */
  function taken(found, text) {
    // What was said since, such as that nothing is left to undo, stands until something else is typed.
    if (found.words || state.isCutOff) said.textContent = found.words;
    [state.isCutOff, state.wait, state.notBefore, state.refused, state.isKept] = [false, 0, 0, null, found.kept];
    state.sent = text;
    if (!found.done) {
      // What is typed from here on is sent and refused and kept aside, until the person has chosen.
      state.other = { text: plain(found.text), version: found.version };
      state.version = -1;
      torn.hidden = false;
      return false;
    }
    state.version = found.version;
    if (found.text !== undefined && area.value === text) {
      put(plain(found.text));
      state.sent = area.value;
    } else if (found.text !== undefined) {
      // What was typed on meanwhile is a change of the text that was sent, not of the one that it was put together to.
      state.version = found.ownVersion;
    }
    return true;
  }

  function later() {
    state.wait = Math.min(longestWait, state.wait * 2 || firstWait);
    state.notBefore = performance.now() + state.wait;
  }

  function schedule() {
    clearTimeout(state.timer);
    if (area.value !== state.refused) state.timer = setTimeout(send, Math.max(10, state.notBefore - performance.now()));
  }

  /** Two texts could not be put together: the other takes the place of this one, or this one that of the other. */
  async function choose(other, isOwn) {
    const text = area.value;
    const what = isOwn ? `replace?file=${name}&version=${other.version}` : `aside?file=${name}`;
    const answer = await fetch(root + what, { method: 'POST', body: text });
    if (answer.status !== 200 && answer.status !== 409) {
      said.textContent = await answer.text();
      return;
    }
    const found = await answer.json();
    [said.textContent, state.isKept] = [found.words, found.kept];
    if (!found.done) {
      state.other = { text: plain(found.text), version: found.version };
      return;
    }
    [state.version, state.sent] = isOwn ? [found.version, text] : [other.version, other.text];
    if (!isOwn) put(other.text, true);
    state.other = null;
  }

  /** Does a step while no text is on its way; what is typed meanwhile follows it. */
  async function alone(step) {
    while (state.busy) await state.busy;
    let free = () => {};
    state.busy = new Promise(done => {
      free = done;
    });
    try {
      await step();
    } finally {
      state.busy = null;
      free();
      if (area.value !== state.sent) schedule();
    }
  }

  async function act(what) {
    if (what === 'next') return next();
    const isChoice = state.other !== null && what !== 'save';
    clearTimeout(state.timer);
    try {
      await alone(async () => {
        if (isChoice) await (state.other && choose(state.other, what === 'keep'));
        else if (await post()) await ask(what);
      });
      await read();
    } catch {
      said.textContent = 'The workbench does not answer.';
    }
    area.focus({ preventScroll: true });
  }

  /** Saves the text that was sent, or gives it up. A text that comes back is not put over what was typed since. */
  async function ask(what) {
    const answer = await fetch(`${root}${what}?file=${name}&version=${state.version}`, { method: 'POST' });
    if (answer.status !== 200 && answer.status !== 409) {
      said.textContent = await answer.text();
      return;
    }
    const found = await answer.json();
    [said.textContent, state.isKept] = [found.words, found.kept];
    if (!found.done) return;
    if (found.text === undefined) {
      state.version = found.version;
    } else if (area.value === state.sent) {
      put(plain(found.text), what === 'discard');
      [state.version, state.sent] = [found.version, area.value];
    }
  }

  function lineOf(offset) {
    let line = 1;
    for (let i = area.value.indexOf('\n'); i >= 0 && i < offset; i = area.value.indexOf('\n', i + 1)) line++;
    return line;
  }

  function startOf(line) {
    let at = 0;
    for (let n = 1; n < line; n++) {
      const end = area.value.indexOf('\n', at);
      if (end < 0) break;
      at = end + 1;
    }
    return at;
  }

  function goTo(line, column) {
    const at = startOf(line) + column - 1;
    area.focus({ preventScroll: true });
    area.setSelectionRange(at, at);
    area.scrollTop = Math.max(0, ((line - 1) * lineHeight) - (area.clientHeight / 3));
    area.scrollLeft = 0;
    paint();
  }

  function next() {
    const here = lineOf(area.selectionStart);
    const all = [...state.findings].sort((a, b) => a.line - b.line);
    const found = all.find(f => f.line > here) ?? all[0];
    if (found) goTo(found.line, found.column);
    else said.textContent = 'Nothing was found in this file.';
  }

  /** Draws line numbers and the underlines of what was found, for the lines in sight. */
  function paint() {
    ruler.font = getComputedStyle(area).font;
    const first = Math.max(1, Math.floor((area.scrollTop - padding) / lineHeight));
    const last = first + Math.ceil(area.clientHeight / lineHeight) + 1;
    const lines = area.value.split('\n');
    const worst = new Map();
    const rank = { error: 3, warning: 2, advice: 1 };
    for (const f of state.findings) if ((rank[f.severity] ?? 0) > (rank[worst.get(f.line)] ?? 0)) worst.set(f.line, f.severity);
    const numbers = [];
    for (let n = first; n <= Math.min(last, lines.length); n++) {
      const number = document.createElement('span');
      number.textContent = String(n);
      number.className = worst.get(n) ?? '';
      number.style.top = `${padding + ((n - 1) * lineHeight) - area.scrollTop}px`;
      numbers.push(number);
    }
    gutter.replaceChildren(...numbers);
    const under = [];
    for (const f of state.findings) {
      if (f.line < first || f.line > last || f.line > lines.length) continue;
      const text = lines[f.line - 1];
      const from = Math.min(f.column - 1, text.length);
      const until = Math.min(Math.max(from + f.length, from + 1), Math.max(text.length, from + 1));
      const mark = document.createElement('span');
      mark.className = f.severity;
      mark.style.top = `${padding + ((f.line - 1) * lineHeight) - area.scrollTop}px`;
      mark.style.left = `${10 + ruler.measureText(text.slice(0, from)).width - area.scrollLeft}px`;
      mark.style.width = `${Math.max(8, ruler.measureText(text.slice(from, until)).width)}px`;
      under.push(mark);
    }
    marks.replaceChildren(...under);
    tellLine(lineOf(area.selectionStart));
  }

  /** Shows what was found in the line that the caret is in, and tells it to those who do not see the list. */
  function tellLine(line) {
    for (const item of list.children) item.classList.toggle('here', Number(item.dataset.line) === line);
    const words = state.findings.filter(f => f.line === line).map(f => `${f.severity} ${f.code}: ${f.message}`).join(' ');
    if (told.textContent !== words) told.textContent = words;
  }

  function tellFindings() {
    const order = { error: 0, warning: 1, advice: 2 };
    const sorted = [...state.findings].sort((a, b) => (order[a.severity] - order[b.severity]) || (a.line - b.line));
    list.replaceChildren(...sorted.slice(0, 200).map(f => {
      const item = document.createElement('li');
      item.dataset.line = String(f.line);
      item.tabIndex = 0;
      const word = document.createElement('b');
      word.textContent = f.severity;
      word.className = { error: 'stop', warning: 'open' }[f.severity] ?? 'soft';
      const rule = document.createElement('a');
      rule.href = `${root}rules/${f.code}`;
      rule.textContent = `${f.code} ${f.name}`;
      const place = document.createElement('span');
      place.textContent = ` line ${f.line}`;
      const message = document.createElement('p');
      message.textContent = f.message;
      item.append(word, rule, place, message);
      const open = event => {
        if (!event.target.closest('a')) goTo(f.line, f.column);
      };
      item.addEventListener('click', open);
      item.addEventListener('keydown', event => event.key === 'Enter' && open(event));
      return item;
    }));
    if (sorted.length === 0) {
      const none = document.createElement('li');
      none.textContent = 'Nothing was found in this file.';
      list.append(none);
    }
  }

  async function suggest() {
    const [text, at] = [area.value, area.selectionStart];
    const place = placeAt(text, at);
    state.schema ??= await (await fetch(`${root}schema.json`)).json();
    const words = [...wordsOf(state.schema, place), ...await namesAt(place)].slice(0, 60);
    // Who types on does not wait for an answer.
    if (area.value !== text || area.selectionStart !== at) return;
    if (words.length === 0) {
      said.textContent = 'Nothing is known that may stand here.';
      return;
    }
    offer.replaceChildren(...words.map((word, i) => {
      const item = document.createElement('li');
      item.setAttribute('role', 'option');
      item.id = `word-${i}`;
      item.setAttribute('aria-selected', String(i === 0));
      item.textContent = word.text;
      const about = document.createElement('small');
      about.textContent = word.about;
      item.append(about);
      item.addEventListener('mousedown', event => {
        event.preventDefault();
        take(place, word);
      });
      item.take = () => take(place, word);
      return item;
    }));
    const line = lineOf(at);
    const before = text.slice(startOf(line), place.from);
    offer.style.top = `${Math.min(padding + (line * lineHeight) - area.scrollTop, area.clientHeight - 120)}px`;
    offer.style.left = `${Math.max(0, Math.min(10 + ruler.measureText(before).width - area.scrollLeft, area.clientWidth - 300))}px`;
    offer.hidden = false;
    area.setAttribute('aria-activedescendant', 'word-0');
  }

  /** Names of the plan and the catalogue that fit as a value. */
  async function namesAt(place) {
    if (!place.isValue) return [];
    const way = place.path.map(key => `at=${encodeURIComponent(key)}`).join('&');
    const answer = await fetch(`${root}names?${way}&begun=${encodeURIComponent(place.begun)}`);
    const names = answer.ok ? await answer.json() : [];
    return names.map(({ name, about }) => ({ text: name, insert: written(name), about }));
  }

  /** Types a word for the person, so that undo takes it back. */
  function take(place, word) {
    offer.hidden = true;
    area.focus();
    area.setSelectionRange(place.from, area.selectionStart);
    document.execCommand('insertText', false, word.insert);
  }

  function move(step) {
    const items = [...offer.children];
    const at = items.findIndex(i => i.getAttribute('aria-selected') === 'true');
    const to = (at + step + items.length) % items.length;
    items[at].setAttribute('aria-selected', 'false');
    items[to].setAttribute('aria-selected', 'true');
    items[to].scrollIntoView({ block: 'nearest' });
    area.setAttribute('aria-activedescendant', items[to].id);
  }

  area.addEventListener('beforeinput', event => {
    if (event.inputType !== 'historyUndo' && event.inputType !== 'historyRedo') return;
    event.preventDefault();
    step(event.inputType === 'historyUndo');
  });
  area.addEventListener('input', () => {
    own.typed();
    offer.hidden = true;
    said.textContent = '';
    schedule();
    paint();
  });
  area.addEventListener('scroll', paint, { passive: true });
  area.addEventListener('keyup', paint);
  area.addEventListener('click', paint);
  area.addEventListener('keydown', event => {
    if (!offer.hidden && ['ArrowDown', 'ArrowUp', 'Enter', 'Tab', 'Escape'].includes(event.key)) {
      event.preventDefault();
      if (event.key === 'ArrowDown') move(1);
      else if (event.key === 'ArrowUp') move(-1);
      else if (event.key === 'Escape') offer.hidden = true;
      else offer.querySelector('[aria-selected=true]')?.take();
    } else if (event.key === 'Tab' && !event.shiftKey) {
      event.preventDefault();
      document.execCommand('insertText', false, '  ');
    } else if ((event.ctrlKey || event.metaKey) && !event.altKey && ['z', 'Z', 'y'].includes(event.key)) {
      event.preventDefault();
      step(event.key === 'z' && !event.shiftKey);
    } else if (event.key === 'Escape') {
      box.querySelector('[data-act=save]').focus();
    } else if (event.ctrlKey && event.key === ' ') {
      event.preventDefault();
      void suggest();
    }
  });
  if (editorSheet.stop) editorSheet.stop.abort();
  editorSheet.stop = new AbortController();
  document.addEventListener('keydown', event => {
    if ((event.ctrlKey || event.metaKey) && event.key === 's') {
      event.preventDefault();
      void act('save');
    } else if (event.key === 'F8') {
      event.preventDefault();
      next();
    }
  }, { signal: editorSheet.stop.signal });
  window.addEventListener('resize', paint, { signal: editorSheet.stop.signal });
  window.addEventListener('beforeunload', event => {
    if (state.isCutOff && area.value !== state.sent) event.preventDefault();
  }, { signal: editorSheet.stop.signal });
  for (const button of box.querySelectorAll('button')) button.addEventListener('click', () => void act(button.dataset.act));
  void read();
  return {
    read,
    /** Whether something typed here is not kept beside the plan. */
    isUnkept: () => area.value !== state.sent || !state.isKept,
    /** The text for a print, with its line numbers, and what was found in it. */
    onPaper() {
      const text = document.createElement('pre');
      const lines = area.value.split('\n');
      const width = String(lines.length).length;
      text.textContent = lines.map((line, i) => `${String(i + 1).padStart(width)}  ${line}`).join('\n');
      const name = document.createElement('p');
      name.textContent = `${file}${state.typed ? ', as typed and not saved' : ''}, ${lines.length} lines`;
      return [name, text];
    },
    dress(page) {
      const tabs = page.querySelector('.tabs');
      if (tabs) document.querySelector('#sheet > .tabs')?.replaceWith(tabs);
    },
  };
}
editorSheet.stop = null;
