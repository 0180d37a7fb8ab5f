/** What every view from the side has in common. */
/** A little turned to the viewer, so that the far limbs show. */
export const FACING_RIGHT = 76;
/** The infant's left side near the viewer, for what is done to the left. */
export const FACING_LEFT = -76;

export const fromTheSide = {
  elevation: 0,
  ground: 'floor',
  framing: 'whole',
  resting: 'whole',
  marks: [],
  examiner: [],
} as const;
