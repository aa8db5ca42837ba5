// The table of links: only the rows in sight are in the page, however many there are.
// @ts-check
import { grouped } from './numbers.js';

const height = 27;
const block = 100;
/** Rows of the table that a print holds at most. */
const mostOnPaper = 2000;

/** Brings the table to life. */
export function linksSheet(root) {
  const table = document.getElementById('links');
  const pane = table.querySelector('.window');
  const tall = table.querySelector('.tall');
  const filter = document.getElementById('filter');
  const shown = document.getElementById('shown');
  const state = { total: 0, of: 0, sort: '', at: -1, run: 0, blocks: new Map(), lines: new Map() };

  /** Which text of the plan the sheet shows, as addresses say it; the text as typed is not said. */
  const side = () => (table.dataset.as === 'saved' ? 'as=saved' : '');
  const asked = (...words) => (words.some(w => w) ? `?${words.filter(w => w).join('&')}` : '');
  const address = from =>
    `${root}rows?from=${from}&count=${block}&filter=${encodeURIComponent(filter.value)}&sort=${state.sort}&${side()}`;
  const wayTo = link => `${root}links/${encodeURIComponent(link)}${asked(side())}`;

  async function load(index, isSeen = true) {
    if (state.blocks.has(index)) return;
    state.blocks.set(index, null);
    const run = state.run;
    const answer = await fetch(address(index * block));
    if (run !== state.run || !answer.ok) return;
    const found = await answer.json();
    state.blocks.set(index, found.rows);
    state.total = found.total;
    state.of = found.of;
    if (isSeen) paint();
  }

  async function begin(keepsPlace) {
    state.run++;
    state.blocks.clear();
    const top = keepsPlace ? Math.floor(pane.scrollTop / height / block) : 0;
    if (!keepsPlace) pane.scrollTop = 0;
    const run = state.run;
    const answer = await fetch(address(top * block));
    if (run !== state.run || !answer.ok) return;
    const found = await answer.json();
    clear();
    [state.total, state.of] = [found.total, found.of];
    state.blocks.set(top, found.rows);
    tall.style.height = `${state.total * height}px`;
    shown.classList.toggle('alert', !!found.trouble);
    shown.textContent = found.trouble || (state.total === state.of ? `${grouped(state.of)} links` : `${grouped(state.total)} of ${grouped(state.of)} links`);
    table.setAttribute('aria-rowcount', String(state.total + 1));
    paint();
    void fetchForPaper(run);
  }

  function clear() {
    for (const line of state.lines.values()) line.remove();
    state.lines.clear();
  }

  /** Puts the rows in sight into the page and takes the others out. */
  function paint() {
    const first = Math.max(0, Math.floor(pane.scrollTop / height) - 5);
    const last = Math.min(state.total - 1, Math.ceil((pane.scrollTop + pane.clientHeight) / height) + 5);
    for (const [row, line] of state.lines) {
      if (row >= first && row <= last) continue;
      line.remove();
      state.lines.delete(row);
    }
    for (let row = first; row <= last; row++) {
      const index = Math.floor(row / block);
      const rows = state.blocks.get(index);
      if (!rows) {
        void load(index);
        continue;
      }
      if (state.lines.has(row) || !rows[row % block]) continue;
      const line = lineOf(rows[row % block], row);
      state.lines.set(row, line);
      tall.append(line);
    }
  }

  function lineOf(cells, row) {
    const line = document.createElement('div');
    line.className = 'line';
    line.id = `row-${row}`;
    line.style.top = `${row * height}px`;
    line.setAttribute('role', 'row');
    line.setAttribute('aria-rowindex', String(row + 2));
    line.setAttribute('aria-selected', String(row === state.at));
    line.dataset.link = cells[0];
    cells.forEach((text, column) => {
      const cell = document.createElement('span');
      cell.setAttribute('role', 'cell');
      if (column < 2) {
        const way = document.createElement('a');
        way.href = column === 0 ? wayTo(text) : `${root}classes/${encodeURIComponent(text)}${asked(side())}`;
        way.tabIndex = -1;
        way.textContent = text;
        cell.append(way);
      } else {
        cell.textContent = text;
        cell.title = text;
      }
      if (text === 'fail' && column === cells.length - 1) cell.replaceChildren(stop(text));
      line.append(cell);
    });
    return line;
  }

  function stop(text) {
    const mark = document.createElement('b');
    mark.className = 'stop';
    mark.textContent = text;
    return mark;
  }

  function go(row) {
    const before = state.lines.get(state.at);
    before?.setAttribute('aria-selected', 'false');
    state.at = Math.min(Math.max(row, 0), state.total - 1);
    const top = state.at * height;
    if (top < pane.scrollTop) pane.scrollTop = top;
    if (top + height > pane.scrollTop + pane.clientHeight) pane.scrollTop = top + height - pane.clientHeight;
    paint();
    state.lines.get(state.at)?.setAttribute('aria-selected', 'true');
    pane.setAttribute('aria-activedescendant', `row-${state.at}`);
  }

  pane.addEventListener('scroll', paint, { passive: true });
  pane.addEventListener('keydown', event => {
    const page = Math.floor(pane.clientHeight / height) - 1;
    const moves = { ArrowDown: 1, ArrowUp: -1, PageDown: page, PageUp: -page, Home: -state.total, End: state.total };
    if (event.key in moves) {
      event.preventDefault();
      go(state.at + moves[event.key]);
    } else if (event.key === 'Enter' && state.lines.get(state.at)) {
      location.href = wayTo(state.lines.get(state.at).dataset.link);
    }
  });
  pane.addEventListener('click', event => {
    const line = event.target.closest('.line');
    if (line && !event.target.closest('a')) location.href = wayTo(line.dataset.link);
  });
  table.querySelector('.heads').addEventListener('click', event => {
    const name = event.target.dataset?.sort;
    if (!name) return;
    state.sort = state.sort === name ? `-${name}` : name;
    for (const button of table.querySelectorAll('[data-sort]')) delete button.dataset.on;
    event.target.dataset.on = state.sort.startsWith('-') ? 'up' : 'down';
    void begin(false);
  });
  let waiting = 0;
  filter.addEventListener('input', () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      history.replaceState(null, '', location.pathname + asked(side(), filter.value && `q=${encodeURIComponent(filter.value)}`));
      void begin(false);
    }, 120);
  });
  filter.form.addEventListener('submit', event => event.preventDefault());
  linksSheet.stop?.abort();
  linksSheet.stop = new AbortController();
  window.addEventListener('resize', paint, { signal: linksSheet.stop.signal });
  void begin(false);

  /** Fetches, while nothing else is to be done, the rows that a print needs: it cannot wait for them. */
  async function fetchForPaper(run) {
    for (let index = 0; index * block < Math.min(state.total, mostOnPaper) && run === state.run; index++) {
      await new Promise(done => setTimeout(done, 30));
      if (run === state.run) await load(index, false);
    }
  }

  return {
    read: () => begin(true),
    /** The table for a print: what the filter lets through, from the first row on. */
    onPaper() {
      const rows = [];
      for (let index = 0; state.blocks.get(index) && rows.length < mostOnPaper; index++) rows.push(...state.blocks.get(index));
      const paper = document.createElement('table');
      const head = paper.createTHead().insertRow();
      for (const title of table.querySelectorAll('[role=columnheader]')) {
        const cell = document.createElement('th');
        cell.textContent = title.textContent;
        head.append(cell);
      }
      const lines = paper.createTBody();
      for (const row of rows) {
        const line = lines.insertRow();
        for (const text of row) line.insertCell().textContent = text;
      }
      const words = document.createElement('p');
      const chosen = filter.value ? ` that match '${filter.value}'` : '';
      words.textContent = rows.length < state.total
        ? `The first ${rows.length} of ${state.total} links${chosen}. The others are left out here: ports.csv, cables.csv and `
          + 'handover.xlsx among the documents hold all.'
        : `All ${state.total} links${chosen}.`;
      return [words, paper];
    },
    dress(next) {
      const margins = next.querySelector('svg.margins');
      if (margins) document.querySelector('svg.margins')?.replaceWith(margins);
      const other = next.querySelector('#links')?.dataset.as;
      if (other === undefined || other === table.dataset.as) return;
      table.dataset.as = other;
      void begin(true);
    },
  };
}
linksSheet.stop = null;
