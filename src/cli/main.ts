/** The command line: `tidemark ages | judge | plan | atlas`. Thin: it reads, calls the core, prints. */
import { agesCommand } from './ages.ts';
import { atlasCommand } from './atlas.ts';
import { judgeCommand } from './judge.ts';
import { planCommand } from './plan.ts';
import { BadInput, type Command } from './input.ts';
import project from '../../package.json' with { type: 'json' };

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
      every finding: what is as expected for the age, what is not, why, by which sources
  tidemark plan CASE.json --on DATE [--source ID] [--json]
      what is worth testing on a date, and by when a change is expected
  tidemark atlas [--json]
      every reflex with the windows of every source, in axis days (term is day 280)

Correction limits: --preterm-below 37w0d, --correct-until 24 (months, chronological).
Exit status 0; 2 with one sentence on standard error for bad input (judge: for each such file,
and the others are judged all the same).
A reading of published ages, not a diagnosis. Follow local pathways and licensed practice.
`;

/** Control characters, as a name or label could carry them to a terminal, made visible. */
const plain = (text: string): string =>
  text.replaceAll(/(?!\n)\p{Cc}|[\u202a-\u202e\u2066-\u2069]/gu, '\ufffd');

/**
 * Settles once what was written has been taken off: a slow reader is waited for, so that nothing gathers
 * here. A reader that has gone ends the process, by the listener below.
 */
const written = (text: string): Promise<void> =>
  new Promise((resolve) => {
    process.stdout.write(text, () => resolve());
  });

const complain = ({ message }: BadInput): boolean =>
  process.stderr.write(`tidemark: ${plain(message).replaceAll('\n', ' ')}\n`);

async function run(args: readonly string[]): Promise<number> {
  const [name, ...rest] = args;
  const asked = [name, ...rest];
  if (name === 'help' || asked.includes('--help') || asked.includes('-h')) {
    process.stdout.write(HELP);
    return 0;
  }
  if (name === '--version') {
    process.stdout.write(`${project.version}\n`);
    return 0;
  }
  const command = name !== undefined && Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  try {
    if (!command)
      throw new BadInput(
        name === undefined
          ? 'No command is named; use ages, judge, plan, atlas or help.'
          : `"${name.slice(0, 60)}" is not a command; use ages, judge, plan, atlas or help.`,
      );
    const output = command(rest);
    let status = 0;
    for (const part of typeof output === 'string' ? [output] : output)
      if (part instanceof BadInput) {
        complain(part);
        status = 2;
      } else await written(plain(part));
    return status;
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    complain(error);
    return 2;
  }
}

// a reader that has seen enough closes the pipe: no fault; a full disk is one
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  process.stderr.write(
    `tidemark: The output cannot be written (${error.code ?? 'no reason given'}); check the disk and its space.\n`,
  );
  process.exit(2);
});

process.exitCode = await run(process.argv.slice(2));
