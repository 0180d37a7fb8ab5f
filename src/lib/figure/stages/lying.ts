/** Lying on the back or the belly, seen from above. The infant's left is on the right of the page on its back. */
import type { Change } from '../change.ts';
import type { Stage } from '../stage.ts';

export const ON_BACK: Change = {
  placing: { pitch: -90 },
  axial: { neckFlex: 4 },
  arms: {
    shoulderFlex: 14,
    shoulderOut: 46,
    shoulderTurn: 62,
    elbow: 82,
    forearmTurn: 20,
    grip: 0.45,
    spread: 0.25,
  },
  armR: { shoulderOut: 42, elbow: 88 },
  legs: { hipFlex: 62, hipOut: 46, hipTurn: 46, knee: 84, ankle: -4 },
};

export const ON_BELLY: Change = {
  placing: { pitch: 90, yaw: 180 },
  axial: { neckFlex: -6 },
  arms: {
    shoulderFlex: -4,
    shoulderOut: 74,
    shoulderTurn: 88,
    elbow: 96,
    grip: 0.45,
    spread: 0.25,
  },
  legs: { hipFlex: 22, hipOut: 30, hipTurn: 44, knee: 38, ankle: -34 },
};

const fromAbove = {
  setting: 'lying',
  elevation: 90,
  ground: 'mat',
  framing: 'whole',
  resting: 'whole',
  marks: [],
  examiner: [],
} as const;

export const supine: Stage = { ...fromAbove, rest: ON_BACK };
export const prone: Stage = { ...fromAbove, rest: ON_BELLY };

/** A board seen from the feet, so that its slope shows. */
const onBoard = { elevation: 52, ground: 'board' } as const;

export const LYING: Readonly<Record<string, Stage>> = {
  moro: {
    ...supine,
    stimulus: { axial: { neckFlex: -14 } },
    response: [{}, { face: { cry: 0.5, mouth: 0.2 }, axial: { neckFlex: 4 } }],
    marks: [{ kind: 'drop', at: 'head', off: [-1.3, 0.36], during: [1, 2] }],
  },
  'acoustic-startle': {
    ...supine,
    response: { axial: { neckFlex: 17, trunkFlex: 10 } },
    marks: [{ kind: 'sound', at: 'head', off: [-1.2, 0.42] }],
  },
  'acoustic-startle/sound-spread': {
    ...supine,
    response: [{}, { axial: { neckFlex: 4 } }],
    marks: [{ kind: 'sound', at: 'head', off: [-1.2, 0.42] }],
  },
  atnr: {
    ...supine,
    given: ['head'],
    response: {
      axial: { trunkSide: -9 },
      armL: { shoulderOut: 80 },
      armR: { shoulderOut: 74 },
      legR: { hipFlex: 70, knee: 98 },
    },
    marks: [{ kind: 'turn', at: 'head', from: -42, to: 48 }],
  },
  galant: {
    ...prone,
    response: { axial: { trunkSide: 54, neckTilt: 4 }, placing: { yaw: 146 } },
    marks: [{ kind: 'trail', along: ['paraspinal-high', 'paraspinal-low'] }],
  },
  'flexor-withdrawal': {
    ...supine,
    rest: { ...ON_BACK, legs: { hipFlex: 22, hipOut: 18, hipTurn: 16, knee: 26, ankle: -10 } },
    marks: [
      { kind: 'touch', at: 'sole-L', during: [1, 1] },
      { kind: 'arrow', at: 'sole-L', from: [0.26, -0.52], to: [0.05, -0.14], during: [1, 1] },
      { kind: 'arrow', at: 'sole-L', from: [0.5, -0.5], to: [0.5, 0.1], during: [2, 2] },
    ],
    examiner: [],
  },
  'crossed-extension': {
    ...supine,
    rest: {
      ...ON_BACK,
      legL: { hipFlex: 16, hipOut: 16, hipTurn: 14, knee: 4, ankle: -8 },
      legR: { hipFlex: 30, hipOut: 24, hipTurn: 18, knee: 34, ankle: -6 },
    },
    marks: [
      { kind: 'touch', at: 'sole-L' },
      { kind: 'arrow', at: 'sole-L', from: [0.24, -0.5], to: [0.05, -0.14] },
    ],
    examiner: [
      {
        hold: 'grasp',
        at: 'knee-L',
        off: [0.02, -0.02],
        forearm: 84,
        thumb: 'counter',
        layer: 'front',
      },
    ],
  },
  'extensor-thrust': {
    ...supine,
    rest: {
      ...ON_BACK,
      legL: { hipFlex: 88, hipOut: 34, hipTurn: 34, knee: 108, ankle: 4 },
      legR: { hipFlex: 12, hipOut: 14, hipTurn: 12, knee: 10, ankle: -10 },
    },
    marks: [
      { kind: 'touch', at: 'sole-L', during: [1, 1] },
      { kind: 'arrow', at: 'sole-L', from: [0.3, -0.5], to: [0.06, -0.13], during: [1, 1] },
      { kind: 'arrow', at: 'sole-L', from: [0.42, 0.5], to: [0.42, -0.06], during: [2, 2] },
    ],
  },
  crawling: {
    ...prone,
    rest: { ...ON_BELLY, legs: { hipFlex: 40, hipOut: 42, hipTurn: 52, knee: 70, ankle: -20 } },
    response: [
      {
        armL: { shoulderFlex: -6, shoulderOut: 56, shoulderTurn: 88, elbow: 112 },
        armR: { shoulderFlex: -4, shoulderOut: 128, shoulderTurn: 88, elbow: 22 },
        legR: { hipFlex: 62, hipOut: 60, hipTurn: 62, knee: 100 },
      },
      {
        armR: { shoulderFlex: -6, shoulderOut: 56, shoulderTurn: 88, elbow: 112 },
        armL: { shoulderFlex: -4, shoulderOut: 128, shoulderTurn: 88, elbow: 22 },
        legL: { hipFlex: 62, hipOut: 60, hipTurn: 62, knee: 100 },
      },
    ],
    marks: [
      { kind: 'arrow', at: 'sole-L', from: [-0.1, -0.56], to: [0, -0.1], during: [1, 2] },
      { kind: 'arrow', at: 'crown', from: [0, 0.06], to: [0, 0.42], during: [2, 3] },
    ],
  },
  swimming: {
    ...prone,
    ground: 'water',
    rest: {
      ...ON_BELLY,
      arms: {
        shoulderFlex: 20,
        shoulderOut: 84,
        shoulderTurn: 60,
        elbow: 40,
        grip: 0.3,
        spread: 0.4,
      },
      legs: { hipFlex: 26, hipOut: 26, hipTurn: 30, knee: 36, ankle: -40 },
    },
    response: [
      {
        axial: { trunkSide: 20 },
        placing: { yaw: 172 },
        armL: { shoulderFlex: 10, shoulderOut: 56, shoulderTurn: 80, elbow: 104 },
        armR: { shoulderFlex: 8, shoulderOut: 124, shoulderTurn: 80, elbow: 18 },
        legR: { hipFlex: 66, hipOut: 46, hipTurn: 50, knee: 98 },
      },
      {
        axial: { trunkSide: -20 },
        placing: { yaw: 188 },
        armR: { shoulderFlex: 10, shoulderOut: 56, shoulderTurn: 80, elbow: 104 },
        armL: { shoulderFlex: 8, shoulderOut: 124, shoulderTurn: 80, elbow: 18 },
        legL: { hipFlex: 66, hipOut: 46, hipTurn: 50, knee: 98 },
      },
    ],
  },
  amphibian: {
    ...prone,
    rest: {
      ...ON_BELLY,
      arms: { shoulderFlex: -4, shoulderOut: 112, shoulderTurn: 88, elbow: 46, grip: 0.4 },
      legs: { hipFlex: 4, hipOut: 12, hipTurn: 20, knee: 8, ankle: -44 },
    },
    stimulus: { placing: { roll: 14 } },
    response: {
      axial: { trunkSide: 24 },
      placing: { roll: 14, yaw: 170 },
      armL: { shoulderFlex: -4, shoulderOut: 66, shoulderTurn: 88, elbow: 116 },
      legL: { hipFlex: 66, hipOut: 62, hipTurn: 66, knee: 104 },
    },
    marks: [
      {
        kind: 'arrow',
        at: 'pelvis-L',
        from: [-0.36, -0.3],
        to: [-0.24, 0.3],
        bulge: 0.1,
        during: [1, 1],
      },
    ],
    examiner: [
      {
        hold: 'flat',
        at: 'pelvis-L',
        off: [0.27, 0.03],
        forearm: 82,
        palm: 'away',
        thumb: 'counter',
        layer: 'front',
      },
    ],
  },
  'neck-righting': {
    ...supine,
    given: ['head'],
    response: {
      axial: { trunkTwist: 0, neckYaw: 24 },
      placing: { roll: 62 },
      armR: { shoulderFlex: 58, shoulderOut: 20, elbow: 60, shoulderTurn: 0 },
      armL: { shoulderFlex: 40, shoulderOut: 36, elbow: 76 },
      legs: { hipFlex: 60, hipOut: 22, knee: 80 },
    },
    marks: [{ kind: 'turn', at: 'head', from: -42, to: 48 }],
  },
  'body-righting-body': {
    ...supine,
    stimulus: {
      legR: { hipFlex: 96, hipOut: -6, hipTurn: -8, knee: 100 },
    },
    response: [
      {
        axial: { trunkTwist: -40 },
        placing: { roll: 52 },
        legR: { hipFlex: 96, hipOut: -16, hipTurn: -8, knee: 100 },
        legL: { hipFlex: 40, hipOut: 16, hipTurn: 20, knee: 50 },
      },
      {
        axial: { trunkTwist: -12, neckYaw: -34 },
        placing: { roll: 66 },
        legR: { hipFlex: 96, hipOut: -14, hipTurn: -8, knee: 100 },
        legL: { hipFlex: 30, hipOut: 10, hipTurn: 10, knee: 40 },
        armR: { shoulderFlex: 70, shoulderOut: -8, shoulderTurn: 0, elbow: 40 },
      },
      {
        axial: { trunkTwist: 0, neckYaw: 12 },
        placing: { roll: 76 },
        legR: { hipFlex: 74, hipOut: -10, hipTurn: -8, knee: 84 },
        legL: { hipFlex: 30, hipOut: 6, hipTurn: 0, knee: 40 },
        armR: { shoulderFlex: 80, shoulderOut: -8, shoulderTurn: 0, elbow: 40 },
        armL: { shoulderFlex: 60, shoulderOut: 10, shoulderTurn: 0, elbow: 60 },
      },
    ],
    marks: [
      {
        kind: 'arrow',
        at: 'knee-R',
        from: [-0.3, 0.34],
        to: [0.42, 0.3],
        bulge: 0.16,
        during: [1, 2],
      },
    ],
  },
  'equilibrium-supine': {
    ...supine,
    ...onBoard,
    rest: { ...ON_BACK, legs: { hipFlex: 26, hipOut: 26, hipTurn: 26, knee: 34, ankle: -10 } },
    stimulus: { placing: { slope: 16, tip: 16 } },
    response: {
      placing: { slope: 16, tip: 13 },
      axial: { trunkSide: -26, neckTilt: -20 },
      armL: { shoulderOut: 30 },
    },
    marks: [{ kind: 'arrow', at: 'ground', from: [1.78, 0.5], to: [1.78, -0.3] }],
  },
  'equilibrium-prone': {
    ...prone,
    ...onBoard,
    rest: { ...ON_BELLY, legs: { hipFlex: 8, hipOut: 18, hipTurn: 26, knee: 16, ankle: -40 } },
    stimulus: { placing: { slope: -16, tip: -16 } },
    response: {
      placing: { slope: -16, tip: -13 },
      axial: { trunkSide: -26, neckTilt: -20 },
    },
    marks: [{ kind: 'arrow', at: 'ground', from: [-1.78, 0.5], to: [-1.78, -0.3] }],
  },
};
