/**
 * Files as large as each format allows: honest ones that hold as much as they can, and some that cost a
 * reader most for their size. Invented throughout.
 */

/** Reflexes that are looked at on either side. */
const PAIRED = [
  'acoustic-startle',
  'amphibian',
  'atnr',
  'body-righting-body',
  'crawling',
  'crossed-extension',
  'dolls-eye',
  'equilibrium-prone',
  'equilibrium-quadruped',
  'equilibrium-sitting',
  'equilibrium-standing',
  'equilibrium-supine',
  'extensor-thrust',
  'flexor-withdrawal',
  'galant',
  'glabellar',
  'labyrinthine-righting',
  'moro',
  'neck-righting',
  'optical-righting',
  'palmar-grasp',
  'placing-arm',
  'placing-leg',
  'plantar-grasp',
  'plantar-response',
  'positive-support',
  'protective-backward',
  'protective-downward',
  'protective-forward',
  'protective-sideways',
  'protective-stepping',
  'rooting',
  'stepping',
];
const SIDES = ['left', 'right'];
const RESPONSES = ['elicited', 'weak', 'brisk', 'not-elicited'];
/** The same as a clinic may call them. */
const SAID = ['present', 'weak', 'brisk', 'absent'];
const NOTE = 'Looked at twice, calm and awake, and written down as it was seen. ';
/** Somewhat less than a note may have. */
const MOST_NOTE = 3990;
const MADE_AT = '2026-06-08T10:00:00.000Z';

/** The largest sizes that are read, bytes; the readers' own limits, said once more to be held against. */
export const LIMITS = {
  case: 5_000_000,
  table: 1_000_000,
  sheet: 2_000_000,
  talk: 2_000_000,
  bundle: 20_000_000,
  backup: 200_000_000,
  encrypted: 60_000_000,
};

/** @template T @param {number} n @param {(at: number) => T} make */
const many = (n, make) => Array.from({ length: n }, (_, at) => make(at));

/** So many copies of a piece as fit. @param {string} piece @param {number} bytes */
const filled = (piece, bytes) => piece.repeat(Math.floor(bytes / piece.length));

/** @param {number} days after the births of these files */
const day = (days) => new Date(Date.UTC(2026, 0, 5 + days)).toISOString().slice(0, 10);

/**
 * A whole record of so many visits, each with every reflex on both sides; notes fill it up to a size.
 * @param {string} label @param {number} visits @param {number} bytes @param {number} reflexes
 */
export function caseOf(label, visits, bytes, reflexes = PAIRED.length) {
  const looked = PAIRED.slice(0, reflexes);
  /** @param {string} ofVisit @param {string} ofFinding */
  const write = (ofVisit, ofFinding) =>
    JSON.stringify({
      format: 'tidemark-case',
      version: 1,
      child: { label, born: day(0), gestation: '39w0d', invented: true },
      visits: many(visits, (at) => ({
        on: day(at),
        examiner: 'AB',
        note: ofVisit,
        findings: looked.flatMap((reflex, nth) =>
          SIDES.map((side) => ({
            reflex,
            side,
            response: RESPONSES[(at + nth) % 4],
            note: ofFinding,
          })),
        ),
      })),
    });
  const longest = NOTE.repeat(100).slice(0, MOST_NOTE);
  const room = Math.max(0, Math.floor((bytes - write('', '').length) / visits));
  const ofVisit = longest.slice(0, room);
  const rest = Math.floor((room - ofVisit.length) / (2 * looked.length));
  return write(ofVisit, longest.slice(0, rest));
}

/** @param {number} steps @param {number} bytes */
function talkOf(steps, bytes) {
  const lanes = PAIRED.slice(0, 6);
  /** @param {string} note */
  const write = (note) =>
    JSON.stringify({
      format: 'tidemark-talk',
      version: 1,
      title: 'A long talk',
      about: 'Every step that a talk can have.',
      steps: many(steps, (at) => ({
        caption: `Step ${at + 1}`,
        note,
        lanes,
        ageDays: 300 + at,
        fromDays: 250,
        toDays: 600,
      })),
    });
  return write(
    NOTE.repeat(100).slice(0, Math.min(MOST_NOTE, Math.floor((bytes - write('').length) / steps))),
  );
}

/** Children with their findings as another system would send them. @param {number} entries @param {number} each */
function bundleOf(entries, each) {
  /** @param {string} system @param {string} code */
  const coded = (system, code) => ({ coding: [{ system: `urn:tidemark:${system}`, code }] });
  /** @type {object[]} */
  const all = [];
  for (let child = 0; all.length + each + 2 <= entries; child++) {
    const subject = { reference: `Patient/p${child}` };
    const observed = { resourceType: 'Observation', status: 'final', subject };
    all.push({
      resource: {
        resourceType: 'Patient',
        id: `p${child}`,
        birthDate: day(0),
        name: [{ text: `Invented ${child}` }],
      },
    });
    all.push({
      resource: {
        ...observed,
        code: { coding: [{ system: 'http://loinc.org', code: '11884-4' }] },
        valueQuantity: { value: 273, system: 'http://unitsofmeasure.org', code: 'd' },
      },
    });
    for (let at = 0; at < each; at++)
      all.push({
        resource: {
          ...observed,
          code: coded('reflex', PAIRED[at % PAIRED.length] ?? ''),
          effectiveDateTime: day(30 + Math.floor(at / 20)),
          bodySite: coded('side', SIDES[Math.floor(at / PAIRED.length) % 2] ?? ''),
          valueCodeableConcept: coded('response', RESPONSES[at % 4] ?? ''),
          note: [{ text: NOTE.repeat(9) }],
        },
      });
  }
  return JSON.stringify({ resourceType: 'Bundle', type: 'collection', entry: all });
}

/** @param {number} rows @param {number} bytes */
function sheetOf(rows, bytes) {
  const head = 'Child;Born;Gestation;Date;Reflex;Side;Result;Note\n';
  const lines = many(rows, (at) => {
    const [child, within] = [Math.floor(at / 50), at % 50];
    const reflex = PAIRED[within % PAIRED.length];
    const side = SIDES[Math.floor(within / PAIRED.length) % 2];
    return `Invented ${child};${day(0)};39w0d;${day(30 + Math.floor(within / 20))};${reflex};${side};${SAID[at % 4]};`;
  });
  const room = Math.floor((bytes - head.length - lines.join('\n').length) / rows) - 1;
  return head + lines.map((line) => line + NOTE.repeat(20).slice(0, room)).join('\n');
}

/** @param {number} rows @param {number} bytes */
function tableOf(rows, bytes) {
  const head = 'reflex,appears,integrates,note\n';
  const room = Math.floor((bytes - head.length) / rows) - 40;
  return (
    head + many(rows, () => `Moro reflex,28 wk,4-6 mo,${NOTE.repeat(40).slice(0, room)}\n`).join('')
  );
}

/** @param {number} children @param {number} bytes of all @param {number} visits of each */
export function backupOf(children, bytes, visits) {
  const head = { format: 'tidemark-backup', version: 1, at: MADE_AT };
  // marks of quotation are written with another mark before them where the text stands within a text
  const quoted = 20 * 16 * visits + 200;
  const each = Math.floor(bytes / children) - quoted;
  return JSON.stringify({
    ...head,
    items: many(children, (at) => ({
      table: 'cases',
      id: `child-${at}`,
      text: caseOf(`Invented ${at}`, visits, each, 10),
    })),
    small: {},
  });
}

/**
 * Every file that is tried: where it is opened, its name, and its text.
 * @type {readonly { format: keyof typeof LIMITS; what: string; name: string; text: () => string }[]}
 */
export const FILES = [
  {
    format: 'case',
    what: 'all visits, all notes',
    name: 'case.json',
    text: () => caseOf('Largest', 400, LIMITS.case - 1000),
  },
  {
    format: 'case',
    what: 'unknown names in masses',
    name: 'case.json',
    text: () => {
      const finding = '{"reflex":"mooro and so on","side":"left","response":"weak"},';
      const visit = `{"on":"2026-03-01","findings":[${filled(finding, 12_000).slice(0, -1)}]},`;
      return `{"format":"tidemark-case","version":1,"child":{"label":"a","born":"2026-01-04","gestation":"39w0d"},"visits":[${filled(visit, LIMITS.case - 1000).slice(0, -1)}]}`;
    },
  },
  {
    format: 'table',
    what: 'all rows, all notes',
    name: 'own.csv',
    text: () => tableOf(500, LIMITS.table - 1000),
  },
  {
    format: 'table',
    what: 'rows in masses',
    name: 'own.csv',
    text: () => `reflex,appears,integrates,note\n${filled('a,\n', LIMITS.table - 1000)}`,
  },
  {
    format: 'sheet',
    what: 'all rows, all notes',
    name: 'sheet.csv',
    text: () => sheetOf(5000, LIMITS.sheet - 1000),
  },
  {
    format: 'sheet',
    what: 'separators in masses',
    name: 'sheet.csv',
    text: () => `Child;Date;Reflex;Side;Result\n${filled(';', LIMITS.sheet - 1000)}`,
  },
  {
    format: 'talk',
    what: 'all steps, all notes',
    name: 'talk.json',
    text: () => talkOf(100, LIMITS.talk - 1000),
  },
  {
    format: 'talk',
    what: 'steps in masses',
    name: 'talk.json',
    text: () =>
      `{"format":"tidemark-talk","version":1,"title":"a","steps":[${filled('{},', LIMITS.talk - 1000)}{}]}`,
  },
  {
    format: 'bundle',
    what: 'findings of many children',
    name: 'bundle.json',
    text: () => bundleOf(20_000, 98),
  },
  {
    format: 'bundle',
    what: 'nothing but children',
    name: 'bundle.json',
    text: () => bundleOf(19_900, 0),
  },
  {
    format: 'bundle',
    what: 'parts in masses',
    name: 'bundle.json',
    text: () =>
      `{"resourceType":"Bundle","type":"collection","entry":[{"resource":{"resourceType":"Patient","birthDate":"2026-01-05","name":[${filled('{},', 4_400_000)}{}],"note":"${filled('x', 15_000_000)}"}}]}`,
  },
  {
    format: 'backup',
    what: 'children to the limit',
    name: 'backup.json',
    text: () => backupOf(2000, LIMITS.backup - 1_000_000, 24),
  },
  {
    format: 'backup',
    what: 'as many entries as can be',
    name: 'backup.json',
    text: () => backupOf(20_000, LIMITS.backup - 10_000, 2),
  },
  {
    format: 'backup',
    what: 'one text without end',
    name: 'backup.json',
    text: () =>
      `{"format":"tidemark-backup","version":1,"at":"${MADE_AT}","items":[{"table":"cases","id":"a","text":"${filled('\\u0041', LIMITS.backup - 1000)}"}]}`,
  },
];
