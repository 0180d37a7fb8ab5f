/** A talk being given: the step, the black screen, what is zoomed into, and the digits of a jump. */
import { stepWithin, type Talk, type TalkStep } from '../lecture/talk.ts';
import type { Standing } from './talkSync.svelte.ts';

/** How many lanes are wanted at each zoom, and how much larger they are set. */
const ZOOMS = [
  { lanes: Infinity, larger: 1 },
  { lanes: 3, larger: 1.25 },
  { lanes: 1, larger: 1.5 },
] as const;

/** What a zoom asks for; beyond the last it is the last. */
export const zoomOf = (zoom: number): (typeof ZOOMS)[number] => ZOOMS[zoom] ?? ZOOMS[0];

export class TalkStage {
  readonly id: string;
  readonly #talk: () => Talk;
  readonly #changed: () => void;
  step = $state(0);
  black = $state(false);
  begunAt = $state(0);
  zoom = $state(0);
  /** The first lane in sight, where not all are. */
  laneAt = $state(0);
  digits = $state('');

  /** @param changed called when what the speaker's window shows has changed */
  constructor(id: string, talk: () => Talk, begin: Standing, changed: () => void) {
    this.id = id;
    this.#talk = talk;
    this.#changed = changed;
    this.step = stepWithin(begin.step, talk().steps.length);
    this.black = begin.black;
    this.begunAt = begin.begunAt;
  }

  get talk(): Talk {
    return this.#talk();
  }

  get steps(): number {
    return this.talk.steps.length;
  }

  get current(): TalkStep | undefined {
    return this.talk.steps[stepWithin(this.step, this.steps)];
  }

  get standing(): Standing {
    const { id, step, black, begunAt } = this;
    return { talk: id, step, black, begunAt };
  }

  /** Goes to a step counted from 0, or the nearest there is. What was zoomed into is left. */
  goTo(step: number): void {
    this.digits = '';
    const next = stepWithin(step, this.steps);
    if (next === this.step) return;
    this.step = next;
    this.zoom = 0;
    this.laneAt = 0;
    this.#changed();
  }

  goBy(by: number): void {
    this.goTo(this.step + by);
  }

  type(digit: string): void {
    this.digits = (this.digits + digit).slice(-3);
  }

  /** Goes to the step whose number was typed; without one nothing happens. */
  jump(): void {
    if (this.digits !== '') this.goTo(Number(this.digits) - 1);
  }

  toggleBlack(): void {
    this.black = !this.black;
    this.#changed();
  }

  zoomBy(by: number): void {
    this.zoom = Math.min(Math.max(this.zoom + by, 0), ZOOMS.length - 1);
  }

  /** Zooms into one lane by its place. */
  zoomInto(lane: number): void {
    this.zoom = this.zoom === ZOOMS.length - 1 ? 0 : ZOOMS.length - 1;
    this.laneAt = lane;
  }

  moveLanes(by: number, last: number): void {
    this.laneAt = Math.min(Math.max(this.laneAt + by, 0), last);
  }

  /** Undoes one thing that stands between the hall and the picture; false when there is none. */
  clear(): boolean {
    if (this.digits !== '') this.digits = '';
    else if (this.black) this.toggleBlack();
    else if (this.zoom > 0) this.zoom = 0;
    else return false;
    return true;
  }

  restart(now: number): void {
    this.begunAt = now;
    this.#changed();
  }

  /** Follows the other window. */
  follow({ talk, step, black, begunAt }: Standing): void {
    if (talk !== this.id) return;
    const next = stepWithin(step, this.steps);
    if (next !== this.step) {
      this.zoom = 0;
      this.laneAt = 0;
    }
    this.step = next;
    this.black = black;
    this.begunAt = begunAt;
  }
}
