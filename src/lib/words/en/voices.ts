/** English for the page of voices: which sources share their ages, and how many voices a reflex has. */
import type { TakenOver } from '../../atlas/families.ts';

const HOW: Readonly<Record<TakenOver['how'], string>> = {
  cites: 'one voice: it cites the other for the ages',
  'same-ages': 'one voice: it prints the ages of the other',
  'one-printout': 'one voice: both were read from one printout',
};

export const voicesPage = {
  title: 'Sources that share ages',
  lead: 'Tables copy one another. Sources that have their ages from one another count as one voice in every verdict. All sources were compared age by age ("birth", which every table prints, was left out); a pair is one voice only where a citation, the same ages in the same terms, or a shared printout confirms it.',
  drawing: 'Ages that two sources share',
  legend:
    'Sources in order of year. An arc joins two that print the same ages, thicker with each age they share: solid where they are one voice, dashed where they print much alike and keep two voices.',
  drawn: (sources: number, lines: number): string =>
    `${sources} sources in order of year, ${lines} pairs of which print the same ages; the list below says the same`,
  noYear: 'no year',
  pair: (a: string, b: string, how: TakenOver['how'] | undefined): string =>
    `${a} and ${b}: ${how ? HOW[how] : 'much alike, two voices'}`,
  cells: (common: number, apart: number): string =>
    `${common === 1 ? '1 age' : `${common} ages`} alike, ${apart} apart.`,
  notTaken: 'Neither was seen to cite the other, and ages that differ are not a copy.',
  counted: 'Voices of each reflex',
  countedHelp:
    'Sources that give an age window, and how many independent voices they are; and the same for those used for judging by default.',
  columns: {
    reflex: 'Reflex or reaction',
    all: 'All held',
    judging: 'Used by default',
    sources: 'Sources',
    voices: 'Voices',
  },
};
