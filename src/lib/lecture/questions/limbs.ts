/** Which limb does what: in one response, and which response does a thing. */
import { DOINGS, doesOf, type Doing } from '../../atlas/does.ts';
import { actsOf, isStill, sameAct, type Act, type BodyPart } from '../../atlas/moments.ts';
import type { LimbPattern, Reflex } from '../../atlas/types.ts';
import { band, dealt, WRONG, type Maker } from './deal.ts';
import { askedReflexes, type Ground } from './ground.ts';
import type { Choice } from '../../words/question.ts';
import { doingsOf, mostAlike } from './near.ts';
import { restsOf } from './rests.ts';

/** What a limb would do, did it do the contrary. Only contraries are offered: they cannot both be meant. */
const CONTRARY: Readonly<Record<string, string>> = {
  flexed: 'extended',
  extended: 'flexed',
  abducted: 'adducted',
  adducted: 'abducted',
  open: 'closed',
  closed: 'open',
};

const OTHER_SIDE = { left: 'right', right: 'left' } as const;

const swapSide = (token: string): string =>
  token.replace(/(left|right)$/, (side) => OTHER_SIDE[side as 'left' | 'right']);

const contrary = (tokens: readonly string[]): readonly string[] | undefined => {
  const swapped = tokens.map((token) => CONTRARY[token]);
  return swapped.every((token) => token !== undefined) ? swapped.toSorted() : undefined;
};

/** An act on the other side of the body. */
const mirroredAct = ({ left, right }: Act): Act =>
  right === null
    ? { left: left.map(swapSide), right }
    : { left: right.map(swapSide), right: left.map(swapSide) };

/** Near acts that are surely not the one of the pattern. */
export function wrongActs(part: BodyPart, act: Act): Act[] {
  const { left, right } = act;
  if (right === null) {
    const [token] = left;
    if (left.length !== 1 || !token) return [];
    if (/(left|right)$/.test(token))
      return [
        { left: [swapSide(token)], right },
        ...['flexed', 'extended'].map((t) => ({ left: [t], right })),
      ];
    const other = CONTRARY[token];
    return other
      ? [
          { left: [other], right },
          { left: [], right },
        ]
      : [];
  }
  const [l, r] = [contrary(left), contrary(right)];
  if (!l || !r) return [];
  const all: Act[] =
    left.length === 0 || right.length === 0
      ? [mirroredAct(act), { left: l, right: r }, mirroredAct({ left: l, right: r })]
      : [
          { left: l, right },
          { left, right: r },
          { left: l, right: r },
        ];
  return all.filter((one) => !sameAct(one, act));
}

const PARTS: readonly BodyPart[] = ['arms', 'legs', 'hands', 'feet', 'head', 'trunk'];

/** A response with phases does several things in turn, so its limbs are asked about nowhere. */
const plain = (pattern: LimbPattern): boolean => !pattern.phases;

/** Where sources describe the response to one stimulus in two ways, no answer is the only right one. */
const ofOneAccount = ({ patterns }: Reflex): boolean => patterns.every((one) => !one.otherAccount);

/** Parts that the stimulus itself moves are no part of the answer: a head that is turned, a limb held. */
const GIVEN: Readonly<Partial<Record<Reflex['stimulus'], readonly BodyPart[]>>> = {
  'head-turn': ['head'],
  'neck-bend': ['head'],
  'head-drop': ['head'],
  position: ['head'],
};

function askedParts(reflex: Reflex, pattern: LimbPattern): BodyPart[] {
  const acts = actsOf(pattern);
  return PARTS.filter((part) => !isStill(acts[part]) && !GIVEN[reflex.stimulus]?.includes(part));
}

export const limb: Maker = {
  subjects: (ground) =>
    askedReflexes(ground)
      .filter(ofOneAccount)
      .flatMap((reflex) =>
        reflex.patterns
          .filter(plain)
          .flatMap((pattern) =>
            askedParts(reflex, pattern).map((part) => `${reflex.id} ${pattern.variant} ${part}`),
          ),
      ),
  make(subject, ground, chance) {
    const [id, variant, part] = subject.split(' ') as [string, string, BodyPart];
    const reflex = ground.atlas.reflexes.get(id);
    const pattern = reflex?.patterns.find((one) => one.variant === variant);
    if (!reflex || !pattern) return undefined;
    const own = actsOf(pattern)[part];
    // which side the answer lies on means nothing where no side is said
    const isSided = pattern.stimulusSide !== 'none';
    const side = isSided ? (chance.one(['left', 'right'] as const) ?? 'left') : 'left';
    const turned = (act: Act): Act => (side === 'right' ? mirroredAct(act) : act);
    if (!isSided && !(own.right === null || sameAct(own, mirroredAct(own)))) return undefined;
    const wrong = wrongActs(part, own);
    const choice = (act: Act): Choice => ({ is: 'act', part, act: turned(act) });
    const deal = dealt(choice(own), wrong.map(choice), chance);
    return (
      deal && {
        stem: { kind: 'limb', reflex: id, variant, part, side },
        ...deal,
        why: { reflexes: [id], milestones: [], ageDays: null, rests: restsOf([id], ground) },
        round: side,
      }
    );
  },
};

/** What can be seen anywhere in any infant tells nothing. */
const TELLING: readonly Doing[] = Object.entries(DOINGS)
  .filter(([part]) => part !== 'face')
  .flatMap(([part, words]) => words.map((word) => `${part} ${word}` as Doing));

/** Whether every variant of a response does a thing, so that it is seen whichever is tested. */
const alwaysDoes = (reflex: Reflex, doing: Doing): boolean =>
  reflex.patterns.every((pattern) => doesOf({ patterns: [pattern] }).has(doing));

export const does: Maker = {
  subjects: (ground) =>
    askedReflexes(ground).flatMap((reflex) =>
      TELLING.filter((doing) => alwaysDoes(reflex, doing)).map(
        (doing) => `${reflex.id} ${doing.replace(' ', ':')}`,
      ),
    ),
  make(subject, ground: Ground, chance, difficulty) {
    const [id = '', said = ''] = subject.split(' ');
    const doing = said.replace(':', ' ') as Doing;
    const reflex = ground.atlas.reflexes.get(id);
    if (!reflex || !alwaysDoes(reflex, doing)) return undefined;
    const near = mostAlike(ground, reflex, (other) => !doingsOf(ground, other).has(doing));
    const wrong = chance.shuffled(band(near, difficulty, WRONG + 1)).slice(0, WRONG);
    const choice = (one: string): Choice => ({ is: 'reflex', reflex: one });
    const deal = dealt(choice(id), wrong.map(choice), chance);
    const reflexes = [id, ...wrong];
    return (
      deal && {
        stem: { kind: 'does', doing },
        ...deal,
        why: { reflexes, milestones: [], ageDays: null, rests: restsOf(reflexes, ground) },
        round: '',
      }
    );
  },
};
