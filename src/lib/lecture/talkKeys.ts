/** What the keys of a keyboard, or of a presenter's remote, do on the stage. */
export type StageCommand =
  | { do: 'go'; by: 1 | -1 }
  | { do: 'first' }
  | { do: 'last' }
  | { do: 'digit'; digit: string }
  | { do: 'jump' }
  | { do: 'black' }
  | { do: 'pointer' }
  | { do: 'zoom'; by: 1 | -1 }
  | { do: 'lanes'; by: 1 | -1 }
  | { do: 'move' }
  | { do: 'full-screen' }
  | { do: 'speaker' }
  | { do: 'ink' }
  | { do: 'keys' }
  | { do: 'leave' };

const KEYS = new Map<string, StageCommand>(
  Object.entries<StageCommand>({
    PageDown: { do: 'go', by: 1 },
    ArrowRight: { do: 'go', by: 1 },
    ' ': { do: 'go', by: 1 },
    PageUp: { do: 'go', by: -1 },
    ArrowLeft: { do: 'go', by: -1 },
    Backspace: { do: 'go', by: -1 },
    Home: { do: 'first' },
    End: { do: 'last' },
    Enter: { do: 'jump' },
    b: { do: 'black' },
    '.': { do: 'black' },
    p: { do: 'pointer' },
    '+': { do: 'zoom', by: 1 },
    '=': { do: 'zoom', by: 1 },
    '-': { do: 'zoom', by: -1 },
    ArrowUp: { do: 'lanes', by: -1 },
    ArrowDown: { do: 'lanes', by: 1 },
    m: { do: 'move' },
    f: { do: 'full-screen' },
    s: { do: 'speaker' },
    d: { do: 'ink' },
    '?': { do: 'keys' },
    Escape: { do: 'leave' },
  }),
);

/** The command of a key as the browser names it; undefined for one that does nothing here. */
export function stageCommand(key: string): StageCommand | undefined {
  if (/^\d$/.test(key)) return { do: 'digit', digit: key };
  return KEYS.get(key.length === 1 ? key.toLowerCase() : key);
}
