/** What a reader chose once and keeps: sources, correction limits, theme, text size, recording. */
import * as v from 'valibot';
import { DEFAULT_LIMITS, type CorrectionLimits } from '../age/clocks.ts';
import { MAX_GESTATION_DAYS, MIN_GESTATION_DAYS } from '../age/gestation.ts';
import type { Clinic } from '../case/family.ts';
import { MAX_LABEL } from '../case/shape.ts';
import { DEFAULT_SOURCES, TIERS, type SourceChoice } from '../present/sourceChoice.ts';
import { SETTINGS } from '../platform/storageKeys.ts';
import { partsStepped } from '../platform/lists.ts';
import { Small, type Shelf } from '../platform/persisted.svelte.ts';

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
      v.object({ by: v.literal('default') }),
      v.object({ by: v.literal('all') }),
      v.object({ by: v.literal('kinds'), kinds: v.array(v.picklist(TIERS)) }),
      v.object({ by: v.literal('one'), source: v.string() }),
    ]),
    { by: 'default' },
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

type Held = v.InferOutput<typeof shape>;

const BLANK = v.parse(shape, {
  theme: 'system',
  text: '100',
  sources: DEFAULT_SOURCES,
  limits: DEFAULT_LIMITS,
  hand: 'right',
  verdicts: false,
  clinic: NO_CLINIC,
});

export type SettingsDid = 'changed' | 'by-custom' | 'brought-back';

export class Settings {
  readonly kept: Small<Held, SettingsDid>;

  constructor(shelf: Shelf | undefined, knownSources: Pick<ReadonlySet<string>, 'has'>) {
    this.kept = new Small<Held, SettingsDid>(shelf, {
      key: SETTINGS,
      blank: BLANK,
      read: (raw) => {
        const read = v.safeParse(shape, raw);
        if (!read.success) return undefined;
        const { sources } = read.output;
        const isKnown = sources.by !== 'one' || knownSources.has(sources.source);
        return isKnown ? read.output : { ...read.output, sources: { by: 'default' } };
      },
      stepped: (now, from, to) => partsStepped({ ...now }, { ...from }, { ...to }) as Held,
    });
  }

  get theme(): Theme {
    return this.kept.now.theme;
  }

  get text(): TextSize {
    return this.kept.now.text;
  }

  get sources(): SourceChoice {
    return this.kept.now.sources;
  }

  get limits(): CorrectionLimits {
    return this.kept.now.limits;
  }

  /** The hand that holds a tablet. */
  get hand(): Hand {
    return this.kept.now.hand;
  }

  /** Whether verdicts are shown while recording; off, so that what is expected colours nothing. */
  get verdicts(): boolean {
    return this.kept.now.verdicts;
  }

  /** The clinic on this machine, for the family's page. */
  get clinic(): Clinic {
    return this.kept.now.clinic;
  }

  /** Whether the sources of the default are judged by and the limits are the customary ones. */
  get byCustom(): boolean {
    return (
      this.sources.by === 'default' &&
      this.limits.pretermBelowDays === DEFAULT_LIMITS.pretermBelowDays &&
      this.limits.untilMonths === DEFAULT_LIMITS.untilMonths
    );
  }

  setTheme(theme: Theme): void {
    this.#change({ theme });
  }

  setText(text: TextSize): void {
    this.#change({ text });
  }

  chooseSources(sources: SourceChoice): void {
    this.#change({
      sources: sources.by === 'kinds' ? { by: 'kinds', kinds: [...sources.kinds] } : sources,
    });
  }

  setLimits(limits: CorrectionLimits): void {
    this.#change({ limits });
  }

  /** The sources of the default and the customary limits, in one step. */
  setByCustom(): void {
    this.#change({ sources: { by: 'default' }, limits: DEFAULT_LIMITS }, 'by-custom');
  }

  setHand(hand: Hand): void {
    this.#change({ hand });
  }

  setVerdicts(verdicts: boolean): void {
    this.#change({ verdicts });
  }

  /** One line each; what is longer than a record takes is cut. */
  setClinic({ name, phone }: Clinic): void {
    const line = (text: string): string => text.replace(/\s+/g, ' ').trim().slice(0, MAX_LABEL);
    this.#change({ clinic: { name: line(name), phone: line(phone) } });
  }

  #change(part: Partial<Held>, did: SettingsDid = 'changed'): void {
    this.kept.become({ ...this.kept.now, ...part }, did);
  }
}
