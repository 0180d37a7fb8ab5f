/** The command line: `tidemark ages | judge | plan | atlas`. Thin: it reads, calls the core, prints. */
import { agesCommand } from './ages.ts';
import { atlasCommand } from './atlas.ts';
import { judgeCommand } from './judge.ts';
import { planCommand } from './plan.ts';
import { BadInput, type Command } from './input.ts';

const COMMANDS: Readonly<Record<string, Command>> = {
  ages: agesCommand,
  judge: judgeCommand,
  plan: planCommand,
  atlas: atlasCommand,
};

const HELP = `tidemark: infant reflexes and postural reactions on one age axis

  tidemark ages --born DATE (--gestation 33w1d | --due DATE) --on DATE [--dating METHOD] [--json]
      the four ages of an infant on a date, and which one counts
  tidemark judge CASE.json... [--source ID] [--json]
      every finding: what fits the age, what does not, why, by which sources
  tidemark plan CASE.json --on DATE [--source ID] [--json]
      what is worth testing on a date, and from when a change is expected
  tidemark atlas [--json]
      every reflex with the windows of every source, in axis days (term is day 280)

Correction limits: --preterm-below 37w0d, --correct-until 24 (months since birth).
Exit status 0; 2 with one sentence on standard error for bad input.
A reading of published ages, not a diagnosis. Follow local pathways and licensed practice.
`;

function run(args: readonly string[]): number {
  const [name, ...rest] = args;
  if (name === undefined || name === 'help' || name === '--help' || name === '-h') {
    process.stdout.write(HELP);
    return 0;
  }
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  try {
    if (!command)
      throw new BadInput(`"${name}" is no command; use ages, judge, plan, atlas or help.`);
    process.stdout.write(command(rest));
    return 0;
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    process.stderr.write(`tidemark: ${error.message}\n`);
    return 2;
  }
}

process.exitCode = run(process.argv.slice(2));
