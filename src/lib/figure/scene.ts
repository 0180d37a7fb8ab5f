import type { LimbPattern } from '../atlas/types.ts';
import { bodyShapes } from './draw.ts';
import { groundShapes } from './ground.ts';
import { helperShapes } from './helper.ts';
import { markShapes } from './marks.ts';
import type { Scene, Shape } from './paint.ts';
import type { Tints } from './pen.ts';
import { phasesOf, staged } from './pose.ts';
import { HEIGHT, momentOf, pageOf, WIDTH } from './view.ts';

export type { Scene, Shape } from './paint.ts';
export { thumbnailOf } from './thumbnail.ts';

/** The moments every response has; further phases are keyed `phase-2` and on. */
export type Moment = 'rest' | 'stimulus' | 'response';

/** The whole moments of a response in order, with the atlas' words for its phases. */
export function momentsOf(
  pattern: LimbPattern,
  _reflexId: string,
): readonly { time: number; key: string; label?: string }[] {
  const phases = pattern.phases ?? [];
  const label = phases[0]?.label;
  return [
    { time: 0, key: 'rest' },
    { time: 1, key: 'stimulus' },
    { time: 2, key: 'response', ...(label ? { label } : {}) },
    ...phases
      .slice(1)
      .map((phase, i) => ({ time: 3 + i, key: `phase-${i + 2}`, label: phase.label })),
  ];
}

export function sceneOf(
  pattern: LimbPattern,
  reflexId: string,
  time: number,
  side: 'left' | 'right',
): Scene {
  const { stage } = staged(pattern, reflexId);
  const page = pageOf(pattern, reflexId, side === 'right');
  const { joints, body, marks, helpers } = momentOf(pattern, reflexId, time);
  const line = 1.6;
  const layer = (name: 'behind' | 'middle' | 'front'): Shape[] =>
    helpers.filter((h) => h.spec.layer === name).flatMap((h) => helperShapes(page, h, line));
  const figure = bodyShapes(page, body, joints, tintsOf(pattern, reflexId, time), {
    line,
    detail: false,
    plain: false,
  });
  return {
    width: WIDTH,
    height: HEIGHT,
    layers: [
      ...groundShapes(page, stage, WIDTH, HEIGHT),
      ...layer('behind'),
      ...figure.behind,
      ...layer('middle'),
      ...figure.front,
      ...layer('front'),
    ],
    marks: marks.flatMap((m) => markShapes(page, m, 2.6)),
  };
}

function tintsOf(pattern: LimbPattern, reflexId: string, time: number): Tints {
  const { stage } = staged(pattern, reflexId);
  const phases = phasesOf(pattern);
  const given = stage.given ?? [];
  const at = (index: number): Tints => {
    const phase = index < 0 ? undefined : phases[index];
    const on = (part: 'armL' | 'armR' | 'legL' | 'legR'): number => {
      if (!phase || given.includes(part)) return 0;
      const end = part.startsWith('arm')
        ? phase[`hand${part.slice(3)}` as 'handL']
        : phase[`foot${part.slice(3)}` as 'footL'];
      return phase[part] !== 'none' || end !== 'none' ? 1 : 0;
    };
    return {
      head: phase && phase.head !== 'none' && !given.includes('head') ? 1 : 0,
      trunk: phase && /curved|turned/.test(phase.trunk) && !given.includes('trunk') ? 1 : 0,
      armL: on('armL'),
      armR: on('armR'),
      legL: on('legL'),
      legR: on('legR'),
    };
  };
  const t = Math.max(0, Math.min(time, phases.length + 1)) - 2;
  const low = Math.floor(t);
  const [a, b] = [at(low), at(Math.min(phases.length - 1, low + 1))];
  const share = t - low;
  const mixed = { ...a } as Record<keyof Tints, number>;
  for (const key of Object.keys(a) as (keyof Tints)[])
    mixed[key] = a[key] + (b[key] - a[key]) * share;
  return mixed;
}
