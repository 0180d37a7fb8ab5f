/**
 * Files that have gone wrong, made of sound ones by chance: cut, spliced, swollen, nested without end,
 * with keys of prototypes, numbers without measure and bytes that are no letters.
 */
import fc from 'fast-check';

const DEEP = 20_000;

/** What is put where something else stood. */
const SPLICES: fc.Arbitrary<string> = fc.oneof(
  fc.constantFrom(
    '"__proto__":{"polluted":true},',
    '"constructor":{"prototype":{"polluted":true}},',
    '1e999',
    '-1e999',
    '123456789012345678901234567890',
    'null',
    '[]',
    '{}',
    '""',
    '"\\u0000"',
    '"\\ud800"',
    '\ufeff',
    '\0',
    '<script>globalThis.polluted=1</script>',
    '=cmd|x',
    '"',
    '\\',
    ',,,,',
    '\r\n\r\n',
  ),
  fc.constantFrom(10, 1000, DEEP).map((depth) => '['.repeat(depth)),
  fc.constantFrom(10, 1000, DEEP).map((depth) => '{"a":'.repeat(depth) + '1' + '}'.repeat(depth)),
  fc.constantFrom(100, 10_000, 200_000).map((length) => 'x'.repeat(length)),
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc.double().map(String),
);

interface Change {
  at: number;
  length: number;
  put: string;
}

const change: fc.Arbitrary<Change> = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.oneof(fc.constant(0), fc.nat(20), fc.nat(2000)),
  put: fc.oneof({ weight: 4, arbitrary: SPLICES }, { weight: 1, arbitrary: fc.constant('') }),
});

/** A sound text with one to three places changed. */
export const malformedText = (sound: readonly string[]): fc.Arbitrary<string> =>
  fc
    .tuple(fc.constantFrom(...sound), fc.array(change, { minLength: 1, maxLength: 3 }))
    .map(([text, changes]) =>
      changes.reduce((now, { at, length, put }) => {
        const from = Math.floor(at * now.length);
        return now.slice(0, from) + put + now.slice(from + length);
      }, text),
    );

/** A value of JSON, any place of which may be replaced. */
type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

const VALUES: fc.Arbitrary<Json> = fc.oneof(
  fc.constantFrom<Json>(null, true, 0, -1, 1e308, 2 ** 60, 0.5, '', ' ', [], {}, '2026-02-30'),
  fc.constantFrom<Json>('__proto__', 'constructor', 'toString', '\u202e', '<b>x</b>', '\ud800'),
  fc.string({ maxLength: 20 }),
  fc.constant<Json>('n'.repeat(5000)),
  fc.constant<Json>(Array.from({ length: 500 }, () => ({ on: '2026-01-01' }))),
  fc.jsonValue({ maxDepth: 2 }) as fc.Arbitrary<Json>,
);

/** Replaces the nth place of a value, counted in its own order. */
function replaced(value: Json, nth: { left: number }, put: Json): Json {
  if (nth.left-- === 0) return put;
  if (Array.isArray(value)) return value.map((one) => replaced(one, nth, put));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([k, one]) => [k, replaced(one, nth, put)]));
}

const count = (value: Json): number =>
  1 +
  (typeof value === 'object' && value !== null
    ? Object.values(value).reduce((sum: number, one) => sum + count(one), 0)
    : 0);

/** Sound JSON in which a value here and there is another: all the letters are right. */
export const malformedJson = (sound: readonly string[]): fc.Arbitrary<string> =>
  fc
    .tuple(
      fc.constantFrom(...sound),
      fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), VALUES), {
        minLength: 1,
        maxLength: 2,
      }),
    )
    .map(([text, changes]) => {
      let value = JSON.parse(text) as Json;
      for (const [at, put] of changes)
        value = replaced(value, { left: Math.floor(at * count(value)) }, put);
      return JSON.stringify(value);
    });
