// Break-even sliders: where a slider stands among stretches that were solved beforehand.
// @ts-check
import { grouped } from './numbers.js';

/** Brings the sliders to life. What each says is looked up, never reckoned anew. */
export function sliders() {
  const box = document.getElementById('sliders');
  if (!box || box.dataset.on) return;
  box.dataset.on = 'yes';
  const all = [...box.querySelectorAll('.slider')].map(sliderOf);
  for (const one of all) {
    one.input.addEventListener('input', () => {
      for (const other of all) if (other !== one) other.back();
      one.tell(true);
      keep(one);
    });
    one.button.addEventListener('click', () => {
      one.back();
      keep(one);
      one.input.focus();
    });
  }
  const [key, value] = location.hash.slice(1).split('=');
  const asked = all.find(one => one.key === key);
  if (asked && Number.isFinite(Number(value))) asked.input.value = value;
  for (const one of all) one.tell(one === asked);
}

/** The address keeps where the slider stands. */
function keep(one) {
  const hash = one.isAsAsked() ? '' : `#${one.key}=${one.input.value}`;
  history.replaceState(null, '', location.pathname + location.search + hash);
}

function sliderOf(section) {
  const [input, output, button] = ['input', 'output', 'button'].map(name => section.querySelector(name));
  const stretches = JSON.parse(section.dataset.stretches);
  const label = section.querySelector('label').textContent;
  const one = {
    key: section.dataset.key,
    input,
    button,
    isAsAsked: () => Math.abs(Number(input.value) - Number(input.dataset.now)) < 1e-9,
    back() {
      input.value = input.dataset.now;
      one.tell(false);
    },
    tell(isMoved) {
      const value = Number(input.value);
      const at = Math.max(0, stretches.findLastIndex(s => s.from <= value + 1e-9));
      const here = stretches[at];
      const words = here.name === '' ? 'nothing fits' : here.name;
      const told = shown(value) + section.dataset.unit;
      output.textContent = `${told}: ${words}${costAt(here, value, section.dataset)}. The same from ${here.fromWords} to ${here.toWords}.`;
      input.setAttribute('aria-valuetext', `${told}, ${words}`);
      button.disabled = one.isAsAsked();
      section.querySelectorAll('.stretches li').forEach((item, i) => item.classList.toggle('here', i === at));
      if (isMoved) win(here, one.isAsAsked() ? '' : `${label}, ${told}`);
    },
  };
  return one;
}

function shown(value) {
  return String(Math.round(value * 10000) / 10000);
}

/** What it costs there: on a straight line between two corners, or between what two questions beside it came to. */
function costAt(stretch, value, about) {
  if (stretch.name === '') return '';
  const points = stretch.points;
  const after = points.findIndex(p => p[0] >= value - 1e-9);
  const [before, next] = after <= 0 ? [points[0], points[0]] : [points[after - 1], points[after]];
  const over = `${about.currency} over ${about.years} years`;
  if (Math.abs(next[0] - value) < 1e-9 || next[0] === before[0]) return `, ${grouped(next[1])} ${over}`;
  if (about.exact === 'yes') return `, ${grouped(before[1] + ((next[1] - before[1]) * (value - before[0]) / (next[0] - before[0])))} ${over}`;
  if (before[1] === next[1]) return `, near ${grouped(next[1])} ${over}`;
  return `, ${grouped(before[1])} at ${shown(before[0])} and ${grouped(next[1])} at ${shown(next[0])} ${over}`;
}

/** The column of the option that wins there stands out; where the winner is no column, the words say so. */
function win(stretch, words) {
  const table = document.querySelector('#options table');
  if (!table) return;
  for (const row of table.rows) [...row.cells].forEach((cell, i) => cell.classList.toggle('winner', words !== '' && i === stretch.option + 1));
  const caption = table.caption;
  caption.dataset.plain ??= caption.textContent;
  if (words === '') caption.textContent = caption.dataset.plain;
  else if (stretch.name === '') caption.textContent = `${words}: nothing fits`;
  else if (stretch.option < 0) caption.textContent = `${words}: ${stretch.name} is cheapest, which is none of these`;
  else caption.textContent = `${words}: the marked option is cheapest; the figures are those of the question as asked`;
}
