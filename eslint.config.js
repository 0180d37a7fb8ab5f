import js from '@eslint/js';
import prettier from 'eslint-config-prettier';
import svelte from 'eslint-plugin-svelte';
import { defineConfig, globalIgnores } from 'eslint/config';
import globals from 'globals';
import ts from 'typescript-eslint';
import { house } from './house.js';
import svelteConfig from './svelte.config.js';

const PURE = [
  'src/lib/{number,age,atlas,case,judge,cohort,present,lecture}/**/*.ts',
  'src/lib/{figure,chart,picture}/**/*.ts',
];
const CLOCK = 'Clock, locale and chance are arguments here, so that every answer can be tested.';

export default defineConfig(
  globalIgnores([
    '.svelte-kit/',
    'dist/',
    'dist-cli/',
    'dist-single/',
    'dist-connected/',
    'coverage/',
    'playwright-report/',
    'test-results/',
  ]),
  js.configs.recommended,
  ts.configs.strictTypeChecked,
  svelte.configs.recommended,
  prettier,
  svelte.configs.prettier,
  {
    languageOptions: {
      globals: { ...globals.browser, ...globals.node },
      parserOptions: {
        projectService: true,
        extraFileExtensions: ['.svelte'],
        tsconfigRootDir: import.meta.dirname,
      },
    },
    rules: {
      'no-undef': 'off',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      // every index is possibly undefined here (noUncheckedIndexedAccess); `!` marks one just bounded
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-confusing-void-expression': 'off', // a refusal is written as a value
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } },
    rules: {
      'svelte/no-navigation-without-resolve': 'off', // the hash router's links are plain "#/..."
      // asks for the type of every expression, and there is no store here for it to find: state is in runes
      'svelte/require-store-reactive-access': 'off',
      'no-restricted-syntax': [
        'error',
        {
          selector: "SvelteAttribute[key.name='style']",
          message: 'The content security policy refuses style attributes: use style: or a class.',
        },
      ],
    },
  },
  {
    files: ['**/*.js'],
    extends: [ts.configs.disableTypeChecked],
  },
  {
    files: ['src/lib/**/*.ts', 'src/lib/**/*.svelte'],
    plugins: { house },
    rules: { 'house/direction': 'error' },
  },
  {
    files: ['src/**/*.ts', 'src/**/*.svelte'],
    plugins: { house },
    rules: { 'house/words': 'error' },
  },
  {
    files: PURE,
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            {
              group: ['svelte', 'svelte/*', '$app/*', '$env/*', 'node:*', 'dexie'],
              message: 'This folder is pure: no page, no file, no database.',
            },
            {
              group: ['luxon'],
              message: 'age/written.ts is the one door to luxon: write dates out with it.',
            },
          ],
          paths: [
            {
              name: 'd3',
              importNames: [
                'select',
                'selectAll',
                'zoom',
                'drag',
                'brush',
                'transition',
                'axisTop',
                'axisBottom',
                'axisLeft',
                'axisRight',
              ],
              message: 'D3 computes, Svelte draws: take scales, arrays and shapes only.',
            },
          ],
        },
      ],
      'no-restricted-globals': [
        'error',
        ...['Date', 'Intl', 'performance', 'setTimeout'].map((name) => ({ name, message: CLOCK })),
      ],
      'no-restricted-properties': ['error', { object: 'Math', property: 'random', message: CLOCK }],
    },
  },
  {
    files: ['src/lib/age/written.ts'],
    rules: { 'no-restricted-imports': 'off' },
  },
  {
    // the one door to the calendar of the language: its dates are counted in UTC and read no clock
    files: ['src/lib/age/civil.ts'],
    rules: { 'no-restricted-globals': 'off' },
  },
);
