import type { LimbPattern, Position } from '../atlas/types.ts';
import { bodyShapes } from './draw.ts';
import { palmShapes, soleShapes } from './closeup.ts';
import { groundShapes, WINDOW } from './ground.ts';
import { examinerShapes } from './examiner.ts';
import { markShapes } from './marks.ts';
import type { Scene, Shape } from './paint.ts';
import type { Pen } from './pen.ts';
import { staged } from './pose.ts';
import type { ExaminerSpec } from './stage.ts';
import { tintsAt } from './tint.ts';
import { HEIGHT, instantOf, mirroredPage, setupOf, WIDTH } from './view.ts';

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

/**
 * One still of a response, or a moment between two.
 * @param time 0 rest, 1 stimulus, 2 response, 3 and on its further phases
 * @param side the side of a one-sided stimulus; the atlas writes it on the left
 * @param position for a reflex that has no staging of its own: it is drawn from its pattern and this
 */
export function sceneOf(
  pattern: LimbPattern,
  reflexId: string,
  time: number,
  side: 'left' | 'right',
  position?: Position,
): Scene {
  const staging = staged(pattern, reflexId, position);
  const { stage } = staging;
  const setup = setupOf(staging);
  const page = side === 'right' ? mirroredPage(setup.page) : setup.page;
  const { joints, body, marks, examiner } = instantOf(staging, time);
  const { framing } = stage;
  const manner = {
    line: framing === 'whole' ? 1.5 : 1.8,
    detail: framing === 'face' || framing === 'upper',
    plain: false,
    blindfold: stage.blindfold ?? false,
  };
  const pen: Pen = { page, body, joints, tints: tintsAt(pattern, stage, time), manner };
  const figure =
    framing === 'hand' ? palmShapes(pen) : framing === 'foot' ? soleShapes(pen) : bodyShapes(pen);
  const hands = (layer: ExaminerSpec['layer']): Shape[] =>
    examiner
      .filter((h) => h.spec.layer === layer)
      .flatMap((h) => examinerShapes(page, h, manner.line));
  return {
    width: WIDTH,
    height: HEIGHT,
    layers: [
      ...groundShapes(page, stage, joints, { width: WIDTH, height: HEIGHT, time }, setup.edge),
      ...hands('behind'),
      ...figure.behind,
      ...hands('middle'),
      ...figure.front,
      ...hands('front'),
    ],
    marks: marks.flatMap((m) => markShapes(page, m, 2.5)),
    ...(framing === 'whole' ? {} : { window: WINDOW }),
  };
}
