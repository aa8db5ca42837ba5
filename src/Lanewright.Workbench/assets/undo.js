// Undo of what this window typed. A change that came from elsewhere is not taken back by it: it only moves what is.
// @ts-check
const togetherWithin = 1000;
const mostSteps = 2000;

/** What one text has and another has not: where, which words went and which came. */
export function difference(before, after) {
  const most = Math.min(before.length, after.length);
  let at = 0;
  while (at < most && before[at] === after[at]) at++;
  let tail = 0;
  while (tail < most - at && before[before.length - 1 - tail] === after[after.length - 1 - tail]) tail++;
  return { at, gone: before.slice(at, before.length - tail), come: after.slice(at, after.length - tail) };
}

/** The steps of a text area. */
export function steps(area) {
  let [done, undone, last] = [[], [], area.value];

  /** Takes down what was typed just now; one letter after the other is one step. */
  function typed() {
    const step = { ...difference(last, area.value), when: performance.now() };
    last = area.value;
    if (step.gone === step.come) return;
    undone = [];
    const before = done.at(-1);
    const goesOn = before && step.when - before.when < togetherWithin && step.gone === '' && before.gone === ''
      && step.at === before.at + before.come.length && !before.come.endsWith('\n');
    if (goesOn) [before.come, before.when] = [before.come + step.come, step.when];
    else done.push(step);
    if (done.length > mostSteps) done.shift();
  }

  /** The text was changed elsewhere. Steps beside the change move with it; one that it touches, and all before that, are no more. */
  function elsewhere() {
    const change = difference(last, area.value);
    last = area.value;
    undone = [];
    if (change.gone === change.come) return;
    for (let n = done.length - 1; n >= 0; n--) {
      const step = done[n];
      if (change.at >= step.at + step.come.length) change.at += step.gone.length - step.come.length;
      else if (change.at + change.gone.length <= step.at) step.at += change.come.length - change.gone.length;
      else {
        done = done.slice(n + 1);
        return;
      }
    }
  }

  function replace(at, gone, come) {
    area.setRangeText(come, at, at + gone.length, 'end');
    last = area.value;
  }

  /** Takes one step back; whether there was one. */
  function undo() {
    const step = done.pop();
    if (!step) return false;
    undone.push(step);
    replace(step.at, step.come, step.gone);
    return true;
  }

  /** Takes it again; whether there was one. */
  function redo() {
    const step = undone.pop();
    if (!step) return false;
    step.when = 0;
    done.push(step);
    replace(step.at, step.gone, step.come);
    return true;
  }

  return { typed, elsewhere, undo, redo };
}
