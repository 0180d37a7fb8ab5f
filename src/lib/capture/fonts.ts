/**
 * The two typefaces as text, for putting them into a file. They come as a script, since the page may
 * fetch nothing else, and only when a picture is made.
 */
import sans from '@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2?inline';
import serif from '@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2?inline';
import type { Bytes } from '../picture/letters.ts';

/** What follows `data:font/woff2;base64,`. */
const bytesOf = (address: string): string => address.slice(address.indexOf(',') + 1);

export const BYTES: Bytes = { sans: bytesOf(sans), serif: bytesOf(serif) };
