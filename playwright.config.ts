import { defineConfig, devices } from '@playwright/test';
import { launchOptions } from './tests/support/browser.js';

/** Apart from the port of `npm start`, so that both can run; another where two checkouts are tested. */
const PORT = Number(process.env.TEST_PORT ?? 4873);
const desktop = { ...devices['Desktop Chrome'], launchOptions: launchOptions() };

export default defineConfig({
  testDir: 'tests/browser',
  fullyParallel: true,
  workers: 2,
  timeout: 180_000, // a busy machine is slow, not wrong
  expect: { timeout: 30_000 },
  // none in `npm test`. A variant that passes at its second try is listed as flaky, and is looked into
  retries: process.env.THOROUGH ? 1 : 0,
  reporter: 'list',
  use: {
    ...desktop,
    baseURL: `http://127.0.0.1:${PORT}`,
    // a worker fetches the whole site in every test: those about it allow it
    serviceWorkers: 'block',
  },
  projects: [{ name: 'chromium' }],
  webServer: {
    command: 'vite preview --config preview.config.ts',
    env: { PORT: String(PORT) },
    url: `http://127.0.0.1:${PORT}`,
    reuseExistingServer: false,
    timeout: 120_000,
  },
});
