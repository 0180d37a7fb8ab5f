import { defineConfig } from 'vitest/config';

/** One room, or all that `stryker.config.js` changes. */
const room = process.env.ROOM ?? '{age,case,judge}';

/** The tests that touch the rooms which `stryker.config.js` changes; those that are slow are left out. */
export default defineConfig({
  test: {
    environment: 'node',
    include: [
      `tests/${room}/**/*.test.ts`,
      'tests/outside/{ages,frequencies,milestones,normal,order,tells,trade}.test.ts',
    ],
    expect: { requireAssertions: true },
    testTimeout: 120_000, // a busy machine is slow, not wrong; what a change makes endless ends by the tool
  },
});
