/**
 * Script in every text of every kind of file: refused, or kept letter for letter as the text it is. The
 * kinds of payload are those of OWASP's XSS Filter Evasion Cheat Sheet.
 */
import { describe, expect, it } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { parseCaseText } from '../../src/lib/case/file.ts';
import { parseTalkText } from '../../src/lib/lecture/talkFile.ts';
import { caseWith, HOSTILE, PAYLOADS, PLAIN, talkWith } from '../support/payloads.ts';

type Path = readonly (string | number)[];

/** Where a value holds text, as paths. */
function texts(value: unknown, path: Path = []): Path[] {
  if (typeof value === 'string') return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    texts(inner, [...path, Array.isArray(value) ? Number(key) : key]),
  );
}

const at = (value: unknown, path: Path): unknown =>
  path.reduce((inner, key) => (inner as Record<string | number, unknown>)[key], value);

function withText(value: object, path: Path, text: string): object {
  const copy = structuredClone(value);
  const box = at(copy, path.slice(0, -1)) as Record<string | number, unknown>;
  box[path.at(-1)!] = text;
  return copy;
}

const CLEAN = 'a note';
const KINDS = [
  {
    kind: 'a case file',
    clean: caseWith([CLEAN]),
    read: (text: string) => {
      const parsed = parseCaseText(text, ATLAS);
      return parsed.ok ? JSON.stringify(parsed.value) : undefined;
    },
  },
  {
    kind: 'a talk',
    clean: talkWith([CLEAN]),
    read: (text: string) => {
      const parsed = parseTalkText(text);
      return parsed.ok ? JSON.stringify(parsed.talk) : undefined;
    },
  },
] as const;

for (const { kind, clean, read } of KINDS)
  describe(kind, () => {
    const free = texts(clean).filter((path) => at(clean, path) === CLEAN);

    it('is read while it is clean, and has texts to try', () => {
      expect(read(JSON.stringify(clean))).toContain(CLEAN);
      expect(free.length).toBeGreaterThan(3);
    });

    for (const path of free)
      it(`${path.join('.')}: refused, or kept as it is`, () => {
        for (const payload of PAYLOADS) {
          const text = payload.slice(0, 80).trim();
          const result = read(JSON.stringify(withText(clean, path, text)));
          if (PLAIN.includes(payload)) expect(result, payload).toBeDefined();
          if (result !== undefined) expect(result, payload).toContain(JSON.stringify(text));
        }
      });

    it('refuses each of the hostile ones as its name, and takes the plain ones', () => {
      const make = kind === 'a talk' ? talkWith : caseWith;
      const taken = PAYLOADS.filter((payload) => read(JSON.stringify(make([payload]))));
      expect(taken).toEqual(PAYLOADS.filter((payload) => PLAIN.includes(payload)));
      expect(taken.length + HOSTILE.length).toBe(PAYLOADS.length);
    });
  });
