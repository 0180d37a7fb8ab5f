/** The first step of `npm test`: a browser, or one sentence that says what to install. */
import { ensureBrowser, NO_BROWSER } from './browser.js';

try {
  process.stdout.write(`browser: ${ensureBrowser()}\n`);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : NO_BROWSER}\n`);
  process.exit(1);
}
