/** Small pictures for the sequence strip: one pose, no face, a heavier line. */
import type { Dissociation, LimbPattern } from '../atlas/types.ts';
import { bodyShapes } from './draw.ts';
import type { Ball } from './hand.ts';
import { linePath } from './outline.ts';
import { onPage } from './page.ts';
import type { Scene, Shape } from './paint.ts';
import { NO_TINT, type Tints } from './pen.ts';
import { staged, stagedStill, type Staging } from './pose.ts';
import { contactsOf, reachOf } from './solve.ts';
import type { Vec } from './space.ts';
import type { Stage } from './stage.ts';
import { milestoneStage } from './stages.ts';
import { isMilestonePose, type MilestonePose } from './milestonePoses.ts';
import { fitted, instantOf } from './view.ts';

export type Apart = Dissociation | 'forward' | 'sideways' | 'backward';

const NOTHING = {
  label: '',
  stimulusSide: 'none',
  head: 'none',
  trunk: 'none',
  armL: 'none',
  armR: 'none',
  legL: 'none',
  legR: 'none',
  handL: 'none',
  handR: 'none',
  footL: 'none',
  footR: 'none',
} as const;

/** A pose for each station: told in the words of the atlas, staged like the response it stands for. */
const STATIONS: Record<Apart, { staged: string; pattern: LimbPattern; tinted: Partial<Tints> }> = {
  'arms-from-each-other': {
    staged: 'atnr',
    pattern: {
      ...NOTHING,
      variant: 'face-left',
      head: 'turned-left',
      armL: 'extended',
      armR: 'flexed',
      legL: 'extended',
      legR: 'flexed',
      handL: 'open',
      handR: 'closed',
    },
    tinted: { armL: 1, armR: 1 },
  },
  'arms-from-legs': {
    staged: 'stnr',
    pattern: {
      ...NOTHING,
      variant: 'neck-flexed',
      head: 'flexed',
      armL: 'flexed',
      armR: 'flexed',
      legL: 'extended',
      legR: 'extended',
    },
    tinted: { armL: 1, armR: 1 },
  },
  forward: {
    staged: 'protective-forward',
    pattern: {
      ...NOTHING,
      variant: 'forward',
      head: 'extended',
      armL: 'extended',
      armR: 'extended',
      handL: 'open',
      handR: 'open',
    },
    tinted: { armL: 1, armR: 1 },
  },
  sideways: {
    staged: 'protective-sideways',
    pattern: {
      ...NOTHING,
      variant: 'fall-left',
      head: 'tilted-right',
      trunk: 'curved-right',
      armL: 'extended',
      handL: 'open',
      also: { armL: ['abducted'] },
    },
    tinted: { armL: 1 },
  },
  backward: {
    staged: 'protective-backward',
    pattern: {
      ...NOTHING,
      variant: 'back',
      armL: 'extended',
      armR: 'extended',
      handL: 'open',
      handR: 'open',
    },
    tinted: { armL: 1, armR: 1 },
  },
};

const DOWN: Vec = [0, -1, 0];
const WIDTH = 216;
const HEIGHT = 192;
const RESPONSE = 2;
const LINE = 3.4;

const STILL: LimbPattern = { ...NOTHING, variant: 'still' };

function stationOf(apart: Apart): { staging: Staging; tinted: Partial<Tints> } {
  const { staged: id, pattern, tinted } = STATIONS[apart];
  return { staging: staged(pattern, id), tinted };
}

/** The figure of one station, to be shown 44 to 64 pixels high. The limbs that differ are tinted. */
export function thumbnailOf(place: Apart | MilestonePose): Scene {
  const { staging, tinted } = isMilestonePose(place)
    ? { staging: stagedStill(milestoneStage(place), STILL), tinted: {} }
    : stationOf(place);
  const { stage } = staging;
  const instant = { ...instantOf(staging, RESPONSE), marks: [], examiner: [] };
  // A rug is left out, so it takes no room either.
  const fittedTo: Stage = stage.ground === 'rug' ? { ...stage, ground: 'none' } : stage;
  const room = { width: WIDTH, height: HEIGHT, margin: 10, largest: 90 };
  const page = fitted([instant], fittedTo, room);
  const { body, joints } = instant;
  const figure = bodyShapes({
    page,
    body,
    joints,
    tints: { ...NO_TINT, ...tinted },
    manner: { line: LINE, detail: false, plain: true },
  });
  const floor: Shape[] = [];
  if (stage.elevation < 60) {
    const contacts = Object.values(contactsOf(body, joints, DOWN)) as (readonly Ball[])[];
    const lowest = -reachOf(contacts.flat(), DOWN);
    const y = Math.round((onPage(page, [0, lowest, 0])[1] + LINE / 2) * 10) / 10;
    floor.push({
      name: 'floor',
      d: linePath([
        [8, y],
        [WIDTH - 8, y],
      ]),
      line: 'ink',
      width: LINE * 0.9,
    });
  }
  return {
    width: WIDTH,
    height: HEIGHT,
    layers: [...floor, ...figure.behind, ...figure.front],
    marks: [],
  };
}
