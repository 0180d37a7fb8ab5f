import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { History } from '../../src/lib/state/history.svelte.ts';

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
});
