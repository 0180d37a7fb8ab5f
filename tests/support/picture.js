/** Takes the README's picture from the real app, built in dist: `npm run picture`. */
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { launchOptions } from './browser.js';

const FILE = 'tests/pictures/chart.png';

const server = await preview({
  configFile: 'preview.config.ts',
  logLevel: 'error',
  preview: { port: 4874 },
});
const browser = await chromium.launch(launchOptions());
try {
  const page = await browser.newPage({
    viewport: { width: 1280, height: 760 },
    reducedMotion: 'reduce',
    deviceScaleFactor: 1.5,
  });
  await page.goto(server.resolvedUrls?.local[0] ?? 'http://127.0.0.1:4874/');
  await page.getByRole('heading', { name: 'Kestrel' }).waitFor();
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path: FILE });
  process.stdout.write(`${FILE}\n`);
} finally {
  await browser.close();
  await server.close();
}
