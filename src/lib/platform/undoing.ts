/**
 * What the keys for undo and redo go to: the child's record, unless a page has something of its own.
 * Whatever was changed in one stroke, as by a backup that was taken, goes back in one stroke.
 */
export interface Undoable {
  undo(): void;
  redo(): void;
}

/** Something with a history of its own, whose strokes can be told from those of others. */
export interface Stroked extends Undoable {
  readonly history: { readonly lastStroke: number; readonly nextStroke: number };
}

const claims: Undoable[] = [];
/** All that has a history, what others rest on first: a record may hold findings on a reflex of one's own. */
const joined: Stroked[] = [];

/** The keys go to this until it is given up again; the answer gives it up. */
export function claimUndo(one: Undoable): () => void {
  claims.push(one);
  return () => {
    const at = claims.lastIndexOf(one);
    if (at >= 0) claims.splice(at, 1);
  };
}

export const undoing = (usual: Undoable): Undoable => claims.at(-1) ?? usual;

/** From now on this takes part in what is undone together. */
export function joinUndo(one: Stroked): void {
  if (!joined.includes(one)) joined.push(one);
}

const isStroked = (one: Undoable): one is Stroked => 'history' in one;

function undoStroke(stroke: number): void {
  if (stroke === 0) return;
  for (const one of joined.toReversed()) if (one.history.lastStroke === stroke) one.undo();
}

function redoStroke(stroke: number): void {
  for (const one of joined) if (one.history.nextStroke === stroke) one.redo();
}

/** Undoes the last change of one, with what was changed elsewhere in the same stroke. */
export function undoWith(one: Undoable): void {
  if (isStroked(one) && joined.includes(one)) undoStroke(one.history.lastStroke);
  else one.undo();
}

export function redoWith(one: Undoable): void {
  if (isStroked(one) && joined.includes(one)) redoStroke(one.history.nextStroke);
  else one.redo();
}

/** The last change to anything, wherever it was made. */
export const everything: Undoable = {
  undo: () => undoStroke(Math.max(0, ...joined.map(({ history }) => history.lastStroke))),
  redo: () => redoStroke(Math.min(Infinity, ...joined.map(({ history }) => history.nextStroke))),
};
