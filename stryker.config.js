/**
 * How well the tests of the pure rooms bite: each operator, branch and text of them is changed in turn,
 * and some test must fail. Slow, and never part of `npm test`. One room, against its own tests alone:
 * `ROOM=case npm run test:mutants`; one file: `-- --mutate 'src/lib/age/axis.ts'` after it. What was found
 * is kept in `coverage/mutants`, so that the next run tries only what has changed since.
 */
const room = process.env.ROOM ?? '{age,case,judge}';

export default {
  plugins: ['@stryker-mutator/vitest-runner'],
  testRunner: 'vitest',
  vitest: { configFile: 'vitest.mutants.config.ts' },
  coverageAnalysis: 'perTest',
  mutate: [`src/lib/${room}/**/*.ts`],
  dryRunTimeoutMinutes: 30, // a busy machine is slow, not wrong
  // what runs once while a file loads is met by every test of it: too slow for what it tells
  ignoreStatic: true,
  concurrency: 2,
  incremental: true,
  incrementalFile: 'coverage/mutants/incremental.json',
  tempDirName: 'coverage/mutants/sandbox',
  reporters: ['clear-text', 'html'],
  htmlReporter: { fileName: 'coverage/mutants/report.html' },
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  ignorePatterns: [
    '!.svelte-kit', // the settings of types are made there; the rest of it is not needed
    '/.svelte-kit/{output,generated,types}',
    '/coverage',
    '/dist*',
    '/static',
    '/test-results',
    '/tests/{browser,bench,pictures}',
  ],
};
