// Work that a person waits for: how far it is, and the button that breaks it off.
// @ts-check
const every = 500;
const showsAfter = 1000;

/** Tells how far the work is that this page waits for, until the page is another. */
export function waiting(root) {
  for (const told of document.querySelectorAll('.waiting[data-work]')) {
    if (!told.dataset.isFollowed) void follow(root, told);
  }
}

/** Has the server work out what this sheet only leads to, tells how far it is, and hands over the address once it is there. */
export function ahead(root, go) {
  for (const place of document.querySelectorAll('[data-ahead]')) {
    if (place.dataset.isBegun) continue;
    place.dataset.isBegun = 'yes';
    void work(root, place, go);
  }
}

async function work(root, place, go) {
  const address = place.dataset.ahead;
  while (place.isConnected) {
    try {
      const answer = await fetch(address, { headers: { 'x-ahead': 'yes' } });
      const { isMade, isBrokenOff, work: name } = await answer.json();
      if (!place.isConnected || isBrokenOff) return;
      if (isMade) {
        go(address);
        return;
      }
      if (!place.querySelector('.waiting')) show(root, place, name);
    } catch {
      return;
    }
    await new Promise(done => setTimeout(done, every));
  }
}

/** The words of a sheet that is waited for, inside the sheet that leads to it. */
function show(root, place, name) {
  const told = document.createElement('div');
  told.className = 'waiting';
  told.dataset.work = name;
  const step = document.createElement('p');
  step.className = 'step small';
  told.append(step);
  const off = document.createElement('button');
  off.type = 'button';
  off.textContent = 'Break it off';
  off.dataset.post = `break-off?work=${encodeURIComponent(name)}`;
  place.querySelector('a')?.remove();
  place.append(told, off);
  void follow(root, told);
}

async function follow(root, told) {
  told.dataset.isFollowed = 'yes';
  const step = told.querySelector('.step');
  while (told.isConnected) {
    try {
      const answer = await fetch(`${root}progress?work=${encodeURIComponent(told.dataset.work)}`);
      const { goesOn, seconds, step: words } = await answer.json();
      if (goesOn && step) step.textContent = [words, seconds > 0 ? `${seconds} s` : ''].filter(Boolean).join(', ');
    } catch {
      return;
    }
    await new Promise(done => setTimeout(done, every));
  }
}

/** Buttons that only tell the workbench something, and documents, which may take long to write. */
export function buttons(root, say) {
  document.addEventListener('click', event => {
    if (!(event.target instanceof Element)) return;
    const button = event.target.closest('button[data-post]');
    if (button) {
      button.disabled = true;
      void fetch(root + button.dataset.post, { method: 'POST' });
      return;
    }
    const way = event.target.closest('a[href]');
    if (!way || event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
    if (!way.getAttribute('href').startsWith(`${root}files/`)) return;
    event.preventDefault();
    void fetchDocument(way.getAttribute('href'), say);
  });
}

async function fetchDocument(address, say) {
  const name = decodeURIComponent(address.slice(address.lastIndexOf('/') + 1));
  const off = new AbortController();
  const slow = setTimeout(() => {
    const stop = document.createElement('button');
    stop.textContent = 'Break it off';
    stop.addEventListener('click', () => off.abort());
    say(`${name} is being written. `, true);
    document.getElementById('said')?.append(stop);
  }, showsAfter);
  try {
    const answer = await fetch(address, { signal: off.signal });
    if (!answer.ok) throw new Error(await answer.text());
    const kept = document.createElement('a');
    kept.href = URL.createObjectURL(await answer.blob());
    kept.download = name;
    kept.click();
    setTimeout(() => URL.revokeObjectURL(kept.href), 60_000);
    say(`${name} is written.`);
  } catch (fault) {
    say(off.signal.aborted ? `${name} was broken off.` : `${name} could not be written: ${fault.message}`);
  } finally {
    clearTimeout(slow);
  }
}
