/** What the sources say of every reflex at one age: what should answer, what should be gone, what changes. */
import type { Reflex } from '../atlas/types.ts';
import type { Atlas } from '../atlas/atlas.ts';
import { sourceCount, type SourceCount } from '../atlas/families.ts';
import { readAt, totalsOf } from './expectation.ts';
import type { Sheet } from './judge.ts';
import {
  EMERGING,
  ESTABLISHED,
  INTEGRATED,
  INTEGRATING,
  NOT_YET,
  phaseAt,
  ROW,
  type Phase,
} from './phases.ts';

/** Where most of the sources that speak have a reflex at an age. */
export type Standing = 'coming' | 'there' | 'going' | 'gone' | 'not-yet' | 'unknown';

export interface AtMoment {
  reflex: Reflex;
  standing: Standing;
  meanExpectation: number;
  /** Sources that have it in each phase, each source once. */
  sources: Readonly<Record<Phase, number>>;
  speaking: SourceCount;
}

const STANDINGS: readonly (readonly [Standing, number])[] = [
  ['there', ESTABLISHED],
  ['coming', EMERGING],
  ['going', INTEGRATING],
  ['gone', INTEGRATED],
  ['not-yet', NOT_YET],
];

/** Every reflex at an age, with how many sources have it in which phase. */
export function everyReflexAt(
  atlas: Atlas,
  sheet: Sheet,
  ageDays: number,
  sdDays: number,
): AtMoment[] {
  return [...atlas.reflexes.values()].flatMap((reflex): AtMoment[] => {
    const compiled = sheet.get(reflex.id);
    if (!compiled) return [];
    const reading = readAt(compiled, ageDays, sdDays);
    const totals = totalsOf(reading);
    const sources: Record<Phase, number> = {
      'not-yet': 0,
      emerging: 0,
      established: 0,
      integrating: 0,
      integrated: 0,
    };
    const counted = new Set<string>();
    compiled.windows.forEach((window, i) => {
      const row = reading.phases.subarray(i * ROW, i * ROW + ROW);
      const { id } = window.claim.source;
      const phase = phaseAt(row.indexOf(Math.max(...row)));
      if (!phase || counted.has(id)) return;
      counted.add(id);
      sources[phase]++;
    });
    let standing: Standing = 'unknown';
    let most = 0;
    if (totals.anySpeaks)
      for (const [name, index] of STANDINGS)
        if (totals.phases[index]! > most) {
          most = totals.phases[index]!;
          standing = name;
        }
    const meanExpectation = totals.anySpeaks ? totals.meanExpectation : 0;
    return [{ reflex, standing, meanExpectation, sources, speaking: sourceCount(counted) }];
  });
}
