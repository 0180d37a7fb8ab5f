import { expect, it } from 'vitest';
import { anywhereIndex, type Destination } from '../../src/lib/app/anywhere.ts';

const one = (kind: Destination['kind'], name: string, also = ''): Destination => ({
  id: `${kind} ${name}`,
  kind,
  name,
  also,
  href: `#/${name}`,
});
const index = anywhereIndex([
  one('child', 'Kestrel', 'cohort-b'),
  one('child', 'Móra'),
  one('page', 'Storage and backup', 'bin restore'),
  one('page', 'Plan of Kestrel', 'next visit'),
  one('reflex', 'Moro reflex', 'startle'),
  one('reflex', 'Asymmetrical tonic neck reflex', 'ATNR fencing'),
]);
const names = (text: string): string[] => index.find(text, 9).map(({ name }) => name);

it.each([
  ['kes', 'Kestrel'],
  ['KESTREL', 'Kestrel'],
  ['cohort', 'Kestrel'],
  ['mora', 'Móra'],
  ['plan kes', 'Plan of Kestrel'],
  ['moro', 'Moro reflex'],
  ['mroo', 'Moro reflex'],
  ['asymetrical', 'Asymmetrical tonic neck reflex'],
  ['atnr', 'Asymmetrical tonic neck reflex'],
  ['restore', 'Storage and backup'],
])('%s finds %s first', (typed, first) => {
  expect(names(typed)[0]).toBe(first);
});

it('offers children and pages where nothing is typed, and nothing where nothing fits', () => {
  expect(names('  ')).toEqual(['Kestrel', 'Móra', 'Storage and backup', 'Plan of Kestrel']);
  expect(names('qqqqqq')).toEqual([]);
  expect(index.find('', 2)).toHaveLength(2);
});
