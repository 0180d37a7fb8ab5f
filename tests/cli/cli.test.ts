/** The command line as a person or a script runs it: the built file, its output and exit status. */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'tidemark-'));
const bundle = join(folder, 'tidemark.js');

beforeAll(async () => {
  await build({
    configFile: 'vite.cli.config.ts',
    logLevel: 'silent',
    build: { outDir: folder, emptyOutDir: false },
  });
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true }));

function tidemark(...args: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [bundle, ...args], {
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
}

function file(name: string, content: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

const kestrel = {
  format: 'tidemark-case',
  version: 1,
  child: {
    label: 'Kestrel',
    born: '2026-03-04',
    gestation: '33w1d',
    dating: 'ultrasound-first-trimester',
  },
  visits: [
    {
      on: '2026-05-18',
      examiner: 'PT 1',
      note: '',
      findings: [
        { reflex: 'moro', side: 'left', response: 'elicited', state: 'quiet-alert', note: '' },
        { reflex: 'moro', side: 'right', response: 'not-elicited', state: 'crying', note: '' },
        { reflex: 'atnr', side: 'left', response: 'obligatory', state: 'quiet-alert', note: '' },
      ],
    },
  ],
};

test('a finding that says its variant is judged, followed and planned for by it', () => {
  const seen = (on: string, response: string, variant?: string) => ({
    on,
    findings: ['left', 'right'].map((side) => ({
      reflex: 'protective-forward',
      side,
      response,
      state: 'quiet-alert',
      ...(variant ? { variant } : {}),
    })),
  });
  const child = { label: 'Kestrel', born: '2026-01-01', gestation: '40w0d' };
  const visits = [
    seen('2026-09-01', 'elicited', 'propping'),
    seen('2026-10-01', 'not-elicited', 'forward'),
  ];
  const path = file('variant.json', { ...kestrel, child, visits });
  const judged = JSON.parse(tidemark('judge', path, '--json').stdout) as {
    visits: { verdicts: { variant?: string; flags: string[] }[] }[];
    reflexes: { reflex: string; variant?: string; days: number }[];
  };
  const said = judged.visits.map(({ verdicts }) => verdicts.map(({ variant }) => variant));
  expect(said).toEqual([
    ['propping', 'propping'],
    ['forward', 'forward'],
  ]);
  expect(judged.reflexes.map(({ variant, days }) => [variant, days])).toEqual([
    ['propping', 1],
    ['forward', 1],
  ]);
  const plan = JSON.parse(tidemark('plan', path, '--on', '2026-11-01', '--json').stdout) as {
    lines: { reflex: string; variant?: string }[];
  };
  expect(plan.lines.find(({ reflex }) => reflex === 'protective-forward')!.variant).toBe('forward');
  const faulty = file('faulty.json', {
    ...kestrel,
    child,
    visits: [seen('2026-09-01', 'elicited', 'standing')],
  });
  const { status, stderr } = tidemark('judge', faulty);
  expect(status).toBe(2);
  expect(stderr).toContain('choose one of forward, propping, or leave it out');
});

describe('ages', () => {
  test('as numbers', () => {
    const run = tidemark(
      'ages',
      '--born',
      '2026-03-04',
      '--gestation',
      '33w1d',
      '--on',
      '2026-05-18',
      '--dating',
      'last-period',
      '--json',
    );
    expect(run).toMatchObject({ status: 0, stderr: '' });
    expect(JSON.parse(run.stdout)).toMatchObject({
      gestationalDays: 232,
      chronologicalDays: 75,
      postmenstrualDays: 307,
      correctedDays: 27,
      counts: 'corrected',
      axisDay: 307,
      sdDays: 8,
    });
  });

  test('by due date, in words', () => {
    const run = tidemark(
      'ages',
      '--born',
      '2026-03-04',
      '--due',
      '2026-04-21',
      '--on',
      '2026-05-18',
    );
    expect(run.stdout).toMatch(/33w1d[\s\S]*43w6d[\s\S]*3 wk 6 d[\s\S]*the corrected age counts/);
  });
});

describe('judge', () => {
  test('one object a line for each case', () => {
    const path = file('kestrel.json', kestrel);
    const run = tidemark('judge', path, path, '--json');
    expect(run.status).toBe(0);
    const lines = run.stdout
      .trim()
      .split('\n')
      .map(
        (line) =>
          JSON.parse(line) as { child: string; visits: { verdicts: Record<string, unknown>[] }[] },
      );
    expect(lines).toHaveLength(2);
    const [moro, asleep, atnr] = lines[0]!.visits[0]!.verdicts;
    expect(moro).toMatchObject({
      reflex: 'moro',
      verdict: 'fits',
      attention: 'fits',
      // "to 2 months" lets it go before, so one source has it going at this age
      firm: false,
      flags: [],
    });
    expect(asleep).toMatchObject({
      verdict: 'not-judged',
      attention: 'not-judged',
      shares: {},
      claims: [],
    });
    expect(atnr).toMatchObject({ attention: 'discuss', flags: ['obligatory'] });
    expect(lines[0]).toHaveProperty('courses');
    expect(lines[0]).toHaveProperty('sequences');
  });

  test('each case is written before the next is read, and a slow reader is waited for', async () => {
    const path = file('often.json', kestrel);
    const last = join(folder, 'not-there-yet.json');
    const times = 300; // more than a pipe holds
    const child = spawn(
      process.execPath,
      [bundle, 'judge', '--json', ...Array<string>(times).fill(path), last],
      { stdio: ['ignore', 'pipe', 'inherit'] },
    );
    await once(child.stdout, 'readable');
    writeFileSync(last, JSON.stringify({ ...kestrel, child: { ...kestrel.child, label: 'Last' } }));
    let said = '';
    for await (const part of child.stdout.setEncoding('utf8')) said += part as string;
    if (child.exitCode === null) await once(child, 'exit');
    expect(child.exitCode).toBe(0);
    const lines = said.trim().split('\n');
    expect(lines).toHaveLength(times + 1);
    expect(JSON.parse(lines.at(-1)!)).toMatchObject({ child: 'Last' });
    // the sockets of a pipe and its reader hold far less than this
    expect(said.length).toBeGreaterThan(1_000_000);
  });

  test('a file that cannot be used is named, and the others are judged in their order', () => {
    const named = (label: string) =>
      file(`${label}.json`, { ...kestrel, child: { ...kestrel.child, label } });
    const run = tidemark(
      'judge',
      '--json',
      named('First'),
      file('broken.json', '{'),
      named('Second'),
      'nowhere.json',
      named('Third'),
    );
    expect(run.status).toBe(2);
    const labels = run.stdout
      .trim()
      .split('\n')
      .map((line) => (JSON.parse(line) as { child: string }).child);
    expect(labels).toEqual(['First', 'Second', 'Third']);
    expect(run.stderr.trim().split('\n')).toEqual([
      expect.stringMatching(/broken\.json: /),
      expect.stringMatching(/nowhere\.json: The file cannot be read/),
    ]);
  });

  test('one source alone', () => {
    const run = tidemark('judge', file('one.json', kestrel), '--source', 'kumc-2012', '--json');
    const { visits } = JSON.parse(run.stdout) as {
      visits: { verdicts: { claims: { source: string }[] }[] }[];
    };
    expect(visits[0]!.verdicts[0]!.claims.map((c) => c.source)).toEqual(['kumc-2012']);
  });

  test('class notes judge the Moro response only where all sources do', () => {
    const sources = (...options: string[]): string[] => {
      const run = tidemark('judge', file('many.json', kestrel), ...options, '--json');
      const { visits } = JSON.parse(run.stdout) as {
        visits: { verdicts: { claims: { source: string }[] }[] }[];
      };
      return visits[0]!.verdicts[0]!.claims.map((c) => c.source);
    };
    expect(sources()).not.toContain('kumc-2012');
    expect(sources('--source', 'all')).toContain('kumc-2012');
  });

  test('in words, with the caution', () => {
    const run = tidemark('judge', file('words.json', kestrel));
    expect(run.stdout).toMatch(/Asymmetrical tonic neck .*discuss[\s\S]*not a diagnosis/);
  });
});

test('plan', () => {
  const run = tidemark('plan', file('plan.json', kestrel), '--on', '2026-06-18', '--json');
  const plan = JSON.parse(run.stdout) as { lines: { reflex: string }[]; questions: unknown[] };
  expect(plan.lines.map((line) => line.reflex)).toContain('atnr');
  expect(tidemark('plan', file('plan.json', kestrel), '--on', '2026-06-18').stdout).toMatch(
    /Core set for this age/,
  );
});

test('atlas', () => {
  const atlas = JSON.parse(tidemark('atlas', '--json').stdout) as {
    reflexes: { id: string; sides: string[]; claims: Record<string, unknown>[] }[];
    sources: { id: string; citation: string }[];
  };
  expect(atlas.reflexes).toHaveLength(44);
  for (const source of atlas.sources) expect(source.citation.length).toBeGreaterThan(10);
  const stnr = atlas.reflexes.find((r) => r.id === 'stnr')!;
  expect(stnr.sides).toEqual(['midline']);
  expect(stnr.claims.find((c) => c.source === 'kumc-2012')).toMatchObject({
    source: 'kumc-2012',
    lifelong: false,
    byTerm: false,
  });
  // Wikipedia calls it not easily elicited; the printout of two books is one voice
  expect(stnr).toMatchObject({ absence: 'tells-little', missed: 0.5, sources: 4, voices: 3 });
  expect(stnr.claims.find((c) => c.source === 'molnar-handout')).toMatchObject({
    family: 'osullivan-handout',
    judgedByDefault: true,
  });
  const plantar = atlas.reflexes.find((r) => r.id === 'plantar-grasp')!;
  expect(plantar.claims.find((c) => c.source === 'olhweiler-2005')).toMatchObject({
    integrates: [280 + 12 * 30.4375, null],
  });
  expect(tidemark('atlas').stdout).toMatch(/Moro reflex\n/);
});

describe('bad input: status 2, one sentence, nothing else', () => {
  const { child, visits } = kestrel;
  const finding = visits[0]!.findings[0]!;
  const withFindings = (...findings: unknown[]) => ({
    ...kestrel,
    visits: [{ ...visits[0], findings }],
  });
  test.each<[string, () => string[], RegExp]>([
    ['no command of that name', () => ['judgement'], /"judgement" is not a command/],
    [
      'a date that does not exist',
      () => ['ages', '--born', '2026-02-30', '--gestation', '33w1d', '--on', '2026-05-18'],
      /--born: "2026-02-30" is not a date/,
    ],
    [
      'no birth date',
      () => ['ages', '--gestation', '33w1d', '--on', '2026-05-18'],
      /--born is missing/,
    ],
    ['an unknown option', () => ['ages', '--weight', '3'], /--weight/],
    [
      'gestation and due date that disagree',
      () => [
        'ages',
        '--born',
        '2026-03-04',
        '--gestation',
        '33w1d',
        '--due',
        '2026-05-01',
        '--on',
        '2026-05-18',
      ],
      /--due: means birth at/,
    ],
    [
      'exam before birth',
      () => ['ages', '--born', '2026-03-04', '--gestation', '33w1d', '--on', '2026-03-01'],
      /before the birth/,
    ],
    ['no file', () => ['judge'], /No case file/],
    [
      'a file that is not there',
      () => ['judge', 'nowhere.json'],
      /nowhere\.json: The file cannot be read/,
    ],
    ['a folder', () => ['judge', folder], /cannot be read/],
    [
      'an unknown source',
      () => ['judge', file('k.json', kestrel), '--source', 'kumc2012'],
      /did you mean "kumc-2012"/,
    ],
    [
      'not JSON',
      () => ['judge', file('not.json', 'moro')],
      /not\.json: The file: is neither a case file nor a table/,
    ],
    [
      'cut short',
      () => ['judge', file('cut.json', JSON.stringify(kestrel).slice(0, 200))],
      /ends in the middle/,
    ],
    [
      'newer',
      () => ['judge', file('newer.json', { ...kestrel, version: 9 })],
      /newer Tidemark \(version 9\)/,
    ],
    ['another format', () => ['judge', file('other.json', { format: 'x' })], /not a Tidemark case/],
    [
      'an unknown reflex',
      () => ['judge', file('reflex.json', withFindings({ ...finding, reflex: 'morro' }))],
      /did you mean "moro"/,
    ],
    [
      'a finding twice',
      () => ['judge', file('twice.json', withFindings(finding, finding))],
      /is recorded twice/,
    ],
    [
      'script in a string',
      () => [
        'judge',
        file('script.json', { ...kestrel, child: { ...child, label: '<script>x</script>' } }),
      ],
      /Name or code: holds markup/,
    ],
    ['no command', () => [], /No command is named/],
    ['an option twice', () => ['atlas', '--json', '--json'], /--json is given twice/],
    ['an option without its value', () => ['ages', '--born'], /--born needs a value/],
    [
      'an unset limit',
      () => [
        'ages',
        '--born',
        '2026-03-04',
        '--gestation',
        '33w1d',
        '--on',
        '2026-05-18',
        '--correct-until',
        '',
      ],
      /--correct-until/,
    ],
    [
      'a limit out of range',
      () => ['atlas', '--preterm-below', '99w0d', 'x'],
      /"x" is not understood/,
    ],
    [
      'a source that dates nothing',
      () => ['judge', file('k.json', kestrel), '--source', 'who-2006'],
      /gives no age that is used for judging/,
    ],
    ['a plan without a date', () => ['plan', file('k.json', kestrel)], /--on is missing/],
    [
      'a plan before birth',
      () => ['plan', file('k.json', kestrel), '--on', '2025-01-01'],
      /before the birth/,
    ],
  ])('%s', (_, args, sentence) => {
    const run = tidemark(...args());
    expect(run.status).toBe(2);
    expect(run.stdout).toBe('');
    expect(run.stderr.trim().split('\n')).toHaveLength(1);
    expect(run.stderr).toMatch(sentence);
  });

  test('a file that is not UTF-8', () => {
    const path = join(folder, 'latin.json');
    writeFileSync(path, Buffer.from([0x7b, 0x22, 0xe9, 0x22, 0x7d]));
    expect(tidemark('judge', path)).toMatchObject({ status: 2, stdout: '' });
    expect(tidemark('judge', path).stderr).toMatch(/not in UTF-8/);
  });

  test('a reader that closes the pipe early is no fault', async () => {
    const path = file('many.json', kestrel);
    const child = spawn(
      process.execPath,
      [bundle, 'judge', '--json', ...Array<string>(300).fill(path)],
      { stdio: ['ignore', 'pipe', 'pipe'] },
    );
    let complaints = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => (complaints += text));
    await once(child.stdout, 'readable');
    child.stdout.destroy();
    await once(child, 'close');
    expect(child.exitCode).toBe(0);
    expect(complaints).toBe('');
  });

  test('200 MB, refused by its size alone', () => {
    const path = file('big.json', '{');
    truncateSync(path, 200_000_000);
    const run = tidemark('judge', path);
    expect(run).toMatchObject({ status: 2, stdout: '' });
    expect(run.stderr).toMatch(/about 200 MB/);
  });
});
