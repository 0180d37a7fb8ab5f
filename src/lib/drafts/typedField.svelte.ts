/**
 * Words as they are typed into a field: taken into the record soon after the typing pauses, and at once
 * when the page may go, so that nothing typed is lost. A field in which somebody types is never
 * overwritten from outside.
 */
import type { Attachment } from 'svelte/attachments';
import { newStroke } from '../platform/history.svelte.ts';

/** How long the typing has to pause before what was typed is taken in, ms. */
const PAUSE_MS = 1000;

/** How words are to be taken in. */
export interface Typed {
  /** One for all that is typed in one stay in a field: it is undone in one step. */
  stroke: number;
  /** Whether typing goes on: what cannot be kept yet is left in the field, and nothing is said of it. */
  isPause: boolean;
  /** What the field said before, where something else has come to stand there meanwhile. */
  over: string | undefined;
}

export interface TypedField {
  /** What stands there now. */
  value: () => string;
  /** What the field belongs to, such as a visit; undefined while that is not in the record yet. */
  of: () => string | undefined;
  /** Takes the words in; false where that could not be. */
  take: (text: string, typed: Typed) => boolean;
}

/** From the first letter until the field is left. */
interface Stay {
  of: string | undefined;
  stroke: number;
  before: string;
  /** What the record is known to say through this field alone. */
  own: readonly string[];
  /** It was left with words that could not be kept: it stays as it was typed, to be mended. */
  isRefused: boolean;
}

class Fields {
  /** In how many fields there is something that was not taken in yet. */
  waiting = $state(0);
  readonly open = new Set<(isPause: boolean) => void>();
}

const fields = new Fields();

export const isTypedWaiting = (): boolean => fields.waiting > 0;

/** Takes in what stands in every field; where typing goes on, only what can be kept. */
export function takeTyped(isPause = false): void {
  for (const take of fields.open) take(isPause);
}

type Input = HTMLInputElement | HTMLTextAreaElement;

/** Ties an input to a place in the record. */
export function typedInto({ value, of, take }: TypedField): Attachment<Input> {
  return (input) => {
    let stay: Stay | undefined;
    let isWaiting = false;
    let timer: ReturnType<typeof setTimeout> | undefined;

    function wait(forIt: boolean): void {
      if (isWaiting !== forIt) fields.waiting += forIt ? 1 : -1;
      isWaiting = forIt;
    }

    function show(): void {
      if (input.value !== value()) input.value = value();
    }

    /** Whether the field is about something else by now, as after a removal in another window. */
    const isElsewhere = ({ of: was }: Stay): boolean => was !== undefined && was !== of();

    function takeIn(isPause: boolean): void {
      clearTimeout(timer);
      if (!stay || !isWaiting || isElsewhere(stay)) return;
      const text = input.value;
      const now = value().trim();
      const isOver = !stay.own.includes(now) && now !== text.trim();
      if (isOver && isPause) return; // two words for one thing are asked about once, not at each pause
      const over = isOver ? stay.before : undefined;
      stay.own = [...stay.own, text.trim()];
      if (!take(text, { stroke: stay.stroke, isPause, over })) return;
      wait(false);
      stay.own = [...stay.own, value().trim()];
    }

    function typed(): void {
      const before = value();
      stay ??= {
        of: of(),
        stroke: newStroke(),
        before,
        own: [before.trim()],
        isRefused: false,
      };
      stay.isRefused = false;
      wait(true);
      clearTimeout(timer);
      timer = setTimeout(() => takeIn(true), PAUSE_MS);
    }

    function left(): void {
      if (!stay) return;
      takeIn(false);
      const isRefused = isWaiting && !isElsewhere(stay);
      wait(false);
      if (isRefused) stay.isRefused = true;
      if (stay.isRefused) return;
      const isKnown = of() !== undefined;
      stay = undefined;
      if (isKnown) show();
    }

    // the field stands outside the app: what comes to stand in the record is put into it
    $effect(() => {
      const now = of();
      value();
      if (stay && isElsewhere(stay)) {
        stay = undefined;
        clearTimeout(timer);
        wait(false);
      }
      if (stay) stay.of = now;
      else show();
    });

    input.addEventListener('input', typed);
    input.addEventListener('change', left);
    input.addEventListener('blur', left);
    fields.open.add(takeIn);
    return () => {
      clearTimeout(timer);
      fields.open.delete(takeIn);
      input.removeEventListener('input', typed);
      input.removeEventListener('change', left);
      input.removeEventListener('blur', left);
      wait(false);
    };
  };
}
