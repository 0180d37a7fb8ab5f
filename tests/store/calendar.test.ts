/** The calendar file read back by another library, ts-ics, and held against RFC 5545 itself. */
import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { convertIcsCalendar, type IcsCalendar } from 'ts-ics';
import { describe, expect, test } from 'vitest';
import { parseCivil, type CivilDate } from '../../src/lib/age/civil.ts';
import { calendarText, uidOf, type CalendarEntry } from '../../src/lib/store/calendar.ts';

const STAMP = new Date('2026-03-04T05:06:07Z');
const read = (text: string): IcsCalendar => convertIcsCalendar(undefined, text);
const entry = (change: Partial<CalendarEntry> = {}): CalendarEntry => ({
  uid: uidOf('a1b2', 'moro', 'due'),
  on: '2026-03-01' as CivilDate,
  title: 'Moro response: look again',
  description: '',
  ...change,
});

/** Any date from 1900 to 2099, as another calendar library writes it. */
const dates = fc
  .integer({ min: 0, max: 73_048 })
  .map((days) => Temporal.PlainDate.from('1900-01-01').add({ days }));

/** Text with what must be escaped, folded or counted in octets. */
const texts = fc
  .array(
    fc.oneof(
      fc.constantFrom(',', ';', '\\', '\n', '\\n', ':', '"', 'ä', 'ß', '日本', '😀', ' ', 'x'),
      fc.string({ unit: 'grapheme', maxLength: 30 }),
    ),
    { maxLength: 40 },
  )
  .map((parts) => parts.join(''));

const lines = (text: string): string[] => text.split('\r\n');
const octets = (line: string): number => new TextEncoder().encode(line).length;

describe('the calendar file', () => {
  test('any entry comes back from another reader, its date a whole day', () => {
    fc.assert(
      fc.property(dates, texts, texts, (date, title, description) => {
        const on = parseCivil(date.toString())!;
        const text = calendarText([entry({ on, title: `${title}.`, description })], STAMP);
        const [event, ...others] = read(text).events ?? [];
        expect(others).toEqual([]);
        expect(event!.uid).toBe(uidOf('a1b2', 'moro', 'due'));
        expect(event!.start.type).toBe('DATE');
        expect(event!.start.date.toISOString().slice(0, 10)).toBe(date.toString());
        expect(event!.summary).toBe(`${title}.`);
        expect(event!.description ?? '').toBe(description);
        // RFC 5545 3.6.1: without an end, an event of a date lasts that one day
        expect(event!.end).toBeUndefined();
      }),
      { numRuns: 300 },
    );
  });

  test('no line is longer than 75 octets, and none is broken within a character (3.1)', () => {
    fc.assert(
      fc.property(texts, texts, (title, description) => {
        const text = calendarText([entry({ title, description })], STAMP);
        expect(text).not.toMatch(/[^\r]\n|\r[^\n]/);
        for (const line of lines(text)) {
          expect(octets(line)).toBeLessThanOrEqual(75);
          expect(line.isWellFormed()).toBe(true);
        }
      }),
    );
  });

  test('commas, semicolons, backslashes and line ends are escaped (3.3.11)', () => {
    const text = calendarText([entry({ title: 'a, b; c \\ d\ne' })], STAMP);
    expect(lines(text)).toContain('SUMMARY:a\\, b\\; c \\\\ d\\ne');
  });

  test('line ends of every kind become one kind; other control characters are dropped', () => {
    const text = calendarText([entry({ title: 'a\r\nb\rc\u0000\u001bd\te\ud800' })], STAMP);
    expect(read(text).events![0]!.summary).toBe('a\nb\ncd\te\ufffd');
  });

  test('text cannot add a property of its own', () => {
    const title = 'x\r\nATTENDEE:mailto:a@b\r\nEND:VEVENT';
    const text = calendarText([entry({ title })], STAMP);
    expect(lines(text).filter((line) => /^(ATTENDEE|END:VEVENT)/.test(line))).toEqual([
      'END:VEVENT',
    ]);
  });

  test('the stamp is the one that was given, and the only time of day', () => {
    const text = calendarText([entry(), entry({ uid: uidOf('other') })], STAMP);
    expect(text.match(/\d{8}T\d{6}Z?/g)).toEqual(['20260304T050607Z', '20260304T050607Z']);
    expect(calendarText([entry()], STAMP)).toBe(calendarText([entry()], STAMP));
  });

  test('what every calendar file and event must have is there, once (3.6, 3.6.1)', () => {
    const text = calendarText([entry()], STAMP);
    for (const property of ['VERSION:2.0', 'PRODID:', 'UID:', 'DTSTAMP:', 'DTSTART;VALUE=DATE:'])
      expect(lines(text).filter((line) => line.startsWith(property))).toHaveLength(1);
    expect(lines(text)).toContain('TRANSP:TRANSPARENT');
    expect(lines(text)).toContain('CLASS:PRIVATE');
  });

  test('nothing but the words given is said', () => {
    const text = calendarText([entry({ title: 'TITLE', description: 'WORDS' })], STAMP);
    const said = lines(text).filter((line) =>
      /^(SUMMARY|DESCRIPTION|X-WR|LOCATION|NAME)/.test(line),
    );
    expect(said).toEqual(['SUMMARY:TITLE', 'DESCRIPTION:WORDS']);
  });
});

describe('the name of an entry', () => {
  test('is the same for the same parts, and another for others', () => {
    fc.assert(
      fc.property(fc.array(fc.string()), fc.array(fc.string()), (a, b) => {
        fc.pre([...a, ...b].every((part) => part.isWellFormed()));
        expect(uidOf(...a)).toBe(uidOf(...a));
        if (a.length > 0 && b.length > 0 && JSON.stringify(a) !== JSON.stringify(b))
          expect(uidOf(...a)).not.toBe(uidOf(...b));
      }),
    );
  });

  test('has nothing in it that a file must escape', () => {
    expect(uidOf('a b', 'ä;,', 'x.y')).toMatch(/^[\w%.@-]+$/);
  });
});
