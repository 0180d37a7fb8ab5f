import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { FORMULA } from '../../src/lib/store/disarm.ts';
import { writeCsv } from '../../src/lib/store/table.ts';

/** OWASP, "CSV Injection": "ensure that no cells begin with any of the following characters". */
const OWASP = ['=', '+', '-', '@', '\t', '\r', '\n'];
/** OWASP ASVS 5, 1.2.10, adds the null character. */
const ASVS = [...OWASP, '\0'];

describe('cells that a spreadsheet would run', () => {
  it.each(ASVS.map((sign) => [JSON.stringify(sign), sign] as const))(
    'are those with %s',
    (_, sign) => {
      expect(FORMULA.test(`${sign}1+2`)).toBe(true);
      expect(FORMULA.test(`${sign}1\n2`)).toBe(true);
      expect(FORMULA.test(`a ${sign}1`)).toBe(false);
    },
  );

  it('are written as text, and stay one cell', () => {
    // the two examples of the OWASP page, and its usual proof of concept
    const cells = ['=1+2";=1+2', `=1+2'" ;,=1+2`, "=cmd|' /C calc'!A0", '@SUM(1)', '\t=1', '＝1+2'];
    const text = writeCsv(
      cells.map((note) => ({ reflex: 'moro', appears: '', integrates: '', note })),
    );
    const { data } = Papa.parse<string[]>(text.trim());
    expect(data.slice(1).map((row) => row[3])).toEqual(cells.map((cell) => `'${cell}`));
    expect(data.every((row) => row.length === 4)).toBe(true);
  });
});
