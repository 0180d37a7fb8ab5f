/** Numbers that several pages name: each is counted here from the atlas. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { judgingCount } from '../../src/lib/present/sourceChoice.ts';

const file = (name: string): string =>
  readFileSync(new URL(`../../${name}`, import.meta.url), 'utf8').replaceAll(/\s+/g, ' ');

test('README and SOURCES say how many sources give ages, judge by default, count infants and are held', () => {
  const sources = [...ATLAS.sources.values()];
  const { sources: dating, voices } = judgingCount(ATLAS);
  const byDefault = judgingCount(ATLAS, 'default');
  const counting = sources.filter(({ counts }) => counts.length > 0).length;
  const readme = file('README.md');
  expect(readme).toContain(
    `the ages that ${dating} sources (${voices} voices) give of ${ATLAS.reflexes.size} reflexes`,
  );
  expect(readme).toContain(
    `${byDefault.sources} of the ${dating} (${byDefault.voices} of the ${voices} voices) judge`,
  );
  expect(readme).toContain(`all ${sources.length} that are held`);
  expect(readme).toContain(
    `${dating} (${voices} voices) give ages, ${counting} hold counts of infants`,
  );
  const claims = sources.flatMap((source) => source.claims);
  expect(file('SOURCES.md')).toContain(`Of ${claims.length} claims`);
  expect(file('CHANGELOG.md')).toContain(
    `${claims.length} claims and ${sources.flatMap(({ counts }) => counts).length} counts of infants from ${sources.length} sources`,
  );
});
