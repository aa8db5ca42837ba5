// The strip above the title block while something is typed and not saved: keep it or give it up, from any sheet.
// @ts-check

/** Brings the strip to life, now and whenever it is put in place anew. */
export function whatIf(root, say) {
  document.addEventListener('click', async event => {
    const button = event.target instanceof Element ? event.target.closest('#whatif button') : null;
    if (!button) return;
    const what = button.dataset.act;
    if (what === 'discard' && button.dataset.sure !== 'yes') {
      button.dataset.sure = 'yes';
      button.textContent = 'Give up: sure?';
      return;
    }
    const said = [];
    for (const file of document.querySelectorAll('#whatif [data-file]')) {
      const address = `${root}${what}?file=${encodeURIComponent(file.dataset.file)}&version=${file.dataset.version}`;
      const answer = await fetch(address, { method: 'POST' });
      said.push(answer.status === 200 || answer.status === 409 ? (await answer.json()).words : await answer.text());
    }
    say([...new Set(said)].join(' '));
  });
}
