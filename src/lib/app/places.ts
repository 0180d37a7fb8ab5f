/** The places of the app: four above, six of a child, and the pages below them. */
import type { PlaceName } from '../words/en/places.ts';

export interface Place {
  name: PlaceName;
  href: string;
  /** Pages below it, the place itself first: the second row of links. */
  below?: readonly Place[];
  /** Pages that belong to it, and are reached from within. */
  also?: readonly string[];
}

const place = (name: PlaceName, href: string, more: Omit<Place, 'name' | 'href'> = {}): Place => ({
  name,
  href,
  ...more,
});

export const CHILD_PLACES: readonly Place[] = [
  place('chart', '#/'),
  place('visits', '#/visits'),
  place('plan', '#/next'),
  place('progress', '#/course'),
  place('conference', '#/table'),
  place('share', '#/share', {
    below: [place('file', '#/share'), place('report', '#/report'), place('family', '#/family')],
  }),
];

export const DETAILS = place('details', '#/child');

export const SECTIONS: readonly Place[] = [
  place('children', '#/children', {
    below: [
      place('everyChild', '#/children', { also: ['#/incoming', '#/server'] }),
      place('newChild', '#/children/new'),
      place('sheet', '#/sheet'),
    ],
  }),
  place('reflexes', '#/reflexes', {
    below: [
      place('everyReflex', '#/reflexes'),
      place('plainChart', '#/chart'),
      place('order', '#/order'),
      place('disagreements', '#/quarrels'),
      place('compare', '#/compare'),
      place('sources', '#/sources', { also: ['#/voices'] }),
      place('reading', '#/reading'),
      place('own', '#/own'),
    ],
  }),
  place('teach', '#/talks', {
    below: [place('talks', '#/talks'), place('quiz', '#/quiz'), place('axis', '#/axis')],
  }),
  place('settings', '#/settings', {
    below: [
      place('preferences', '#/settings'),
      place('keeping', '#/keeping'),
      place('lock', '#/lock'),
      place('about', '#/about'),
    ],
  }),
];

/** The address without what it asks for. */
const pathOf = (hash: string): string => hash.split('?')[0]!.replace(/^#?\/?$/, '#/');

/** How much of a path an address names; 0 where the path does not lie below it. */
function covers(path: string, href: string): number {
  const isIn = path === href || (href !== '#/' && path.startsWith(`${href}/`));
  return isIn ? href.length : 0;
}

const reach = (path: string, { href, also = [] }: Place): number =>
  Math.max(covers(path, href), ...also.map((one) => covers(path, one)));

/** The place among some that covers most of the path. */
function nearest(path: string, places: readonly Place[]): Place | undefined {
  const [first] = places
    .map((one) => ({ one, reach: reach(path, one) }))
    .sort((a, b) => b.reach - a.reach);
  return first && first.reach > 0 ? first.one : undefined;
}

const all = ({ below, ...one }: Place): readonly Place[] => [one, ...(below ?? [])];

/** Where an address is. */
export interface Whereabouts {
  path: string;
  /** One of the four above; undefined for an address of none. */
  section: Place | undefined;
  /** One of a child's; undefined beyond them. */
  ofChild: Place | undefined;
  /** The page in the second row. */
  below: Place | undefined;
  /** Whether the page is about the open child. */
  isChild: boolean;
}

export function whereIs(hash: string): Whereabouts {
  const path = pathOf(hash);
  const ofChild = CHILD_PLACES.find((one) => nearest(path, all(one)));
  const isChild = ofChild !== undefined || covers(path, DETAILS.href) > 0;
  const section = isChild ? SECTIONS[0] : SECTIONS.find((one) => nearest(path, all(one)));
  const rows = isChild ? ofChild?.below : section?.below;
  return { path, section, ofChild, below: nearest(path, rows ?? []), isChild };
}

/** What a link says of where one is: the page itself, or a place above it. */
export const currentAs = (
  path: string,
  href: string,
  isHere: boolean,
): 'page' | 'true' | undefined => (isHere ? (path === href ? 'page' : 'true') : undefined);
