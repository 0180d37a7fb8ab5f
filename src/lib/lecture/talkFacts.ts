/** The figures that captions and notes of ready-made talks name, computed from the atlas. */
import type { AxisDay } from '../age/axis.ts';
import type { Atlas } from '../atlas/atlas.ts';
import { sourceCount } from '../atlas/families.ts';
import { STANDING } from '../atlas/standing.ts';
import { supportFor, tally } from '../judge/support.ts';
import { appearsSaid, goesSaid, windowsOf } from '../judge/window.ts';
import { en } from '../words/en.ts';
import type { TalkFacts } from '../words/en/talkTexts/facts.ts';

const span = (stretches: readonly { from: AxisDay; to: AxisDay }[]): string => {
  if (stretches.length === 0) return '';
  const from = Math.min(...stretches.map((s) => s.from)) as AxisDay;
  const to = Math.max(...stretches.map((s) => s.to)) as AxisDay;
  return en.ages.spanWords(from, to);
};

export function factsOf(atlas: Atlas): TalkFacts {
  const windows = (id: string) => windowsOf(atlas.claims.get(id) ?? []);
  return {
    name: (id) => atlas.reflexes.get(id)?.short ?? id,
    comes: (id) =>
      span(
        windows(id)
          .filter((w) => w.appears !== null || w.byTerm)
          .map(appearsSaid),
      ),
    goes: (id) =>
      span(
        windows(id)
          .filter((w) => Number.isFinite(w.integratesTo))
          .map(goesSaid),
      ),
    sources: (id) => en.atlas.sourcesWords(sourceCount(windows(id).map((w) => w.claim.source.id))),
    prints: (source, id) => {
      const claim = windows(id).find((w) => w.claim.source.id === source)?.claim;
      const short = atlas.sources.get(source)?.short ?? source;
      return claim ? `${short}: ${en.chart.claimWords(claim)}` : short;
    },
    tally: (order, step) => {
      const stations = atlas.sequences.find((s) => s.id === order)?.stations ?? [];
      const [before, after] = [stations[step - 1], stations[step]];
      return tally(before && after ? supportFor(before, after, atlas) : []);
    },
    standing: (order) => STANDING[order] ?? '',
  };
}
