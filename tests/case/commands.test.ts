/** Commands on any record: each can be taken back, and two on different parts may come in either order. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { apply, inverse } from '../../src/lib/case/commands/apply.ts';
import type { Command } from '../../src/lib/case/commands/command.ts';
import { parseRaw } from '../../src/lib/case/parse.ts';
import { rawOf } from '../../src/lib/case/raw.ts';
import type { RawCase } from '../../src/lib/case/shape.ts';
import { rawRecord, record } from '../support/records.ts';
import { runs } from '../support/runs.ts';

const RUNS = { numRuns: runs(1000, 200) };

/** A record as its file holds it, with something settled for the pages of some visits. */
const raws: fc.Arbitrary<RawCase> = fc
  .tuple(record, fc.infiniteStream(fc.boolean()))
  .map(([one, chance]): RawCase => {
    const raw = rawOf(one);
    const pages = ['', ...raw.visits.map(({ id }) => id)]
      .filter(() => chance.next().value)
      .map((visit) => ({ visit, chosen: ['moro'], edits: [] }));
    const family = { language: 'en', pronoun: 'name', calledName: '', pages };
    return chance.next().value ? { ...raw, family } : raw;
  });

/** Any command on parts that a record has, and on parts of another that it has not. */
function commandsOn(raw: RawCase, other: RawCase): fc.Arbitrary<Command> {
  const visits = [...raw.visits, ...other.visits];
  const decisions = [...(raw.decisions ?? []), ...(other.decisions ?? [])];
  const ids = raw.visits.map(({ id }) => id);
  const words = fc.constantFrom('', 'one', 'two');
  const all: fc.Arbitrary<Command>[] = [];
  if (visits.length > 0) {
    const visit = fc.constantFrom(...visits);
    const id = visit.map((one) => one.id);
    all.push(
      fc.record({
        kind: fc.constant('add-visit' as const),
        visit,
        before: fc.option(fc.constantFrom(...ids, 'nothing'), { nil: undefined }),
      }),
      fc.record({ kind: fc.constant('remove-visit' as const), visit: id }),
      fc.record({
        kind: fc.constant('redate-visit' as const),
        visit: id,
        on: fc.constantFrom('2027-01-01', '2027-01-02'),
        examiner: words,
      }),
      fc.record({ kind: fc.constant('set-visit-note' as const), visit: id, note: words }),
    );
    const findings = visits.flatMap((one) => one.findings);
    if (findings.length > 0) {
      const finding = fc.constantFrom(...findings);
      const spot = finding.map(({ reflex, side }) => ({ reflex, side }));
      const before = fc.option(spot, { nil: undefined });
      const changed = fc.tuple(finding, words).map(([one, note]) => ({ ...one, note }));
      all.push(
        fc.record({
          kind: fc.constant('set-finding' as const),
          visit: id,
          finding: changed,
          before,
        }),
        fc.record({ kind: fc.constant('remove-finding' as const), visit: id, spot }),
      );
    }
    const seen = visits.flatMap((one) => one.milestones);
    if (seen.length > 0) {
      const milestone = fc.constantFrom(...seen);
      const name = milestone.map((one) => one.milestone);
      all.push(
        fc.record({
          kind: fc.constant('set-milestone' as const),
          visit: id,
          milestone,
          before: fc.option(name, { nil: undefined }),
        }),
        fc.record({
          kind: fc.constant('remove-milestone' as const),
          visit: id,
          milestone: name,
        }),
      );
    }
  }
  if (decisions.length > 0) {
    const decision = fc.constantFrom(...decisions);
    const id = decision.map((one) => one.id);
    const changed = fc.tuple(decision, fc.boolean()).map(([one, done]) => ({ ...one, done }));
    all.push(
      fc.record({
        kind: fc.constant('set-decision' as const),
        decision: changed,
        before: fc.option(id, { nil: undefined }),
      }),
      fc.record({ kind: fc.constant('remove-decision' as const), decision: id }),
    );
  }
  return all.length > 0
    ? fc.oneof(...all)
    : fc.constant({ kind: 'remove-decision', decision: 'nothing' });
}

const withCommands = (count: number) =>
  fc
    .tuple(raws, rawRecord)
    .chain(([raw, other]) =>
      fc.tuple(
        fc.constant(raw),
        fc.array(commandsOn(raw, other), { minLength: count, maxLength: count }),
      ),
    );

describe('a command', () => {
  test('and its inverse leave the record as it was, and the inverse of that does it again', () => {
    let changed = 0;
    fc.assert(
      fc.property(withCommands(1), ([raw, [command]]) => {
        const after = apply(raw, command!);
        const back = inverse(raw, command!);
        expect(back ? apply(after, back) : after).toEqual(raw);
        if (!back) return;
        changed += 1;
        const again = inverse(after, back);
        expect(again ? apply(raw, again) : raw).toEqual(after);
      }),
      RUNS,
    );
    expect(changed).toBeGreaterThan(0);
  });

  test('among many is taken back with them, the last one first', () => {
    fc.assert(
      fc.property(withCommands(6), ([raw, commands]) => {
        const backs: Command[] = [];
        let now = raw;
        for (const command of commands) {
          const back = inverse(now, command);
          if (back) backs.unshift(back);
          now = apply(now, command);
        }
        expect(backs.reduce(apply, now)).toEqual(raw);
      }),
      RUNS,
    );
  });

  test('changes no record in place', () => {
    fc.assert(
      fc.property(withCommands(1), ([raw, [command]]) => {
        const before = structuredClone(raw);
        apply(raw, command!);
        inverse(raw, command!);
        expect(raw).toEqual(before);
      }),
      RUNS,
    );
  });
});

/** The part that a command is about, and the visit it is in or that it is. */
function partOf(command: Command): { visit?: string; part: string } {
  switch (command.kind) {
    case 'add-visit':
      return { visit: command.visit.id, part: '' };
    case 'remove-visit':
      return { visit: command.visit, part: '' };
    case 'redate-visit':
      return { visit: command.visit, part: 'date' };
    case 'set-visit-note':
      return { visit: command.visit, part: 'note' };
    case 'set-finding':
      return { visit: command.visit, part: `${command.finding.reflex} ${command.finding.side}` };
    case 'remove-finding':
      return { visit: command.visit, part: `${command.spot.reflex} ${command.spot.side}` };
    case 'set-milestone':
      return { visit: command.visit, part: command.milestone.milestone };
    case 'remove-milestone':
      return { visit: command.visit, part: command.milestone };
    case 'set-decision':
      return { part: command.decision.id };
    case 'remove-decision':
      return { part: command.decision };
  }
}

const isApart = (one: Command, other: Command): boolean => {
  const [a, b] = [partOf(one), partOf(other)];
  if (a.visit !== b.visit) return true;
  return a.part !== b.part && (a.visit === undefined || (a.part !== '' && b.part !== ''));
};

/** A record in which the order of what is in a list does not count. */
const unordered = (raw: RawCase): unknown => {
  const sorted = (list: readonly unknown[]): string[] =>
    list.map((one) => JSON.stringify(one)).sort();
  const { visits, decisions = [], family, ...rest } = raw;
  return {
    ...rest,
    family: family && { ...family, pages: sorted(family.pages) },
    decisions: sorted(decisions),
    visits: sorted(
      visits.map((visit) => ({
        ...visit,
        findings: sorted(visit.findings),
        milestones: sorted(visit.milestones),
      })),
    ),
  };
};

describe('two commands', () => {
  test('on different parts come to the same in either order', () => {
    let tried = 0;
    fc.assert(
      fc.property(withCommands(2), ([raw, [one, other]]) => {
        fc.pre(isApart(one!, other!));
        tried += 1;
        const [first, second] = [
          [one!, other!],
          [other!, one!],
        ].map((order) => unordered(order.reduce(apply, raw)));
        expect(first).toEqual(second);
      }),
      RUNS,
    );
    expect(tried).toBeGreaterThan(0);
  });

  test('of which the first is taken back leave what the second did', () => {
    fc.assert(
      fc.property(withCommands(2), ([raw, [one, other]]) => {
        fc.pre(isApart(one!, other!));
        const back = inverse(raw, one!);
        const both = apply(apply(raw, one!), other!);
        const left = back ? apply(both, back) : both;
        expect(unordered(left)).toEqual(unordered(apply(raw, other!)));
      }),
      RUNS,
    );
  });
});

test('what comes of a command on parts of a record passes the parser, but for a date that is taken', () => {
  fc.assert(
    fc.property(withCommands(3), ([raw, commands]) => {
      const parsed = parseRaw(commands.reduce(apply, raw), ATLAS);
      const codes = parsed.ok ? [] : parsed.problems.map(({ code }) => code);
      expect(codes.filter((code) => code !== 'duplicate-visit')).toEqual([]);
    }),
    RUNS,
  );
});
