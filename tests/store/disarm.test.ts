import { dsvFormat } from 'd3';
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { disarmed, rearmed } from '../../src/lib/store/disarm.ts';
import { writeCsv } from '../../src/lib/store/table.ts';
import { runs } from '../support/runs.ts';

/** OWASP, "CSV Injection": "ensure that no cells begin with any of the following characters". */
const OWASP = ['=', '+', '-', '@', '\t', '\r', '\n'];
/** OWASP ASVS 5, 1.2.10, adds the null character. */
const ASVS = [...OWASP, '\0'];

const hostile = fc
  .array(fc.constantFrom(...ASVS, "'", ';', '|', ',', '"', ' ', 'a', '1', '＝', 'é'), {
    maxLength: 14,
  })
  .map((letters) => letters.join(''));

const written = (note: string): string =>
  writeCsv([{ reflex: 'moro', appears: '', integrates: '', note }]);

/** Two readers that know nothing of each other, at the separators that programs split at. */
type Reader = (text: string) => string[][];
const READERS: [string, Reader][] = [',', ';', '\t', '|'].flatMap((at): [string, Reader][] => [
  [
    `Papa Parse at ${JSON.stringify(at)}`,
    (text) => Papa.parse<string[]>(text, { delimiter: at }).data,
  ],
  [`d3-dsv at ${JSON.stringify(at)}`, (text) => dsvFormat(at).parseRows(text)],
]);
/** One that knows no quotation marks at all. What is written with commas it cannot read at commas. */
const BLIND: [string, Reader][] = [';', '\t', '|'].map((at) => [
  `a blind one at ${JSON.stringify(at)}`,
  (text) => text.split(/\r\n|\r|\n/).map((line) => line.split(at)),
]);

describe('cells that a spreadsheet would run', () => {
  it.each(ASVS.map((sign) => [JSON.stringify(sign), sign] as const))(
    'are those with %s',
    (_, sign) => {
      expect(disarmed(`${sign}1+2`)).toBe(`'${sign}1+2`);
      expect(disarmed(`${sign}1a2`)).toBe(`'${sign}1a2`);
      expect(disarmed(`a;${sign}1`)).toBe(`a;'${sign}1`);
      expect(disarmed(`a ${sign.trim() || '='}1`)).toBe(`a ${sign.trim() || '='}1`);
    },
  );

  it('are written as text, and stay one cell', () => {
    // the two examples of the OWASP page, and its usual proof of concept
    const cells = ['=1+2";=1+2', `=1+2'" ;,=1+2`, "=cmd|' /C calc'!A0", '@SUM(1)', '\t=1', '＝1+2'];
    const text = writeCsv(
      cells.map((note) => ({ reflex: 'moro', appears: '', integrates: '', note })),
    );
    const { data } = Papa.parse<string[]>(text.trim());
    expect(data.slice(1).map((row) => row[3])).toEqual([
      `'=1+2";'=1+2`,
      `'=1+2'" ;,=1+2`,
      "'=cmd|' /C calc'!A0",
      "'@SUM(1)",
      "'\t'=1",
      "'＝1+2",
    ]);
    expect(data.every((row) => row.length === 4)).toBe(true);
  });

  it('come back exactly, whatever stood before them', () => {
    fc.assert(
      fc.property(hostile, (text) => {
        expect(rearmed(disarmed(text))).toBe(text);
      }),
      { numRuns: runs(2000, 200) },
    );
  });

  it.each([...READERS, ...BLIND])('are none for %s', (_, read) => {
    fc.assert(
      fc.property(hostile, (note) => {
        for (const cell of read(written(note)).flat()) {
          expect(cell).not.toMatch(/^ {0,3}[=+\-@＝]/);
        }
      }),
      { numRuns: runs(2000, 200) },
    );
  });
});
