/** What a reader chose once and keeps: sources, correction limits, theme, text size, recording. */
import * as v from 'valibot';
import { DEFAULT_LIMITS, type CorrectionLimits } from '../age/clocks.ts';
import { MAX_GESTATION_DAYS, MIN_GESTATION_DAYS } from '../age/gestation.ts';
import type { Clinic } from '../case/family.ts';
import { MAX_LABEL } from '../case/shape.ts';
import { ALL_SOURCES, TIERS, type SourceChoice } from './choice.ts';

export const THEMES = ['system', 'light', 'dark'] as const;
export type Theme = (typeof THEMES)[number];

/** Text sizes in per cent of the browser's own. */
export const TEXTS = ['100', '150', '200'] as const;
export type TextSize = (typeof TEXTS)[number];

/** The hand that holds a tablet: the controls lie on its side. */
export const HANDS = ['right', 'left'] as const;
export type Hand = (typeof HANDS)[number];

export const MAX_UNTIL_MONTHS = 60;

/** No clinic named yet: the family's page keeps a place to write one in. */
const NO_CLINIC: Clinic = { name: '', phone: '' };

const whole = (low: number, high: number) =>
  v.pipe(v.number(), v.integer(), v.minValue(low), v.maxValue(high));

/** What is kept, read as hostile: any part that is not understood falls back to its default. */
const shape = v.object({
  theme: v.fallback(v.picklist(THEMES), 'system'),
  text: v.fallback(v.picklist(TEXTS), '100'),
  sources: v.fallback(
    v.variant('by', [
      v.object({ by: v.literal('all') }),
      v.object({ by: v.literal('kinds'), kinds: v.array(v.picklist(TIERS)) }),
      v.object({ by: v.literal('one'), source: v.string() }),
    ]),
    { by: 'all' },
  ),
  limits: v.fallback(
    v.object({
      pretermBelowDays: whole(MIN_GESTATION_DAYS, MAX_GESTATION_DAYS),
      untilMonths: whole(0, MAX_UNTIL_MONTHS),
    }),
    DEFAULT_LIMITS,
  ),
  hand: v.fallback(v.picklist(HANDS), 'right'),
  verdicts: v.fallback(v.boolean(), false),
  clinic: v.fallback(
    v.object({
      name: v.pipe(v.string(), v.maxLength(MAX_LABEL)),
      phone: v.pipe(v.string(), v.maxLength(MAX_LABEL)),
    }),
    NO_CLINIC,
  ),
});

const KEY = 'tidemark-settings';

/** Where settings are kept: the browser's local storage, or nothing where that is denied. */
export interface Shelf {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
}

export class Settings {
  theme = $state<Theme>('system');
  text = $state<TextSize>('100');
  sources = $state.raw<SourceChoice>(ALL_SOURCES);
  limits = $state.raw<CorrectionLimits>(DEFAULT_LIMITS);
  hand = $state<Hand>('right');
  /** Whether verdicts are shown while recording; off, so that what is expected colours nothing. */
  verdicts = $state(false);
  /** The clinic on this machine, for the family's page. */
  clinic = $state.raw<Clinic>(NO_CLINIC);
  readonly #shelf: Shelf | undefined;

  constructor(shelf: Shelf | undefined, knownSources: Pick<ReadonlySet<string>, 'has'>) {
    this.#shelf = shelf;
    const kept = v.safeParse(shape, this.#read());
    if (!kept.success) return;
    const { theme, text, sources, limits, hand, verdicts, clinic } = kept.output;
    this.clinic = clinic;
    this.hand = hand;
    this.verdicts = verdicts;
    this.theme = theme;
    this.text = text;
    this.limits = limits;
    if (sources.by !== 'one' || knownSources.has(sources.source)) this.sources = sources;
  }

  /** Whether every source is judged by and the limits are the customary ones. */
  get byCustom(): boolean {
    return (
      this.sources.by === 'all' &&
      this.limits.pretermBelowDays === DEFAULT_LIMITS.pretermBelowDays &&
      this.limits.untilMonths === DEFAULT_LIMITS.untilMonths
    );
  }

  setTheme(theme: Theme): void {
    this.theme = theme;
    this.#keep();
  }

  setText(text: TextSize): void {
    this.text = text;
    this.#keep();
  }

  chooseSources(sources: SourceChoice): void {
    this.sources = sources;
    this.#keep();
  }

  setLimits(limits: CorrectionLimits): void {
    this.limits = limits;
    this.#keep();
  }

  setHand(hand: Hand): void {
    this.hand = hand;
    this.#keep();
  }

  setVerdicts(verdicts: boolean): void {
    this.verdicts = verdicts;
    this.#keep();
  }

  /** One line each; what is longer than a record takes is cut. */
  setClinic({ name, phone }: Clinic): void {
    const line = (text: string): string => text.replace(/\s+/g, ' ').trim().slice(0, MAX_LABEL);
    this.clinic = { name: line(name), phone: line(phone) };
    this.#keep();
  }

  #read(): unknown {
    try {
      return JSON.parse(this.#shelf?.getItem(KEY) ?? '{}');
    } catch {
      return {};
    }
  }

  #keep(): void {
    const { theme, text, sources, limits, hand, verdicts, clinic } = this;
    const kept = { theme, text, sources, limits, hand, verdicts, clinic };
    try {
      this.#shelf?.setItem(KEY, JSON.stringify(kept));
    } catch {
      // a full or denied storage only means that the choice is forgotten with the page
    }
  }
}
