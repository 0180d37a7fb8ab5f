/** The house rule bites: data flows one way, and the pure folders know no page, clock or chance. */
import { readdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { Linter } from 'eslint';
import ts from 'typescript';
import { parser } from 'typescript-eslint';
import { describe, expect, test } from 'vitest';
import { HOUSE, house } from '../house.js';

const linter = new Linter();

function complaints(file: string, code: string): string[] {
  return linter
    .verify(
      code,
      {
        files: ['**/*.ts'],
        languageOptions: { parser },
        plugins: { house: house },
        rules: { 'house/direction': 'error', 'house/words': 'error' },
      },
      { filename: file },
    )
    .map((message) => message.message);
}

describe('the direction of imports', () => {
  test.each([
    ['src/lib/age/a.ts', "import { x } from '../judge/verdict.ts';"],
    ['src/lib/atlas/a.ts', "import { x } from '../case/case.ts';"],
    ['src/lib/judge/a.ts', "import { en } from '../words/en.ts';"],
    ['src/lib/judge/rules/a.ts', "import { x } from '../../chart/layout.ts';"],
    ['src/lib/number/a.ts', "import { x } from '../age/axis.ts';"],
    ['src/lib/cohort/a.ts', "import { x } from '../judge/verdict.ts';"],
    ['src/lib/store/a.ts', "import { x } from '../judge/verdict.ts';"],
    ['src/lib/case/a.ts', "export { x } from '../judge/judge.ts';"],
    ['src/lib/store/a.ts', "import { x } from '$lib/repository/cases.svelte.ts';"],
    ['src/lib/chart/a.ts', "const x = await import('../store/store.ts');"],
    ['src/lib/ui/a.ts', "export * from '../app/view.svelte.ts';"],
  ])('%s: %s is refused, with the reason', (file, code) => {
    expect(complaints(file, code)[0]).toMatch(/must not import .*data flows one way/);
  });

  test('what is allowed as a type is refused as a value', () => {
    expect(
      complaints('src/lib/words/a.ts', "import { judgeCase } from '../judge/judge.ts';")[0],
    ).toMatch(/only types/);
    expect(
      complaints('src/lib/words/a.ts', "import type { Flag } from '../judge/judge.ts';"),
    ).toEqual([]);
    expect(
      complaints('src/lib/words/a.ts', "import { type Flag } from '../judge/judge.ts';"),
    ).toEqual([]);
  });

  test.each([
    ['src/lib/judge/a.ts', "import { x } from '../age/axis.ts';"],
    [
      'src/lib/judge/rules/a.ts',
      "import { x } from './rule.ts'; import { y } from '../verdict.ts';",
    ],
    ['src/lib/chart/a.ts', "import { scaleLinear } from 'd3';"],
    ['src/routes/+page.ts', "import { x } from '$lib/judge/judge.ts';"],
  ])('%s: %s is allowed', (file, code) => {
    expect(complaints(file, code)).toEqual([]);
  });

  test('a new folder must be put in the table first', () => {
    expect(complaints('src/lib/attic/a.ts', "import { x } from '../age/axis.ts';")[0]).toMatch(
      /no room/,
    );
  });

  test('the table itself has no way round', () => {
    const table: Record<string, { may: readonly string[]; types?: readonly string[] }> = HOUSE;
    const order = Object.keys(table);
    for (const [room, { may, types = [] }] of Object.entries(table))
      for (const below of [...may, ...types].filter(
        (name) => !['store', 'exchange'].includes(name),
      ))
        expect(order.indexOf(below), `${room} imports ${below}`).toBeLessThan(order.indexOf(room));
  });
});

describe('words are asked for by the file they stand in, so that they load with their page', () => {
  const said = (code: string): string[] =>
    complaints('src/routes/a.ts', `import { en } from '$lib/words/en.ts';\n${code}`);

  test.each([
    'const t = { ...en };',
    'const { judge } = en;',
    'const t = en[file];',
    'speak(en);',
    'export { en };',
    'const all = () => en;',
  ])('%s is refused, with the reason', (code) => {
    expect(said(code)[0]).toMatch(/every page at once/);
  });

  test.each([
    'const t = en.judge;',
    'const { notJudged } = en.judge;',
    "const t = en.judge['notJudged'];",
    'type Words = typeof en;',
    'type Words = (typeof en)["judge"];',
    'type Words = typeof en.judge;',
  ])('%s is allowed', (code) => {
    expect(said(code)).toEqual([]);
  });
});

/** The rooms without sentences of a language, storage, a page's state, components, clock and chance. */
const PURE = [
  ...['number', 'age', 'atlas', 'case', 'judge', 'cohort', 'figure', 'chart', 'picture'],
  ...['present', 'lecture', 'handout'],
];

describe('the pure folders compile without the DOM', () => {
  const read = ts.getParsedCommandLineOfConfigFile(
    'tsconfig.pure.json',
    {},
    {
      ...ts.sys,
      onUnRecoverableConfigFileDiagnostic: ({ messageText }) => {
        throw new Error(ts.flattenDiagnosticMessageText(messageText, '\n'));
      },
    },
  )!;
  /** What the compiler says of one file with such code in it, by the settings of the pure folders. */
  const errorsIn = (path: string, code: string): string[] => {
    const host = ts.createCompilerHost(read.options);
    const onDisk = host.readFile.bind(host);
    host.readFile = (file) => (file.endsWith(path) ? code : onDisk(file));
    host.fileExists = (file) => file.endsWith(path) || ts.sys.fileExists(file);
    const program = ts.createProgram([path], read.options, host);
    return program
      .getSemanticDiagnostics(program.getSourceFile(path))
      .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n'));
  };

  test.each(PURE)('every .ts of %s is among them', (room) => {
    const own = readdirSync(`src/lib/${room}`, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .map((name) => resolve('src/lib', room, name));
    expect(own.length).toBeGreaterThan(0);
    expect(read.fileNames).toEqual(expect.arrayContaining(own));
  });

  test('a page in them is an error, and a number is none', () => {
    const probe = 'src/lib/age/probe-of-the-house.ts';
    expect(errorsIn(probe, 'export const title = document.title;\n')[0]).toMatch(/'document'/);
    expect(errorsIn(probe, 'export const title = 3;\n')).toEqual([]);
  });
});
