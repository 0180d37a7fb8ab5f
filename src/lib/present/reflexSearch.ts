/** What is looked for among the reflexes, and what of the atlas fits it. */
import { doesOf, DOINGS, type Doing } from '../atlas/does.ts';
import type { NameIndex } from '../atlas/search.ts';
import type { Group, Position, Reflex } from '../atlas/types.ts';
import type { AtMoment } from '../judge/moment.ts';

export interface Wanted {
  /** A name or synonym as typed; empty: any. */
  name: string;
  position: Position | '';
  group: Group | '';
  side: 'pair' | 'midline' | '';
  /** All of these must be seen. */
  does: readonly Doing[];
}

export const ANYTHING: Wanted = { name: '', position: '', group: '', side: '', does: [] };

export const isAnything = (wanted: Wanted): boolean =>
  wanted.name.trim() === '' &&
  !wanted.position &&
  !wanted.group &&
  !wanted.side &&
  wanted.does.length === 0;

/** The reflexes that fit all of what is wanted: the best name first, else in the atlas's order. */
export function fitting(
  wanted: Wanted,
  reflexes: ReadonlyMap<string, Reflex>,
  index: NameIndex,
): Reflex[] {
  return index.find(wanted.name).flatMap((id) => {
    const reflex = reflexes.get(id);
    if (!reflex) return [];
    if (wanted.position && reflex.position !== wanted.position) return [];
    if (wanted.group && reflex.group !== wanted.group) return [];
    if (wanted.side === 'pair' && !reflex.testedPerSide) return [];
    if (wanted.side === 'midline' && !reflex.midline) return [];
    const does = doesOf(reflex);
    return wanted.does.every((doing) => does.has(doing)) ? [reflex] : [];
  });
}

/** Every doing there is, by its part. */
export const ALL_DOINGS: ReadonlySet<string> = new Set(
  Object.entries(DOINGS).flatMap(([part, all]) => all.map((doing) => `${part} ${doing}`)),
);

/** Headings under which reflexes stand at an age. */
export const HEADINGS = ['there', 'changing', 'gone', 'not-yet', 'unknown'] as const;
export type Heading = (typeof HEADINGS)[number];

export const headingOf = ({ standing }: AtMoment): Heading =>
  standing === 'coming' || standing === 'going' ? 'changing' : standing;

/** What is wanted, from the query of an address; what is not understood is left out. */
export function wantedFrom(query: URLSearchParams): Wanted {
  const side = query.get('side');
  return {
    name: query.get('find') ?? '',
    position: (query.get('position') ?? '') as Position | '',
    group: (query.get('group') ?? '') as Group | '',
    side: side === 'pair' || side === 'midline' ? side : '',
    does: (query.get('does') ?? '')
      .split(',')
      .map((doing) => doing.replace('-', ' '))
      .filter((doing): doing is Doing => ALL_DOINGS.has(doing)),
  };
}

/** The query of an address at which the same is looked for. */
export function queryOf(wanted: Wanted): string {
  const query = new URLSearchParams();
  if (wanted.name.trim()) query.set('find', wanted.name.trim());
  if (wanted.position) query.set('position', wanted.position);
  if (wanted.group) query.set('group', wanted.group);
  if (wanted.side) query.set('side', wanted.side);
  if (wanted.does.length > 0)
    query.set('does', wanted.does.map((doing) => doing.replace(' ', '-')).join(','));
  const text = query.toString();
  return text ? `?${text}` : '';
}
