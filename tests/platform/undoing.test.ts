/** Undo over several histories: what was done in one stroke goes back in one, in the order it was done. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { History, newStroke } from '../../src/lib/platform/history.svelte.ts';
import { everything, joinUndo, redoWith, undoWith } from '../../src/lib/platform/undoing.ts';

/** A number with a history. */
class Counted {
  value = 0;
  readonly history = new History<number, 'set'>();

  set(next: number, stroke?: number): void {
    this.history.record(this.value, next, 'set', stroke);
    this.value = next;
  }

  undo(): void {
    this.value = this.history.undo()?.value ?? this.value;
  }

  redo(): void {
    this.value = this.history.redo()?.value ?? this.value;
  }
}

const all = [new Counted(), new Counted(), new Counted()];
for (const one of all) joinUndo(one);
const now = (): number[] => all.map(({ value }) => value);

describe('undo over everything', () => {
  test('goes back over every stroke, whichever values it changed, and forth again', () => {
    const stroke = fc.array(fc.boolean(), { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(fc.array(stroke, { minLength: 1, maxLength: 20 }), (strokes) => {
        const states = [now()];
        let next = 0;
        for (const touched of strokes) {
          if (!touched.includes(true)) continue;
          const number = newStroke();
          next += 1;
          for (const [i, is] of touched.entries()) if (is) all[i]!.set(next, number);
          states.push(now());
        }
        for (const state of states.slice(0, -1).toReversed()) {
          everything.undo();
          expect(now()).toEqual(state);
        }
        for (const state of states.slice(1)) {
          everything.redo();
          expect(now()).toEqual(state);
        }
      }),
    );
  });

  test('of one takes along what was done elsewhere in the same stroke, and nothing else', () => {
    const [a, b, c] = all as [Counted, Counted, Counted];
    const together = newStroke();
    a.set(101, together);
    b.set(102, together);
    c.set(103);
    const before = now();
    undoWith(a);
    expect([a.value === 101, b.value === 102, c.value]).toEqual([false, false, 103]);
    redoWith(b);
    expect(now()).toEqual(before);
  });
});
