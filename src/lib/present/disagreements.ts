/** Every reflex by how far its sources are apart, with the windows that lie outermost. */
import { toAxisDay, type AxisDay } from '../age/axis.ts';
import type { Atlas } from '../atlas/atlas.ts';
import { sourceCount, type SourceCount } from '../atlas/families.ts';
import type { Reflex } from '../atlas/types.ts';
import type { Stretch as Range } from '../chart/model.ts';
import type { Sheet } from '../judge/judge.ts';
import { quarrelOver, type Quarrel } from '../judge/quarrel.ts';
import { appearsSaid, goesSaid, type Window } from '../judge/window.ts';
import { once } from '../platform/sets.ts';

export interface Outermost {
  short: string;
  from: AxisDay;
  to: AxisDay;
}

export interface RankedQuarrel {
  reflex: Reflex;
  quarrel: Quarrel;
  windows: readonly Window[];
  /** Sources with a window on it. */
  sources: SourceCount;
  /** The middle of the stretch that weighs most, with the sources in each phase there. */
  at: AxisDay;
  phases: readonly number[];
  firstGone: Outermost | undefined;
  lastGone: Outermost | undefined;
  stays: readonly string[];
  firstCome: Outermost | undefined;
  lastCome: Outermost | undefined;
}

const going = (window: Window): Outermost => ({
  short: window.claim.source.short,
  ...goesSaid(window),
});
const coming = (window: Window): Outermost => ({
  short: window.claim.source.short,
  ...appearsSaid(window),
});

/** The reflexes within a part of the axis, those most quarrelled over first. */
export function rankedQuarrels(atlas: Atlas, sheet: Sheet, range: Range): RankedQuarrel[] {
  return [...atlas.reflexes.values()]
    .flatMap((reflex): RankedQuarrel[] => {
      const compiled = sheet.get(reflex.id);
      if (!compiled || compiled.windows.length === 0) return [];
      const { windows } = compiled;
      const quarrel = quarrelOver(compiled, range.from, range.to);
      const weight = ({ apart, fromDay, toDay }: Quarrel['stretches'][number]): number =>
        apart * (toDay - fromDay);
      const worst = quarrel.stretches.reduce((most, one) =>
        weight(one) > weight(most) ? one : most,
      );
      const gone = windows
        .filter((w) => Number.isFinite(w.integratesTo))
        .toSorted((a, b) => a.integratesTo - b.integratesTo);
      const come = windows
        .filter((w) => w.appears !== null || w.byTerm)
        .toSorted((a, b) => a.appearsTo - b.appearsTo);
      const [firstGone, lastGone] = [gone[0], gone.at(-1)];
      const [firstCome, lastCome] = [come[0], come.at(-1)];
      return [
        {
          reflex,
          quarrel,
          windows,
          sources: sourceCount(windows.map((w) => w.claim.source.id)),
          at: toAxisDay((worst.fromDay + worst.toDay) / 2),
          phases: worst.phases,
          firstGone: firstGone && going(firstGone),
          lastGone: lastGone && going(lastGone),
          stays: once(windows.filter((w) => w.lifelong).map((w) => w.claim.source.short)),
          firstCome: firstCome && coming(firstCome),
          lastCome: lastCome && coming(lastCome),
        },
      ];
    })
    .sort((a, b) => b.quarrel.share - a.quarrel.share);
}
