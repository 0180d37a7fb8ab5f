import { describe, expect, test } from 'vitest';
import type { EndToken, LimbToken, LimbTokens } from '../../src/lib/atlas/types.ts';
import type { Joints } from '../../src/lib/figure/joints.ts';
import { LIMITS } from '../../src/lib/figure/skeleton.ts';
import { anglesOf } from '../../src/lib/figure/pose.ts';
import { PHASES, VARIANTS } from './cases.ts';

const inner = (flexion: number): number => 180 - flexion;
const words = (t: LimbTokens, part: 'armL' | 'armR' | 'legL' | 'legR'): Set<LimbToken> =>
  new Set([t[part], ...(t.also?.[part] ?? [])]);

/** Whether a phase says anything of limbs that is checked here; of a limb at rest nothing is told. */
const saysOfLimbs = (t: LimbTokens): boolean =>
  (['armL', 'armR'] as const).some((arm) =>
    [...words(t, arm)].some((word) => word !== 'none' && word !== 'adducted'),
  ) ||
  (['legL', 'legR'] as const).some((leg) => [...words(t, leg)].some((word) => word !== 'none')) ||
  [t.handL, t.handR, t.footL, t.footR].some((end) => end !== 'none');

/** The same of head and trunk. A head that rights itself last turns less than one that is turned. */
const saysOfTrunk = (id: string, { head, trunk }: LimbTokens): boolean =>
  /^(?:flexed|extended|tilted)/.test(head) ||
  (head.startsWith('turned') && id !== 'body-righting-body') ||
  /^(?:curved|turned)/.test(trunk);

function checkHand(grip: number, token: EndToken): void {
  if (token === 'open') expect(grip).toBeLessThan(0.15);
  if (token === 'closed') expect(grip).toBeGreaterThan(0.7);
}

function checkSide(j: Joints, t: LimbTokens, shown: 'L' | 'R', told: 'L' | 'R'): void {
  const arm = words(t, `arm${told}`);
  const { elbow, grip, shoulderOut } = j[`arm${shown}`];
  if (arm.has('flexed')) expect(inner(elbow)).toBeLessThan(90);
  if (arm.has('extended')) expect(inner(elbow)).toBeGreaterThan(150);
  if (arm.has('abducted')) expect(shoulderOut).toBeGreaterThan(35);
  checkHand(grip, t[`hand${told}`]);

  const leg = words(t, `leg${told}`);
  const { knee, hipFlex, hipOut, toes, fan } = j[`leg${shown}`];
  if (leg.has('flexed')) {
    expect(inner(knee)).toBeLessThan(90);
    expect(hipFlex).toBeGreaterThan(55);
  }
  if (leg.has('extended')) expect(inner(knee)).toBeGreaterThan(150);
  if (leg.has('abducted')) expect(hipOut).toBeGreaterThan(10);
  if (leg.has('adducted')) expect(hipOut).toBeLessThan(5);
  if (t[`foot${told}`] === 'open') expect(Math.min(toes, fan)).toBeGreaterThan(0.9);
  if (t[`foot${told}`] === 'closed') expect(toes).toBeLessThan(-0.9);
}

describe.each(['left', 'right'] as const)('shown on the %s', (side) => {
  const turn = side === 'left' ? 1 : -1;

  test.each(PHASES.filter(({ tokens }) => saysOfLimbs(tokens)))(
    'limbs say what the pattern says: $name',
    ({ pattern, id, time, tokens }) => {
      const j = anglesOf(pattern, id, time, side);
      checkSide(j, tokens, side === 'left' ? 'L' : 'R', 'L');
      checkSide(j, tokens, side === 'left' ? 'R' : 'L', 'R');
    },
  );

  test.each(PHASES.filter(({ id, tokens }) => saysOfTrunk(id, tokens)))(
    'head and trunk too: $name',
    ({ pattern, id, time, tokens }) => {
      const { axial, placing } = anglesOf(pattern, id, time, side);
      const rest = anglesOf(pattern, id, 0, side).axial;
      const { head, trunk } = tokens;
      const way = head.endsWith('left') ? turn : -turn;
      if (head === 'flexed') expect(axial.neckFlex).toBeGreaterThan(rest.neckFlex + 8);
      if (head === 'extended') expect(axial.neckFlex).toBeLessThan(Math.max(rest.neckFlex, 4) - 8);
      // A head that rights itself last turns less than one that is turned; it is judged in space below.
      if (head.startsWith('turned') && id !== 'body-righting-body')
        expect(way * (axial.neckYaw + (placing.roll || 0))).toBeGreaterThan(35);
      if (head.startsWith('tilted')) expect(way * axial.neckTilt).toBeGreaterThan(5);
      const bend = trunk.endsWith('left') ? turn : -turn;
      if (trunk.startsWith('curved')) expect(bend * axial.trunkSide).toBeGreaterThan(6);
      if (trunk.startsWith('turned'))
        expect(bend * (placing.roll + axial.trunkTwist)).toBeGreaterThan(10);
    },
  );
});

test('most phases say something of limbs, and many of head or trunk', () => {
  expect(PHASES.filter(({ tokens }) => saysOfLimbs(tokens)).length).toBeGreaterThan(40);
  expect(PHASES.filter((p) => saysOfTrunk(p.id, p.tokens)).length).toBeGreaterThan(10);
});

test.each(PHASES.filter((p) => p.tokens.face))(
  'the face too: $name',
  ({ pattern, id, time, tokens }) => {
    const { face } = anglesOf(pattern, id, time, 'left');
    switch (tokens.face) {
      case 'cry':
        return expect(Math.min(face.mouth, face.cry)).toBeGreaterThan(0.5);
      case 'mouth-open':
        return expect(face.mouth).toBeGreaterThan(0.5);
      case 'blink':
      case 'eyes-closed':
        return expect(face.eyes).toBeLessThan(0.2);
      case 'eyes-right':
        return expect(face.gaze).toBeLessThan(-0.5);
      case 'eyes-centre':
        return expect(face.gaze).toBe(0);
      case 'lips-pursed':
        return expect(face.purse).toBeGreaterThan(0.5);
      case 'mouth-closed-rhythmic':
        return expect(face.suck - face.mouth).toBeGreaterThan(0.5);
      case 'swallow':
        return expect(face.swallow).toBeGreaterThan(0.5);
      default:
        return expect.fail(`no face is drawn for "${tokens.face}"`);
    }
  },
);

test.each(VARIANTS)('no joint leaves its limits on the way: $name', ({ pattern, id, last }) => {
  for (let time = 0; time <= last; time += 0.25) {
    const j = anglesOf(pattern, id, time, 'left');
    const all = { ...j.axial, ...j.armL, ...j.legL };
    for (const part of [j.axial, j.armL, j.armR, j.legL, j.legR])
      for (const [joint, value] of Object.entries(part)) {
        const limit = joint in LIMITS ? LIMITS[joint as keyof typeof LIMITS] : [-1, 1];
        expect(value, `${joint} at ${time}`).toBeGreaterThanOrEqual(limit[0] - 1e-9);
        expect(value, `${joint} at ${time}`).toBeLessThanOrEqual(limit[1] + 1e-9);
      }
    expect(Object.values(all).every(Number.isFinite)).toBe(true);
  }
});

test('Moro and startle differ as they are taught: hands and elbows', () => {
  const moro = VARIANTS.find((v) => v.id === 'moro');
  const startle = VARIANTS.find((v) => v.id === 'acoustic-startle');
  if (!moro || !startle) throw new Error('the atlas holds both');
  const out = anglesOf(moro.pattern, moro.id, 2, 'left').armL;
  const jerk = anglesOf(startle.pattern, startle.id, 2, 'left').armL;
  expect(out.grip).toBe(0);
  expect(jerk.grip).toBe(1);
  expect(jerk.elbow - out.elbow).toBeGreaterThan(90);
});
