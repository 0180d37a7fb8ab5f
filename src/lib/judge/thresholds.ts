/**
 * The thresholds of judgement. They are ours, a choice and no published rule; they stand in this one
 * place and are said on the screen.
 */

/** A persisting or missing response with at least this share is to be discussed. */
export const DISCUSS_SHARE = 0.9;

/** With a share above this one it is watched, with less it asks for nothing: half of the sources see it so. */
export const WATCH_SHARE = 0.5;

/** A response had credibly gone at a miss from this probability on: more likely gone than only missed. */
export const CREDIBLY_GONE = 0.5;

/** A difference between the sides that was there on so many days in a row stays: it asks for more. */
export const STAYS_DAYS = 2;

/** A verdict that rests on fewer voices than this is watched at most. */
export const TWO_VOICES = 2;

/** So many healthy infants must have been counted for a count to hold a verdict to a watch. */
export const COUNTED_INFANTS = 30;

/** An answer is common where the lower 95 % bound of its share in healthy infants is at least this. */
export const COMMON_SHARE = 0.1;

/** A marked difference between the sides is to be discussed where the mean expectation is at least this. */
export const MARKED_EXPECTATION = 0.5;

/** A weak response is to be watched where the mean probability of established is at least this. */
export const WEAK_ESTABLISHED = 0.5;

/** A verdict is firm when every source that speaks gives it at least this much of what it says. */
export const FIRM_SHARE = 0.95;

/** Two answers this many steps apart differ markedly (weak and brisk, elicited and obligatory). */
export const MARKED_STEPS = 2;

/**
 * A source that is this unlikely to speak is silent at an age: silence then covers the whole of the
 * 95 % of ages that the dating leaves likely.
 */
export const SPEAKS_AT_LEAST = 0.025;
