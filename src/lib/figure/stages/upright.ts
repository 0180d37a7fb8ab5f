/** Held upright, standing or sitting, facing the viewer. The infant's left is on the right of the page. */
import type { Change } from '../change.ts';
import type { ExaminerSpec, Stage } from '../stage.ts';

const facing = {
  setting: 'upright',
  elevation: 0,
  ground: 'floor',
  framing: 'whole',
  resting: 'whole',
  marks: [],
  examiner: [],
} as const;

const HELD: Change = {
  placing: { lift: 0.34 },
  arms: { shoulderFlex: 18, shoulderOut: 52, shoulderTurn: 34, elbow: 52, grip: 0.45 },
  legs: { hipFlex: 46, hipOut: 22, hipTurn: 18, knee: 66, ankle: -14 },
};

const hand = { hold: 'flat', palm: 'away', layer: 'middle', during: [0, 9], size: 0.92 } as const;

const hands: readonly ExaminerSpec[] = [
  { ...hand, at: 'flank-L', off: [-0.02, 0], forearm: 104, thumb: 'counter' },
  { ...hand, at: 'flank-R', off: [0.02, 0], forearm: -104, thumb: 'clockwise' },
];

export const heldUpright: Stage = { ...facing, rest: HELD, examiner: hands };

const SITTING: Change = {
  placing: { pitch: 3 },
  axial: { trunkFlex: 8, neckFlex: -4 },
  arms: { shoulderFlex: 20, shoulderOut: 44, shoulderTurn: 24, elbow: 56, grip: 0.35 },
  legs: { hipFlex: 76, hipOut: 46, hipTurn: 26, knee: 26, ankle: -4 },
};

export const sitting: Stage = {
  ...facing,
  elevation: 16,
  ground: 'rug',
  resting: 'seat',
  rest: SITTING,
};

const STANDING: Change = {
  arms: { shoulderFlex: 10, shoulderOut: 34, shoulderTurn: 10, elbow: 44, grip: 0.4 },
  legs: { hipFlex: 6, hipOut: 12, hipTurn: 10, knee: 10, ankle: 4 },
};

export const standing: Stage = { ...facing, rest: STANDING };

/** The body tipped in the air towards its left. */
const tipped: Change = { placing: { tip: 30 } };

export const UPRIGHT: Readonly<Record<string, Stage>> = {
  'positive-support': {
    ...heldUpright,
    stimulus: { placing: { lift: 0 }, legs: { hipFlex: 36, hipOut: 18, knee: 54, ankle: 8 } },
    response: { axial: { trunkFlex: -4 } },
    marks: [
      { kind: 'touch', at: 'sole-L', during: [1, 1] },
      { kind: 'touch', at: 'sole-R', during: [1, 1] },
      { kind: 'arrow', at: 'ankle-L', from: [0.34, -0.05], to: [0.34, 0.55], during: [2, 2] },
      { kind: 'arrow', at: 'sole-R', from: [-0.34, -0.05], to: [-0.34, 0.55], during: [2, 2] },
    ],
  },
  'protective-downward': {
    ...heldUpright,
    rest: { ...HELD, placing: { lift: 0.85 } },
    stimulus: { placing: { lift: 0.45 } },
    response: { placing: { lift: 0.14 } },
    marks: [{ kind: 'arrow', at: 'pelvis', from: [-0.95, 0.3], to: [-0.95, -0.4] }],
  },
  'labyrinthine-righting': {
    ...heldUpright,
    ground: 'none',
    blindfold: true,
    rest: { ...HELD, legs: { hipFlex: 22, hipOut: 12, knee: 30, ankle: -20 } },
    stimulus: tipped,
    response: { axial: { neckTilt: -30 } },
    marks: [
      { kind: 'turn', at: 'pelvis', from: -28, to: 14, radius: 2.25, during: [1, 1] },
      { kind: 'turn', at: 'head', from: 30, to: -14, during: [2, 2] },
    ],
  },
  'optical-righting': {
    ...heldUpright,
    ground: 'none',
    rest: { ...HELD, legs: { hipFlex: 22, hipOut: 12, knee: 30, ankle: -20 } },
    stimulus: tipped,
    response: { axial: { neckTilt: -30 } },
    marks: [
      { kind: 'turn', at: 'pelvis', from: -28, to: 14, radius: 2.25, during: [1, 1] },
      { kind: 'turn', at: 'head', from: 30, to: -14, during: [2, 2] },
    ],
  },
  'protective-sideways': {
    ...sitting,
    elevation: 10,
    stimulus: { placing: { tip: 12 } },
    response: {
      placing: { tip: 29 },
      axial: { trunkSide: -8, neckTilt: -26 },
      armL: {
        shoulderFlex: 6,
        shoulderOut: 60,
        shoulderTurn: 30,
        elbow: 3,
        forearmTurn: -60,
        wrist: -50,
      },
      armR: { shoulderFlex: 10, shoulderOut: 74, shoulderTurn: 20, elbow: 24 },
      legL: { hipOut: 14, hipTurn: 34, knee: 62 },
    },
    reach: [{ arm: 'armL', joint: 'shoulderOut', range: [20, 110] }],
    marks: [
      { kind: 'arrow', at: 'shoulder-R', from: [-0.78, 0.12], to: [-0.22, 0.02], during: [1, 1] },
    ],
  },
  'protective-stepping': {
    ...standing,
    stimulus: { placing: { tip: 8 } },
    response: [
      {
        placing: { tip: 12, lift: 0 },
        legL: { hipFlex: 62, hipOut: 38, knee: 94, ankle: 4 },
        legR: { hipOut: 16 },
      },
      {
        placing: { tip: 4 },
        legL: { hipFlex: 6, hipOut: 32, knee: 6 },
        legR: { hipFlex: 6, hipOut: 16, knee: 6 },
      },
    ],
    marks: [
      { kind: 'arrow', at: 'shoulder-R', from: [-0.8, 0.06], to: [-0.24, 0.02], during: [1, 2] },
    ],
  },
  'equilibrium-sitting': {
    ...sitting,
    elevation: 8,
    ground: 'board',
    stimulus: { placing: { slope: 15, tip: 15 } },
    response: {
      placing: { slope: 15, tip: 13 },
      axial: { trunkSide: -38, neckTilt: -12 },
      armR: { shoulderFlex: 8, shoulderOut: 112, shoulderTurn: 40, elbow: 6 },
      legR: { hipOut: 62, hipTurn: 30, knee: 10 },
    },
    marks: [{ kind: 'arrow', at: 'ground', from: [1.95, 0.5], to: [1.95, -0.3] }],
  },
  'equilibrium-standing': {
    ...standing,
    ground: 'board',
    stimulus: { placing: { slope: 13, tip: 10 } },
    response: {
      placing: { slope: 13, tip: 0 },
      axial: { trunkSide: -14, neckTilt: -8 },
      armR: { shoulderOut: 90, shoulderTurn: 40, elbow: 6 },
      armL: { shoulderOut: 74, shoulderTurn: 40, elbow: 14 },
      legL: { hipFlex: 4, hipOut: 7, knee: 4 },
      legR: { hipFlex: 62, hipOut: 22, hipTurn: 20, knee: 92, ankle: 16 },
    },
    marks: [{ kind: 'arrow', at: 'ground', from: [1.6, 0.7], to: [1.6, -0.1] }],
  },
  'equilibrium-quadruped': {
    ...facing,
    setting: 'quadruped',
    elevation: 32,
    ground: 'board',
    resting: 'hands-and-knees',
    rest: {
      placing: { yaw: 206, pitch: 82 },
      axial: { neckFlex: -40, trunkFlex: 6 },
      arms: {
        shoulderFlex: 86,
        shoulderOut: 8,
        elbow: 6,
        forearmTurn: -82,
        wrist: -84,
        grip: 0.05,
        spread: 0.5,
      },
      legs: { hipFlex: 90, hipOut: 8, hipTurn: 0, knee: 92, ankle: -52 },
    },
    stimulus: { placing: { slope: -14, tip: -14 } },
    response: {
      placing: { slope: -14, tip: -4 },
      axial: { neckTilt: -20, trunkSide: -18 },
      armR: { wrist: -10 },
    },
    marks: [{ kind: 'arrow', at: 'ground', from: [-1.85, 0.5], to: [-1.85, -0.3] }],
  },
};
