// What may stand at a place of a plan: keys and choices from its schema, and the way to the place, by which names are asked for.
// @ts-check

/** What stands at the caret: the keys that lead there, whether it is a value, and the word begun, with where that begins. */
export function placeAt(text, at) {
  const before = text.slice(0, at);
  const [blocks, flows] = [[], []];
  let word = { from: at, isValue: false };
  for (let start = 0; start <= before.length;) {
    const end = before.indexOf('\n', start);
    const line = before.slice(start, end < 0 ? before.length : end);
    word = readLine(line, start, blocks, flows, end < 0);
    if (end < 0) break;
    start = end + 1;
  }
  const path = [...blocks.map(b => b.key), ...flows.map(f => f.key)].filter(key => key !== null);
  return { ...word, path, begun: before.slice(word.from).replace(/^["']/, '') };
}

/** Reads one line, or what stands before the caret of it, into the blocks and the brackets that are open after it. */
function readLine(line, start, blocks, flows, isLast) {
  if (flows.length > 0) return readFlow(line, 0, start, flows);
  const marker = /^(\s*(?:- +)*)/.exec(line)[1];
  if (/^\s*#/.test(line)) return { from: start + line.length, isNote: true };
  // An empty line ends nothing; where the caret stands on one, what it is set in by tells where it belongs.
  if (line.trim() === '' && !isLast) return { from: start + line.length };
  while (blocks.length > 0 && blocks.at(-1).indent >= marker.length) blocks.pop();
  const key = /^("(?:[^"\\]|\\.)*"|'[^']*'|[^\s#{}[\],&*!|>'"%@`][^:#{}[\],]*):(?=\s|$)/.exec(line.slice(marker.length));
  if (key === null) return { ...readFlow(line, marker.length, start, flows, marker.includes('-')), isItem: marker.includes('-') };
  blocks.push({ indent: marker.length, key: plain(key[1]) });
  const after = marker.length + key[0].length;
  return after === line.length ? { from: start + after, isValue: true } : readFlow(line, after, start, flows, true);
}

/** Reads on from a place in a line, through braces and brackets and over what is quoted. */
function readFlow(line, first, start, flows, isValue = false) {
  let from = first;
  let isQuoted = '';
  const isInValue = () => flows.length > 0 ? flows.at(-1).isList || flows.at(-1).key !== null : isValue;
  for (let i = first; i < line.length; i++) {
    const letter = line[i];
    if (isQuoted) {
      if (letter === '\\' && isQuoted === '"') i++;
      else if (letter === isQuoted) isQuoted = '';
    } else if (letter === '"' || letter === "'") isQuoted = line.slice(from, i).trim() === '' ? letter : '';
    else if (letter === '#' && /\s/.test(line[i - 1] ?? ' ')) return { from: start + line.length, isNote: true };
    else if (letter === '{' || letter === '[') {
      flows.push({ isList: letter === '[', key: null });
      from = i + 1;
    } else if (letter === '}' || letter === ']') {
      flows.pop();
      from = i + 1;
    } else if (letter === ',' && flows.length > 0) {
      if (!flows.at(-1).isList) flows.at(-1).key = null;
      from = i + 1;
    } else if (letter === ':' && /\s|^$/.test(line[i + 1] ?? '') && flows.length > 0 && !flows.at(-1).isList
      && flows.at(-1).key === null) {
      flows.at(-1).key = plain(line.slice(from, i));
      from = i + 1;
    }
  }
  while (from < line.length && /\s/.test(line[from])) from++;
  return { from: start + from, isValue: isInValue() };
}

function plain(key) {
  return key.trim().replace(/^(["'])(.*)\1$/, '$2');
}

/** The words of the schema that fit at a place. */
export function wordsOf(schema, place) {
  let shapes = [schema];
  for (const key of place.path) shapes = shapes.flatMap(shape => into(shape, key));
  if (place.isNote) return [];
  const words = shapes.flatMap(shape => [...(place.isValue ? choices(shape) : []), ...(place.isValue && !place.isItem ? [] : keys(shape))]);
  const seen = new Set();
  return words.filter(w => w.text.startsWith(place.begun) && !seen.has(w.text) && seen.add(w.text));
}

/** A name as it may be written as a value: in quotes where it would be read as something else. */
export function written(name) {
  const isPlain = /^\w[\w./-]*$/.test(name) && !/^([\d._-]+(e\d+)?|0x[\da-f]+|yes|no|true|false|on|off|null)$/i.test(name);
  return isPlain ? name : JSON.stringify(name);
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
  return each(shape).flatMap(one => [
    ...Object.entries(one?.properties ?? {}).map(([key, about]) => ({ text: key, insert: `${key}: `, about: about.title ?? '' })),
    ...(one?.items ? keys(one.items) : []),
  ]);
}

function choices(shape) {
  return each(shape).flatMap(one => [
    ...(one?.enum ?? []).map(choice => ({ text: String(choice), insert: String(choice), about: '' })),
    ...(one?.items ? choices(one.items) : []),
  ]);
}
