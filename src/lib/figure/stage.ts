/** How a reflex is staged: where the infant is, what is done to it, from where it is seen. */
import type { Change } from './change.ts';
import type { Rest } from './solve.ts';
import type { Part, Setting } from './tokens.ts';

/** Points of the body that a stimulus is applied to. */
export type Anchor =
  | 'head'
  | 'crown'
  | 'occiput'
  | 'ear'
  | 'glabella'
  | 'mouth'
  | 'mouth-corner-L'
  | 'lip-upper'
  | 'lip-lower'
  | 'throat'
  | 'chest'
  | 'belly'
  | 'back'
  | 'shoulder-L'
  | 'shoulder-R'
  | 'flank-L'
  | 'flank-R'
  | 'pelvis'
  | 'pelvis-L'
  | 'palm-L'
  | 'palm-R'
  | 'hand-back-L'
  | 'wrist-L'
  | 'wrist-R'
  | 'knee-L'
  | 'knee-R'
  | 'ankle-L'
  | 'sole-L'
  | 'sole-R'
  | 'ball-L'
  | 'foot-top-L'
  | 'sole-outer-L'
  | 'sole-heel-L'
  | 'sole-curve-L'
  | 'spine-low'
  | 'spine-high'
  | 'paraspinal-high'
  | 'paraspinal-low'
  | 'ground';

/** On the page, from an anchor, in head heights: right and up. */
export type Offset = readonly [right: number, up: number];

interface Timed {
  /** From which time to which it is shown. 1 = stimulus, 2 = response; on from the stimulus if left out. */
  readonly during?: readonly [from: number, until: number];
}

export type MarkSpec = Timed &
  (
    | { readonly kind: 'touch'; readonly at: Anchor; readonly off?: Offset }
    | {
        readonly kind: 'arrow';
        readonly at: Anchor;
        readonly from: Offset;
        readonly to: Offset;
        /** Sideways bulge in head heights; positive to the left of the way. */
        readonly bulge?: number;
      }
    | { readonly kind: 'trail'; readonly along: readonly Anchor[] }
    /** Round the head, in degrees on the page, clockwise from the top. */
    | {
        readonly kind: 'turn';
        readonly at: Anchor;
        readonly from: number;
        readonly to: number;
        readonly radius?: number;
      }
    | { readonly kind: 'drop'; readonly at: Anchor; readonly off: Offset }
    | { readonly kind: 'sound'; readonly at: Anchor; readonly off: Offset }
    | { readonly kind: 'plumb'; readonly at: Anchor; readonly off?: Offset }
  );

/** An examiner's hand, drawn faintly. */
export interface ExaminerSpec extends Timed {
  readonly hold: 'point' | 'thumb' | 'flat' | 'grasp';
  readonly at: Anchor;
  readonly off?: Offset;
  /** The way the forearm leaves, in degrees on the page, clockwise from straight up. */
  readonly forearm: number;
  /** Which side of the forearm the thumb is on as seen. */
  readonly thumb?: 'clockwise' | 'counter';
  readonly palm?: 'viewer' | 'away';
  /** Against its usual size. */
  readonly size?: number;
  readonly layer: 'behind' | 'middle' | 'front';
}

export type Ground = 'mat' | 'floor' | 'rug' | 'board' | 'edge' | 'water' | 'none';

export type Framing = 'whole' | 'upper' | 'face' | 'hand' | 'foot';

export interface Stage {
  readonly setting: Setting;
  /** How far the viewer looks down, in degrees: 0 from the side, 90 from above. */
  readonly elevation: number;
  readonly ground: Ground;
  readonly framing: Framing;
  /** The eyes are covered. */
  readonly blindfold?: boolean;
  readonly rest: Change;
  readonly stimulus?: Change;
  /** Words of the pattern that the examiner brings about, so that they come with the stimulus. */
  readonly given?: readonly Part[];
  /** What the setting adds to the words, one for all phases or one for each. */
  readonly response?: Change | readonly Change[];
  /** How the body is brought to bear, for all stills or for each in turn (the last for the rest). */
  readonly resting: Rest | readonly Rest[];
  /** Arms that find the floor in the response. */
  readonly reach?: readonly {
    readonly arm: 'armL' | 'armR';
    readonly joint: 'shoulderFlex' | 'shoulderOut';
    readonly range: readonly [number, number];
  }[];
  /** Where there is a table: what touches its edge with the stimulus, and what is set down on it at last. */
  readonly placed?: {
    readonly touched: Anchor;
    readonly part: 'footL' | 'handL';
    /** From the touching point to the edge, to the right of the page, in head heights. */
    readonly gap: number;
  };
  readonly marks: readonly MarkSpec[];
  readonly examiner: readonly ExaminerSpec[];
}
