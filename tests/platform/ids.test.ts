import { validate, version } from 'uuid';
import { expect, test } from 'vitest';
import { newId, newPartId } from '../../src/lib/platform/ids.ts';

test('ids by chance are of their form, and no two the same', () => {
  const parts = Array.from({ length: 1000 }, newPartId);
  // form and version as the library for uuids has them (RFC 9562)
  for (const id of parts) expect([validate(id), version(id)]).toEqual([true, 4]);
  expect(new Set(parts).size).toBe(parts.length);
  const ids = Array.from({ length: 1000 }, newId);
  for (const id of ids) expect(id).toMatch(/^[0-9a-f]{24}$/);
  expect(new Set(ids).size).toBe(ids.length);
});
