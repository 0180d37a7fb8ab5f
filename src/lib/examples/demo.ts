/**
 * Kestrel, an invented child, with whom Tidemark opens the first time. Born early, seen three times;
 * chosen so that each kind of verdict, an uneven pair and an order that holds can be seen.
 */
import { daysBetween, type CivilDate } from '../age/civil.ts';
import type { Atlas } from '../atlas/atlas.ts';
import type { Case } from '../case/case.ts';
import type { InfantState, Response } from '../case/finding.ts';
import { parseRaw } from '../case/parse.ts';
import { FORMAT, VERSION, type RawCase, type RawFinding } from '../case/shape.ts';
import { shifted, WRITTEN_FOR } from './shift.ts';

export const DEMO_ID = 'kestrel';

const at = (
  state: InfantState,
  reflex: string,
  side: 'left' | 'right' | 'midline',
  response: Response,
  note = '',
): RawFinding => ({ reflex, side, response, state, note });

/** A reflex answered on both sides, or on the midline where there are no sides. */
function seen(
  state: InfantState,
  reflex: string,
  left: Response,
  right: Response = left,
): RawFinding[] {
  return [at(state, reflex, 'left', left), at(state, reflex, 'right', right)];
}

const midline = (
  state: InfantState,
  reflex: string,
  response: Response,
  note = '',
): RawFinding[] => [at(state, reflex, 'midline', response, note)];

const ALERT = 'quiet-alert';

/** The ids are those that follow for a child who was kept before visits had any. */
export const DEMO_RAW: RawCase = {
  format: FORMAT,
  version: VERSION,
  child: {
    label: 'Kestrel',
    born: '2025-10-04',
    gestation: '31w2d',
    dating: 'ultrasound-first-trimester',
    invented: true,
  },
  visits: [
    {
      id: 'bfc49b84-de48-5e05-87e0-8acb0171b43e',
      on: '2026-01-12',
      examiner: 'Rowan',
      note: 'First visit after discharge.',
      findings: [
        ...midline(ALERT, 'rooting', 'elicited'),
        ...midline(ALERT, 'sucking', 'elicited'),
        ...seen(ALERT, 'palmar-grasp', 'elicited'),
        ...seen(ALERT, 'plantar-grasp', 'elicited'),
        ...seen('active-alert', 'moro', 'elicited', 'weak'),
        ...seen(ALERT, 'atnr', 'elicited'),
        ...midline(ALERT, 'tlr', 'elicited'),
        ...seen(ALERT, 'galant', 'elicited'),
        ...seen(ALERT, 'crossed-extension', 'elicited'),
        ...seen(ALERT, 'stepping', 'elicited'),
      ],
      milestones: [],
    },
    {
      id: '664f4deb-1f06-5a64-959f-99651086ea00',
      on: '2026-03-16',
      examiner: 'Rowan',
      note: '',
      findings: [
        ...seen(ALERT, 'palmar-grasp', 'elicited'),
        ...seen('active-alert', 'moro', 'elicited', 'weak'),
        ...seen(ALERT, 'atnr', 'elicited'),
        ...seen(ALERT, 'stepping', 'not-elicited'),
        ...midline(ALERT, 'stnr', 'not-elicited'),
        ...midline(ALERT, 'landau', 'not-elicited'),
      ],
      milestones: [],
    },
    {
      id: '7b8bcf35-dca5-5242-bf4c-4e3ef64d123f',
      on: '2026-05-11',
      examiner: 'Rowan',
      note: 'Slept well before; awake and calm until the Moro.',
      findings: [
        ...midline(ALERT, 'rooting', 'not-elicited'),
        ...midline(ALERT, 'sucking', 'not-elicited'),
        ...seen(ALERT, 'palmar-grasp', 'elicited'),
        ...seen(ALERT, 'plantar-grasp', 'elicited'),
        ...seen('active-alert', 'moro', 'elicited', 'weak'),
        ...seen(ALERT, 'atnr', 'obligatory', 'elicited'),
        ...midline(ALERT, 'stnr', 'elicited'),
        ...midline(ALERT, 'tlr', 'elicited'),
        ...seen(ALERT, 'galant', 'not-elicited'),
        ...seen(ALERT, 'crossed-extension', 'elicited'),
        ...seen(ALERT, 'stepping', 'not-elicited'),
        ...midline(ALERT, 'landau', 'elicited'),
        ...midline('crying', 'optical-righting', 'not-elicited', 'Upset after the Moro.'),
        ...seen(ALERT, 'protective-forward', 'not-elicited'),
      ],
      milestones: [{ milestone: 'sitting', seen: false }],
    },
  ],
  question: 'The tonic neck response holds the infant on the left: what do we look at next?',
};

/**
 * The invented child, through the door that every record passes, with its dates as near a day as they were to
 * the day it was written for: who meets it later meets a child of the same age, seen as lately. One that is
 * stored keeps its dates.
 */
export function demoCase(atlas: Atlas, on: CivilDate = WRITTEN_FOR): Case {
  const parsed = parseRaw(shifted(DEMO_RAW, daysBetween(WRITTEN_FOR, on)), atlas);
  if (!parsed.ok)
    throw new Error(`the invented child has faults: ${JSON.stringify(parsed.problems)}`);
  return parsed.value;
}
