/** What the keys for undo and redo go to: the child's record, unless a page has something of its own. */
export interface Undoable {
  undo(): void;
  redo(): void;
}

const claims: Undoable[] = [];

/** The keys go to this until it is given up again; the answer gives it up. */
export function claimUndo(one: Undoable): () => void {
  claims.push(one);
  return () => {
    const at = claims.lastIndexOf(one);
    if (at >= 0) claims.splice(at, 1);
  };
}

export const undoing = (usual: Undoable): Undoable => claims.at(-1) ?? usual;
