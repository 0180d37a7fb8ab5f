/** Sources and reflexes of one's own as stored text. What is read back is treated as hostile. */
import * as v from 'valibot';
import type { OwnEntry } from '../atlas/own.ts';

const FORMAT = 'tidemark-own';
const VERSION = 1;

/** A stored entry: its id, and its text whatever its version. */
export interface OwnRow {
  id: string;
  text: string;
}

const cell = v.pipe(v.string(), v.maxLength(2000));
const tiers = v.picklist([
  'primary-study',
  'review',
  'textbook',
  'encyclopaedia',
  'government-health',
  'course-notes',
  'common-practice',
]);
const trunk = v.picklist([
  'flexed',
  'extended',
  'turned-left',
  'turned-right',
  'tilted-left',
  'tilted-right',
  'curved-left',
  'curved-right',
  'none',
]);
const limb = v.picklist(['flexed', 'extended', 'abducted', 'adducted', 'none']);
const end = v.picklist(['open', 'closed', 'none']);

const source = v.object({
  format: v.literal(FORMAT),
  version: v.literal(VERSION),
  kind: v.literal('source'),
  name: cell,
  tier: tiers,
  on: v.boolean(),
  rows: v.pipe(
    v.array(v.object({ reflex: cell, appears: cell, integrates: cell, note: cell })),
    v.maxLength(500),
  ),
});

const reflex = v.object({
  format: v.literal(FORMAT),
  version: v.literal(VERSION),
  kind: v.literal('reflex'),
  name: cell,
  group: v.picklist([
    'feeding',
    'grasp',
    'startle-vestibular',
    'tonic-postural',
    'spinal-withdrawal',
    'support-locomotor',
    'righting',
    'protective',
    'equilibrium',
    'other',
  ]),
  reflexKind: v.picklist(['primitive-reflex', 'postural-reaction']),
  position: v.picklist([
    'supine',
    'prone',
    'prone-suspension',
    'upright-held',
    'sitting',
    'hands-and-knees',
    'standing',
    'side-lying',
  ]),
  stimulus: v.picklist([
    'touch',
    'stroke',
    'pressure',
    'tap',
    'sound',
    'head-drop',
    'head-turn',
    'neck-bend',
    'position',
    'pull',
    'sole-contact',
    'edge-contact',
    'surface-contact',
    'suspension',
    'lowering',
    'push',
    'tip',
    'tilt',
    'roll',
    'lift',
  ]),
  sides: v.picklist(['pair', 'midline']),
  limbs: v.object({
    head: trunk,
    trunk,
    armL: limb,
    armR: limb,
    legL: limb,
    legR: limb,
    handL: end,
    handR: end,
    footL: end,
    footR: end,
  }),
  ages: v.pipe(
    v.array(v.object({ source: cell, tier: tiers, appears: cell, integrates: cell })),
    v.maxLength(100),
  ),
  on: v.boolean(),
});

const shape = v.variant('kind', [source, reflex]);

export const ownRow = ({ id, ...entry }: OwnEntry): OwnRow => ({
  id,
  text: JSON.stringify({ format: FORMAT, version: VERSION, ...entry }),
});

/** An entry from its stored text; undefined when it is not one, or of a newer version. */
export function readOwnRow({ id, text }: OwnRow): OwnEntry | undefined {
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch {
    return undefined;
  }
  const read = v.safeParse(shape, raw);
  if (!read.success) return undefined;
  const entry = read.output;
  if (entry.kind === 'source') {
    const { kind, name, tier, on, rows } = entry;
    return { kind, id, name, tier, on, rows };
  }
  const { kind, name, group, reflexKind, position, stimulus, sides, limbs, ages, on } = entry;
  return { kind, id, name, group, reflexKind, position, stimulus, sides, limbs, ages, on };
}
