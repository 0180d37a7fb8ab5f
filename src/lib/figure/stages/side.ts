/** Seen from the side: on hands and knees, lying, drawn up, pushed over, stepping. */
import type { Change } from '../change.ts';
import type { Stage } from '../stage.ts';
import { FACING_LEFT, FACING_RIGHT, fromTheSide } from './from-side.ts';

const HANDS_AND_KNEES: Change = {
  placing: { yaw: FACING_RIGHT, pitch: 82 },
  axial: { neckFlex: -34, trunkFlex: 6 },
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
};

export const handsAndKnees: Stage = {
  ...fromTheSide,
  setting: 'quadruped',
  resting: 'hands-and-knees',
  rest: HANDS_AND_KNEES,
};

const LYING_SIDE: Change = {
  placing: { yaw: FACING_RIGHT, pitch: -90 },
  axial: { neckFlex: 6, trunkFlex: 4 },
  arms: { shoulderFlex: 60, shoulderOut: 24, shoulderTurn: 10, elbow: 78, grip: 0.5 },
  legs: { hipFlex: 78, hipOut: 20, hipTurn: 16, knee: 84, ankle: 0 },
};

const SITTING: Change = {
  placing: { yaw: FACING_RIGHT, pitch: 4 },
  axial: { trunkFlex: 12, neckFlex: -10 },
  arms: { shoulderFlex: 42, shoulderOut: 14, elbow: 40, grip: 0.3 },
  legs: { hipFlex: 84, hipOut: 18, hipTurn: 14, knee: 22, ankle: 4 },
};

const HELD: Change = {
  placing: { yaw: FACING_LEFT, pitch: 8, lift: 0.32 },
  axial: { trunkFlex: 4, neckFlex: -4 },
  arms: { shoulderFlex: 56, shoulderOut: 20, elbow: 62, grip: 0.5 },
  legs: { hipFlex: 62, hipOut: 8, hipTurn: 4, knee: 70, ankle: -6 },
};

const heldFromBehind: Stage['examiner'] = [
  {
    hold: 'flat',
    at: 'flank-L',
    off: [-0.02, -0.1],
    forearm: 84,
    palm: 'away',
    thumb: 'counter',
    layer: 'middle',
    during: [0, 9],
  },
];

export const SIDE: Readonly<Record<string, Stage>> = {
  'stnr/neck-flexed': {
    ...handsAndKnees,
    given: ['head'],
    response: { axial: { trunkFlex: 14 } },
    marks: [{ kind: 'turn', at: 'head', from: 34, to: 104, radius: 0.78 }],
  },
  'stnr/neck-extended': {
    ...handsAndKnees,
    given: ['head'],
    stimulus: { axial: { neckFlex: -60 } },
    response: { axial: { trunkFlex: -6 } },
    marks: [{ kind: 'turn', at: 'head', from: 110, to: 40, radius: 0.8 }],
  },
  'tlr/supine': {
    ...fromTheSide,
    setting: 'lying',
    resting: 'head-and-seat',
    rest: LYING_SIDE,
    response: {
      axial: { neckFlex: -12, trunkFlex: -12 },
      arms: { shoulderFlex: -2, shoulderOut: 10, shoulderTurn: 0, elbow: 10 },
      legs: { hipFlex: -2, hipOut: 6, knee: 2, ankle: -42 },
    },
    marks: [{ kind: 'plumb', at: 'ear' }],
  },
  'tlr/prone': {
    ...fromTheSide,
    setting: 'lying',
    resting: 'hands-and-knees',
    rest: {
      placing: { yaw: FACING_RIGHT, pitch: 92 },
      axial: { neckFlex: -14 },
      arms: { shoulderFlex: 70, shoulderOut: 26, elbow: 84, grip: 0.5 },
      legs: { hipFlex: 20, hipOut: 16, hipTurn: 10, knee: 30, ankle: -40 },
    },
    response: {
      placing: { pitch: 100 },
      axial: { neckFlex: 2, trunkFlex: 46 },
      arms: { shoulderFlex: 42, shoulderOut: 10, shoulderTurn: 0, elbow: 128 },
      legs: { hipFlex: 126, hipOut: 10, hipTurn: 0, knee: 142, ankle: -50 },
    },
    marks: [{ kind: 'plumb', at: 'ear' }],
  },
  traction: {
    ...fromTheSide,
    setting: 'lying',
    resting: ['head-and-seat', 'head-and-seat', 'whole'],
    rest: LYING_SIDE,
    stimulus: { arms: { shoulderFlex: 86, shoulderOut: 10, elbow: 10 } },
    response: {
      placing: { pitch: -46 },
      axial: { trunkFlex: 26, neckFlex: -10 },
      arms: { shoulderFlex: 40, shoulderOut: 12, shoulderTurn: 0, elbow: 93, wrist: 12 },
      legs: { hipFlex: 84, knee: 60 },
    },
    marks: [{ kind: 'arrow', at: 'wrist-R', from: [0.42, 0.12], to: [0.92, 0.52] }],
    examiner: [{ hold: 'grasp', at: 'wrist-R', forearm: 52, thumb: 'counter', layer: 'front' }],
  },
  'protective-forward/propping': {
    ...fromTheSide,
    setting: 'upright',
    resting: 'seat',
    rest: SITTING,
    stimulus: { placing: { pitch: 18 } },
    response: {
      placing: { pitch: 34 },
      axial: { trunkFlex: 22, neckFlex: -34 },
      arms: {
        shoulderFlex: 62,
        shoulderOut: 12,
        shoulderTurn: 0,
        elbow: 3,
        forearmTurn: -82,
        wrist: -60,
      },
    },
    reach: [
      { arm: 'armL', joint: 'shoulderFlex', range: [0, 110] },
      { arm: 'armR', joint: 'shoulderFlex', range: [0, 110] },
    ],
    marks: [{ kind: 'arrow', at: 'chest', from: [-0.66, 0.16], to: [-0.1, 0.06] }],
  },
  'protective-backward': {
    ...fromTheSide,
    setting: 'upright',
    resting: 'seat',
    rest: SITTING,
    stimulus: { placing: { pitch: -14 } },
    response: {
      placing: { pitch: -40 },
      axial: { trunkFlex: 16, neckFlex: 18 },
      arms: {
        shoulderFlex: -40,
        shoulderOut: 16,
        shoulderTurn: 0,
        elbow: 3,
        forearmTurn: 80,
        wrist: -60,
      },
    },
    reach: [
      { arm: 'armL', joint: 'shoulderFlex', range: [-60, 10] },
      { arm: 'armR', joint: 'shoulderFlex', range: [-60, 10] },
    ],
    marks: [{ kind: 'arrow', at: 'chest', from: [0.66, 0.06], to: [0.1, 0.02] }],
  },
  stepping: {
    ...fromTheSide,
    setting: 'upright',
    rest: HELD,
    stimulus: {
      placing: { pitch: 10, lift: 0 },
      legs: { hipFlex: 24, knee: 34, ankle: 10 },
    },
    response: [
      {
        placing: { pitch: 12 },
        legL: { hipFlex: 80, knee: 94, ankle: 10 },
        legR: { hipFlex: 2, knee: 3, ankle: 12 },
      },
      {
        placing: { pitch: 12 },
        legR: { hipFlex: 80, knee: 94, ankle: 10 },
        legL: { hipFlex: 2, knee: 3, ankle: 12 },
      },
    ],
    marks: [
      { kind: 'touch', at: 'sole-L', during: [1, 1] },
      { kind: 'arrow', at: 'pelvis', from: [-0.72, -0.34], to: [-1.22, -0.34], during: [1, 3] },
    ],
    examiner: heldFromBehind,
  },
  'placing-leg': {
    ...fromTheSide,
    setting: 'upright',
    ground: 'edge',
    rest: {
      ...HELD,
      placing: { yaw: FACING_LEFT, pitch: 2, lift: 0.3, shift: 0.3 },
      legL: { hipFlex: 24, hipOut: 6, knee: 34, ankle: -34 },
      legR: { hipFlex: 6, hipOut: 6, knee: 12, ankle: -30 },
    },
    stimulus: { placing: { shift: 0 } },
    response: [
      { legL: { hipFlex: 100, knee: 106, ankle: 14 } },
      { placing: { shift: -0.1 }, legL: { hipFlex: 48, knee: 26, ankle: -2 } },
    ],
    placed: { touched: 'foot-top-L', part: 'footL', gap: -0.12 },
    marks: [{ kind: 'touch', at: 'foot-top-L', during: [1, 1] }],
    examiner: heldFromBehind,
  },
  'body-righting-head': {
    ...fromTheSide,
    setting: 'lying',
    rest: {
      placing: { yaw: FACING_RIGHT, pitch: 90 },
      // The head lies turned to the viewer, so that the nose is free.
      axial: { neckFlex: -4, neckYaw: -86 },
      arms: { shoulderFlex: -8, shoulderOut: 22, shoulderTurn: 0, elbow: 18, grip: 0.4 },
      legs: { hipFlex: 8, hipOut: 14, hipTurn: 10, knee: 14, ankle: -46 },
    },
    response: { axial: { neckFlex: -46, neckYaw: 0, trunkFlex: -14 } },
    marks: [
      { kind: 'arrow', at: 'belly', from: [-0.2, -0.72], to: [-0.2, -0.3], during: [1, 1] },
      { kind: 'turn', at: 'head', from: 108, to: 44, radius: 0.78, during: [2, 2] },
    ],
  },
};
