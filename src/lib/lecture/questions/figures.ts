/** Naming a response from its moving figure, and telling look-alikes apart. */
import { lookAlikes } from '../../atlas/likeness.ts';
import {
  actsOf,
  BODY_PARTS,
  bodyMoments,
  isStill,
  sameAct,
  type Act,
  type BodyPart,
} from '../../atlas/moments.ts';
import type { Reflex } from '../../atlas/types.ts';
import { band, dealt, LEAST_WRONG, WRONG, type Maker } from './deal.ts';
import { askedReflexes } from './ground.ts';
import type { Aspect, Choice } from '../../words/question.ts';
import { kept } from './kept.ts';
import { alikeness, mostAlike } from './near.ts';
import { restsOf } from './rests.ts';

const swapped = (token: string): string =>
  token.endsWith('left') ? token.replace(/left$/, 'right') : token.replace(/right$/, 'left');

/** The same act, or the same seen on the other side of the body. */
function alike(a: Act, b: Act): boolean {
  const mirror: Act =
    b.right === null
      ? { left: b.left.map(swapped), right: null }
      : { left: b.right.map(swapped), right: b.left.map(swapped) };
  return sameAct(a, b) || sameAct(a, mirror);
}

/** Whether some moment of one looks in every part like some moment of the other: no telling by the limbs. */
export const isSameSight = (a: Reflex, b: Reflex): boolean =>
  bodyMoments(a).some((x) =>
    bodyMoments(b).some((y) => BODY_PARTS.every((part) => alike(x.acts[part], y.acts[part]))),
  );

const reflexChoice = (reflex: string): Choice => ({ is: 'reflex', reflex });

export const name: Maker = {
  subjects: (ground) =>
    askedReflexes(ground).flatMap((reflex) =>
      reflex.patterns.map(({ variant }) => `${reflex.id} ${variant}`),
    ),
  make(subject, ground, chance, difficulty) {
    const [id = '', variant = ''] = subject.split(' ');
    const reflex = ground.atlas.reflexes.get(id);
    if (!reflex) return undefined;
    const near = mostAlike(ground, reflex, (other) => !isSameSight(reflex, other));
    const wrong = chance.shuffled(band(near, difficulty, WRONG + 1)).slice(0, WRONG);
    const deal = dealt(reflexChoice(id), wrong.map(reflexChoice), chance);
    const side = chance.one(['left', 'right'] as const) ?? 'left';
    const reflexes = [id, ...wrong];
    return (
      deal && {
        stem: { kind: 'name', reflex: id, variant, side },
        ...deal,
        why: { reflexes, milestones: [], ageDays: null, rests: restsOf(reflexes, ground) },
        round: '',
      }
    );
  },
};

/** How alike two responses must look to be asked apart, by difficulty. Choices of ours. */
const ALIKE = { easy: 0.4, medium: 0.5, hard: 0.6 } as const;

/** The acts of a part in the moments that every variant of a response is known by. */
const mainActs = (reflex: Reflex, part: BodyPart): Act[] =>
  reflex.patterns.map((pattern) => actsOf(pattern)[part]);

/** Whether a part always moves, and always differently, in two responses: seen on either side. */
function differs(a: Reflex, b: Reflex, part: BodyPart): boolean {
  return mainActs(a, part).every((x) =>
    mainActs(b, part).every((y) => !isStill(x) && !isStill(y) && !alike(x, y)),
  );
}

/** Whether a part does the same in every moment of both. */
function isSame(a: Reflex, b: Reflex, part: BodyPart): boolean {
  const all = [...bodyMoments(a), ...bodyMoments(b)].map(({ acts }) => acts[part]);
  return all.every((act) => sameAct(act, all[0]!));
}

/** What surely tells two responses apart, and what surely does not. */
export function aspectsOf(a: Reflex, b: Reflex): { tells: Aspect[]; same: Aspect[] } {
  const given = ['stimulus', 'position'] as const;
  return {
    tells: [
      ...given.filter((aspect) => a[aspect] !== b[aspect]),
      ...BODY_PARTS.filter((part) => differs(a, b, part)),
    ],
    same: [
      ...given.filter((aspect) => a[aspect] === b[aspect]),
      ...BODY_PARTS.filter((part) => isSame(a, b, part)),
    ],
  };
}

export const apart: Maker = {
  subjects: (ground) =>
    kept(ground.sheet, 'look-alikes', () =>
      lookAlikes([...ground.atlas.reflexes.values()], ALIKE.easy),
    )
      .filter(({ a, b }) => ground.asked.has(a.id) || ground.asked.has(b.id))
      .map(({ a, b }) => `${a.id} ${b.id}`),
  make(subject, ground, chance, difficulty) {
    const [idA = '', idB = ''] = subject.split(' ');
    const [a, b] = [ground.atlas.reflexes.get(idA), ground.atlas.reflexes.get(idB)];
    if (!a || !b || alikeness(ground, a, b) < ALIKE[difficulty]) return undefined;
    const { tells, same } = aspectsOf(a, b);
    // a position that is in the name tells too easily, where anything else tells
    const telling = tells.length > 1 ? tells.filter((aspect) => aspect !== 'position') : tells;
    const right = chance.one(telling);
    if (!right || same.length < LEAST_WRONG) return undefined;
    const choice = (aspect: Aspect): Choice => ({ is: 'aspect', aspect });
    // what moves in both and alike is nearer than what moves in neither
    const moving = same.filter(
      (aspect) =>
        aspect === 'stimulus' ||
        aspect === 'position' ||
        !isStill(mainActs(a, aspect)[0] ?? { left: [], right: null }),
    );
    const rest = chance.shuffled(same.filter((aspect) => !moving.includes(aspect)));
    const wrong = [...chance.shuffled(moving), ...rest].slice(0, WRONG);
    const deal = dealt(choice(right), wrong.map(choice), chance);
    return (
      deal && {
        stem: { kind: 'apart', a: idA, b: idB },
        ...deal,
        why: {
          reflexes: [idA, idB],
          milestones: [],
          ageDays: null,
          rests: restsOf([idA, idB], ground),
        },
        round: right,
      }
    );
  },
};
