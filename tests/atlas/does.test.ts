/** What limbs do, against hand-read descriptions of the responses (common practice, no source). */
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { doesOf, DOINGS, type Doing } from '../../src/lib/atlas/does.ts';

const does = (id: string): ReadonlySet<Doing> => doesOf(ATLAS.reflexes.get(id)!);
const whichDo = (doing: Doing): string[] =>
  [...ATLAS.reflexes.values()].filter((r) => doesOf(r).has(doing)).map((r) => r.id);

describe('what the limbs do is computed from the pattern', () => {
  test.each<[string, Doing[], Doing[]]>([
    [
      'moro',
      ['arms straighten', 'arms spread', 'arms close-in', 'hands open', 'hands close'],
      ['arms unlike', 'head turns'],
    ],
    ['atnr', ['arms unlike', 'legs unlike', 'head turns', 'hands open', 'hands close'], []],
    ['stnr', ['arms bend', 'arms straighten', 'legs straighten'], ['arms unlike', 'legs unlike']],
    ['palmar-grasp', ['hands close'], ['hands open', 'legs bend']],
    ['plantar-grasp', ['feet curl'], ['feet fan']],
    ['plantar-response', ['feet fan'], ['feet curl']],
    ['galant', ['trunk curves'], ['trunk bends']],
    ['rooting', ['head turns', 'face moves'], ['arms bend']],
    ['stepping', ['legs unlike', 'legs bend', 'legs straighten'], ['arms unlike']],
    // one arm alone moves: it is not unlike the other, which does nothing
    ['protective-sideways', ['arms straighten', 'arms spread'], ['arms unlike']],
  ])('%s', (id, yes, no) => {
    for (const doing of yes) expect(does(id).has(doing), doing).toBe(true);
    for (const doing of no) expect(does(id).has(doing), doing).toBe(false);
  });

  test('every doing on offer finds at least one reflex, and every reflex does something', () => {
    for (const [part, all] of Object.entries(DOINGS))
      for (const doing of all)
        expect(whichDo(`${part} ${doing}` as Doing).length, `${part} ${doing}`).toBeGreaterThan(0);
    for (const reflex of ATLAS.reflexes.values())
      expect(doesOf(reflex).size, reflex.id).toBeGreaterThan(0);
  });
});
