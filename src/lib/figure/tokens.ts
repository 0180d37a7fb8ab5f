/** What a word of a limb pattern means in degrees, in each of the settings an infant is drawn in. */
import type { EndToken, LimbToken, LimbTokens, TrunkToken } from '../atlas/types.ts';
import { changed, type Change } from './change.ts';
import type { ArmJoints, FaceJoints, Joints, LegJoints } from './joints.ts';

/**
 * Settings in which a word reads differently: lying with limbs beside the body, held or sitting with
 * arms that reach forward, hanging prone, on hands and knees.
 */
export type Setting = 'lying' | 'upright' | 'hanging' | 'quadruped';

type Words =
  | 'flexed'
  | 'extended'
  | 'abducted'
  | 'adducted'
  | 'flexed+adducted'
  | 'extended+abducted'
  | 'extended+adducted'
  | 'flexed+abducted';

const ARM: Record<Setting, Record<Words, Partial<ArmJoints>>> = {
  lying: {
    flexed: { shoulderFlex: 30, shoulderOut: 62, shoulderTurn: 88, elbow: 122, forearmTurn: 20 },
    extended: { shoulderFlex: 4, shoulderOut: 88, shoulderTurn: 88, elbow: 5, forearmTurn: 10 },
    abducted: { shoulderFlex: 6, shoulderOut: 84, shoulderTurn: 80, elbow: 28, forearmTurn: 10 },
    adducted: { shoulderFlex: 20, shoulderOut: -4, shoulderTurn: -20, elbow: 60 },
    'flexed+adducted': {
      shoulderFlex: 62,
      shoulderOut: 42,
      shoulderTurn: -58,
      elbow: 96,
      forearmTurn: 0,
    },
    'extended+abducted': {
      shoulderFlex: 12,
      shoulderOut: 98,
      shoulderTurn: 88,
      elbow: 9,
      forearmTurn: 10,
    },
    'extended+adducted': { shoulderFlex: 8, shoulderOut: 4, shoulderTurn: 0, elbow: 6 },
    'flexed+abducted': { shoulderFlex: 10, shoulderOut: 86, shoulderTurn: 88, elbow: 105 },
  },
  upright: {
    flexed: { shoulderFlex: 34, shoulderOut: 30, shoulderTurn: 0, elbow: 112 },
    extended: { shoulderFlex: 62, shoulderOut: 18, shoulderTurn: 0, elbow: 8 },
    abducted: { shoulderFlex: 8, shoulderOut: 78, shoulderTurn: 40, elbow: 26 },
    adducted: { shoulderFlex: 20, shoulderOut: -6, shoulderTurn: -20, elbow: 50 },
    'flexed+adducted': { shoulderFlex: 50, shoulderOut: 20, shoulderTurn: -55, elbow: 105 },
    'extended+abducted': { shoulderFlex: 6, shoulderOut: 88, shoulderTurn: 60, elbow: 6 },
    'extended+adducted': { shoulderFlex: 14, shoulderOut: 2, shoulderTurn: 0, elbow: 6 },
    'flexed+abducted': { shoulderFlex: 16, shoulderOut: 72, shoulderTurn: 70, elbow: 104 },
  },
  hanging: {
    flexed: { shoulderFlex: 66, shoulderOut: 24, shoulderTurn: 10, elbow: 112 },
    extended: { shoulderFlex: 142, shoulderOut: 14, shoulderTurn: 0, elbow: 5 },
    abducted: { shoulderFlex: 60, shoulderOut: 70, shoulderTurn: 20, elbow: 24 },
    adducted: { shoulderFlex: 70, shoulderOut: -10, shoulderTurn: -20, elbow: 40 },
    'flexed+adducted': { shoulderFlex: 70, shoulderOut: 4, shoulderTurn: -40, elbow: 112 },
    'extended+abducted': { shoulderFlex: 128, shoulderOut: 42, shoulderTurn: 10, elbow: 6 },
    'extended+adducted': { shoulderFlex: 120, shoulderOut: 0, shoulderTurn: 0, elbow: 5 },
    'flexed+abducted': { shoulderFlex: 70, shoulderOut: 60, shoulderTurn: 20, elbow: 108 },
  },
  quadruped: {
    flexed: { shoulderFlex: 62, shoulderOut: 26, shoulderTurn: -10, elbow: 98 },
    extended: { shoulderFlex: 80, shoulderOut: 8, shoulderTurn: 0, elbow: 3 },
    abducted: { shoulderFlex: 40, shoulderOut: 76, shoulderTurn: 20, elbow: 20 },
    adducted: { shoulderFlex: 80, shoulderOut: -8, shoulderTurn: 0, elbow: 10 },
    'flexed+adducted': { shoulderFlex: 62, shoulderOut: 0, shoulderTurn: -20, elbow: 98 },
    'extended+abducted': { shoulderFlex: 10, shoulderOut: 88, shoulderTurn: 40, elbow: 5 },
    'extended+adducted': { shoulderFlex: 80, shoulderOut: -6, shoulderTurn: 0, elbow: 3 },
    'flexed+abducted': { shoulderFlex: 40, shoulderOut: 70, shoulderTurn: 20, elbow: 98 },
  },
};

const LEG: Record<Setting, Record<Words, Partial<LegJoints>>> = {
  lying: {
    flexed: { hipFlex: 92, hipOut: 40, hipTurn: 42, knee: 118, ankle: 14 },
    extended: { hipFlex: 6, hipOut: 10, hipTurn: 12, knee: 6, ankle: -18 },
    abducted: { hipFlex: 16, hipOut: 44, hipTurn: 30, knee: 26 },
    adducted: { hipFlex: 12, hipOut: -14, hipTurn: 0, knee: 12 },
    'flexed+adducted': { hipFlex: 74, hipOut: 2, hipTurn: 4, knee: 96, ankle: 10 },
    'extended+abducted': { hipFlex: 14, hipOut: 28, hipTurn: 20, knee: 10, ankle: -14 },
    'extended+adducted': { hipFlex: 10, hipOut: -21, hipTurn: -4, knee: 4, ankle: -26 },
    'flexed+abducted': { hipFlex: 78, hipOut: 58, hipTurn: 58, knee: 106, ankle: 6 },
  },
  upright: {
    flexed: { hipFlex: 82, hipOut: 12, hipTurn: 10, knee: 94, ankle: 12 },
    extended: { hipFlex: 4, hipOut: 9, hipTurn: 6, knee: 4, ankle: 2 },
    abducted: { hipFlex: 6, hipOut: 34, hipTurn: 16, knee: 8 },
    adducted: { hipFlex: 6, hipOut: -14, hipTurn: 0, knee: 8 },
    'flexed+adducted': { hipFlex: 72, hipOut: -8, hipTurn: 0, knee: 94 },
    'extended+abducted': { hipFlex: 6, hipOut: 30, hipTurn: 14, knee: 4, ankle: 16 },
    'extended+adducted': { hipFlex: 4, hipOut: -14, hipTurn: 0, knee: 4 },
    'flexed+abducted': { hipFlex: 62, hipOut: 40, hipTurn: 30, knee: 96, ankle: 10 },
  },
  hanging: {
    flexed: { hipFlex: 84, hipOut: 14, hipTurn: 10, knee: 96, ankle: 6 },
    extended: { hipFlex: -10, hipOut: 8, hipTurn: 6, knee: 8, ankle: -46 },
    abducted: { hipFlex: 6, hipOut: 36, hipTurn: 16, knee: 14, ankle: -30 },
    adducted: { hipFlex: 6, hipOut: -12, hipTurn: 0, knee: 12, ankle: -30 },
    'flexed+adducted': { hipFlex: 80, hipOut: -6, hipTurn: 0, knee: 96 },
    'extended+abducted': { hipFlex: -6, hipOut: 30, hipTurn: 10, knee: 6, ankle: -40 },
    'extended+adducted': { hipFlex: -6, hipOut: -12, hipTurn: 0, knee: 6, ankle: -40 },
    'flexed+abducted': { hipFlex: 74, hipOut: 46, hipTurn: 40, knee: 98 },
  },
  quadruped: {
    flexed: { hipFlex: 128, hipOut: 12, hipTurn: 0, knee: 142, ankle: -54 },
    extended: { hipFlex: 58, hipOut: 10, hipTurn: 0, knee: 5, ankle: 20 },
    abducted: { hipFlex: 40, hipOut: 56, hipTurn: 10, knee: 14, ankle: -20 },
    adducted: { hipFlex: 88, hipOut: -8, hipTurn: 0, knee: 92, ankle: -54 },
    'flexed+adducted': { hipFlex: 120, hipOut: -6, hipTurn: 0, knee: 138, ankle: -54 },
    'extended+abducted': { hipFlex: 30, hipOut: 62, hipTurn: 10, knee: 6, ankle: -10 },
    'extended+adducted': { hipFlex: 58, hipOut: -8, hipTurn: 0, knee: 5, ankle: 20 },
    'flexed+abducted': { hipFlex: 100, hipOut: 46, hipTurn: 20, knee: 110, ankle: -50 },
  },
};

const HEAD: Record<TrunkToken, Change> = {
  none: {},
  flexed: { axial: { neckFlex: 30 } },
  extended: { axial: { neckFlex: -34 } },
  'turned-left': { axial: { neckYaw: 80 } },
  'turned-right': { axial: { neckYaw: -80 } },
  'tilted-left': { axial: { neckTilt: 24 } },
  'tilted-right': { axial: { neckTilt: -24 } },
  'curved-left': { axial: { neckTilt: 18 } },
  'curved-right': { axial: { neckTilt: -18 } },
};

const TRUNK: Record<TrunkToken, Change> = {
  none: {},
  flexed: { axial: { trunkFlex: 26 } },
  extended: { axial: { trunkFlex: -12 } },
  'turned-left': { axial: { trunkTwist: 34 } },
  'turned-right': { axial: { trunkTwist: -34 } },
  'tilted-left': { placing: { tip: 16 } },
  'tilted-right': { placing: { tip: -16 } },
  'curved-left': { axial: { trunkSide: 32 } },
  'curved-right': { axial: { trunkSide: -32 } },
};

const HAND: Record<EndToken, Partial<ArmJoints>> = {
  none: {},
  open: { grip: 0, spread: 1 },
  closed: { grip: 1, spread: 0 },
};

const FOOT: Record<EndToken, Partial<LegJoints>> = {
  none: {},
  open: { toes: 1, fan: 1 },
  closed: { toes: -1, fan: 0 },
};

const FACE: Record<string, Partial<FaceJoints>> = {
  cry: { mouth: 0.85, cry: 1 },
  blink: { eyes: 0 },
  'eyes-closed': { eyes: 0 },
  'eyes-left': { gaze: 1 },
  'eyes-right': { gaze: -1 },
  'eyes-centre': { gaze: 0 },
  'mouth-open': { mouth: 0.75 },
  'mouth-closed-rhythmic': { suck: 1 },
  'lips-pursed': { purse: 1 },
  swallow: { swallow: 1 },
};

/** The words of a limb as one key, in the order of the tables. */
function wordsOf(first: LimbToken, more: readonly LimbToken[] = []): Words | undefined {
  const all = new Set([first, ...more]);
  const bend = all.has('flexed') ? 'flexed' : all.has('extended') ? 'extended' : undefined;
  const way = all.has('abducted') ? 'abducted' : all.has('adducted') ? 'adducted' : undefined;
  if (bend && way) return `${bend}+${way}`;
  return bend ?? way;
}

/** Which parts of the body a pattern's words move. */
export type Part = 'head' | 'trunk' | 'face' | 'armL' | 'armR' | 'legL' | 'legR';

const orNothing = <T>(table: Record<Words, T>, words: Words | undefined): T | undefined =>
  words && table[words];

/**
 * The pose that a pattern's words make of another pose.
 * @param parts only these parts are moved; all of them if left out
 */
export function withTokens(
  j: Joints,
  t: LimbTokens,
  setting: Setting,
  parts?: readonly Part[],
): Joints {
  const moves = (part: Part): boolean => !parts || parts.includes(part);
  let pose = j;
  if (moves('trunk')) pose = changed(pose, TRUNK[t.trunk]);
  if (moves('head')) pose = changed(pose, HEAD[t.head]);
  if (moves('face') && t.face) pose = changed(pose, { face: FACE[t.face] ?? {} });
  for (const side of ['L', 'R'] as const) {
    const arm = orNothing(ARM[setting], wordsOf(t[`arm${side}`], t.also?.[`arm${side}`]));
    const leg = orNothing(LEG[setting], wordsOf(t[`leg${side}`], t.also?.[`leg${side}`]));
    if (moves(`arm${side}`))
      pose = changed(pose, { [`arm${side}`]: { ...arm, ...HAND[t[`hand${side}`]] } });
    if (moves(`leg${side}`))
      pose = changed(pose, { [`leg${side}`]: { ...leg, ...FOOT[t[`foot${side}`]] } });
  }
  return pose;
}
