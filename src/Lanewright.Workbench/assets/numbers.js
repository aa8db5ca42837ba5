// Numbers in words of a page.
// @ts-check

/** A whole number in groups of three digits, as the server writes them. */
export function grouped(number) {
  return String(Math.round(number)).replace(/\B(?=(\d{3})+$)/g, '\u202f');
}
