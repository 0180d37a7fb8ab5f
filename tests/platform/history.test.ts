import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { History, newStroke } from '../../src/lib/platform/history.svelte.ts';

describe('undo and redo', () => {
  it('have nothing to do at first', () => {
    const history = new History<number, string>();
    expect([history.canUndo, history.canRedo, history.undo(), history.redo()]).toEqual([
      false,
      false,
      undefined,
      undefined,
    ]);
  });

  it('go back over every change and forward again to the same values', () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { minLength: 1, maxLength: 30 }), (values) => {
        const history = new History<number, number>();
        let now = 0;
        values.forEach((next, index) => {
          history.record(now, next, index);
          now = next;
        });
        const back = values.map(() => history.undo()?.value);
        const forth = values.map(() => history.redo()?.value);
        expect(back).toEqual([0, ...values.slice(0, -1)].reverse());
        expect(forth).toEqual(values);
      }),
    );
  });

  it('forget what was undone once something new is done', () => {
    const history = new History<number, string>();
    history.record(0, 1, 'one');
    history.undo();
    history.record(0, 2, 'two');
    expect(history.canRedo).toBe(false);
    expect(history.undo()).toEqual({ value: 0, from: 2, did: 'two' });
  });

  it('go over all that was done in one stroke at once, back to what stood before it', () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { minLength: 1, maxLength: 20 }), (values) => {
        const history = new History<number, string>();
        history.record(-1, 0, 'before');
        const stroke = newStroke();
        let now = 0;
        for (const next of values) {
          history.record(now, next, next === values[0] ? 'begun' : 'gone on', stroke);
          now = next;
        }
        expect(history.undo()).toEqual({ value: 0, from: now, did: 'begun' });
        expect(history.redo()?.value).toBe(now);
        history.undo();
        expect(history.undo()?.value).toBe(-1);
        expect(history.canUndo).toBe(false);
      }),
    );
  });
});
