/** Addresses of visits: by their ids, and by their numbers as they once were. */
import { describe, expect, test } from 'vitest';
import { visitIn, visitQuery } from '../../src/lib/app/familyAddress.ts';
import { idOfNumber } from '../../src/lib/app/visitAddress.ts';
import { DEMO_RAW } from '../../src/lib/examples/demo.ts';

const { visits } = DEMO_RAW;
const ids = visits.map(({ id }) => id);

describe('an address of before visits had ids', () => {
  test('names the visit with its number, counted from 1', () => {
    expect(['1', '2', '3'].map((named) => idOfNumber(visits, named))).toEqual(ids);
  });

  test.each(['0', '4', '03', '1e0', '-1', '', 'new', undefined, ids[0]])('%j is none', (named) => {
    expect(idOfNumber(visits, named)).toBeUndefined();
  });
});

describe('the address of a family’s page', () => {
  test('names a visit by its id, and finds it again; so does its number', () => {
    for (const [index, id] of ids.entries()) {
      expect(visitIn(visitQuery(id), visits)).toBe(id);
      expect(visitIn(`?visit=${index + 1}`, visits)).toBe(id);
    }
    expect(visitIn(visitQuery(null), visits)).toBeNull();
  });

  test('that names no visit which is there is of the last', () => {
    for (const query of ['', '?visit=', '?visit=9', '?visit=kestrel'])
      expect(visitIn(query, visits)).toBe(ids.at(-1));
    expect(visitIn('?visit=1', [])).toBeUndefined();
  });
});
