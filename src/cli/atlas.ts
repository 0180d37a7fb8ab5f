/** `tidemark atlas`: every reflex with the windows of every source, in axis days. */
import { ATLAS, sidesOf, sourceCount } from '../lib/atlas/atlas.ts';
import { CITATIONS } from '../lib/atlas/citations.ts';
import { statedBy } from '../lib/judge/window.ts';
import { en } from '../lib/words/en.ts';
import { BadInput, columns, readOptions, type Command } from './input.ts';

const windowsOf = (reflex: string) =>
  (ATLAS.claims.get(reflex) ?? []).filter((claim) => claim.role === 'window');

function atlasJson() {
  return {
    reflexes: [...ATLAS.reflexes.values()].map((reflex) => ({
      id: reflex.id,
      name: reflex.name,
      sides: sidesOf(reflex),
      variants: ATLAS.variants.get(reflex.id) ?? [],
      absence: reflex.absence.tells,
      missed: reflex.absence.missed,
      unlikeSides: reflex.unlikeSides.map(({ fromMonths, toMonths }) => [fromMonths, toMonths]),
      ...sourceCount(windowsOf(reflex.id).map(({ source }) => source.id)),
      claims: windowsOf(reflex.id)
        .map(statedBy)
        .map(({ claim, appears, notYetAllAt, integrates, lifelong, byTerm }) => ({
          source: claim.source.id,
          family: claim.family,
          ...(claim.variant === undefined ? {} : { variant: claim.variant }),
          judgedByDefault: claim.judgedByDefault,
          appears: appears && [appears.from, appears.to],
          integrates: integrates && [integrates.from, integrates.to],
          notYetAllAt,
          lifelong,
          byTerm,
          basis: claim.basis,
        })),
    })),
    sources: [...ATLAS.sources.values()].map(({ id, tier, basis }) => ({
      id,
      citation: CITATIONS[id]?.citation ?? '',
      tier,
      basis,
    })),
  };
}

function atlasText(): string {
  const rows = [...ATLAS.reflexes.values()].flatMap((reflex) => [
    [reflex.name],
    ...(ATLAS.claims.get(reflex.id) ?? [])
      .filter((claim) => claim.role === 'window')
      .map((claim) => [
        `  ${claim.source.id}`,
        claim.appears?.asPrinted ?? claim.appearsWords ?? 'start not stated',
        claim.integratesStatus === 'persists'
          ? 'for life'
          : (claim.integrates?.asPrinted ?? claim.integratesWords ?? 'end not stated'),
        en.atlas.bases[claim.basis],
      ]),
  ]);
  // a reflex's name stands alone on its line, so it must not widen the column
  return rows
    .reduce<string[][][]>((blocks, row) => {
      if (row.length === 1) blocks.push([row]);
      else blocks.at(-1)?.push(row);
      return blocks;
    }, [])
    .map(([name, ...claims]) => `${name?.[0] ?? ''}\n${columns(claims)}`)
    .join('');
}

export const atlasCommand: Command = (args) => {
  const { values, positionals } = readOptions(args, {});
  if (positionals[0] !== undefined)
    throw new BadInput(`"${positionals[0]}" is not understood; atlas takes only --json.`);
  return values.json ? `${JSON.stringify(atlasJson())}\n` : atlasText();
};
