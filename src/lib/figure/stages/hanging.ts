/** Held face down in the air, seen from the side. */
import type { Change } from '../change.ts';
import type { Stage } from '../stage.ts';
import { FACING_LEFT, FACING_RIGHT, fromTheSide } from './from-side.ts';

const HANGING: Change = {
  placing: { yaw: FACING_RIGHT, pitch: 92, lift: 0.5 },
  axial: { neckFlex: 14, trunkFlex: 34 },
  arms: { shoulderFlex: 92, shoulderOut: 10, elbow: 24, grip: 0.4 },
  legs: { hipFlex: 58, hipOut: 8, hipTurn: 4, knee: 44, ankle: -34 },
};

export const hanging: Stage = {
  ...fromTheSide,
  setting: 'hanging',
  ground: 'none',
  rest: HANGING,
  examiner: [
    {
      hold: 'flat',
      at: 'belly',
      off: [-0.04, 0.16],
      forearm: 186,
      palm: 'away',
      thumb: 'clockwise',
      layer: 'middle',
      during: [0, 9],
    },
  ],
};

export const HANGING_STAGES: Readonly<Record<string, Stage>> = {
  perez: {
    ...hanging,
    response: { axial: { neckFlex: -40, trunkFlex: -30 } },
    marks: [{ kind: 'trail', along: ['spine-low', 'back', 'spine-high'] }],
  },
  landau: {
    ...hanging,
    response: { axial: { neckFlex: -44, trunkFlex: -32 } },
    marks: [
      { kind: 'arrow', at: 'belly', from: [-0.62, -0.95], to: [-0.62, -0.42], during: [1, 1] },
    ],
  },
  'landau/head-bent': {
    ...hanging,
    rest: {
      ...HANGING,
      placing: { yaw: FACING_RIGHT, pitch: 86, lift: 0.5 },
      axial: { neckFlex: -40, trunkFlex: -26 },
      arms: { shoulderFlex: 124, shoulderOut: 20, elbow: 12, grip: 0.2 },
      legs: { hipFlex: -6, hipOut: 8, knee: 10, ankle: -46 },
    },
    given: ['head'],
    response: {
      placing: { pitch: 92 },
      axial: { trunkFlex: 34 },
      arms: { shoulderFlex: 100, elbow: 24 },
    },
    marks: [{ kind: 'turn', at: 'head', from: 20, to: 100, radius: 0.78 }],
  },
  'protective-forward': {
    ...hanging,
    ground: 'floor',
    rest: {
      ...HANGING,
      placing: { yaw: FACING_RIGHT, pitch: 88, lift: 0.9 },
      axial: { neckFlex: -30, trunkFlex: -4 },
      arms: { shoulderFlex: 62, shoulderOut: 12, elbow: 70, grip: 0.5 },
      legs: { hipFlex: 26, hipOut: 8, knee: 36, ankle: -30 },
    },
    stimulus: { placing: { pitch: 108, lift: 0.62 } },
    response: {
      placing: { pitch: 120, lift: 0 },
      axial: { neckFlex: -54, trunkFlex: -16 },
      arms: { shoulderFlex: 152, shoulderOut: 8, elbow: 3, forearmTurn: -82, wrist: -50 },
      legs: { hipFlex: 8, knee: 18 },
    },
    marks: [{ kind: 'turn', at: 'head', from: 40, to: 104, radius: 0.86 }],
    examiner: [
      {
        hold: 'flat',
        at: 'spine-low',
        off: [0.08, -0.36],
        forearm: 4,
        palm: 'away',
        layer: 'middle',
        during: [0, 9],
      },
    ],
  },
  'placing-arm': {
    ...fromTheSide,
    setting: 'hanging',
    ground: 'edge',
    rest: {
      placing: { yaw: FACING_LEFT, pitch: 66, lift: 0.4, shift: 0.3 },
      axial: { neckFlex: -30, trunkFlex: 2 },
      arms: { shoulderFlex: 66, shoulderOut: 8, elbow: 20, forearmTurn: -70, grip: 0.6 },
      legs: { hipFlex: 30, hipOut: 8, knee: 30, ankle: -30 },
    },
    stimulus: { placing: { shift: 0 } },
    response: [
      {
        armL: {
          shoulderFlex: 96,
          shoulderOut: 10,
          elbow: 104,
          forearmTurn: -70,
          wrist: -10,
          grip: 0.4,
        },
      },
      { armL: { shoulderFlex: 104, shoulderOut: 8, elbow: 12, forearmTurn: -82, wrist: -52 } },
    ],
    placed: { touched: 'hand-back-L', part: 'handL', gap: -0.06 },
    marks: [{ kind: 'touch', at: 'hand-back-L', during: [1, 1] }],
    examiner: [
      {
        hold: 'flat',
        at: 'belly',
        off: [0.04, 0.16],
        forearm: 174,
        palm: 'away',
        thumb: 'counter',
        layer: 'middle',
        during: [0, 9],
      },
    ],
  },
};
