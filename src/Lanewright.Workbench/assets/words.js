// What may stand at a place of a plan, from its schema.
// @ts-check

/** The words that fit at a place, and where the word begins that they replace. */
export function wordsAt(schema, text, at) {
  const start = text.lastIndexOf('\n', at - 1) + 1;
  const line = text.slice(start, at);
  const value = /^(\s*(?:- )?)([^:#]+):\s+(\S*)$/.exec(line);
  const typed = value ? value[3] : /[\w-]*$/.exec(line)[0];
  const from = at - typed.length;
  const path = pathTo(text, start, line);
  let shapes = [schema];
  for (const key of value ? [...path, value[2].trim()] : path) shapes = shapes.flatMap(shape => into(shape, key));
  const words = shapes.flatMap(shape => value ? choices(shape) : keys(shape));
  const seen = new Set();
  return { from, words: words.filter(w => w.text.startsWith(typed) && !seen.has(w.text) && seen.add(w.text)) };
}

/** The keys that a line stands under, by how far lines before it are set in. */
function pathTo(text, start, line) {
  let indent = /^\s*/.exec(line)[0].length;
  const path = [];
  for (const before of text.slice(0, start).split('\n').reverse()) {
    const key = /^(\s*)([^\s#-][^:]*):(\s|$)/.exec(before);
    if (!key || key[1].length >= indent) continue;
    path.unshift(key[2].trim());
    indent = key[1].length;
    if (indent === 0) break;
  }
  return path;
}

function each(shape) {
  return [shape, ...(shape?.anyOf ?? []).flatMap(each)];
}

function into(shape, key) {
  return each(shape).flatMap(one => [
    one?.properties?.[key],
    typeof one?.additionalProperties === 'object' && !one?.properties?.[key] ? one.additionalProperties : undefined,
    one?.items ? into(one.items, key) : undefined,
  ].flat().filter(Boolean));
}

function keys(shape) {
  return each(shape).flatMap(one => Object.entries(one?.properties ?? {})
    .map(([key, about]) => ({ text: key, insert: `${key}: `, about: about.title ?? '' })));
}

function choices(shape) {
  return each(shape).flatMap(one => [
    ...(one?.enum ?? []).map(choice => ({ text: String(choice), insert: String(choice), about: '' })),
    ...(one?.items ? choices(one.items) : []),
  ]);
}
