/** Every rule on top of the phase, but for `lost.ts`. Explicit, so that a review sees what was added. */
import type { Rule } from './rule.ts';
import { returned } from './returned.ts';
import { brisk, obligatory, weak } from './strength.ts';
import { uneven } from './uneven.ts';

export const RULES: readonly Rule[] = [uneven, weak, brisk, obligatory, returned];
