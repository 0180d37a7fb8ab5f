/** When a moving figure is where: seconds played to time in the response. Plain arithmetic, no clock. */

/** Seconds that each whole moment is held, and seconds taken to reach the next. */
const HOLD = { rest: 0.7, stimulus: 0.8, response: 1.1 } as const;
const MOVE = { stimulus: 0.6, response: 0.55, phase: 0.7 } as const;
/** A rhythm goes to and fro without resting long at its turns. */
const BEAT = { hold: 0.12, move: 0.6, times: 3 } as const;

/** One stretch of a performance: from one time to another, or held. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly seconds: number;
}

/** A response as it is played once through, and once more for each beat of a rhythm. */
export interface Pace {
  readonly stretches: readonly Stretch[];
  readonly seconds: number;
}

/**
 * How a response is played.
 * @param last the time of its last phase, 2 for a response of one phase
 * @param rhythmic whether its phases alternate
 */
export function paceOf(last: number, rhythmic: boolean): Pace {
  const stretches: Stretch[] = [
    { from: 0, to: 0, seconds: HOLD.rest },
    { from: 0, to: 1, seconds: MOVE.stimulus },
    { from: 1, to: 1, seconds: HOLD.stimulus },
    { from: 1, to: 2, seconds: MOVE.response },
  ];
  if (rhythmic && last > 2) {
    for (let beat = 0; beat < BEAT.times; beat++)
      stretches.push(
        { from: 2, to: 2, seconds: BEAT.hold },
        { from: 2, to: last, seconds: BEAT.move },
        { from: last, to: last, seconds: BEAT.hold },
        { from: last, to: 2, seconds: BEAT.move },
      );
    stretches.push({ from: 2, to: 2, seconds: HOLD.response });
  } else {
    stretches.push({ from: 2, to: 2, seconds: HOLD.response });
    for (let phase = 3; phase <= last; phase++)
      stretches.push(
        { from: phase - 1, to: phase, seconds: MOVE.phase },
        { from: phase, to: phase, seconds: HOLD.response },
      );
  }
  return { stretches, seconds: stretches.reduce((sum, s) => sum + s.seconds, 0) };
}

/** The time in the response after some seconds of play; eased, so that limbs start and stop softly. */
export function timeAt(pace: Pace, seconds: number): number {
  let left = Math.max(0, seconds);
  for (const { from, to, seconds: long } of pace.stretches) {
    if (left <= long) {
      const t = long === 0 ? 1 : left / long;
      return from + (to - from) * t * t * (3 - 2 * t);
    }
    left -= long;
  }
  return pace.stretches.at(-1)?.to ?? 0;
}

/** The seconds of play at which a time is first reached. */
export function secondsAt(pace: Pace, time: number): number {
  let before = 0;
  for (const { from, to, seconds } of pace.stretches) {
    if (from === time) return before;
    before += seconds;
    if (to === time) return before;
  }
  return pace.seconds;
}
