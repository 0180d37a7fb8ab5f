/**
 * Approved pictures of the chart, drawn by its own component. A picture that differs is saved beside
 * the approved one as `<name>-changed.svg`, to be looked at; to approve it, put it in the other's
 * place.
 */
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import { fromGestationWeeks, fromMonths } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import Chart from '../../src/lib/chart/Chart.svelte';
import { roughMeasure } from '../../src/lib/chart/labels.ts';
import type { ChartData, ChartView } from '../../src/lib/chart/model.ts';
import { WHOLE } from '../../src/lib/chart/viewport.ts';
import { english } from './english.ts';
import { BIRTH, CROSSED, dataOf, KESTREL } from './kestrel.ts';
import { pictureOf } from './picture.ts';

const FOLDER = new URL('../pictures/chart/', import.meta.url);

interface Scene {
  data: ChartData;
  widthPx: number;
  text?: number;
  view?: Partial<ChartView>;
  child: boolean;
}

const upTo = (months: number) => ({ from: fromGestationWeeks(20), to: fromMonths(months) });
const few = { reflexes: ['palmar-grasp', 'moro', 'atnr', 'stnr', 'landau', 'protective-forward'] };

const SCENES: Readonly<Record<string, Scene>> = {
  atlas: { data: dataOf(undefined, {}), widthPx: 1200, view: { order: 'appearing' }, child: false },
  child: { data: dataOf(KESTREL), widthPx: 1000, view: { range: upTo(14) }, child: true },
  'out-of-order': {
    data: dataOf(CROSSED, few),
    widthPx: 1000,
    view: { range: upTo(18), age: fromMonths(10.5), milestones: true },
    child: true,
  },
  opened: {
    data: dataOf(KESTREL, few),
    widthPx: 1200,
    view: { range: upTo(14), opened: new Set(['moro', 'stnr']) },
    child: true,
  },
  phone: { data: dataOf(KESTREL, few), widthPx: 390, view: { range: upTo(14) }, child: true },
  hall: {
    data: dataOf(KESTREL, few),
    widthPx: 1920,
    text: 2,
    view: { range: upTo(14) },
    child: true,
  },
};

function draw({ data, widthPx, text = 1, view, child }: Scene): string {
  const { body } = render(Chart, {
    props: {
      data,
      widthPx,
      text,
      view: {
        range: WHOLE,
        age: fromMonths(5),
        order: 'group',
        opened: new Set<string>(),
        ...view,
      },
      words: child ? english(ATLAS, BIRTH.due, BIRTH.born) : english(ATLAS),
      measure: roughMeasure,
      readout: false,
    },
  });
  return pictureOf(body);
}

describe('the chart looks as approved', () => {
  it.each(Object.entries(SCENES))('%s', (name, scene) => {
    const approved = fileURLToPath(new URL(`${name}.svg`, FOLDER));
    const changed = fileURLToPath(new URL(`${name}-changed.svg`, FOLDER));
    const picture = draw(scene);
    const known = existsSync(approved) ? readFileSync(approved, 'utf8') : '';
    if (picture === known) rmSync(changed, { force: true });
    else writeFileSync(changed, picture);
    expect(picture === known, `${name} differs: see ${name}-changed.svg`).toBe(true);
  });
});
