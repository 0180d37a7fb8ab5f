/** What a page says of something it did that is no change to the open child, with undo beside it. */
import type { Undoable } from '../platform/undoing.ts';

interface Said {
  what: 'did' | 'undid';
  sentence: string;
  undone: string;
  by: Undoable;
}

export class Spoken {
  now = $state.raw<Said | undefined>(undefined);

  /** @param undone what is said once it was undone */
  say(sentence: string, undone: string, by: Undoable): void {
    this.now = { what: 'did', sentence, undone, by };
  }

  undo(): void {
    if (this.now?.what !== 'did') return;
    this.now.by.undo();
    this.now = { ...this.now, what: 'undid' };
  }

  redo(): void {
    if (this.now?.what !== 'undid') return;
    this.now.by.redo();
    this.now = { ...this.now, what: 'did' };
  }

  hush(): void {
    this.now = undefined;
  }
}
