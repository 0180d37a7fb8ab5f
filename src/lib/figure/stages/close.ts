/** Close to: the face, a palm, a sole. */
import type { Stage } from '../stage.ts';
import { ON_BACK, supine } from './lying.ts';

const ARMS_DOWN = { shoulderFlex: 4, shoulderOut: 24, shoulderTurn: 0, elbow: 20 } as const;

export const face: Stage = {
  ...supine,
  framing: 'face',
  rest: { placing: { pitch: -90 }, arms: ARMS_DOWN },
};

export const CLOSE: Readonly<Record<string, Stage>> = {
  'rooting/corner-left': {
    ...face,
    response: { axial: { neckYaw: 44, neckTilt: 5 } },
    marks: [
      { kind: 'touch', at: 'mouth-corner-L' },
      { kind: 'arrow', at: 'mouth-corner-L', from: [0.08, 0.02], to: [0.3, 0.07], during: [1, 1] },
      { kind: 'turn', at: 'head', from: -20, to: 38, radius: 0.6, during: [2, 2] },
    ],
    examiner: [
      { hold: 'point', at: 'mouth-corner-L', forearm: 132, thumb: 'counter', layer: 'front' },
    ],
  },
  'rooting/upper-lip': {
    ...face,
    response: { axial: { neckFlex: -24 } },
    marks: [
      { kind: 'touch', at: 'lip-upper' },
      {
        kind: 'arrow',
        at: 'head',
        from: [-0.56, 0.1],
        to: [-0.5, 0.46],
        bulge: 0.05,
        during: [2, 2],
      },
    ],
    examiner: [{ hold: 'point', at: 'lip-upper', forearm: 128, thumb: 'counter', layer: 'front' }],
  },
  'rooting/lower-lip': {
    ...face,
    response: { axial: { neckFlex: 17 } },
    marks: [
      { kind: 'touch', at: 'lip-lower' },
      {
        kind: 'arrow',
        at: 'head',
        from: [-0.56, 0.2],
        to: [-0.5, -0.2],
        bulge: -0.05,
        during: [2, 2],
      },
    ],
    examiner: [{ hold: 'point', at: 'lip-lower', forearm: 132, thumb: 'counter', layer: 'front' }],
  },
  sucking: {
    ...face,
    stimulus: { face: { mouth: 0.4 } },
    response: { face: { mouth: 0 } },
    marks: [
      { kind: 'touch', at: 'mouth', during: [1, 1] },
      { kind: 'arrow', at: 'mouth', from: [0.5, -0.14], to: [0.22, -0.04], during: [2, 2] },
    ],
    examiner: [{ hold: 'point', at: 'mouth', forearm: 142, thumb: 'counter', layer: 'front' }],
  },
  swallowing: {
    ...face,
    rest: { ...face.rest, axial: { neckYaw: 74, neckFlex: -6 } },
    stimulus: { face: { mouth: 0.22 } },
    response: { face: { mouth: 0, eyes: 0.6 } },
    marks: [
      { kind: 'touch', at: 'mouth', during: [1, 1] },
      {
        kind: 'arrow',
        at: 'throat',
        from: [0.16, 0.02],
        to: [0.06, -0.28],
        bulge: -0.03,
        during: [2, 2],
      },
    ],
  },
  snout: {
    ...face,
    rest: { ...face.rest, axial: { neckYaw: 34 } },
    marks: [{ kind: 'touch', at: 'mouth', during: [1, 1] }],
    examiner: [
      {
        hold: 'point',
        at: 'mouth',
        forearm: 118,
        thumb: 'counter',
        layer: 'front',
        during: [1, 1],
      },
    ],
  },
  glabellar: {
    ...face,
    marks: [{ kind: 'touch', at: 'glabella' }],
    examiner: [{ hold: 'point', at: 'glabella', forearm: 14, thumb: 'clockwise', layer: 'front' }],
  },
  'dolls-eye': {
    ...face,
    given: ['head'],
    stimulus: { axial: { neckYaw: 42 }, face: { gaze: -0.5 } },
    marks: [{ kind: 'turn', at: 'head', from: -20, to: 40, radius: 0.6 }],
  },
  babkin: {
    ...supine,
    framing: 'upper',
    response: { axial: { neckFlex: 18 }, face: { eyes: 0.15 } },
    marks: [
      { kind: 'touch', at: 'palm-L' },
      { kind: 'touch', at: 'palm-R' },
    ],
    examiner: [
      {
        hold: 'thumb',
        at: 'palm-L',
        forearm: 60,
        thumb: 'counter',
        palm: 'viewer',
        layer: 'front',
      },
      {
        hold: 'thumb',
        at: 'palm-R',
        forearm: -60,
        thumb: 'clockwise',
        palm: 'viewer',
        layer: 'front',
      },
    ],
  },
  'palmar-grasp': {
    ...supine,
    framing: 'hand',
    rest: { ...ON_BACK, armL: { grip: 0.1, spread: 0.75 } },
    // The finger held keeps the fist from closing to its end.
    response: { armL: { grip: 0.78 } },
    marks: [
      { kind: 'touch', at: 'palm-L', off: [-0.055, 0.04], during: [1, 1] },
      { kind: 'arrow', at: 'palm-L', from: [0.36, -0.2], to: [0.19, -0.23], during: [1, 1] },
      { kind: 'arrow', at: 'palm-L', from: [0.19, -0.23], to: [0.36, -0.2], during: [2, 2] },
    ],
    examiner: [
      {
        hold: 'point',
        at: 'palm-L',
        off: [-0.165, 0.02],
        size: 0.8,
        forearm: 80,
        thumb: 'counter',
        layer: 'middle',
      },
    ],
  },
  'plantar-grasp': {
    ...supine,
    framing: 'foot',
    marks: [{ kind: 'touch', at: 'ball-L', during: [1, 1] }],
    examiner: [
      {
        hold: 'point',
        at: 'ball-L',
        off: [-0.06, -0.02],
        size: 0.72,
        forearm: 76,
        thumb: 'counter',
        layer: 'middle',
      },
    ],
  },
  'plantar-response': {
    ...supine,
    framing: 'foot',
    marks: [{ kind: 'trail', along: ['sole-heel-L', 'sole-outer-L', 'sole-curve-L', 'ball-L'] }],
  },
};
