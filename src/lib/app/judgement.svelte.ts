/** The open child, judged under the settings in force. Everything here is derived, nothing is stored. */
import { isAsking } from '../judge/rules/rule.ts';
import { TERM, type AxisDay } from '../age/axis.ts';
import type { CivilDate } from '../age/civil.ts';
import type { Ages } from '../age/clocks.ts';
import type { Atlas } from '../atlas/atlas.ts';
import { agesAt, type Case } from '../case/case.ts';
import type { Finding } from '../case/finding.ts';
import { coursesOf } from '../case/course.ts';
import { chartData } from '../chart/data.ts';
import {
  CaseJudge,
  judgeCase,
  sheetOf,
  type JudgedFinding,
  type JudgeOptions,
} from '../judge/judge.ts';
import { dayOf } from '../judge/day.ts';
import { chartOf } from '../present/chartData.ts';
import { chosenBy } from '../present/sourceChoice.ts';
import type { Desk } from '../repository/cases.svelte.ts';
import { entriesOf } from '../present/verdictEntries.ts';
import { byGroup, firstSight } from '../present/visibleRange.ts';
import { indexOf, once } from '../platform/sets.ts';
import type { Settings } from './settings.svelte.ts';
import type { Trial } from './whatIf.svelte.ts';
import type { View } from './view.svelte.ts';

export class Judgement {
  readonly #atlas: Atlas;
  readonly #desk: Desk;
  readonly #settings: Settings;
  readonly #view: View;
  readonly #trial: Trial;

  /** The windows under the settings in force. */
  readonly sheet = $derived.by(() =>
    sheetOf(this.#atlas, chosenBy(this.#settings.sources, this.#atlas)),
  );
  /** What the record is judged by, whatever is tried. */
  readonly keptOptions = $derived.by((): JudgeOptions => ({
    atlas: this.#atlas,
    sheet: this.sheet,
    limits: this.#settings.limits,
  }));

  /** What is judged by: the settings, or what is tried in their place. */
  readonly sources = $derived.by(() => this.#trial.tried.sources ?? this.#settings.sources);
  readonly limits = $derived.by(() => this.#trial.tried.limits ?? this.#settings.limits);
  readonly options = $derived.by((): JudgeOptions => {
    const { sources, limits } = this.#trial.tried;
    if (!sources && !limits) return this.keptOptions;
    return {
      atlas: this.#atlas,
      sheet: sources ? sheetOf(this.#atlas, chosenBy(sources, this.#atlas)) : this.sheet,
      limits: this.limits,
    };
  });
  /** The child as recorded, and as tried. */
  readonly recorded = $derived.by((): Case | undefined => this.#desk.open?.record);
  readonly record = $derived.by(
    (): Case | undefined => this.recorded && this.#trial.applyTo(this.recorded),
  );
  readonly judge = $derived.by(() => this.record && new CaseJudge(this.record, this.options));
  readonly visits = $derived.by(
    () => this.record?.visits.map((visit) => this.judge!.visit(visit)) ?? [],
  );
  /** The visits as the record and the settings have them, whatever is tried. */
  readonly recordedVisits = $derived.by(() =>
    !this.#trial.isOn || !this.recorded ? this.visits : judgeCase(this.recorded, this.keptOptions),
  );
  readonly sequences = $derived.by(() => this.judge?.sequences ?? []);
  readonly courses = $derived.by(() =>
    this.judge ? coursesOf(this.judge.read.visits, this.#agesOn(this.judge.read)) : [],
  );
  /** What each finding means in the record, while something else is tried. */
  readonly #meant = $derived.by((): ReadonlyMap<Finding, JudgedFinding> => {
    const all = this.#trial.isOn ? this.recordedVisits.flatMap(({ findings }) => findings) : [];
    return indexOf(all, ({ given }) => given);
  });

  /** The visit whose verdicts are shown: the chosen one, else the last. */
  readonly shown = $derived.by(
    () => this.visits.find(({ visit }) => visit.id === this.#view.visit) ?? this.visits.at(-1),
  );
  /** The day of that visit, with every examiner's findings. */
  readonly day = $derived.by(() => this.shown && dayOf(this.shown, this.visits));
  readonly entries = $derived.by(() => {
    const { day } = this;
    return day
      ? entriesOf(
          day.visits,
          this.visits.filter(({ visit }) => visit.on < day.on),
        )
      : [];
  });

  /** Reflexes looked at at any visit. */
  readonly tested = $derived.by(() =>
    once(this.visits.flatMap(({ findings }) => findings.map((f) => f.reflex.id))),
  );

  /** The lanes the view asks for; none named means all. */
  readonly lanes = $derived.by((): readonly string[] => {
    switch (this.#view.lanes) {
      case 'asking': {
        const asking = this.entries.filter((e) => isAsking(e.attention));
        return asking.length > 0 ? asking.map((e) => e.reflex.id) : this.tested;
      }
      case 'tested':
        return this.tested;
      case 'all':
        return [];
    }
  });

  /** The chart's data for the child, with the lanes the view asks for. */
  readonly chart = $derived.by(() =>
    chartOf(this.judge, this.visits, this.lanes, this.options, this.shown),
  );

  /** The chart's data without a child. */
  readonly plainChart = $derived.by(() => byGroup(chartData(this.#atlas, this.sheet)));

  /** Where the age line stands: moved there, else at the visit that is shown, else at term. */
  readonly age = $derived.by((): AxisDay => this.#view.movedTo ?? this.shown?.ages.axisDay ?? TERM);

  /** The part of the axis that is first in sight. */
  readonly home = $derived.by(() => firstSight(this.visits.at(-1)?.ages.axisDay));

  constructor(atlas: Atlas, desk: Desk, settings: Settings, view: View, trial: Trial) {
    this.#atlas = atlas;
    this.#desk = desk;
    this.#settings = settings;
    this.#view = view;
    this.#trial = trial;
  }

  /** What a finding means in the record, where what is tried changes it. */
  meantOtherwise(found: JudgedFinding): JudgedFinding | undefined {
    const was = this.#meant.get(found.given);
    return was && (was.judged.verdict !== found.judged.verdict || was.attention !== found.attention)
      ? was
      : undefined;
  }

  /** The ages of the open child on a date. */
  agesOn(on: CivilDate): Ages | undefined {
    return this.record && agesAt(this.record, on, this.limits);
  }

  #agesOn(record: Case): (on: CivilDate) => Ages {
    return (on) => agesAt(record, on, this.limits);
  }
}
