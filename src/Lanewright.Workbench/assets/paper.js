// Prints: what a screen shows a part of stands on paper whole, or says how much is left out.
// @ts-check

/** Puts the whole of the sheet beside its window before it is printed, and takes it away afterwards. */
export function onPaper(sheet) {
  window.addEventListener('beforeprint', () => {
    for (const part of document.querySelectorAll('#sheet details:not([open])')) {
      part.open = true;
      part.dataset.shut = 'yes';
    }
    const whole = sheet()?.onPaper?.();
    if (!whole) return;
    const box = document.createElement('div');
    box.id = 'paper';
    box.append(...whole);
    document.getElementById('sheet')?.append(box);
  });
  window.addEventListener('afterprint', () => {
    document.getElementById('paper')?.remove();
    for (const part of document.querySelectorAll('#sheet details[data-shut]')) {
      part.open = false;
      delete part.dataset.shut;
    }
  });
}
