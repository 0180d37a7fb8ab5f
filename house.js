/**
 * The house rule: data flows one way, so a folder of src/lib imports only what lies below it.
 * The table is the one place that says who may import whom; DEVELOPERS.md explains it.
 */

const BELOW_CASE = ['age', 'atlas'];
const CORE = ['number', ...BELOW_CASE, 'case', 'judge', 'cohort'];
const PICTURES = ['figure', 'chart'];

/** What stands below everything that runs in a page. */
const GROUND = [...CORE, 'words', ...PICTURES, 'platform', 'store'];
/** What keeps records and what is added of one's own, and asks for a passphrase. */
const KEEPING = ['drafts', 'repository', 'lock'];

/** Folder of src/lib to the folders it may import. `types` lists what may be imported as types only. */
export const HOUSE = {
  number: { may: [] },
  age: { may: [] },
  atlas: { may: ['age'] },
  case: { may: ['age'], types: ['atlas'] },
  judge: { may: ['number', 'age', 'atlas', 'case'] },
  cohort: { may: ['number', 'age', 'case'] },
  words: {
    may: ['age'],
    types: ['number', 'atlas', 'case', 'judge', 'cohort', 'store', 'exchange'],
  },
  figure: { may: ['age', 'atlas'] },
  chart: { may: ['age', 'atlas', 'case', 'judge', 'figure'] },
  // what was drawn, read off a page and written as a file: it knows drawing, and no reflex or child
  picture: { may: ['chart'] },
  platform: { may: ['age', 'case'] },
  capture: { may: ['chart', 'picture', 'platform'] },
  store: { may: ['age', 'atlas', 'case'] },
  present: { may: [...CORE, 'words', ...PICTURES, 'platform'], types: ['store'] },
  lecture: { may: [...CORE, 'words', ...PICTURES] },
  handout: { may: [...CORE, 'words', ...PICTURES] },
  drafts: { may: [...BELOW_CASE, 'case', 'platform'] },
  repository: { may: [...GROUND, 'lecture', 'drafts'] },
  lock: { may: ['platform', 'store'] },
  examples: { may: [...BELOW_CASE, 'case', 'platform', 'store'] },
  backup: { may: [...GROUND, 'lecture', 'repository', 'examples'] },
  exchange: { may: [...GROUND, 'repository', 'backup'] },
  teaching: { may: [...GROUND, 'present', 'lecture', 'repository', 'examples'] },
  app: {
    may: [
      ...GROUND,
      ...KEEPING,
      'capture',
      'present',
      'lecture',
      'handout',
      'examples',
      'backup',
      'exchange',
      'teaching',
    ],
  },
  ui: { may: ['words'], types: [...CORE] },
};

/** @param {string} file the path of a source file; @returns its folder below src/lib, or undefined */
const roomOf = (file) => /(?:^|\/)src\/lib\/([^/]+)\//.exec(file.replaceAll('\\', '/'))?.[1];

/** @param {string} from @param {string} specifier */
function targetRoom(from, specifier) {
  if (specifier.startsWith('$lib/')) return specifier.split('/')[1];
  if (!specifier.startsWith('.')) return undefined;
  return roomOf(new URL(specifier, `file://${from.startsWith('/') ? '' : '/'}${from}`).pathname);
}

/** @type {import('eslint').Rule.RuleModule} */
const direction = {
  meta: {
    type: 'problem',
    schema: [],
    messages: {
      upward:
        '{{from}} must not import {{to}}: data flows one way (ages and the atlas below, judgement in the middle, pictures and pages above), so that what is below can be tested, printed and run from the command line without what is above. See "The house" in DEVELOPERS.md.',
      value:
        '{{from}} may import only types of {{to}}: sentences are chosen by codes, and the code that makes them must not be pulled in with them.',
      unknown:
        '{{from}} is no room of the house. Add it to the table in house.js with what it may import, and to DEVELOPERS.md.',
    },
  },
  create(context) {
    const from = roomOf(context.filename);
    if (!from) return {};
    const table = /** @type {Record<string, { may: string[]; types?: string[] } | undefined>} */ (
      HOUSE
    );
    const rule = table[from];
    /** @param {any} node an import or export, of any form */
    const check = (node) => {
      if (typeof node.source?.value !== 'string') return;
      if (!rule) return context.report({ node, messageId: 'unknown', data: { from } });
      const to = targetRoom(context.filename, node.source.value);
      if (!to || to === from || rule.may.includes(to)) return;
      const typeOnly =
        node.importKind === 'type' ||
        node.exportKind === 'type' ||
        (!!node.specifiers?.length &&
          node.specifiers.every((/** @type {any} */ named) => named.importKind === 'type'));
      if (!rule.types?.includes(to))
        context.report({ node, messageId: 'upward', data: { from, to } });
      else if (!typeOnly) context.report({ node, messageId: 'value', data: { from, to } });
    };
    return {
      ImportDeclaration: check,
      ExportNamedDeclaration: check,
      ExportAllDeclaration: check,
      ImportExpression: check,
    };
  },
};

/**
 * Words load with the page that says them, as long as the build sees which file of words is meant: the
 * name `en` followed by the name of one file. Handed on, unpacked or indexed, it brings every file.
 * @type {import('eslint').Rule.RuleModule}
 */
const words = {
  meta: {
    type: 'problem',
    schema: [],
    messages: {
      whole:
        'Say which file of words is meant (en.judge, en.chart): used whole, it loads the words of every page at once.',
    },
  },
  create: (context) => ({
    ImportDeclaration(/** @type {any} */ node) {
      if (!String(node.source.value).endsWith('/words/en.ts')) return;
      for (const { references } of context.sourceCode.getDeclaredVariables(node))
        for (const { identifier, isTypeReference, isValueReference } of /** @type {any[]} */ (
          references
        )) {
          const { parent } = identifier;
          const isOne =
            parent.type === 'MemberExpression' && parent.object === identifier && !parent.computed;
          const isType =
            (isTypeReference && !isValueReference) ||
            /^TS(TypeQuery|QualifiedName)$/.test(parent.type);
          if (!isOne && !isType) context.report({ node: identifier, messageId: 'whole' });
        }
    },
  }),
};

export const house = { rules: { direction, words } };
