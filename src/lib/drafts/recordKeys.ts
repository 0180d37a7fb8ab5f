/** What a key means while recording. Nothing where a key is wanted elsewhere. */
import { RESPONSES, type Response } from '../case/finding.ts';

export type RecordKey =
  | { do: 'line' | 'side'; by: number }
  | { do: 'answer'; response: Response; both: boolean }
  | { do: 'clear' | 'state' | 'comment' | 'verdict' | 'tried' | 'undo' | 'keys' };

const MOVES: Readonly<Record<string, RecordKey>> = {
  ArrowDown: { do: 'line', by: 1 },
  ArrowUp: { do: 'line', by: -1 },
  ArrowRight: { do: 'side', by: 1 },
  ArrowLeft: { do: 'side', by: -1 },
  Backspace: { do: 'clear' },
  Delete: { do: 'clear' },
  s: { do: 'state' },
  c: { do: 'comment' },
  v: { do: 'verdict' },
  t: { do: 'tried' },
  u: { do: 'undo' },
  '?': { do: 'keys' },
};

/** A key with the digit it lies on, wherever that is on the keyboard, and whatever Shift makes of it. */
export interface Pressed {
  key: string;
  code: string;
  shiftKey: boolean;
  ctrlKey: boolean;
  metaKey: boolean;
  altKey: boolean;
}

export function recordKey(pressed: Pressed): RecordKey | undefined {
  if (pressed.ctrlKey || pressed.metaKey || pressed.altKey) return undefined;
  const key = pressed.key.length === 1 ? pressed.key.toLowerCase() : pressed.key;
  // a digit as it is written comes first, so that every layout of keys has it
  const digit = /^[0-5]$/.exec(key)?.[0] ?? /^(?:Digit|Numpad)([0-5])$/.exec(pressed.code)?.[1];
  const move = MOVES[key];
  if (move) return move;
  const both = pressed.shiftKey;
  if (digit === '0' || key === 'n') return { do: 'answer', response: 'not-assessable', both };
  const response = digit === undefined ? undefined : RESPONSES[Number(digit) - 1];
  return response && { do: 'answer', response, both };
}

/** Whether keys go into what has the focus: a field to type in, or a list to choose from. */
export const isTypedIn = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable ||
    target.matches('input:not([type=radio], [type=checkbox]), textarea, select, [role=combobox]'));
