/** What is said of handling, eliciting and mistaking a response, against published accounts. */
import { describe, expect, test } from 'vitest';
import { ATLAS, ATLAS_PARTS } from '../../src/lib/atlas/atlas.ts';
import { checkAtlas } from '../../src/lib/atlas/check.ts';
import { PROSE } from '../../src/lib/atlas/prose.ts';
import { tellApart } from '../../src/lib/atlas/differences.ts';
import { groundOf } from '../../src/lib/lecture/questions/ground.ts';
import { limb } from '../../src/lib/lecture/questions/limbs.ts';
import { aspectsOf } from '../../src/lib/lecture/questions/figures.ts';
import { readyTalk } from '../../src/lib/lecture/talks/ready.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { en } from '../../src/lib/words/en.ts';
import { FAMILY_WORDS } from '../../src/lib/words/family.ts';

const reflexes = [...ATLAS.reflexes.values()];
const reflex = (id: string) => ATLAS.reflexes.get(id)!;
const prose = (id: string) => PROSE[id]!;
const note = (talk: Parameters<typeof readyTalk>[0], caption: RegExp): string =>
  readyTalk(talk, ATLAS).steps.find((step) => caption.test(step.caption))!.note;

describe('handling', () => {
  test('each is stopped at distress (Sweeney & Blackburn 2013: the whole assessment destabilised preterm and term newborns)', () => {
    expect(reflexes.length).toBeGreaterThanOrEqual(44);
    for (const { id, cautions } of reflexes) expect(cautions, id).toContain('stop-if-distress');
  });

  test('what startles or upsets a newborn waits until the infant is stable (Allinson et al. 2017: undisturbed where medically stable)', () => {
    const upsetting = reflexes.filter((r) => r.kind === 'primitive-reflex' && r.upsetting);
    expect(upsetting.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['moro', 'acoustic-startle', 'perez']),
    );
    for (const { id, cautions } of upsetting) expect(cautions, id).toContain('only-if-stable');
  });

  test.each(['babkin', 'plantar-grasp', 'crossed-extension'])(
    '%s takes firm pressure, so no light touch is said to be enough (Payne & Isaacs; Futagi 2012, from memory; GPnotebook 2018)',
    (id) => {
      expect(reflex(id).cautions).not.toContain('light-touch');
      expect(reflex(id).cautions).toContain('firm-touch');
      expect(reflex(id).stimulus).toBe('pressure');
    },
  );

  test('withdrawal takes no pin (Bates, passage on sensation of the newborn)', () => {
    const { stimulus, pitfalls } = prose('flexor-withdrawal');
    expect(stimulus).toMatch(/never a pin/);
    expect(stimulus).not.toMatch(/pinprick|needle/i);
    expect(pitfalls.join(' ')).toMatch(/Using a pin/);
  });

  test.each(['protective-sideways', 'protective-backward'])(
    '%s: the push unbalances (therapy clinic page 2015: hard enough to lose balance)',
    (id) => {
      expect(reflex(id).stimulus).toBe('push');
      expect(prose(id).stimulus).toMatch(/unbalance/);
      expect(prose(id).stimulus).not.toMatch(/^A slow push/);
      expect(en.atlas.cautions['gentle-push']).toMatch(/unbalance/);
    },
  );

  test('equilibrium in prone has a base that tilts (OT glossary: tilting reactions are elicited on a moving surface)', () => {
    expect(reflex('equilibrium-prone').stimulus).toBe('tilt');
    expect(prose('equilibrium-prone').position).not.toMatch(/suspension/);
  });
});

describe('reading a response', () => {
  test('forward protection is two tests (medical dictionary: in ventral suspension; NC public instruction 2015: from sitting)', () => {
    const labels = reflex('protective-forward').patterns.map(({ variant, label }) => [
      variant,
      label,
    ]);
    expect(labels).toEqual([
      ['forward', expect.stringMatching(/^Parachute.*ventral suspension/)],
      ['propping', expect.stringMatching(/^Propping.*sitting/)],
    ]);
  });

  test('traction is recorded by arm, a record of the midline still reads (Alfonso: each arm is felt to pull)', () => {
    const { testedPerSide, midline } = reflex('traction');
    expect([testedPerSide, midline]).toEqual([true, true]);
    expect(prose('traction').positive).toMatch(/Head lag is not part of the response/);
  });

  test('in prone the tonic labyrinthine reflex flexes where the Landau extends (Physiopedia; Cupps 1976)', () => {
    const told = tellApart(
      { reflex: reflex('tlr'), variant: 'prone', ages: NO_AGES },
      { reflex: reflex('landau'), variant: 'prone-suspension', ages: NO_AGES },
    );
    for (const part of ['trunk', 'legs'] as const)
      expect(told.parts.find((p) => p.part === part)).toMatchObject({
        first: { left: ['flexed'] },
        second: { left: ['extended'] },
      });
    expect(note('look-alikes', /Landau/)).not.toMatch(/extension in both/i);
  });
});

const NO_AGES = { appears: null, integrates: null, lifelong: false };

describe('the startle, described in two ways (MeSH: limb flexion; medical dictionary 2016: arms extended, then flexed)', () => {
  const startle = reflex('acoustic-startle');

  test('both are held, the second marked as another account of the same stimulus', () => {
    const [flexion, spread] = startle.patterns;
    expect(flexion).toMatchObject({ armL: 'flexed', handL: 'closed' });
    expect(flexion!.otherAccount).toBeUndefined();
    expect(spread).toMatchObject({ armL: 'extended', handL: 'open', otherAccount: true });
    expect(spread!.also?.armL).toEqual(['abducted']);
  });

  test('the talk tells both', () => {
    const said = note('look-alikes', /Moro or acoustic startle/);
    expect(said).toMatch(/two ways/);
    expect(said).toMatch(/elbows flexed/);
    expect(said).toMatch(/extended and abducted/);
  });

  test('no question holds one of them alone to be right', () => {
    const ground = groundOf(ATLAS, sheetOf(ATLAS, 'all'));
    expect(limb.subjects(ground).filter((s) => s.startsWith('acoustic-startle'))).toEqual([]);
    expect(limb.subjects(ground).some((s) => s.startsWith('atnr'))).toBe(true);
    const { tells } = aspectsOf(reflex('moro'), startle);
    expect(tells).toContain('stimulus');
    expect(tells.filter((aspect) => aspect === 'arms' || aspect === 'hands')).toEqual([]);
  });
});

describe('what asks for a medical look', () => {
  const RUNS = { en: /again and again/, es: /una y otra vez/ };
  const WAKING = { en: /waking/, es: /despertar/ };
  const ARMS = { en: /arms fling out/, es: /abre los brazos de golpe/ };

  test('spasms that look like a Moro (Le Bonheur; Don’t Forget the Bubbles): the Moro’s page says so', () => {
    const said = prose('moro').pitfalls.find((pitfall) => /spasms/.test(pitfall));
    for (const sign of [/arms flung out/, /in runs/, /without a trigger/, /waking/, /same day/])
      expect(said).toMatch(sign);
  });

  test.each(['en', 'es'] as const)('so does every family’s page, in %s', (language) => {
    const said = FAMILY_WORDS[language].sentences['urgent.spasms'];
    for (const sign of [RUNS, WAKING, ARMS]) expect(said).toMatch(sign[language]);
  });

  test('a startle or a head drawn back that does not fade (Saini & Pandey 2020; Praveen et al. 2001)', () => {
    for (const id of ['acoustic-startle', 'glabellar'])
      expect(prose(id).reported.persistence.sources).toEqual(
        expect.arrayContaining(['praveen-2001', 'saini-2020']),
      );
    // the Moro itself does not fade, so that it stays says nothing
    expect(prose('moro').pitfalls.join(' ')).toMatch(/the Moro does not, the startle does/);
  });

  test('the thumb in the fist has an age (Jaffe et al. 2000: in 125 of 200 newborns, in none after 7 months)', () => {
    const said = prose('palmar-grasp').verified!.find(({ text }) => /thumb/.test(text))!;
    expect(said.text).toMatch(/125 of 200/);
    expect(said.text).toMatch(/by 7 months/);
    expect(said.sources).toContain('jaffe-2000');
  });
});

test('what was checked names sources of the atlas, and only what is recalled may name none', () => {
  const checked = Object.values(PROSE).flatMap(({ verified = [] }) => verified);
  expect(checked.length).toBeGreaterThan(20);
  for (const { text, sources, basis } of checked) {
    expect(text).toMatch(/\.$/);
    for (const source of sources) expect(ATLAS.sources.has(source), source).toBe(true);
    if (basis === 'read') expect(sources.length, text).toBeGreaterThan(0);
  }
});

describe('forward protection is two tests, each with its own ages', () => {
  const of = (variant: string) =>
    ATLAS.claims.get('protective-forward')!.filter((claim) => claim.variant === variant);

  // Dreeben 2008 prints "6 months (sitting)"
  test('propping in sitting: 6 months is the one age that was read', () => {
    const read = of('propping').filter(({ basis }) => basis === 'read');
    expect(read.map(({ source, appears }) => [source.id, appears!.asPrinted])).toEqual([
      ['dreeben-2008', '6 months (sitting)'],
    ]);
  });

  // Jaffe et al. 1994: mean 8.9 months, n 190; Romeo et al. 2009: most often at 9 months, n 484; Wenzel
  // 1978: fully developed from 9 months
  test('the parachute as measured: about 9 months', () => {
    const measured = of('forward').filter(({ role }) => role === 'context');
    expect(measured.map(({ source, appears }) => [source.id, appears!.high])).toEqual(
      expect.arrayContaining([
        ['jaffe-1994', 8.9],
        ['romeo-2009', 9],
        ['wenzel-1978', 9],
      ]),
    );
  });

  test('a claim of a variant that there is not is a fault', () => {
    const sources = ATLAS_PARTS.sources.map((source) =>
      source.id === 'dreeben-2008'
        ? { ...source, claims: source.claims.map((claim) => ({ ...claim, variant: 'standing' })) }
        : source,
    );
    expect(checkAtlas({ ...ATLAS_PARTS, sources }).join()).toMatch(/standing, no variant/);
  });
});
