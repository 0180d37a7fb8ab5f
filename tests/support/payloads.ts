/** Texts that would be script if a page took them for markup, and files of every kind that carry them. */

/** Ways in which text has become script in other pages (OWASP, XSS Filter Evasion Cheat Sheet, the kinds). */
export const PAYLOADS = [
  '<script>globalThis.ran=1</script>',
  '<img src=x onerror="globalThis.ran=1">',
  '"><svg onload=alert(1)>',
  "' onfocus=globalThis.ran=1 autofocus x='",
  'javascript:globalThis.ran=1',
  'javascript&colon;alert(1)',
  '{{globalThis.ran=1}}${globalThis.ran=1}{@html "<img src=x onerror=globalThis.ran=1>"}',
  '</title></style></textarea><script>globalThis.ran=1</script>',
  '<iframe srcdoc="<script>parent.ran=1</script>"></iframe>',
  '\\u003cscript\\u003eglobalThis.ran=1\\u003c/script\\u003e',
  '&lt;img src=x onerror=globalThis.ran=1&gt;',
  '<a href="javascript:globalThis.ran=1">x</a>',
  '<math><mtext><style><img src onerror=globalThis.ran=1>',
  '<object data="/taken"></object><link rel=stylesheet href=/taken>',
  '<img src=x onerror=alert(1) ', // no end, and a browser makes one
  '<details open ontoggle=globalThis.ran=1>',
  ']]><![CDATA[<script>globalThis.ran=1</script>',
  '=HYPERLINK("javascript:globalThis.ran=1","x")',
] as const;

/** What readers of records keep, since it is neither markup nor a formula: it has to be shown as it is. */
export const PLAIN: readonly string[] = [
  "' onfocus=globalThis.ran=1 autofocus x='",
  'javascript&colon;alert(1)',
  '\\u003cscript\\u003eglobalThis.ran=1\\u003c/script\\u003e',
  '&lt;img src=x onerror=globalThis.ran=1&gt;',
  '<img src=x onerror=alert(1) ',
];

/** The others: a reader of records refuses each of them. */
export const HOSTILE: readonly string[] = PAYLOADS.filter((payload) => !PLAIN.includes(payload));

/** Lines are at most 80 characters, and a file with a longer one would be refused for that alone. */
export const line = (payload: string): string => payload.slice(0, 80).trim();

const day = (n: number): string => `2026-03-${String(n + 1).padStart(2, '0')}`;

/** A case file in which each payload is in every kind of text; the first is the child's name. */
export const caseWith = (payloads: readonly string[]): object => ({
  format: 'tidemark-case',
  version: 1,
  child: { label: line(payloads[0]!), born: '2026-01-04', gestation: '39w0d' },
  visits: payloads.map((payload, n) => ({
    on: day(n),
    examiner: line(payload),
    note: payload,
    findings: [{ reflex: 'moro', side: 'left', response: 'weak', note: payload }],
  })),
  tags: payloads.map(line),
  question: payloads.join('\n'),
  decisions: payloads.map((payload, n) => ({
    on: day(n),
    text: payload,
    who: line(payload),
    by: '2026-04-01',
  })),
  family: {
    calledName: line(payloads[0]!),
    clinic: { name: line(payloads[0]!), phone: line(payloads.at(-1)!) },
    pages: [
      {
        visit: '',
        edits: [{ key: 'closing', language: 'en', text: payloads[0], over: payloads[0] }],
      },
    ],
  },
});

export const talkWith = (payloads: readonly string[]): object => ({
  format: 'tidemark-talk',
  version: 1,
  title: payloads[0]!.slice(0, 160),
  about: payloads[0],
  steps: payloads.map((payload) => ({
    caption: payload.slice(0, 160),
    note: payload,
    lanes: ['moro'],
    ageDays: 300,
    fromDays: 200,
    toDays: 500,
  })),
});

export const ownWith = (payload: string): object => ({
  format: 'tidemark-own',
  version: 1,
  kind: 'source',
  name: payload,
  tier: 'textbook',
  on: true,
  rows: [{ reflex: 'Moro reflex', appears: '28 wk', integrates: '4-6 mo', note: payload }],
});

/** A backup with a child, a talk and a source for each payload, under ids that no other payload has. */
export const backupWith = (payloads: readonly string[]) => ({
  format: 'tidemark-backup',
  version: 1,
  at: '2026-06-01T10:00:00.000Z',
  items: payloads.flatMap((payload) => {
    const n = PAYLOADS.findIndex((one) => one === payload);
    return [
      { table: 'cases', id: `child-${n}`, text: JSON.stringify(caseWith([payload])) },
      { table: 'talks', id: `talk-${n}`, text: JSON.stringify(talkWith([payload])) },
      { table: 'own', id: `own-${n}`, text: JSON.stringify(ownWith(payload)) },
    ];
  }),
  small: {
    'tidemark-settings': payloads.join(' '),
    'tidemark-sheets': JSON.stringify(payloads.map((name) => ({ name }))),
  },
});

/** Children in FHIR whose every text is a payload, one for each, and what else is put beside them. */
export const bundleWith = (payloads: readonly string[], more: readonly object[] = []) => ({
  resourceType: 'Bundle',
  type: 'collection',
  entry: [...payloads.flatMap(patientWith), ...more].map((resource) => ({ resource })),
});

function patientWith(payload: string, n: number): object[] {
  const subject = { reference: `Patient/p${n}` };
  return [
    {
      resourceType: 'Patient',
      id: `p${n}`,
      birthDate: '2026-01-05',
      name: [{ text: line(payload) }],
      meta: { tag: [{ system: 'urn:tidemark:tag', display: line(payload) }] },
    },
    {
      resourceType: 'Observation',
      subject,
      code: { coding: [{ system: 'http://loinc.org', code: '11884-4' }] },
      valueQuantity: { value: 36, code: 'wk' },
    },
    {
      resourceType: 'Observation',
      subject,
      effectiveDateTime: '2026-05-18',
      performer: [{ display: line(payload) }],
      code: { coding: [{ system: 'urn:tidemark:reflex', code: 'moro' }] },
      bodySite: { coding: [{ system: 'urn:tidemark:side', code: 'left' }] },
      valueCodeableConcept: { coding: [{ system: 'urn:tidemark:response', code: 'weak' }] },
      note: [{ text: payload }],
    },
  ];
}

/** Resources that are no record, named by payloads. */
export const resourcesWith = (payloads: readonly string[]): object[] =>
  payloads.flatMap((payload) => [
    { resourceType: payload },
    { resourceType: 'Observation', code: { text: payload } },
  ]);
